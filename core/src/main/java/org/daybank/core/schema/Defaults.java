package org.daybank.core.schema;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The constant defaults that {@link Assumed} states on the components of a record. */
public final class Defaults {
    private Defaults() {}

    /**
     * Returns the record in which every component has its default.
     *
     * @param type a record whose components all have a constant default, or are such records themselves
     * @throws IllegalStateException when one has none, or the record refuses its own defaults
     */
    public static <R extends Record> R of(Class<R> type) {
        RecordSchema schema = RecordSchema.of(type);
        Object[] values = schema.components().stream()
                .map(component -> component
                        .constantDefault()
                        .orElseThrow(() -> new IllegalStateException(component.name() + " has no default")))
                .toArray();
        try {
            return type.cast(schema.create(values));
        } catch (InvalidInput refused) {
            throw new IllegalStateException(
                    "The defaults of %s are not valid".formatted(type.getSimpleName()), refused);
        }
    }

    /**
     * Returns a value, or the constant default of its component when it was left out.
     *
     * @throws IllegalArgumentException when the record has no such component, or the component no constant default
     */
    public static <T> T otherwise(@Nullable T value, Class<? extends Record> type, String component) {
        if (value != null) {
            return value;
        }
        @SuppressWarnings("unchecked")
        T constant = (T) RecordSchema.of(type)
                .component(component)
                .constantDefault()
                .orElseThrow(() -> new IllegalArgumentException(component + " has no constant default"));
        return constant;
    }

    /**
     * Returns the assumptions of an input: every component that carries {@link Assumed}, those of the records within it
     * included. A value that was left out, or that equals its constant default, counts as assumed.
     *
     * @param path JSON pointer of the record; empty for the whole
     */
    public static List<Assumption> assumptions(String path, Record input) {
        List<Assumption> found = new ArrayList<>();
        for (RecordSchema.Component component :
                RecordSchema.of(input.getClass()).components()) {
            Object given = component.value(input);
            Object value = component.resolved(input);
            String at = path + "/" + component.name();
            if (component.assumed().isPresent() && value != null) {
                boolean assumed = given == null
                        || component.constantDefault().filter(given::equals).isPresent();
                found.add(new Assumption(
                        at, value, assumed, component.assumed().get().source()));
            } else if (value instanceof Record nested && !Scalars.readable(nested.getClass())) {
                found.addAll(assumptions(at, nested));
            } else if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    if (list.get(i) instanceof Record nested && !Scalars.readable(nested.getClass())) {
                        found.addAll(assumptions(at + "/" + i, nested));
                    }
                }
            }
        }
        return found;
    }
}
