package org.daybank.api.http;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/** Reads the body of a request, up to a limit. */
final class Body {
    /** Largest body that is read. */
    static final int MAX_BYTES = 1_000_000;

    /** How much of a body that is too large is let in and thrown away, so that its sender comes to read the answer. */
    private static final long DRAINED_BYTES = 64_000_000;

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
     */
    static byte[] read(Context context, int maxBytes) {
        try (InputStream in = context.bodyInputStream()) {
            byte[] bytes = in.readNBytes(maxBytes + 1);
            if (bytes.length > maxBytes) {
                drain(in);
                throw new ContentTooLargeResponse("The body is larger than %d bytes".formatted(maxBytes));
            }
            return bytes;
        } catch (IOException broken) {
            throw new BadRequestResponse("The body ended before it was complete");
        }
    }

    private static void drain(InputStream in) throws IOException {
        byte[] thrownAway = new byte[1 << 16];
        long drained = 0;
        for (int read = 0; read >= 0 && drained < DRAINED_BYTES; read = in.read(thrownAway)) {
            drained += read;
        }
    }
}
