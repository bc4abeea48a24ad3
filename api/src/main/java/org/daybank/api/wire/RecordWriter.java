package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.working.Scalars;
import org.jspecify.annotations.Nullable;

/** Writes records as JSON by their components, in the forms of {@link Form}; what is absent is not written. */
public final class RecordWriter {
    /** Lists of more quantities than this are written as a series, with the unit once. */
    static final int LONGEST_LIST = 48;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RecordWriter() {}

    /** A record as an object, without what its reader has already. */
    public static ObjectNode write(Record record) {
        ObjectNode members = NODES.objectNode();
        for (Shape.Part part : Shape.of(record.getClass()).parts()) {
            Object value = part.untold() ? null : present(part.in(record));
            if (value != null && part.inline()) {
                members.setAll(write((Record) value));
            } else if (value != null) {
                members.set(part.name(), value(value));
            }
        }
        return members;
    }

    /** Any value that stands in a record. */
    public static JsonNode value(Object value) {
        if (value instanceof Enum<?> constant) {
            return NODES.textNode(Scalars.name(constant));
        }
        return switch (Form.of(value.getClass())) {
            case QUANTITY -> quantity((Quantity) value);
            case NUMBER -> number(value);
            case MONEY ->
                NODES.objectNode()
                        .put("amount", ((Money) value).amount())
                        .put("currency", ((Money) value).currency().getCurrencyCode());
            case FLAG -> NODES.booleanNode((Boolean) value);
            case SERIES -> series((HourlySeries) value);
            case NAME, TEXT -> NODES.textNode(value.toString());
            case OBJECT -> write((Record) value);
            case LIST -> list((List<?>) value);
            case TREE -> (JsonNode) value;
        };
    }

    /** The bare number of a value that is one: what stands in a quantity's {@code value}. */
    public static JsonNode number(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? NODES.numberNode((long) number)
                : NODES.numberNode(number);
    }

    /**
     * The value of a component by the name under which it is written; null when it is absent.
     *
     * @throws IllegalArgumentException when the record has no such component
     */
    public static @Nullable Object component(Record record, String name) {
        for (Shape.Part part : Shape.of(record.getClass()).parts()) {
            Object value = part.in(record);
            if (part.inline() && value != null && Shape.of(part.raw()).names().contains(name)) {
                return component((Record) value, name);
            }
            if (!part.inline() && part.name().equals(name)) {
                return present(value);
            }
        }
        throw new IllegalArgumentException("No component " + name);
    }

    private static JsonNode number(Object value) {
        if (value instanceof Ratio ratio) {
            return number(ratio.fraction());
        }
        if (value instanceof Latitude latitude) {
            return number(latitude.degrees());
        }
        if (value instanceof Longitude longitude) {
            return number(longitude.degrees());
        }
        return number(((Number) value).doubleValue());
    }

    private static ObjectNode quantity(Quantity quantity) {
        return NODES.objectNode()
                .<ObjectNode>set("value", number(quantity.baseValue()))
                .put("unit", quantity.baseUnit().code());
    }

    private static ObjectNode series(HourlySeries series) {
        ArrayNode values = NODES.arrayNode(series.size());
        for (int hour = 0; hour < series.size(); hour++) {
            values.add(number(series.at(hour)));
        }
        ObjectNode members = NODES.objectNode().put("unit", series.unit().code());
        members.set("values", values);
        return members;
    }

    private static JsonNode list(List<?> list) {
        if (list.size() > LONGEST_LIST && list.stream().allMatch(Quantity.class::isInstance)) {
            ArrayNode values = NODES.arrayNode(list.size());
            list.forEach(element -> values.add(number(((Quantity) element).baseValue())));
            return NODES.objectNode()
                    .put("unit", ((Quantity) list.get(0)).baseUnit().code())
                    .set("values", values);
        }
        ArrayNode elements = NODES.arrayNode(list.size());
        list.forEach(element -> elements.add(value(element)));
        return elements;
    }

    /** What a value that may be an optional holds; null when that is nothing. */
    public static @Nullable Object present(@Nullable Object value) {
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }
}
