package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.NotAcceptableResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.daybank.api.request.SweepRequest;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Json;
import org.daybank.core.sweep.CompiledSweep;
import org.daybank.core.sweep.RowFormat;
import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;
import org.jspecify.annotations.Nullable;

/** Many cases of one calculator: rows are written as they are calculated. */
public final class Sweeps {
    /** Most rows that one request may ask for. */
    static final long MOST_ROWS = 10_000_000;

    private static final String CSV = "text/csv";
    private static final String NDJSON = "application/x-ndjson";

    private final List<Calculation<?, ?>> calculations;

    /** Sweeps of these. */
    public Sweeps(List<Calculation<?, ?>> calculations) {
        this.calculations = List.copyOf(calculations);
    }

    /** The routes under which sweeps are found. */
    public List<Route> routes() {
        return List.of(
                Route.post("/v1/sweep", answering(null)),
                Route.post("/v1/sweep.csv", answering(RowFormat.CSV)),
                Route.post("/v1/sweep.ndjson", answering(RowFormat.NDJSON)));
    }

    private Handler answering(@Nullable RowFormat fixed) {
        return context -> answer(context, fixed == null ? accepted(context) : fixed);
    }

    private void answer(Context context, RowFormat format) throws IOException {
        new QueryOptions(context).refuseOthers();
        SweepRequest request = Binder.bind(SweepRequest.class, Json.read(Body.read(context)))
                .value();
        CompiledSweep sweep = SweepReader.read(calculations, request);
        SweepRequest.RowRange rows = request.rows();
        long from = rows == null ? 0 : rows.from();
        long to = rows == null || rows.to() == null ? sweep.count() : rows.to();
        check(sweep, from, to);
        context.contentType((format == RowFormat.CSV ? CSV : NDJSON) + "; charset=utf-8");
        sweep.write(
                format,
                context.res().getOutputStream(),
                from,
                to,
                Runtime.getRuntime().availableProcessors());
    }

    private static void check(CompiledSweep sweep, long from, long to) {
        if (from > sweep.count() || to > sweep.count()) {
            throw new InvalidInput(List.of(new Problem(
                    "/rows",
                    "outOfRange",
                    "rows must be among the %d that there are but are from %d to %d"
                            .formatted(sweep.count(), from, to))));
        }
        if (to - from > MOST_ROWS) {
            throw new InvalidInput(List.of(new Problem(
                    "/rows",
                    "outOfRange",
                    "a request may ask for at most %d rows but asks for %d: ask for a part of them, as in {\"from\": 0, \"to\": %d}"
                            .formatted(MOST_ROWS, to - from, MOST_ROWS))));
        }
    }

    private static RowFormat accepted(Context context) {
        String accept = context.header("Accept");
        if (accept == null) {
            return RowFormat.CSV;
        }
        for (String range : accept.toLowerCase(Locale.ROOT).replace(" ", "").split(",", -1)) {
            List<String> parts = List.of(range.split(";", -1));
            if (parts.contains("q=0")) {
                continue;
            }
            if (List.of("*/*", "text/*", CSV).contains(parts.get(0))) {
                return RowFormat.CSV;
            }
            if (List.of("application/*", NDJSON, "application/ndjson").contains(parts.get(0))) {
                return RowFormat.NDJSON;
            }
        }
        throw new NotAcceptableResponse("The answer is text/csv or application/x-ndjson, which Accept leaves out");
    }
}
