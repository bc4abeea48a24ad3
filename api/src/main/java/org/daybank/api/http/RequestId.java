package org.daybank.api.http;

import io.javalin.http.Context;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;

/** The name of one request, in the log and in the answer. */
public final class RequestId {
    /** The header that tells it. */
    public static final String HEADER = "X-Request-Id";

    private RequestId() {}

    /** Names a request. */
    public static void give(Context context) {
        String id = fresh();
        context.attribute(HEADER, id);
        context.header(HEADER, id);
    }

    /** A name that no other request has. */
    static String fresh() {
        return HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextLong());
    }

    /** The name of a request. */
    public static String of(Context context) {
        return String.valueOf(context.<Object>attribute(HEADER));
    }
}
