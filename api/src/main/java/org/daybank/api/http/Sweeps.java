package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.function.Supplier;
import org.daybank.api.request.SweepRequest;
import org.daybank.api.request.UncertaintyRequest;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Json;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.sweep.CompiledSweep;
import org.daybank.core.sweep.RowFormat;
import org.daybank.core.sweep.Uncertainty;
import org.jspecify.annotations.Nullable;

/** Many cases of one calculator: rows are written as they are calculated. */
public final class Sweeps {
    /** Most rows that one request may ask for. */
    static final long MOST_ROWS = 10_000_000;

    /** Most cases that the uncertainty of one request may take. */
    static final long MOST_CASES = 200_000;

    private static final String CSV = "text/csv";
    private static final String NDJSON = "application/x-ndjson";
    private static final String OTHER_NDJSON = "application/ndjson";

    private final List<Calculation<?, ?>> calculations;

    /** Sweeps of these. */
    public Sweeps(List<Calculation<?, ?>> calculations) {
        this.calculations = List.copyOf(calculations);
    }

    /**
     * The routes under which sweeps are found.
     *
     * @param onOffer the products that count where a base names none
     * @param heavyWork bounds how many run at once
     */
    public List<Route> routes(Supplier<Catalog> onOffer, HeavyWork heavyWork) {
        return List.of(
                Route.post("/v1/sweep", answering(null, onOffer, heavyWork)),
                Route.post("/v1/sweep.csv", answering(RowFormat.CSV, onOffer, heavyWork)),
                Route.post("/v1/sweep.ndjson", answering(RowFormat.NDJSON, onOffer, heavyWork)));
    }

    /**
     * What the uncertainty of inputs makes of the outputs of a calculator.
     *
     * @param onOffer the products that count where the base names none
     * @throws InvalidInput with everything that is wrong, each problem under its pointer
     */
    public Uncertainty uncertainty(UncertaintyRequest request, Catalog onOffer) {
        long cases = (long) request.draws() * (request.axes().size() + 2);
        if (cases > MOST_CASES) {
            throw new InvalidInput(List.of(new Problem(
                    "/draws",
                    ProblemCode.OUT_OF_RANGE,
                    "%s draws of %s inputs take %s cases; a request may ask for at most %s"
                            .formatted(request.draws(), request.axes().size(), cases, MOST_CASES))));
        }
        return Uncertainty.of(
                SweepReader.draft(calculations, onOffer, request.sweep()), request.draws(), request.seed());
    }

    private Handler answering(@Nullable RowFormat fixed, Supplier<Catalog> onOffer, HeavyWork heavyWork) {
        return context -> answer(context, fixed == null ? accepted(context) : fixed, onOffer, heavyWork);
    }

    private void answer(Context context, RowFormat format, Supplier<Catalog> onOffer, HeavyWork heavyWork) {
        new QueryOptions(context).refuseOthers();
        SweepRequest request =
                Binder.bind(SweepRequest.class, Json.read(Body.read(context))).value();
        CompiledSweep sweep =
                SweepReader.draft(calculations, onOffer.get(), request).compile();
        SweepRequest.RowRange rows = request.rows();
        long from = rows == null ? 0 : rows.from();
        long to = rows == null || rows.to() == null ? sweep.count() : rows.to();
        check(sweep, from, to);
        heavyWork.atOnce(() -> {
            context.contentType((format == RowFormat.CSV ? CSV : NDJSON) + "; charset=utf-8");
            Answers.vary(context, "Accept, Accept-Encoding");
            RowStream.send(
                    context,
                    out -> sweep.write(
                            format, out, from, to, Runtime.getRuntime().availableProcessors()));
        });
    }

    private static void check(CompiledSweep sweep, long from, long to) {
        if (from > sweep.count() || to > sweep.count()) {
            throw new InvalidInput(List.of(new Problem(
                    "/rows",
                    ProblemCode.OUT_OF_RANGE,
                    "rows must be among the %s that there are but are from %s to %s"
                            .formatted(sweep.count(), from, to))));
        }
        if (to - from > MOST_ROWS) {
            throw new InvalidInput(List.of(new Problem(
                    "/rows",
                    ProblemCode.OUT_OF_RANGE,
                    "a request may ask for at most %s rows but asks for %s: ask for a part of them, as in {\"from\": 0, \"to\": %s}"
                            .formatted(MOST_ROWS, to - from, MOST_ROWS))));
        }
    }

    private static RowFormat accepted(Context context) {
        return Accept.choose(context, CSV, NDJSON, OTHER_NDJSON).equals(CSV) ? RowFormat.CSV : RowFormat.NDJSON;
    }
}
