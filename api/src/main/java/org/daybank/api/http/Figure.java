package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.Json;
import org.daybank.api.wire.RecordWriter;
import org.daybank.api.wire.Shape;
import org.daybank.api.wire.WirePath;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Unit;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.jspecify.annotations.Nullable;

/** One figure of a result as bare text, for a cell of a spreadsheet: no unit, no newline. */
final class Figure {
    private static final Set<Form> SEVERAL = EnumSet.of(Form.OBJECT, Form.LIST, Form.SERIES, Form.TREE);

    private final WirePath path;

    private Figure(WirePath path) {
        this.path = path;
    }

    /**
     * Finds a figure of a result.
     *
     * @param name the name of a component, or names joined by points; an element of a list by its number from 0, as in
     *     {@code ranked.0.product}
     * @throws NotFoundResponse when it leads nowhere, or to what is not one value
     */
    static Figure of(Calculation<?, ?> calculation, String name) {
        try {
            WirePath path = WirePath.of(calculation.result(), name.replaceAll("\\.(\\d{1,6})(?=\\.|$)", "[$1]"));
            if (!SEVERAL.contains(Form.of(Shape.Part.content(path.type())))) {
                return new Figure(path);
            }
        } catch (IllegalArgumentException nowhere) {
            // told below, with what there is
        }
        throw new NotFoundResponse("No such figure; there are %s, and parts of lists by number, as in ranked.0.product"
                .formatted(String.join(", ", Envelope.figures(calculation))));
    }

    /**
     * The text of the figure in a result; empty when there is nothing.
     *
     * @param unit code, symbol or other spelling of the unit wanted; empty for the base unit
     * @throws InvalidInput when the figure has no such unit
     */
    String text(Record result, String unit) {
        Object value = in(result);
        if (value instanceof Quantity quantity && !unit.isEmpty()) {
            double number = unit(quantity, unit).definition().scale().fromBase(quantity.baseValue());
            return bare(RecordWriter.number(number));
        }
        if (!unit.isEmpty() && !Quantity.class.isAssignableFrom(Shape.Part.content(path.type()))) {
            throw refused("in: the figure has no unit");
        }
        return value == null ? "" : bare(value);
    }

    /** A value without its unit or currency, in the base unit. */
    static String bare(Object value) {
        if (value instanceof Quantity quantity) {
            return bare(RecordWriter.number(quantity.baseValue()));
        }
        return value instanceof Money money ? money.amount() : bare(RecordWriter.value(value));
    }

    /** Numbers as JSON writes them. */
    private static String bare(JsonNode node) {
        return node.isTextual() ? node.textValue() : new String(Json.write(node), StandardCharsets.UTF_8);
    }

    private @Nullable Object in(Record result) {
        Object there = result;
        for (WirePath.Member member : path.members()) {
            if (there instanceof List<?> list) {
                int index = Integer.parseInt(member.name());
                there = index < list.size() ? list.get(index) : null;
            } else if (there != null) {
                there = RecordWriter.component((Record) there, member.name());
            }
        }
        return there;
    }

    private static Unit unit(Quantity quantity, String wanted) {
        List<Unit> units = Quantity.units(quantity.getClass());
        return units.stream()
                .filter(unit -> unit.code().equals(wanted)
                        || unit.symbol().equals(wanted)
                        || unit.definition().otherSpellings().contains(wanted))
                .findFirst()
                .orElseThrow(() -> refused("in: the figure comes in %s"
                        .formatted(units.stream().map(Unit::code).collect(Collectors.joining(", ")))));
    }

    private static InvalidInput refused(String message) {
        return new InvalidInput(List.of(new Problem("in", ProblemCode.UNREADABLE, message)));
    }
}
