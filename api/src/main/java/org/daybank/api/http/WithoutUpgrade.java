package org.daybank.api.http;

import java.util.EnumSet;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Ignores requests to change the protocol, as a server may (RFC 9110, 7.8): the service has no WebSockets, and the container
 * would otherwise open a session for each such request.
 */
public final class WithoutUpgrade extends Handler.Wrapper {
    private static final EnumSet<HttpHeader> UPGRADE = EnumSet.of(
            HttpHeader.UPGRADE,
            HttpHeader.SEC_WEBSOCKET_KEY,
            HttpHeader.SEC_WEBSOCKET_VERSION,
            HttpHeader.SEC_WEBSOCKET_SUBPROTOCOL,
            HttpHeader.SEC_WEBSOCKET_EXTENSIONS);

    /** Creates the handler in front of another. */
    public WithoutUpgrade(Handler next) {
        super(next);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return super.handle(request.getHeaders().contains(UPGRADE) ? new Plain(request) : request, response, callback);
    }

    /** A request without these headers. */
    private static final class Plain extends Request.Wrapper {
        private final HttpFields headers;

        Plain(Request request) {
            super(request);
            this.headers = HttpFields.build(request.getHeaders(), UPGRADE).asImmutable();
        }

        @Override
        public HttpFields getHeaders() {
            return headers;
        }
    }
}
