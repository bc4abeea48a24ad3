package org.daybank.core.sweep;

import java.util.List;
import java.util.Map;
import org.daybank.core.schema.RecordSchema;
import org.jspecify.annotations.Nullable;

/** One place of the case that varies, its values and its column. */
final class Input {
    private static final Map<Class<?>, Class<?>> BOXES = Map.of(
            double.class, Double.class,
            int.class, Integer.class,
            long.class, Long.class,
            boolean.class, Boolean.class);

    private final Column column;
    private final AxisValues values;
    private final @Nullable NumberForm form;

    private Input(Column column, AxisValues values, @Nullable NumberForm form) {
        this.column = column;
        this.values = values;
        this.form = form;
    }

    /**
     * Ties an axis to the place that it varies.
     *
     * @param drawn whether values are drawn, so that a distribution has its place
     * @throws IllegalArgumentException when the place does not take the values of the axis
     */
    static Input of(String name, Place place, Record base, Axis axis, boolean drawn) {
        Class<?> type = BOXES.getOrDefault(place.type(), place.type());
        Object example = axis instanceof Axis.Listed listed ? listed.values().get(0) : place.in(base);
        @Nullable
        NumberForm form = NumberForm.of(type, place.assumed(), example).orElse(null);
        AxisValues values;
        if (axis instanceof Axis.Listed listed) {
            listed.values().forEach(value -> accepts(name, type, value));
            values = AxisValues.listed(listed.values());
        } else if (form == null) {
            throw new IllegalArgumentException("%s is not one number: list its values, or vary a part of it%s"
                    .formatted(
                            name,
                            type.isRecord()
                                    ? " (%s)"
                                            .formatted(String.join(
                                                    ", ", RecordSchema.of(type).names()))
                                    : ""));
        } else if (axis instanceof Axis.Range range) {
            accepts(name, type, range.from());
            values = AxisValues.range(range, form);
        } else {
            Distribution distribution = ((Axis.Drawn) axis).distribution();
            accepts(name, type, distribution.example());
            if (!drawn) {
                throw new IllegalArgumentException(
                        "%s follows a distribution, which has no place on a grid: say how many cases are to be drawn"
                                .formatted(name));
            }
            values = AxisValues.drawn(distribution, form);
        }
        Column column = new Column(name, form == null ? "" : form.unit(), form != null);
        return new Input(column, values, form);
    }

    private static void accepts(String name, Class<?> type, Object value) {
        boolean list = type == List.class && value instanceof List<?>;
        if (!list && !type.isInstance(value)) {
            throw new IllegalArgumentException("%s takes a value of %s, but was given %s, a value of %s."
                    .formatted(
                            name, type.getSimpleName(), value, value.getClass().getSimpleName()));
        }
    }

    Column column() {
        return column;
    }

    AxisValues values() {
        return values;
    }

    /** A value as it stands in the column. */
    Object cell(Object value) {
        return form == null ? Output.text(value) : (Object) form.shown(NumberForm.number(value));
    }
}
