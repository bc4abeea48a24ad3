package org.daybank.api.http;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.RecordWriter;
import org.daybank.api.wire.Shape;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Records as comma-separated values (RFC 4180), a line each: every component that is one value, those of records within
 * under their joined names. The unit of a quantity stands in the name of its column; lists have no place in a row.
 */
final class CsvTable {
    private CsvTable() {}

    /** Writes a table in UTF-8; lines end with a line feed. */
    static <T extends Record> byte[] write(Class<T> type, List<T> rows) {
        List<Column> columns = new ArrayList<>();
        gather(Shape.of(type), List.of(), columns);
        StringBuilder table = new StringBuilder(line(columns.stream().map(column -> column.heading(rows))));
        rows.forEach(row -> table.append(line(columns.stream().map(column -> column.cell(row)))));
        return table.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String line(Stream<String> cells) {
        return cells.map(CsvTable::quoted).collect(Collectors.joining(",", "", "\n"));
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static void gather(Shape shape, List<Shape.Part> before, List<Column> columns) {
        for (Shape.Part part : shape.parts()) {
            List<Shape.Part> way = new ArrayList<>(before);
            way.add(part);
            switch (part.notRepeated() ? Form.TREE : part.form()) {
                case OBJECT -> gather(Shape.of(part.content()), way, columns);
                case TREE, SERIES, LIST -> {
                    // not one value
                }
                default -> columns.add(new Column(way));
            }
        }
    }

    /**
     * One column.
     *
     * @param way components from the record of a row to the value, inlined ones included
     */
    private record Column(List<Shape.Part> way) {
        /** The name, with the unit behind it: {@code requiredCapacity_Ah}; of money, the currency of the rows. */
        String heading(List<? extends Record> rows) {
            String name = way.stream()
                    .filter(part -> !part.inline())
                    .map(Shape.Part::name)
                    .collect(Collectors.joining("."));
            Class<?> type = way.get(way.size() - 1).content();
            if (Quantity.class.isAssignableFrom(type) && type.isRecord()) {
                return name + "_" + Quantity.units(type).get(0).plainSymbol();
            }
            Optional<Money> price = rows.stream()
                    .map(this::value)
                    .filter(Money.class::isInstance)
                    .map(Money.class::cast)
                    .findFirst();
            return price.map(money -> name + "_" + money.currency().getCurrencyCode())
                    .orElse(name);
        }

        String cell(Record row) {
            Object value = value(row);
            return value == null ? "" : Figure.bare(value);
        }

        private @Nullable Object value(Record row) {
            Object there = row;
            for (Shape.Part part : way) {
                there = there == null ? null : RecordWriter.present(part.in((Record) there));
            }
            return there;
        }
    }
}
