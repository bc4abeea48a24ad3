package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import org.daybank.api.sheet.SheetStyle;
import org.jspecify.annotations.Nullable;

/** The pages for people, and the scripts and styles they are made of; none may load anything that is not named here. */
public final class Pages {
    private static final String HTML = "text/html; charset=utf-8";
    private static final String CSS = "text/css; charset=utf-8";
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String CLOSED = "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String SHEET = "default-src 'none'; style-src " + SheetStyle.source() + CLOSED;

    /** The front page shows a sheet in a frame, which falls under the same policy. */
    private static final String FRONT =
            "default-src 'none'; script-src 'self'; connect-src 'self'; img-src data:; style-src 'self' "
                    + SheetStyle.source() + CLOSED;

    private static final String DOCS =
            "default-src 'none'; script-src 'self'; connect-src 'self'; img-src 'self' data:; style-src 'self'"
                    + CLOSED;

    private static final String REFERENCE = "META-INF/resources/webjars/swagger-ui/%s/".formatted(referenceVersion());

    /** What the pages are made of, by name. */
    private static final Map<String, Asset> ASSETS = Map.of(
            "pages.css", Asset.own("pages.css", CSS),
            "front.js", Asset.own("front.js", SCRIPT),
            "docs.js", Asset.own("docs.js", SCRIPT),
            "swagger-ui.css", Asset.of(REFERENCE + "swagger-ui.css", CSS),
            "swagger-ui-bundle.js", Asset.of(REFERENCE + "swagger-ui-bundle.js", SCRIPT));

    private static final Asset FRONT_PAGE = Asset.own("front.html", HTML);
    private static final Asset DOCS_PAGE = Asset.own("docs.html", HTML);

    private Pages() {}

    /** A file of the class path. */
    private static final class Asset {
        private final String mediaType;
        private final byte[] bytes;

        Asset(String mediaType, byte[] bytes) {
            this.mediaType = mediaType;
            this.bytes = bytes;
        }

        static Asset own(String name, String mediaType) {
            return of("org/daybank/api/http/" + name, mediaType);
        }

        static Asset of(String path, String mediaType) {
            try (InputStream in = resource(path)) {
                if (in == null) {
                    throw new IllegalStateException("Not on the class path: " + path);
                }
                return new Asset(mediaType, in.readAllBytes());
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    /** Answers the page that shows what the service does. */
    public static void front(Context context) {
        send(context, FRONT, FRONT_PAGE);
    }

    /** Answers the reference. */
    public static void docs(Context context) {
        send(context, DOCS, DOCS_PAGE);
    }

    /** Answers a script or a style of these pages. */
    public static void asset(Context context) {
        Asset asset = ASSETS.get(context.pathParam("file"));
        if (asset == null) {
            throw new NotFoundResponse("No page is made of a file of this name");
        }
        send(context, SHEET, asset);
    }

    /** Sends a sheet. */
    static void sheet(Context context, String html) {
        send(context, SHEET, new Asset(HTML, html.getBytes(StandardCharsets.UTF_8)));
    }

    private static void send(Context context, String policy, Asset asset) {
        context.header("Content-Security-Policy", policy);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        Answers.send(context, asset.mediaType, asset.bytes);
    }

    private static @Nullable InputStream resource(String path) {
        return Pages.class.getClassLoader().getResourceAsStream(path);
    }

    /** The version that was built with, which is part of the paths. */
    private static String referenceVersion() {
        try (InputStream in = resource("META-INF/maven/org.webjars/swagger-ui/pom.properties")) {
            Properties properties = new Properties();
            if (in != null) {
                properties.load(in);
            }
            return properties.getProperty("version", "");
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
