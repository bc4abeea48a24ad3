package org.daybank.api.http;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.daybank.core.schema.Problem;
import org.jspecify.annotations.Nullable;

/** Reads the body of a request, up to a limit. */
final class Body {
    /** Largest body that is read. */
    static final int MAX_BYTES = 1_000_000;

    /** How much of a body that is too large is let in and thrown away, so that its sender comes to read the answer. */
    private static final long DRAINED_BYTES = 64_000_000;

    /** How long a body may take to come. */
    private static final long MAX_SECONDS = 30;

    private static final int CHUNK = 1 << 16;

    private static final Set<String> ENCODINGS = Set.of("utf-8", "utf8", "us-ascii", "ascii");

    private Body() {}

    /**
     * The whole body.
     *
     * @throws ContentTooLargeResponse when it is larger than the limit
     * @throws BadRequestResponse when it breaks off
     */
    static byte[] read(Context context) {
        return read(context, MAX_BYTES);
    }

    /**
     * The whole body, up to a limit of the caller's.
     *
     * @throws ContentTooLargeResponse when it is larger than the limit
     * @throws BadRequestResponse when it breaks off
     * @throws UnsupportedMediaTypeResponse when it is said to be in another encoding than UTF-8
     * @throws HttpResponseException with status 408 when it comes too slowly
     */
    static byte[] read(Context context, int maxBytes) {
        checkEncoding(context.header("Content-Type"));
        long begun = System.nanoTime();
        try (InputStream in = context.bodyInputStream()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            byte[] chunk = new byte[chunk(context.contentLength())];
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                bytes.write(chunk, 0, read);
                if (bytes.size() > maxBytes) {
                    drain(in, begun);
                    throw new ContentTooLargeResponse("The body is larger than %s bytes".formatted(maxBytes));
                }
                if (late(begun)) {
                    throw new HttpResponseException(
                            HttpStatus.REQUEST_TIMEOUT.getCode(),
                            "The body must be here within %s s".formatted(MAX_SECONDS));
                }
            }
            return bytes.toByteArray();
        } catch (IOException broken) {
            throw new BadRequestResponse("The body ended before it was complete");
        }
    }

    /** Every body is read as UTF-8, of which ASCII is a part. */
    private static void checkEncoding(@Nullable String contentType) {
        if (contentType == null) {
            return;
        }
        for (String parameter : contentType.toLowerCase(Locale.ROOT).split(";", -1)) {
            String plain = parameter.replace("\"", "").strip();
            if (plain.startsWith("charset=")
                    && !ENCODINGS.contains(plain.substring("charset=".length()).strip())) {
                throw new UnsupportedMediaTypeResponse(
                        "The body must be in UTF-8, but Content-Type says " + Problem.shortened(plain));
            }
        }
    }

    /** How much is taken at once: all of a small body that says its length. */
    private static int chunk(int length) {
        return length < 0 ? CHUNK : Math.max(1, Math.min(length, CHUNK));
    }

    private static boolean late(long begun) {
        return System.nanoTime() - begun > TimeUnit.SECONDS.toNanos(MAX_SECONDS);
    }

    private static void drain(InputStream in, long begun) throws IOException {
        byte[] thrownAway = new byte[CHUNK];
        long drained = 0;
        for (int read = 0; read >= 0 && drained < DRAINED_BYTES && !late(begun); read = in.read(thrownAway)) {
            drained += read;
        }
    }
}
