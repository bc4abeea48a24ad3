package org.daybank.core.schema;

import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/** Values that a component might be changed to; whether they are accepted is for its record to say. */
final class OtherValues {
    private static final double[] FACTORS = {1.01, 0.99, 1.1, 0.9, 2, 0.5, 4, 0.25, 0, -1};

    private OtherValues() {}

    /** Returns values beside the one that a component has, those of other specimens first. */
    static List<Object> of(RecordSchema.Component component, Record record) {
        Set<Object> found = new LinkedHashSet<>();
        for (Record other : InputRecords.specimens(record.getClass())) {
            Object value = component.value(other);
            if (value != null) {
                found.add(value);
            }
        }
        Object now = component.resolved(record);
        if (now != null) {
            found.addAll(near(now));
        }
        component.constantDefault().ifPresent(found::add);
        component
                .bounds()
                .minimum()
                .filter(limit -> component.rawType().isInstance(limit))
                .ifPresent(found::add);
        component
                .bounds()
                .maximum()
                .filter(limit -> component.rawType().isInstance(limit))
                .ifPresent(found::add);
        if (component.type() instanceof ParameterizedType && component.rawType() == List.class) {
            Class<?> element = component.elementType();
            if (element.isEnum()) {
                for (Object constant : element.getEnumConstants()) {
                    found.add(List.of(constant));
                }
            } else {
                InputRecords.specimens(element).forEach(specimen -> found.add(List.of(specimen)));
            }
        } else if (component.rawType().isEnum()) {
            found.addAll(List.of(component.rawType().getEnumConstants()));
        } else {
            found.addAll(InputRecords.specimens(component.rawType()));
        }
        found.remove(component.value(record));
        return new ArrayList<>(found);
    }

    /** Returns values of the same type beside a value. */
    private static List<Object> near(Object value) {
        List<Object> found = new ArrayList<>();
        if (value instanceof Quantity || value instanceof Ratio) {
            RecordSchema schema = RecordSchema.of(value.getClass());
            Object part = schema.components().get(0).value(value);
            if (part instanceof Double number) {
                for (double factor : FACTORS) {
                    attempt(() -> schema.create(new Object[] {number * factor})).ifPresent(found::add);
                }
                attempt(() -> schema.create(new Object[] {number + 1})).ifPresent(found::add);
                attempt(() -> schema.create(new Object[] {number - 1})).ifPresent(found::add);
            }
        } else if (value instanceof Money money) {
            found.add(money.times(2));
            found.add(money.times(3));
        } else if (value instanceof Integer number) {
            found.addAll(List.of(number + 1, number - 1, number * 2));
        } else if (value instanceof Double number) {
            found.addAll(List.of(number * 0.9, number * 1.1, number + 1, number - 1));
        } else if (value instanceof Boolean flag) {
            found.add(!flag);
        } else if (value instanceof String text) {
            found.add(text + " II");
        } else if (value instanceof List<?> list) {
            if (list.size() > 1) {
                found.add(list.subList(1, list.size()));
                found.add(list.subList(0, list.size() - 1));
            }
            if (!list.isEmpty()) {
                List<Object> changed = new ArrayList<>(list);
                Object first = Objects.requireNonNull(list.get(0));
                for (Object other : near(first)) {
                    changed.set(0, other);
                    found.add(List.copyOf(changed));
                }
                List<Object> longer = new ArrayList<>(list);
                longer.add(list.get(0));
                found.add(longer);
            }
        } else if (value instanceof Record record) {
            RecordSchema schema = RecordSchema.of(record.getClass());
            for (RecordSchema.Component component : schema.components()) {
                Object part = component.value(record);
                for (Object other : part == null ? List.of() : near(part)) {
                    @Nullable Object[] values = schema.values(record);
                    values[component.index()] = other;
                    attempt(() -> schema.create(values)).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static Optional<Object> attempt(Supplier<Object> maker) {
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }
}
