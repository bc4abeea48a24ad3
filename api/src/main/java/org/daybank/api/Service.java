package org.daybank.api;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.daybank.api.http.AccessLog;
import org.daybank.api.http.ApiKey;
import org.daybank.api.http.Contract;
import org.daybank.api.http.Cors;
import org.daybank.api.http.Errors;
import org.daybank.api.http.HeavyWork;
import org.daybank.api.http.Metrics;
import org.daybank.api.http.Readiness;
import org.daybank.api.http.RequestId;
import org.daybank.api.http.Route;
import org.daybank.api.http.TransportErrors;
import org.daybank.api.http.WithoutUpgrade;
import org.daybank.core.catalog.Catalog;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.component.LifeCycle;

/** The server: the routes, with limits, request ids, an access log and a graceful stop around them. */
public final class Service {
    private static final long STOP_MILLIS = 8000;

    /** So much of a body is awaited before a thread is given to its request: half-sent bodies cost none. */
    private static final long AWAITED_BYTES = 16_384;

    /** To remember the headers of a connection takes some 100 kB for each, and spares next to nothing. */
    private static final int NO_HEADERS_KEPT = 0;

    /** Connections that may wait to be accepted: a client that comes in a crowd beyond them is let in a second later. */
    private static final int MOST_AT_THE_DOOR = 1024;

    private Service() {}

    /**
     * Starts listening.
     *
     * @param onOffer the products that count where a request names none
     */
    public static Javalin start(Settings settings, Supplier<Catalog> onOffer) {
        return Javalin.create(config -> configure(config, settings, onOffer)).start(settings.host(), settings.port());
    }

    private static void configure(JavalinConfig config, Settings settings, Supplier<Catalog> onOffer) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.prefer405over404 = true;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        Readiness readiness = new Readiness();
        AccessLog accessLog = new AccessLog(System.err);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setRequestHeaderSize(TransportErrors.MAX_HEADER_BYTES);
            http.setHeaderCacheSize(NO_HEADERS_KEPT);
        });
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(STOP_MILLIS);
            server.setStopAtShutdown(true);
            server.setErrorHandler(new TransportErrors(accessLog));
            server.setHandler(new WithoutUpgrade(new GracefulHandler(new EagerContentHandler(
                    new EagerContentHandler.RetainedContentLoaderFactory(AWAITED_BYTES, 0, false)))));
            readiness.watch(server);
            server.addEventListener(new LifeCycle.Listener() {
                @Override
                public void lifeCycleStarting(LifeCycle starting) {
                    for (ServerConnector connector : server.getBeans(ServerConnector.class)) {
                        connector.setAcceptQueueSize(MOST_AT_THE_DOOR);
                    }
                }

                @Override
                public void lifeCycleStopped(LifeCycle stopped) {
                    accessLog.close();
                }
            });
        });
        Metrics metrics = new Metrics(settings.openMetrics());
        config.requestLogger.http((context, millis) -> log(context, millis, metrics, accessLog));
        config.routes.before(RequestId::give);
        config.routes.before(new Cors(settings.corsOrigins())::allow);
        ApiKey key = new ApiKey(settings.apiKey());
        config.routes.before("/v1/*", key::check);
        config.routes.before("/metrics", key::check);
        Errors.handleIn(config.routes);
        register(
                config.routes,
                Routes.all(
                        new Contract(),
                        onOffer,
                        new HeavyWork(settings.heavyAtOnce(), settings.timeLimit()),
                        metrics,
                        readiness));
    }

    /** Every route, HEAD wherever GET is, and OPTIONS everywhere. */
    private static void register(RoutesConfig routes, List<Route> all) {
        Map<String, TreeSet<String>> methods = new LinkedHashMap<>();
        for (Route route : all) {
            Handler handler = Errors.guarded(route.handler());
            routes.addHttpHandler(route.method(), route.path(), handler);
            TreeSet<String> known = methods.computeIfAbsent(route.path(), path -> new TreeSet<>());
            known.add(route.method().name());
            known.add("OPTIONS");
            if (route.method().equals(HandlerType.GET)) {
                routes.head(route.path(), handler);
                known.add("HEAD");
            }
        }
        methods.forEach((path, known) -> routes.options(
                path, context -> context.status(HttpStatus.NO_CONTENT).header("Allow", String.join(", ", known))));
    }

    private static void log(Context context, Float millis, Metrics metrics, AccessLog accessLog) {
        Endpoint endpoint = context.endpoints().matchedHttpEndpoint();
        metrics.count(
                endpoint == null ? "other" : endpoint.method.name(),
                endpoint == null ? "none" : endpoint.path,
                context.statusCode(),
                millis);
        accessLog.note(context, millis);
    }
}
