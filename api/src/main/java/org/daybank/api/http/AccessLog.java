package org.daybank.api.http;

import io.javalin.http.Context;
import java.io.PrintStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * A line for each request, written by a thread of its own: threads that answer do not wait for each other to write, nor do they
 * wake it for each line. Where lines come faster than they can be written, they wait rather than lose one.
 */
public final class AccessLog {
    private static final int MOST_WAITING = 10_000;
    private static final long MILLIS_BETWEEN_BATCHES = 20;
    private static final String END = "";

    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>(MOST_WAITING);
    private final PrintStream out;
    private final Thread writer = new Thread(this::write, "access-log");

    /** Writes to a stream from now on. */
    public AccessLog(PrintStream out) {
        this.out = out;
        writer.setDaemon(true);
        writer.start();
    }

    /** Notes a request that was answered. */
    public void note(Context context, float millis) {
        note(
                RequestId.of(context),
                context.method().name(),
                context.req().getRequestURI(),
                context.statusCode(),
                millis);
    }

    /** Notes a request by what is known of it. */
    void note(String id, String method, String path, int status, float millis) {
        // plain joining: the general formatter takes longer than many a calculation
        put(Instant.now() + " access id=" + id
                + " method=" + method
                + " path=" + path
                + " status=" + status
                + " ms=" + Math.round(millis * 10) / 10.0
                + System.lineSeparator());
    }

    /** Writes what waits, and no more after that. */
    public void close() {
        put(END);
        try {
            writer.join();
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
    }

    private void put(String line) {
        try {
            lines.put(line);
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
    }

    private void write() {
        List<String> batch = new ArrayList<>();
        try {
            while (true) {
                batch.add(lines.take());
                lines.drainTo(batch);
                out.print(String.join("", batch));
                out.flush();
                if (batch.contains(END)) {
                    return;
                }
                batch.clear();
                Thread.sleep(MILLIS_BETWEEN_BATCHES);
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
        }
    }
}
