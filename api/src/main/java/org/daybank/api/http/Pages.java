package org.daybank.api.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import org.daybank.api.sheet.SheetStyle;

/** Sends pages; none may load anything, or let anything be loaded, that is not named here. */
final class Pages {
    private static final String HTML = "text/html; charset=utf-8";
    private static final String SHEET =
            "default-src 'none'; style-src %s; base-uri 'none'; form-action 'none'".formatted(SheetStyle.source());

    private Pages() {}

    /** Sends a page that stands by itself. */
    static void send(Context context, String html) {
        context.header("Content-Security-Policy", SHEET);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        Answers.send(context, HTML, html.getBytes(StandardCharsets.UTF_8));
    }
}
