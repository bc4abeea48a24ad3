package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.daybank.api.wire.RecordWriter;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Unit;
import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;

/** One figure of a result as bare text, for a cell of a spreadsheet: no unit, no newline. */
final class Figure {
    private Figure() {}

    /**
     * The text of a component.
     *
     * @param unit code, symbol or other spelling of the unit wanted; empty for the base unit
     * @throws InvalidInput when the figure has no such unit
     */
    static String text(Record result, String name, String unit) {
        Object value = RecordWriter.component(result, name);
        if (value == null) {
            return "";
        }
        if (value instanceof Quantity quantity) {
            double number = unit(quantity, unit).definition().scale().fromBase(quantity.baseValue());
            return RecordWriter.number(number).asText();
        }
        if (!unit.isEmpty()) {
            throw refused("%s has no unit".formatted(name));
        }
        JsonNode node = RecordWriter.value(value);
        return node.isValueNode() ? node.asText() : node.toString();
    }

    private static Unit unit(Quantity quantity, String wanted) {
        Unit base = quantity.baseUnit();
        if (wanted.isEmpty()) {
            return base;
        }
        List<Unit> units = Arrays.asList(((Enum<?>) base).getDeclaringClass().getEnumConstants()).stream()
                .map(Unit.class::cast)
                .toList();
        return units.stream()
                .filter(unit -> unit.code().equals(wanted)
                        || unit.symbol().equals(wanted)
                        || unit.definition().otherSpellings().contains(wanted))
                .findFirst()
                .orElseThrow(() -> refused("in: the figure comes in %s"
                        .formatted(units.stream().map(Unit::code).collect(Collectors.joining(", ")))));
    }

    private static InvalidInput refused(String message) {
        return new InvalidInput(List.of(new Problem("in", "unreadable", message)));
    }
}
