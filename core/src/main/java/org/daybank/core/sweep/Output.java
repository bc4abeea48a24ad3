package org.daybank.core.sweep;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.schema.RecordSchema;
import org.daybank.core.schema.Scalars;
import org.jspecify.annotations.Nullable;

/** One value of the result that becomes a cell of each row. */
final class Output {
    private final Column column;
    private final Place place;
    private final @Nullable NumberForm form;
    private final @Nullable Currency currency;

    private Output(Column column, Place place, @Nullable NumberForm form, @Nullable Currency currency) {
        this.column = column;
        this.place = place;
        this.form = form;
        this.currency = currency;
    }

    /**
     * Finds the place of an output.
     *
     * @param example a result
     * @throws IllegalArgumentException when the path leads nowhere, or to what is not one value
     */
    static Output of(String name, FieldPath path, Object example) {
        Place place = Place.find(example.getClass(), path);
        Object there = place.in(example);
        NumberForm form = NumberForm.of(place.type(), place.assumed(), there).orElse(null);
        if (form == null && !isText(place.type())) {
            throw new IllegalArgumentException("%s is not one value%s"
                    .formatted(
                            name,
                            place.type().isRecord()
                                    ? ": name one of its parts, "
                                            + String.join(
                                                    ", ",
                                                    RecordSchema.of(place.type())
                                                            .names())
                                    : place.type() == List.class ? ": name one of its elements, as in [0]" : ""));
        }
        Column column = new Column(name, form == null ? "" : form.unit(), form != null);
        return new Output(column, place, form, there instanceof Money money ? money.currency() : null);
    }

    Column column() {
        return column;
    }

    /** The cell of a result; null when there is nothing. */
    @Nullable
    Object cell(Object result) {
        Object value = place.in(result);
        if (value == null) {
            return null;
        }
        if (form == null) {
            return text(value);
        }
        if (value instanceof Money money && !money.currency().equals(currency)) {
            throw new IllegalArgumentException(
                    "%s is %s, but this column is in %s".formatted(column.name(), money, column.unit()));
        }
        return form.shown(NumberForm.number(value));
    }

    static String text(Object value) {
        return value instanceof Enum<?> constant ? Scalars.name(constant) : value.toString();
    }

    /** Whether values of a type are told by their text. */
    static boolean isText(Class<?> type) {
        return type.isEnum()
                || CharSequence.class.isAssignableFrom(type)
                || type == boolean.class
                || type == Boolean.class
                || type == Quantity.class
                || type == Money.class
                || (Scalars.readable(type) && !type.isPrimitive())
                || (!type.isRecord()
                        && type != List.class
                        && type != Object.class
                        && type != Optional.class
                        && !type.isInterface());
    }
}
