package org.daybank.api.http;

import io.javalin.http.GatewayTimeoutResponse;
import io.javalin.http.ServiceUnavailableResponse;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Bounds requests that take the machine for a while: so many at once, some more wait a moment, and each is given up after its
 * time. Work that is given up is interrupted; what does not look for that runs to its end and keeps its place until then, so
 * that there is never more of it than allowed.
 */
public final class HeavyWork {
    private static final int MOST_WAITING = 64;
    private static final long WAIT_SECONDS = 5;

    private final Semaphore places;
    private final int atOnce;
    private final Duration timeLimit;
    private final ExecutorService workers = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "heavy");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Bounds work.
     *
     * @param atOnce how many at once
     * @param timeLimit after which work is given up
     */
    public HeavyWork(int atOnce, Duration timeLimit) {
        this.places = new Semaphore(atOnce, true);
        this.atOnce = atOnce;
        this.timeLimit = timeLimit;
    }

    /**
     * Does a piece of work as soon as there is a place for it.
     *
     * @throws ServiceUnavailableResponse when there is none for a while
     * @throws GatewayTimeoutResponse when the work takes too long
     */
    <T> T within(Callable<T> work) {
        try {
            if (places.getQueueLength() >= MOST_WAITING || !places.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
                throw full();
            }
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            throw full();
        }
        FutureTask<T> result = new FutureTask<>(work);
        workers.execute(() -> {
            try {
                result.run();
            } finally {
                // also where the work was given up before it began
                places.release();
            }
        });
        try {
            return result.get(timeLimit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(failed.getCause());
        } catch (TimeoutException late) {
            result.cancel(true);
            throw new GatewayTimeoutResponse(
                    "The calculation took more than %s s and was given up: ask for less at once"
                            .formatted(timeLimit.toSeconds()));
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            throw full();
        }
    }

    /**
     * Does a piece of work here if there is a place at once; it takes what time it needs.
     *
     * @throws ServiceUnavailableResponse when there is none
     */
    void atOnce(Runnable work) {
        if (!places.tryAcquire()) {
            throw full();
        }
        try {
            work.run();
        } finally {
            places.release();
        }
    }

    private ServiceUnavailableResponse full() {
        return new ServiceUnavailableResponse(
                "%s designs, simulations or sweeps run already; ask again later".formatted(atOnce));
    }
}
