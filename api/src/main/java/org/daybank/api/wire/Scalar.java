package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Supplier;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.ProblemList;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.HourlySeries;
import org.jspecify.annotations.Nullable;

/** Reads values that are one thing: a quantity, a number, an amount of money, a name, a text. */
final class Scalar {
    private static final List<String> QUANTITY_MEMBERS = List.of("value", "unit");
    private static final List<String> SERIES_MEMBERS = List.of("unit", "values");
    private static final List<String> MONEY_MEMBERS = List.of("amount", "currency");

    private final ProblemList problems;
    private final boolean flat;

    Scalar(ProblemList problems, boolean flat) {
        this.problems = problems;
        this.flat = flat;
    }

    /** Reads a value; null when it could not be read, which is then told. */
    @Nullable
    Object read(Class<?> type, JsonNode node, String pointer) {
        return switch (Form.of(type)) {
            case QUANTITY ->
                node instanceof ObjectNode members
                        ? quantity(type, members, pointer)
                        : textOrNumber(
                                type,
                                node,
                                pointer,
                                "a quantity, as in {\"value\": 12.5, \"unit\": \"W\"} or \"12.5 W\"");
            case MONEY ->
                node instanceof ObjectNode members
                        ? money(members, pointer)
                        : textOrNumber(
                                type,
                                node,
                                pointer,
                                "an amount, as in {\"amount\": \"129.00\", \"currency\": \"EUR\"}");
            case SERIES ->
                node instanceof ObjectNode members
                        ? hourly(members, pointer)
                        : refuse(node, pointer, "a series, as in {\"unit\": \"W/m2\", \"values\": [0, 0, …]}");
            case NUMBER -> number(type, node, pointer);
            case FLAG ->
                node.isBoolean() || (flat && node.isTextual())
                        ? parse(type, node.asText(), pointer)
                        : refuse(node, pointer, "true or false");
            case NAME ->
                node.isTextual()
                        ? parse(type, node.textValue(), pointer)
                        : refuse(node, pointer, "one of the names in quotes");
            case TEXT, OBJECT, LIST, TREE ->
                node.isTextual() ? parse(type, node.textValue(), pointer) : refuse(node, pointer, "a text in quotes");
        };
    }

    /** Reads a record that may be written as one text or number. */
    @Nullable
    Object readShort(Class<?> type, JsonNode node, String pointer) {
        String members = "an object with " + String.join(", ", Shape.of(type).names());
        return Scalars.readable(type) ? textOrNumber(type, node, pointer, members) : refuse(node, pointer, members);
    }

    /** The elements of {@code {"unit": "W/m2", "values": [0, 12.5]}}, each with its unit. */
    @Nullable
    ArrayNode series(ObjectNode series, String pointer) {
        Binder.refuseUnknown(SERIES_MEMBERS, series, pointer, problems);
        JsonNode unit = series.path("unit");
        JsonNode values = series.path("values");
        if (!unit.isTextual() || !values.isArray()) {
            refuse(series, pointer, "a list, or a series as in {\"unit\": \"W\", \"values\": [1, 2]}");
            return null;
        }
        ArrayNode quantities = JsonNodeFactory.instance.arrayNode(values.size());
        for (JsonNode value : values) {
            quantities.addObject().<ObjectNode>set("value", value).set("unit", unit);
        }
        return quantities;
    }

    private @Nullable Object hourly(ObjectNode series, String pointer) {
        Binder.refuseUnknown(SERIES_MEMBERS, series, pointer, problems);
        JsonNode unit = series.path("unit");
        JsonNode values = series.path("values");
        if (!unit.isTextual() || !values.isArray()) {
            return refuse(series, pointer, "a series, as in {\"unit\": \"W/m2\", \"values\": [0, 0, …]}");
        }
        double[] numbers = new double[values.size()];
        for (int hour = 0; hour < numbers.length; hour++) {
            JsonNode value = values.get(hour);
            if (!value.isNumber()) {
                return refuse(value, pointer + "/values/" + hour, "a number without quotes");
            }
            numbers[hour] = value.doubleValue();
        }
        try {
            return HourlySeries.of(unit.textValue(), numbers);
        } catch (IllegalArgumentException refused) {
            problems.add(
                    pointer, ProblemCode.UNREADABLE, "%s: %s".formatted(Binder.label(pointer), refused.getMessage()));
            return null;
        }
    }

    private @Nullable Object quantity(Class<?> type, ObjectNode members, String pointer) {
        Binder.refuseUnknown(QUANTITY_MEMBERS, members, pointer, problems);
        JsonNode value = unboxed(members.path("value"));
        JsonNode unit = unboxed(members.path("unit"));
        boolean readable = true;
        if (!value.isNumber()) {
            refuse(value, pointer + "/value", "a number without quotes");
            readable = false;
        }
        if (!unit.isTextual()) {
            refuse(unit, pointer + "/unit", "a unit in quotes");
            readable = false;
        }
        return readable ? parse(type, value.asText() + " " + unit.textValue(), pointer) : null;
    }

    private @Nullable Object money(ObjectNode members, String pointer) {
        Binder.refuseUnknown(MONEY_MEMBERS, members, pointer, problems);
        JsonNode amount = unboxed(members.path("amount"));
        JsonNode currency = unboxed(members.path("currency"));
        if (!amount.isTextual() && !amount.isNumber()) {
            return refuse(amount, pointer + "/amount", "a decimal number in quotes, as in \"129.00\"");
        }
        if (!currency.isTextual()) {
            return refuse(currency, pointer + "/currency", "an ISO 4217 code in quotes, as in \"EUR\"");
        }
        return attempt(() -> Money.of(amount.asText(), currency.textValue()), amount.asText(), pointer);
    }

    private @Nullable Object number(Class<?> type, JsonNode node, String pointer) {
        boolean text = node.isTextual() && (flat || type == Ratio.class);
        if (node.isNumber() || text) {
            return parse(type, node.asText(), pointer);
        }
        return refuse(
                node, pointer, type == Ratio.class ? "a number, or a text as in \"80 %\"" : "a number without quotes");
    }

    private @Nullable Object textOrNumber(Class<?> type, JsonNode node, String pointer, String expected) {
        return node.isTextual() || node.isNumber()
                ? parse(type, node.asText(), pointer)
                : refuse(node, pointer, expected);
    }

    private @Nullable Object parse(Class<?> type, String text, String pointer) {
        return attempt(() -> Scalars.parse(type, text), text, pointer);
    }

    private @Nullable Object attempt(Supplier<Object> reading, String text, String pointer) {
        try {
            return reading.get();
        } catch (IllegalArgumentException refused) {
            problems.add(
                    pointer, ProblemCode.UNREADABLE, "%s: %s".formatted(Binder.label(pointer), refused.getMessage()));
        } catch (ArithmeticException tooLarge) {
            problems.add(
                    pointer,
                    ProblemCode.UNREADABLE,
                    "%s: '%s' cannot be read".formatted(Binder.label(pointer), Names.shown(text)));
        }
        return null;
    }

    /** Tells what was expected in place of a node; gives nothing. */
    private @Nullable Object refuse(JsonNode node, String pointer, String expected) {
        String found = node.isMissingNode() || node.isNull() ? "nothing" : Names.shown(node.toString());
        problems.add(
                pointer,
                ProblemCode.UNREADABLE,
                "%s: %s is expected but found %s".formatted(Binder.label(pointer), expected, found));
        return null;
    }

    private static JsonNode unboxed(JsonNode node) {
        return node.isArray() && node.size() == 1 ? node.get(0) : node;
    }
}
