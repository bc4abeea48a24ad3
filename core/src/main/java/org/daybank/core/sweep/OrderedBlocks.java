package org.daybank.core.sweep;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/**
 * Work on the blocks of a range of rows, by several threads at once; what they make is taken in the order of the rows. No
 * more than a few blocks for each thread are there at once.
 */
final class OrderedBlocks {
    private static final int AHEAD = 3;
    private static final int LARGEST = 4096;
    private static final long SHORT_NANOS = 20_000_000;

    private OrderedBlocks() {}

    /** Makes something of a block. */
    interface Work<T> {
        T of(long from, long to, BooleanSupplier stopped);
    }

    /** Takes what was made of the next block. */
    interface Taker<T> {
        void take(T made) throws IOException;
    }

    /**
     * Runs through a range.
     *
     * @throws IOException when the taker throws it or this thread is interrupted; no work goes on after that
     */
    static <T> void run(long from, long to, int threads, Work<T> work, Taker<T> taker) throws IOException {
        AtomicBoolean stopped = new AtomicBoolean();
        ExecutorService workers = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "sweep");
            thread.setDaemon(true);
            return thread;
        });
        try {
            Deque<Future<T>> waiting = new ArrayDeque<>();
            long next = from;
            int size = 1;
            while (next < to || !waiting.isEmpty()) {
                while (next < to && waiting.size() < AHEAD * threads) {
                    long first = next;
                    long end = Math.min(to, next + size);
                    waiting.add(workers.submit(() -> work.of(first, end, stopped::get)));
                    next = end;
                }
                long begun = System.nanoTime();
                taker.take(waiting.remove().get());
                // blocks grow as long as they are ready soon, so that slow rows still come one by one
                size = System.nanoTime() - begun < SHORT_NANOS ? Math.min(LARGEST, 2 * size) : Math.max(1, size / 2);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("The sweep was interrupted");
        } catch (ExecutionException failed) {
            throw new IllegalStateException("A block of rows could not be made", failed.getCause());
        } finally {
            stopped.set(true);
            workers.shutdownNow();
        }
    }
}
