package org.daybank.core.sweep;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Solvable;
import org.jspecify.annotations.Nullable;

/** One row of a sweep: what was put in, and what came out or why nothing did. */
public final class Row {
    /** Status of a case that has an answer. */
    public static final String OK = "ok";

    /** Status of a case whose input was refused. */
    public static final String INVALID = "invalid";

    /** Status of a case that the calculator could not calculate. */
    public static final String FAILED = "failed";

    /** Reason of {@link #FAILED}. */
    private static final String NOT_CALCULABLE = "notCalculable";

    private final long number;
    private final List<Column> columns;
    private final @Nullable Object[] cells;
    private final Outcome outcome;

    /**
     * How a case ended.
     *
     * @param status {@link #OK}, {@link #INVALID}, {@link #FAILED} or that of a {@link Solvable} without a solution
     * @param reason a stable code; empty when there is an answer
     * @param message why there is no answer, in a sentence; empty when there is nothing to add to the reason
     * @param failure what the calculator threw; null when it threw nothing
     */
    record Outcome(
            String status,
            String reason,
            String message,
            @Nullable RuntimeException failure) {
        private static final Outcome ANSWERED = new Outcome(OK, "", "", null);

        /** The outcome of a case for which the calculator returned a result. */
        static Outcome of(Object result) {
            if (result instanceof Solvable solvable) {
                Optional<String> reason = solvable.unsolvedReason();
                if (reason.isPresent()) {
                    return new Outcome(
                            solvable.unsolvedStatus(),
                            reason.get(),
                            "the input is valid, but there is no solution: " + reason.get(),
                            null);
                }
            }
            return ANSWERED;
        }

        /** The outcome of a case that was refused. */
        static Outcome of(InvalidInput refused) {
            return new Outcome(
                    INVALID,
                    Scalars.name(refused.problems().get(0).code()),
                    String.valueOf(refused.getMessage()),
                    refused);
        }

        /** The outcome of a case that could not be calculated. */
        static Outcome of(RuntimeException failure) {
            String message = failure.getMessage();
            return new Outcome(
                    FAILED, NOT_CALCULABLE, message == null ? "this case could not be calculated" : message, failure);
        }
    }

    Row(long number, List<Column> columns, @Nullable Object[] cells, Outcome outcome) {
        this.number = number;
        this.columns = columns;
        this.cells = cells;
        this.outcome = outcome;
    }

    /** Its number, from 0. */
    public long number() {
        return number;
    }

    /** Returns whether the case has an answer. */
    public boolean ok() {
        return status().equals(OK);
    }

    /**
     * Returns how the case ended: {@link #OK}, {@link #INVALID}, {@link #FAILED}, or for a valid input without a solution the
     * {@linkplain Solvable#unsolvedStatus() status} that the result gives.
     */
    public String status() {
        return outcome.status();
    }

    /**
     * Returns why the case has no answer, as a stable code: that of the first problem of an invalid input, {@code
     * notCalculable}, or the {@linkplain Solvable#unsolvedReason() reason} that the result gives.
     */
    public Optional<String> reason() {
        return Optional.of(outcome.reason()).filter(text -> !text.isEmpty());
    }

    /** Returns why the case has no answer, in a sentence. */
    public Optional<String> message() {
        return Optional.of(outcome.message()).filter(text -> !text.isEmpty());
    }

    /** Returns what the calculator threw. */
    public Optional<RuntimeException> failure() {
        return Optional.ofNullable(outcome.failure());
    }

    /** The columns of all rows of the sweep. */
    public List<Column> columns() {
        return columns;
    }

    /**
     * A number, in the unit of its column; empty where there is none.
     *
     * @throws IllegalArgumentException when there is no column of that name, or it holds text
     */
    public OptionalDouble number(String column) {
        int index = index(column);
        if (!columns.get(index).numeric()) {
            throw new IllegalArgumentException("%s holds text".formatted(column));
        }
        return cells[index] instanceof Double value ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /**
     * A cell as text; empty where there is nothing.
     *
     * @throws IllegalArgumentException when there is no column of that name
     */
    public Optional<String> text(String column) {
        return Optional.ofNullable(cells[index(column)])
                .map(cell -> cell instanceof Double value ? RowText.number(value) : cell.toString());
    }

    /** A {@code Double}, a text or nothing. */
    @Nullable
    Object cell(int column) {
        return cells[column];
    }

    private int index(String column) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(column)) {
                return i;
            }
        }
        throw new IllegalArgumentException("No column %s; there are %s"
                .formatted(
                        column,
                        String.join(", ", columns.stream().map(Column::name).toList())));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row
                && number == row.number
                && columns.equals(row.columns)
                && Arrays.equals(cells, row.cells)
                && status().equals(row.status())
                && message().equals(row.message());
    }

    @Override
    public int hashCode() {
        return Long.hashCode(number) + 31 * Arrays.hashCode(cells);
    }

    @Override
    public String toString() {
        return "row %s: %s%s"
                .formatted(
                        number,
                        Arrays.toString(cells),
                        message().map(text -> ", " + text).orElse(""));
    }
}
