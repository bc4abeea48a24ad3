package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.ServiceUnavailableResponse;
import org.eclipse.jetty.server.Server;
import org.jspecify.annotations.Nullable;

/** Whether the service takes new requests: from its start until it is told to end. */
public final class Readiness {
    private volatile @Nullable Server server;

    /** Looks at this server from now on. */
    public void watch(Server watched) {
        server = watched;
    }

    /**
     * Answers that it takes requests.
     *
     * @throws ServiceUnavailableResponse when it does not yet, or no more
     */
    public void answer(Context context) {
        Server watched = server;
        context.header("Cache-Control", "no-store");
        if (watched == null || !watched.isStarted()) {
            throw new ServiceUnavailableResponse("The service is starting or stopping");
        }
        context.contentType(Answers.TEXT).result("ready");
    }
}
