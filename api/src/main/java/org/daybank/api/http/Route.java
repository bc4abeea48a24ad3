package org.daybank.api.http;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

/**
 * One method on one path.
 *
 * @param method GET or POST
 * @param path with variable parts in braces, as the contract writes it
 * @param handler answers it
 */
public record Route(HandlerType method, String path, Handler handler) {
    /** A route that reads. */
    public static Route get(String path, Handler handler) {
        return new Route(HandlerType.GET, path, handler);
    }

    /** A route that reads and takes no query parameters. */
    public static Route plain(String path, Handler handler) {
        return get(path, QueryOptions.without(handler));
    }

    /** A route that takes a body. */
    public static Route post(String path, Handler handler) {
        return new Route(HandlerType.POST, path, handler);
    }
}
