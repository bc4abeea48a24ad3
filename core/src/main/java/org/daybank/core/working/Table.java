package org.daybank.core.working;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;
import org.daybank.core.schema.Validation;

/**
 * A table of text with named columns, as in a CSV file (RFC 4180): the first line names the columns, lines that begin with
 * {@code #} say where the numbers come from.
 *
 * @param columns their names, in order
 * @param rows one for each line
 */
public record Table(List<String> columns, List<Row> rows) {
    /** Most rows that are read. */
    public static final int MAXIMUM_ROWS = 20_000;

    /** Keeps copies. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table that lies beside a class.
     *
     * @throws IllegalStateException when it is not there
     */
    public static Table resource(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("No table " + name + " beside " + beside.getName());
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Reads comma-separated text; cells may stand in double quotes, a doubled quote within them is one.
     *
     * <p>A cell ends with its line. A byte order mark before the first line is passed over.
     *
     * @throws InvalidInput when a line has another number of cells than there are columns, a quote is not closed, a column
     *     is named twice, no line names the columns, or there are more than {@link #MAXIMUM_ROWS} rows
     */
    public static Table parse(String csv) {
        List<String> columns = List.of();
        List<Row> rows = new ArrayList<>();
        Validation checks = new Validation();
        int line = 0;
        String content = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        for (String text : content.split("\r?\n", -1)) {
            line++;
            if (text.isBlank() || text.startsWith("#")) {
                continue;
            }
            String where = "line " + line;
            if (rows.size() == MAXIMUM_ROWS) {
                checks.that(
                        false,
                        where,
                        ProblemCode.OUT_OF_RANGE,
                        "%s: a table must have at most %s rows".formatted(where, MAXIMUM_ROWS));
                break;
            }
            List<String> cells = cells(text);
            checks.that(
                    quotesAreClosed(text),
                    where,
                    ProblemCode.UNREADABLE,
                    where + " opens a quote that is not closed on that line");
            if (columns.isEmpty()) {
                columns = cells;
                Set<String> named = new HashSet<>();
                for (String column : columns) {
                    checks.that(
                            named.add(column),
                            where,
                            ProblemCode.CONFLICT,
                            "%s names the column %s twice".formatted(where, Problem.shortened(column)));
                }
                continue;
            }
            checks.that(
                    cells.size() == columns.size(),
                    where,
                    ProblemCode.INCONSISTENT,
                    "%s has %s cells but the header names %s columns".formatted(where, cells.size(), columns.size()));
            Map<String, String> named = new LinkedHashMap<>();
            for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
                named.put(columns.get(i), cells.get(i));
            }
            // a table with a mistake is refused as a whole: its rows need not be kept
            if (checks.isClean()) {
                rows.add(new Row(line, named));
            }
        }
        checks.that(!columns.isEmpty(), "", ProblemCode.MISSING, "the table has no header line")
                .done();
        return new Table(columns, rows);
    }

    /** Quotes come in pairs, doubled ones included. */
    private static boolean quotesAreClosed(String line) {
        return line.chars().filter(c -> c == '"').count() % 2 == 0;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /**
     * One line of a table.
     *
     * @param line its number in the text, from 1
     * @param cells text by column
     */
    public record Row(int line, Map<String, String> cells) {

        /**
         * The text in a column.
         *
         * @throws InvalidInput when the column is not there or the cell is empty
         */
        public String text(String column) {
            return optionalText(column)
                    .orElseThrow(() ->
                            problem(column, ProblemCode.MISSING, "line %s: %s is required.".formatted(line, column)));
        }

        /** The text in a column, unless it is empty or not there. */
        public Optional<String> optionalText(String column) {
            return Optional.ofNullable(cells.get(column)).filter(text -> !text.isEmpty());
        }

        /**
         * The cell of a column as a value of a type.
         *
         * @throws InvalidInput when it is empty or no such value
         */
        public <T> T value(Class<T> type, String column) {
            return read(type, column, text(column));
        }

        /** The cell of a column as a value of a type, unless it is empty or not there. */
        public <T> Optional<T> optionalValue(Class<T> type, String column) {
            return optionalText(column).map(text -> read(type, column, text));
        }

        private <T> T read(Class<T> type, String column, String text) {
            try {
                @SuppressWarnings("unchecked")
                T value = (T) Scalars.parse(type, text);
                return value;
            } catch (IllegalArgumentException refused) {
                throw problem(
                        column,
                        ProblemCode.UNREADABLE,
                        "line %s, %s: %s".formatted(line, column, refused.getMessage()));
            }
        }

        private InvalidInput problem(String column, ProblemCode code, String message) {
            return new InvalidInput(List.of(new Problem("/" + column, code, message)));
        }
    }
}
