package org.daybank.api.wire;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.TreeNode;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.HourlySeries;
import org.jspecify.annotations.Nullable;

/** Writes records as JSON by their components, in the forms of {@link Form}; what is absent is not written. */
public final class RecordWriter {
    /** Lists of more quantities than this are written as a series, with the unit once. */
    static final int LONGEST_LIST = 48;

    private static final SerializableString VALUE = new SerializedString("value");
    private static final SerializableString UNIT = new SerializedString("unit");

    private RecordWriter() {}

    /** A record as an object, without what its reader has already. */
    public static ObjectNode write(Record record) {
        return (ObjectNode) value(record);
    }

    /** Any value that stands in a record. */
    public static JsonNode value(Object value) {
        try (TokenBuffer tokens = new TokenBuffer(null, false)) {
            write(tokens, value);
            return Json.tree(tokens);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /**
     * Writes any value that stands in a record.
     *
     * @throws IOException when what it is written to does not take it
     */
    public static void write(JsonGenerator out, Object value) throws IOException {
        switch (Form.of(value.getClass())) {
            case QUANTITY -> quantity(out, (Quantity) value);
            case NUMBER -> number(out, bare(value));
            case MONEY -> money(out, (Money) value);
            case FLAG -> out.writeBoolean((Boolean) value);
            case SERIES -> series(out, (HourlySeries) value);
            case NAME -> out.writeString(Scalars.name((Enum<?>) value));
            case TEXT -> out.writeString(value.toString());
            case OBJECT -> {
                out.writeStartObject();
                members(out, (Record) value);
                out.writeEndObject();
            }
            case LIST -> list(out, (List<?>) value);
            case TREE -> out.writeTree((TreeNode) value);
        }
    }

    /** The bare number of a value that is one: what stands in a quantity's {@code value}. */
    public static JsonNode number(double number) {
        return isWhole(number)
                ? JsonNodeFactory.instance.numberNode((long) number)
                : JsonNodeFactory.instance.numberNode(number);
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

    /** What a value that may be an optional holds; null when that is nothing. */
    public static @Nullable Object present(@Nullable Object value) {
        return value instanceof Optional<?> optional ? optional.orElse(null) : value;
    }

    /** The components, those of inlined ones in their place. */
    private static void members(JsonGenerator out, Record record) throws IOException {
        for (Shape.Part part : Shape.of(record.getClass()).parts()) {
            Object value = part.notRepeated() ? null : present(part.in(record));
            if (value != null && part.inline()) {
                members(out, (Record) value);
            } else if (value != null) {
                out.writeFieldName(part.key());
                write(out, value);
            }
        }
    }

    private static boolean isWhole(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15;
    }

    private static void number(JsonGenerator out, double number) throws IOException {
        if (isWhole(number)) {
            out.writeNumber((long) number);
        } else {
            out.writeNumber(number);
        }
    }

    private static double bare(Object value) {
        if (value instanceof Ratio ratio) {
            return ratio.fraction();
        }
        if (value instanceof Latitude latitude) {
            return latitude.degrees();
        }
        if (value instanceof Longitude longitude) {
            return longitude.degrees();
        }
        return ((Number) value).doubleValue();
    }

    private static void quantity(JsonGenerator out, Quantity quantity) throws IOException {
        out.writeStartObject();
        out.writeFieldName(VALUE);
        number(out, quantity.baseValue());
        out.writeFieldName(UNIT);
        out.writeString(quantity.baseUnit().code());
        out.writeEndObject();
    }

    private static void money(JsonGenerator out, Money money) throws IOException {
        out.writeStartObject();
        out.writeStringField("amount", money.amount());
        out.writeStringField("currency", money.currency().getCurrencyCode());
        out.writeEndObject();
    }

    private static void series(JsonGenerator out, HourlySeries series) throws IOException {
        out.writeStartObject();
        out.writeStringField("unit", series.unit().code());
        out.writeArrayFieldStart("values");
        for (int hour = 0; hour < series.size(); hour++) {
            number(out, series.at(hour));
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static void list(JsonGenerator out, List<?> list) throws IOException {
        if (list.size() > LONGEST_LIST && list.stream().allMatch(Quantity.class::isInstance)) {
            out.writeStartObject();
            out.writeStringField("unit", ((Quantity) list.get(0)).baseUnit().code());
            out.writeArrayFieldStart("values");
            for (Object element : list) {
                number(out, ((Quantity) element).baseValue());
            }
            out.writeEndArray();
            out.writeEndObject();
            return;
        }
        out.writeStartArray();
        for (Object element : list) {
            write(out, element);
        }
        out.writeEndArray();
    }
}
