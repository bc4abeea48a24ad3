package org.daybank.core.sweep;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Spliterator;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.sweep.kernel.TextBuffer;
import org.jspecify.annotations.Nullable;

/**
 * A sweep that is ready to run. A row depends on its number and on the seed alone: any range of rows can be made anywhere, on
 * any number of threads, and is the same as when all are made. Immutable and safe for threads.
 */
public final class CompiledSweep {
    private final CasePlan plan;
    private final Function<Object, Object> calculator;
    private final List<Input> inputs;
    private final List<Output> outputs;
    private final Points points;
    private final List<Column> columns;

    CompiledSweep(
            CasePlan plan,
            Function<Object, Object> calculator,
            List<Input> inputs,
            List<Output> outputs,
            Points points) {
        this.plan = plan;
        this.calculator = calculator;
        this.inputs = List.copyOf(inputs);
        this.outputs = List.copyOf(outputs);
        this.points = points;
        this.columns = Stream.concat(
                        inputs.stream().map(Input::column), outputs.stream().map(Output::column))
                .toList();
    }

    /** How many rows there are. */
    public long count() {
        return points.rows();
    }

    /** What stands in the rows: inputs first, then outputs, each in the order in which they were named. */
    public List<Column> columns() {
        return columns;
    }

    /** How many of the columns are inputs. */
    int inputs() {
        return inputs.size();
    }

    /** All rows, each calculated when the stream comes to it; {@code parallel()} spreads them over threads. */
    public Stream<Row> rows() {
        return rows(0, count());
    }

    /**
     * The rows of a range, each calculated when the stream comes to it.
     *
     * @param from number of the first
     * @param to number after the last
     * @throws IllegalArgumentException when there are no such rows
     */
    public Stream<Row> rows(long from, long to) {
        range(from, to);
        return StreamSupport.stream(new RowSpliterator(from, to), false);
    }

    /**
     * Writes all rows as text, in order, with all processors at work.
     *
     * @throws IOException when the stream does not take them; the work then stops
     */
    public void write(RowFormat format, OutputStream out) throws IOException {
        write(format, out, 0, count(), Runtime.getRuntime().availableProcessors());
    }

    /**
     * Writes the rows of a range as text, in order: what is in memory does not grow with their number. The header is written
     * for every range.
     *
     * @param out not closed
     * @param from number of the first
     * @param to number after the last
     * @param threads how many calculate at once, at least 1
     * @throws IOException when the stream does not take them, or the thread is interrupted; the work then stops
     */
    public void write(RowFormat format, OutputStream out, long from, long to, int threads) throws IOException {
        range(from, to);
        RowText rowText = RowText.of(format, columns);
        TextBuffer header = new TextBuffer();
        rowText.header(header);
        header.writeTo(out);
        OrderedBlocks.run(
                from,
                to,
                threads,
                (first, end, stopped) -> {
                    TextBuffer text = new TextBuffer();
                    Evaluator evaluator = new Evaluator();
                    for (long number = first; number < end && !stopped.getAsBoolean(); number++) {
                        rowText.row(evaluator.row(number), text);
                    }
                    return text;
                },
                text -> {
                    text.writeTo(out);
                    out.flush();
                });
    }

    /**
     * Hands over the rows of a range, in order, while others are calculated: what is in memory does not grow with their
     * number.
     *
     * @param from number of the first
     * @param to number after the last
     * @param threads how many calculate at once, at least 1
     * @throws IOException when the thread is interrupted; the work then stops
     */
    public void forEach(long from, long to, int threads, Consumer<Row> taker) throws IOException {
        range(from, to);
        OrderedBlocks.run(
                from,
                to,
                threads,
                (first, end, stopped) -> {
                    List<Row> rows = new ArrayList<>();
                    Evaluator evaluator = new Evaluator();
                    for (long number = first; number < end && !stopped.getAsBoolean(); number++) {
                        rows.add(evaluator.row(number));
                    }
                    return rows;
                },
                rows -> rows.forEach(taker));
    }

    private void range(long from, long to) {
        if (from < 0 || to < from || to > count()) {
            throw new IllegalArgumentException(
                    "rows from %s to %s are not among those from 0 to %s".formatted(from, to, count()));
        }
    }

    /** Makes rows one after the other; for one thread. */
    private final class Evaluator {
        private final CasePlan.Maker maker = plan.maker();
        private final double[] positions = new double[inputs.size()];
        private final Object[] values = new Object[inputs.size()];
        private final Object[] shown = new Object[inputs.size()];
        private boolean begun;

        Row row(long number) {
            @Nullable Object[] cells = new @Nullable Object[columns.size()];
            try {
                long changed = move(number, cells);
                Object result = calculator.apply(maker.make(values, changed));
                for (int i = 0; i < outputs.size(); i++) {
                    cells[shown.length + i] = outputs.get(i).cell(result);
                }
                return new Row(number, columns, cells, Row.Outcome.of(result));
            } catch (InvalidInput refused) {
                return unanswered(number, cells, Row.Outcome.of(refused));
            } catch (IllegalArgumentException | ArithmeticException refused) {
                return unanswered(number, cells, Row.Outcome.of(refused));
            }
        }

        private Row unanswered(long number, @Nullable Object[] cells, Row.Outcome outcome) {
            begun = false;
            Arrays.fill(cells, shown.length, cells.length, null);
            return new Row(number, columns, cells, outcome);
        }

        /** Takes the values of a row, and puts them into its cells; tells bit by bit which have changed. */
        private long move(long number, @Nullable Object[] cells) {
            long changed = 0;
            for (int axis = 0; axis < positions.length; axis++) {
                double position = points.position(number, axis);
                if (!begun || position != positions[axis]) {
                    Input input = inputs.get(axis);
                    Object value = points.grid()
                            ? input.values().at((int) position)
                            : input.values().drawn(position);
                    positions[axis] = position;
                    values[axis] = value;
                    shown[axis] = input.cell(value);
                    changed |= 1L << axis;
                }
                cells[axis] = shown[axis];
            }
            begun = true;
            return changed;
        }
    }

    /** Rows from one number to another. */
    private final class RowSpliterator implements Spliterator<Row> {
        private final Evaluator evaluator = new Evaluator();
        private long next;
        private final long end;

        RowSpliterator(long from, long to) {
            this.next = from;
            this.end = to;
        }

        @Override
        public boolean tryAdvance(Consumer<? super Row> action) {
            if (next >= end) {
                return false;
            }
            action.accept(evaluator.row(next++));
            return true;
        }

        @Override
        public @Nullable Spliterator<Row> trySplit() {
            long middle = next + (end - next) / 2;
            if (middle == next) {
                return null;
            }
            RowSpliterator first = new RowSpliterator(next, middle);
            next = middle;
            return first;
        }

        @Override
        public long estimateSize() {
            return end - next;
        }

        @Override
        public int characteristics() {
            return ORDERED | SIZED | SUBSIZED | IMMUTABLE | NONNULL;
        }
    }
}
