package org.daybank.api.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.NanoTime;

/**
 * Answers what is refused before it is a request at all: headers that are too large, a path that cannot be decoded, whatever
 * comes while the service is stopping.
 */
public final class TransportErrors extends ErrorHandler {
    /** Most bytes of the first line and the headers of a request. */
    public static final int MAX_HEADER_BYTES = 8192;

    private static final int LONGEST_SHOWN = 100;

    private final AccessLog accessLog;

    /** Notes what it refuses. */
    public TransportErrors(AccessLog accessLog) {
        this.accessLog = accessLog;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        int status = response.getStatus();
        byte[] document = Errors.document(
                status,
                switch (status) {
                    case HttpStatus.SERVICE_UNAVAILABLE_503 -> "The service is stopping; ask again in a moment";
                    case HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431, HttpStatus.URI_TOO_LONG_414 ->
                        "The path and headers together must be at most %s bytes".formatted(MAX_HEADER_BYTES);
                    default -> "The request is not readable as HTTP";
                });
        if (status == HttpStatus.SERVICE_UNAVAILABLE_503) {
            response.getHeaders().put(HttpHeader.RETRY_AFTER, Errors.RETRY_SECONDS);
        }
        String id = RequestId.fresh();
        response.getHeaders().put(RequestId.HEADER, id);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Errors.PROBLEM);
        float millis = NanoTime.since(request.getBeginNanoTime()) / 1e6f;
        accessLog.note(id, request.getMethod(), path(request), status, millis);
        response.write(true, ByteBuffer.wrap(document), callback);
        return true;
    }

    /** The beginning of the path; it may be anything. */
    private static String path(Request request) {
        String path = String.valueOf(request.getHttpURI().getPath());
        return path.length() > LONGEST_SHOWN ? path.substring(0, LONGEST_SHOWN) + "…" : path;
    }
}
