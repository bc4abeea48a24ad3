package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.FlatForm;
import org.daybank.api.wire.Json;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.schema.Assumption;
import org.daybank.core.schema.InvalidInput;

/** The ways to ask for one calculation: a body, or query parameters; and the forms of its answer. */
final class CalculationRoutes<Q extends Record, R extends Record> {
    private static final Pattern JSON_TYPE = Pattern.compile("(?:application/(?:[\\w.-]+\\+)?|text/)json(?:\\s*;.*)?");
    private static final String TYPE_JSON = "application/json";
    private static final String TYPE_CSV = "text/csv";
    private static final String TYPE_HTML = "text/html";
    private static final byte[] BYTE_ORDER_MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);

    private final Calculation<Q, R> calculation;
    private final Supplier<Catalog> onOffer;
    private final HeavyWork heavyWork;

    CalculationRoutes(Calculation<Q, R> calculation, Supplier<Catalog> onOffer, HeavyWork heavyWork) {
        this.calculation = calculation;
        this.onOffer = onOffer;
        this.heavyWork = heavyWork;
    }

    List<Route> routes() {
        String path = calculation.path();
        List<Route> routes = new ArrayList<>();
        BiFunction<R, List<Assumption>, String> page = calculation.page();
        if (page == null) {
            routes.add(Route.post(path, this::body));
        } else {
            routes.add(Route.post(path, context -> bodyOrPage(context, page)));
            routes.add(Route.post(path + ".html", context -> page(context, page)));
        }
        FlatAnswer<R, ?> flat = calculation.flat();
        if (flat != null) {
            FlatForm<Q> form = new FlatForm<>(calculation.request(), flat.element());
            routes.add(Route.get(path, forCells((context, options) -> query(context, options, form, flat))));
            routes.add(Route.get(path + ".csv", forCells((context, options) -> table(context, options, form, flat))));
            routes.add(
                    Route.get(path + "/{figure}.txt", forCells((context, options) -> figure(context, options, form))));
        }
        return routes;
    }

    private void body(Context context) {
        QueryOptions options = new QueryOptions(context);
        boolean resolved = options.flag("resolved");
        boolean withWorking = options.flag("working");
        options.refuseOthers();
        answer(context, asked(context), resolved, withWorking);
    }

    private void bodyOrPage(Context context, BiFunction<R, List<Assumption>, String> page) {
        Answers.vary(context, "Accept");
        if (Accept.choose(context, TYPE_JSON, TYPE_HTML).equals(TYPE_HTML)) {
            page(context, page);
        } else {
            body(context);
        }
    }

    private void page(Context context, BiFunction<R, List<Assumption>, String> page) {
        new QueryOptions(context).refuseOthers();
        Bound<Q> asked = asked(context);
        Pages.sheet(context, page.apply(found(asked.value()), asked.assumptions()));
    }

    private Bound<Q> asked(Context context) {
        String type = context.header("Content-Type");
        if (type != null && !JSON_TYPE.matcher(type.toLowerCase(Locale.ROOT)).matches()) {
            throw new UnsupportedMediaTypeResponse("The body must be JSON and say so: Content-Type: application/json");
        }
        return Binder.bind(calculation.request(), Json.read(Body.read(context)));
    }

    private R found(Q asked) {
        return calculation.heavy()
                ? heavyWork.within(() -> calculation.answer(asked, onOffer.get()))
                : calculation.answer(asked, onOffer.get());
    }

    private void answer(Context context, Bound<Q> asked, boolean resolved, boolean withWorking) {
        R found = found(asked.value());
        Answers.json(context, Envelope.write(calculation, asked, found, resolved, withWorking));
    }

    /** Answers query parameters. */
    private interface Cell {
        void answer(Context context, QueryOptions options);
    }

    /** Tells on {@code errors=inline} what is wrong as a line of text with status 200: a cell hides the body of an error. */
    private static Handler forCells(Cell cell) {
        return context -> {
            QueryOptions options = new QueryOptions(context);
            if (!options.errorsInline()) {
                // what cannot be decoded is refused before anything else
                options.others();
                cell.answer(context, options);
                return;
            }
            try {
                options.others();
                cell.answer(context, options);
            } catch (InvalidInput refused) {
                inline(context, Errors.sentence(refused.problems()));
            } catch (HttpResponseException refused) {
                inline(context, String.valueOf(refused.getMessage()));
            }
        };
    }

    private static void inline(Context context, String sentence) {
        Answers.text(context, InlineError.of(sentence));
    }

    private void query(Context context, QueryOptions options, FlatForm<Q> form, FlatAnswer<R, ?> flat) {
        Answers.vary(context, "Accept");
        if (Accept.choose(context, TYPE_JSON, TYPE_CSV).equals(TYPE_CSV)) {
            table(context, options, form, flat);
        } else {
            boolean resolved = options.flag("resolved");
            boolean withWorking = options.flag("working");
            answer(context, form.bind(options.others()), resolved, withWorking);
        }
    }

    private void table(Context context, QueryOptions options, FlatForm<Q> form, FlatAnswer<R, ?> flat) {
        boolean marked = options.flag("bom");
        R found = found(form.bind(options.others()).value());
        byte[] table = flat.csv(found);
        Answers.send(context, Answers.CSV, marked ? joined(BYTE_ORDER_MARK, table) : table);
    }

    private void figure(Context context, QueryOptions options, FlatForm<Q> form) {
        String unit = options.text("in");
        Figure figure = Figure.of(calculation, context.pathParam("figure"));
        R found = found(form.bind(options.others()).value());
        Answers.text(context, figure.text(found, unit));
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }
}
