package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.UnauthorizedResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.jspecify.annotations.Nullable;

/** Asks callers of the calculators and of the catalogue for a key; contract, pages and health stay open. */
public final class ApiKey {
    /** The header that shows it. */
    public static final String HEADER = "X-API-Key";

    private final byte @Nullable [] key;

    /**
     * Asks for a key.
     *
     * @param key absent, nobody is asked
     */
    public ApiKey(@Nullable String key) {
        this.key = key == null ? null : key.getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Lets a request through.
     *
     * @throws UnauthorizedResponse when the key is asked for and not shown; it takes as long whichever character is wrong
     */
    public void check(Context context) {
        if (key == null || context.method().equals(HandlerType.OPTIONS)) {
            return;
        }
        String shown = context.header(HEADER);
        byte[] bytes = shown == null ? new byte[0] : shown.getBytes(StandardCharsets.UTF_8);
        if (!MessageDigest.isEqual(key, bytes)) {
            context.header("WWW-Authenticate", "ApiKey header=\"" + HEADER + "\"");
            throw new UnauthorizedResponse(
                    "The header " + HEADER + (shown == null ? " is required." : " does not hold the key"));
        }
    }
}
