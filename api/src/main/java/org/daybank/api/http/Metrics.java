package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.ClassLoaderMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/** Counts and times of requests by route, and what the process takes, in the text format of Prometheus. */
public final class Metrics {
    private static final String TEXT = "text/plain; version=0.0.4; charset=utf-8";

    private final Once<PrometheusMeterRegistry> registry = new Once<>(Metrics::bound);
    private final Map<Kind, Timer> timers = new ConcurrentHashMap<>();
    private final boolean open;

    /** Requests that are counted together. */
    record Kind(String method, String path, int status) {}

    /**
     * Begins to count.
     *
     * @param open whether other machines may ask
     */
    public Metrics(boolean open) {
        this.open = open;
    }

    private static PrometheusMeterRegistry bound() {
        PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
        new JvmMemoryMetrics().bindTo(registry);
        new JvmThreadMetrics().bindTo(registry);
        new ClassLoaderMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        new UptimeMetrics().bindTo(registry);
        return registry;
    }

    /**
     * Counts a request.
     *
     * @param path as routed, without what varies in it
     * @param millis it took
     */
    public void count(String method, String path, int status, float millis) {
        timers.computeIfAbsent(new Kind(method, path, status), this::timer)
                .record((long) (millis * 1000), TimeUnit.MICROSECONDS);
    }

    private Timer timer(Kind kind) {
        return Timer.builder("http.server.requests")
                .description("Requests answered, and the time it took")
                .tag("method", kind.method())
                .tag("path", kind.path())
                .tag("status", String.valueOf(kind.status()))
                .register(registry.get());
    }

    /**
     * Answers what was counted.
     *
     * @throws NotFoundResponse when another machine asks and may not
     */
    public void answer(Context context) {
        if (!open && !isHere(context.req().getRemoteAddr())) {
            throw new NotFoundResponse("Metrics are told to this machine alone");
        }
        context.header("Cache-Control", "no-store");
        context.contentType(TEXT).result(registry.get().scrape().getBytes(StandardCharsets.UTF_8));
    }

    private static boolean isHere(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException none) {
            return false;
        }
    }
}
