package org.daybank.api.http;

import io.javalin.http.Context;
import java.util.List;

/**
 * Lets pages of other origins call from a browser (the CORS protocol of the Fetch standard). A page of an origin that is not
 * listed gets its answer without the headers, and its browser keeps it from the page.
 */
public final class Cors {
    private static final String ANY = "*";
    private static final String EXPOSED = "ETag, X-Request-Id, Retry-After, Allow";
    private static final String ASKED = "Content-Type, Accept, If-None-Match, " + ApiKey.HEADER;
    private static final String SECONDS_KEPT = "86400";

    private final List<String> origins;

    /**
     * Lets these call.
     *
     * @param origins {@code *} for all
     */
    public Cors(List<String> origins) {
        this.origins = List.copyOf(origins);
    }

    /** Adds what a browser looks for, on errors as well. */
    public void allow(Context context) {
        if (origins.isEmpty()) {
            return;
        }
        Answers.vary(context, "Origin");
        String origin = context.header("Origin");
        if (origin == null || !(origins.contains(ANY) || origins.contains(origin))) {
            return;
        }
        context.header("Access-Control-Allow-Origin", origin);
        context.header("Access-Control-Expose-Headers", EXPOSED);
        if (context.header("Access-Control-Request-Method") != null) {
            context.header("Access-Control-Allow-Methods", "GET, HEAD, POST");
            context.header("Access-Control-Allow-Headers", ASKED);
            context.header("Access-Control-Max-Age", SECONDS_KEPT);
        }
    }
}
