package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Scalars;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.working.Rule;

/**
 * How a value looks on the wire, told from its type.
 *
 * <p>A record that can be read from text is one of two things. When each of its components has a form of its own (quantities,
 * ratios, names), it is an object that may also be written shorter: {@code {"leadAcid": 0.5, "lithium": 0.8}} or
 * {@code "80 %"}. When it is made of bare numbers, times or lists, it is a notation, and only its text crosses the wire:
 * {@code "18:00-23:00"}.
 */
public enum Form {
    /** {@code {"value": 2.4, "unit": "kW.h"}}, or the text {@code "2.4 kWh"} on the way in. */
    QUANTITY,
    /** A number that needs no unit; a ratio may also come as {@code "80 %"}. */
    NUMBER,
    /** {@code {"unit": "W/m2", "values": […]}}: one number for each hour of a year. */
    SERIES,
    /** {@code {"amount": "129.00", "currency": "EUR"}}. */
    MONEY,
    /** One of a closed set of camelCase names. */
    NAME,
    /** {@code true} or {@code false}. */
    FLAG,
    /** Text, as it is or in a notation of its own. */
    TEXT,
    /** An object with a member for each component. */
    OBJECT,
    /** An array, or a series of quantities with the unit once. */
    LIST,
    /** Any JSON, kept as it is for a reader who knows what it is to be. */
    TREE;

    private static final ClassValue<Form> FORMS = new ClassValue<>() {
        @Override
        protected Form computeValue(Class<?> type) {
            return decide(type);
        }
    };

    /** The form of the values of a type. */
    public static Form of(Class<?> type) {
        return FORMS.get(type);
    }

    private static Form decide(Class<?> type) {
        if (JsonNode.class.isAssignableFrom(type)) {
            return TREE;
        }
        if (List.class.isAssignableFrom(type)) {
            return LIST;
        }
        if (Quantity.class.isAssignableFrom(type)) {
            return QUANTITY;
        }
        if (type == Ratio.class || type == Latitude.class || type == Longitude.class) {
            return NUMBER;
        }
        if (Number.class.isAssignableFrom(type) || (type.isPrimitive() && type != boolean.class)) {
            return NUMBER;
        }
        if (type == HourlySeries.class) {
            return SERIES;
        }
        if (type == Money.class) {
            return MONEY;
        }
        if (type.isEnum() || type == Rule.class) {
            return NAME;
        }
        if (type == boolean.class || type == Boolean.class) {
            return FLAG;
        }
        return type.isRecord() && !isNotation(type) && !CharSequence.class.isAssignableFrom(type) ? OBJECT : TEXT;
    }

    private static boolean isNotation(Class<?> record) {
        return Scalars.readable(record)
                && !Arrays.stream(record.getRecordComponents())
                        .map(RecordComponent::getType)
                        .allMatch(part -> part.isEnum() || part == Ratio.class || of(part) == QUANTITY);
    }
}
