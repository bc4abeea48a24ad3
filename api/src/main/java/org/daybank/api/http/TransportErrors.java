package org.daybank.api.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what is refused before it is a request at all: headers that are too large, a path that cannot be decoded. */
public final class TransportErrors extends ErrorHandler {
    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        byte[] document = Errors.document(response.getStatus(), "The request is not readable as HTTP");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Errors.PROBLEM);
        response.write(true, ByteBuffer.wrap(document), callback);
        return true;
    }
}
