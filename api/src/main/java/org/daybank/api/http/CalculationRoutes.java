package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.FlatForm;
import org.daybank.api.wire.Json;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.working.Assumption;

/** The ways to ask for one calculation: a body, query parameters, or one figure as text. */
final class CalculationRoutes<Q extends Record, R extends Record> {
    private static final Pattern JSON_TYPE = Pattern.compile("(?:application/(?:[\\w.-]+\\+)?|text/)json(?:\\s*;.*)?");

    private final Calculation<Q, R> calculation;
    private final Catalog onOffer;

    CalculationRoutes(Calculation<Q, R> calculation, Catalog onOffer) {
        this.calculation = calculation;
        this.onOffer = onOffer;
    }

    List<Route> routes() {
        String path = calculation.path();
        List<Route> routes = new ArrayList<>();
        routes.add(Route.post(path, this::body));
        if (calculation.flat()) {
            FlatForm<Q> form = new FlatForm<>(calculation.request());
            routes.add(Route.get(path, context -> query(context, form)));
            routes.add(Route.get(path + "/{figure}.txt", context -> figure(context, form)));
        }
        BiFunction<R, List<Assumption>, String> page = calculation.page();
        if (page != null) {
            routes.add(Route.post(path + ".html", context -> page(context, page)));
        }
        return routes;
    }

    private void body(Context context) {
        QueryOptions options = new QueryOptions(context);
        boolean withWorking = options.flag("working");
        options.refuseOthers();
        answer(context, asked(context), withWorking);
    }

    private void page(Context context, BiFunction<R, List<Assumption>, String> page) {
        new QueryOptions(context).refuseOthers();
        Bound<Q> asked = asked(context);
        Pages.sheet(context, page.apply(calculation.answer(asked.value(), onOffer), asked.assumptions()));
    }

    private Bound<Q> asked(Context context) {
        String type = context.contentType();
        if (type != null && !JSON_TYPE.matcher(type.toLowerCase(Locale.ROOT)).matches()) {
            throw new UnsupportedMediaTypeResponse("The body must be JSON and say so: Content-Type: application/json");
        }
        return Binder.bind(calculation.request(), Json.read(Body.read(context)));
    }

    private void query(Context context, FlatForm<Q> form) {
        QueryOptions options = new QueryOptions(context);
        boolean withWorking = options.flag("working");
        answer(context, form.bind(options.others()), withWorking);
    }

    private void answer(Context context, Bound<Q> asked, boolean withWorking) {
        R found = calculation.answer(asked.value(), onOffer);
        Answers.json(context, Envelope.write(calculation, asked, found, withWorking));
    }

    private void figure(Context context, FlatForm<Q> form) {
        QueryOptions options = new QueryOptions(context);
        String unit = options.text("in");
        String name = context.pathParam("figure");
        List<String> figures = Envelope.figures(calculation);
        if (!figures.contains(name)) {
            throw new NotFoundResponse("No such figure; there are " + String.join(", ", figures));
        }
        R found = calculation.answer(form.bind(options.others()).value(), onOffer);
        Answers.text(context, Figure.text(found, name, unit));
    }
}
