package org.daybank.core.sweep;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.daybank.core.sweep.kernel.TextBuffer;

/** Writes rows in one of the formats. */
abstract class RowText {
    /** The text of one number. */
    static String number(double number) {
        TextBuffer text = new TextBuffer();
        text.add(number);
        return text.toString();
    }

    static RowText of(RowFormat format, List<Column> columns) {
        return format == RowFormat.CSV ? new Csv(columns) : new Ndjson(columns);
    }

    /** What stands before all rows. */
    abstract void header(TextBuffer text);

    abstract void row(Row row, TextBuffer text);

    /** Comma-separated values. */
    private static final class Csv extends RowText {
        private final List<Column> columns;

        Csv(List<Column> columns) {
            this.columns = columns;
        }

        @Override
        void header(TextBuffer text) {
            columns.forEach(column -> {
                quoted(column.heading(), text);
                text.add(',');
            });
            text.add("status,reason,message\n");
        }

        @Override
        void row(Row row, TextBuffer text) {
            for (int i = 0; i < columns.size(); i++) {
                Object cell = row.cell(i);
                if (cell instanceof Double number) {
                    text.add(number);
                } else if (cell != null) {
                    quoted(cell.toString(), text);
                }
                text.add(',');
            }
            text.add(row.status());
            text.add(',');
            text.add(row.reason().orElse(""));
            text.add(',');
            quoted(row.message().orElse(""), text);
            text.add('\n');
        }

        private static void quoted(String cell, TextBuffer text) {
            boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
            text.add(plain ? cell : '"' + cell.replace("\"", "\"\"") + '"');
        }
    }

    /** A JSON object to a line. */
    private static final class Ndjson extends RowText {
        private static final byte[] NULL = "null".getBytes(StandardCharsets.US_ASCII);

        private final List<byte[]> names;

        Ndjson(List<Column> columns) {
            this.names = IntStream.range(0, columns.size())
                    .mapToObj(i -> ((i == 0 ? "{" : ",") + string(columns.get(i).heading()) + ":")
                            .getBytes(StandardCharsets.UTF_8))
                    .toList();
        }

        @Override
        void header(TextBuffer text) {
            // each line names its members
        }

        @Override
        void row(Row row, TextBuffer text) {
            for (int i = 0; i < names.size(); i++) {
                text.add(names.get(i));
                Object cell = row.cell(i);
                if (cell instanceof Double number) {
                    text.add(number);
                } else if (cell == null) {
                    text.add(NULL);
                } else {
                    text.add(string(cell.toString()));
                }
            }
            text.add(names.isEmpty() ? "{\"status\":\"" : ",\"status\":\"");
            text.add(row.status());
            text.add("\",\"reason\":");
            text.add(row.reason().map(Ndjson::string).orElse("null"));
            text.add(",\"message\":");
            text.add(row.message().map(Ndjson::string).orElse("null"));
            text.add("}\n");
        }

        /** A JSON string (RFC 8259). */
        private static String string(String text) {
            StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (c == '"' || c == '\\') {
                    quoted.append('\\').append(c);
                } else if (c < ' ') {
                    quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
                } else {
                    quoted.append(c);
                }
            }
            return quoted.append('"').toString();
        }
    }
}
