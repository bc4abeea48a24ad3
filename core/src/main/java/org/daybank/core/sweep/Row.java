package org.daybank.core.sweep;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One row of a sweep: what was put in, and what came out or why nothing did. */
public final class Row {
    private final long number;
    private final List<Column> columns;
    private final @Nullable Object[] cells;
    private final @Nullable RuntimeException failure;

    Row(long number, List<Column> columns, @Nullable Object[] cells, @Nullable RuntimeException failure) {
        this.number = number;
        this.columns = columns;
        this.cells = cells;
        this.failure = failure;
    }

    /** Its number, from 0. */
    public long number() {
        return number;
    }

    /** Whether the calculator answered. */
    public boolean ok() {
        return failure == null;
    }

    /** Why the calculator did not answer: what the case was refused for, in a sentence. */
    public Optional<String> error() {
        return Optional.ofNullable(failure).map(Row::sentence);
    }

    /** What the calculator threw. */
    public Optional<RuntimeException> failure() {
        return Optional.ofNullable(failure);
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

    private static String sentence(RuntimeException failure) {
        boolean refusal = failure instanceof IllegalArgumentException || failure instanceof ArithmeticException;
        String message = failure.getMessage();
        return refusal && message != null ? message : "this case could not be calculated";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row
                && number == row.number
                && columns.equals(row.columns)
                && Arrays.equals(cells, row.cells)
                && error().equals(row.error());
    }

    @Override
    public int hashCode() {
        return Long.hashCode(number) + 31 * Arrays.hashCode(cells);
    }

    @Override
    public String toString() {
        return "row %d: %s%s"
                .formatted(
                        number,
                        Arrays.toString(cells),
                        error().map(told -> ", " + told).orElse(""));
    }
}
