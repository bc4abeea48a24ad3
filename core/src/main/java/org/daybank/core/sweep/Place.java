package org.daybank.core.sweep;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.RecordSchema;
import org.jspecify.annotations.Nullable;

/** A place in a record type that a path leads to, found by declared types. */
final class Place {
    private final List<Hop> hops;
    private final Class<?> type;
    private final @Nullable Assumed assumed;

    private Place(List<Hop> hops, Class<?> type, @Nullable Assumed assumed) {
        this.hops = hops;
        this.type = type;
        this.assumed = assumed;
    }

    /** One step through values: by a component, or to an element of a list. */
    private record Hop(RecordSchema.@Nullable Component component, Class<?> holder, int index) {}

    /**
     * Follows a path.
     *
     * @throws IllegalArgumentException when it leads nowhere; the message says where it could go on
     */
    static Place find(Class<?> root, FieldPath path) {
        List<Hop> hops = new ArrayList<>();
        Type type = root;
        Assumed assumed = null;
        for (FieldPath.Step step : path.steps()) {
            type = unwrapped(type);
            if (step.isIndex()) {
                if (raw(type) != List.class) {
                    throw new IllegalArgumentException("[%d] stands after what is not a list".formatted(step.index()));
                }
                hops.add(new Hop(null, List.class, step.index()));
                type = ((ParameterizedType) type).getActualTypeArguments()[0];
                assumed = null;
                continue;
            }
            Class<?> record = raw(type);
            if (!record.isRecord()) {
                throw new IllegalArgumentException("'%s' leads on from what has no parts".formatted(step.name()));
            }
            RecordSchema known = RecordSchema.of(record);
            int index = known.indexOf(step.name());
            if (index < 0) {
                throw new IllegalArgumentException("'%s' is not known here; known are %s"
                        .formatted(step.name(), String.join(", ", known.names())));
            }
            RecordSchema.Component component = known.components().get(index);
            hops.add(new Hop(component, record, index));
            type = component.type();
            assumed = component.assumed().orElse(null);
        }
        return new Place(hops, raw(unwrapped(type)), assumed);
    }

    /** The declared type of what stands there, out of its {@code Optional}. */
    Class<?> type() {
        return type;
    }

    /** What is assumed when nothing stands there. */
    @Nullable
    Assumed assumed() {
        return assumed;
    }

    /** Returns what stands there, or the default that follows to it; null when it, or anything on the way to it, is absent. */
    @Nullable
    Object in(Object root) {
        Object value = root;
        for (Hop hop : hops) {
            if (hop.component == null) {
                List<?> list = (List<?>) value;
                value = hop.index < list.size() ? list.get(hop.index) : null;
            } else {
                value = hop.holder.isInstance(value) ? hop.component.resolved(value) : null;
            }
            if (value instanceof Optional<?> optional) {
                value = optional.orElse(null);
            }
            if (value == null) {
                return null;
            }
        }
        return value;
    }

    static Type unwrapped(Type type) {
        return raw(type) == Optional.class ? ((ParameterizedType) type).getActualTypeArguments()[0] : type;
    }

    static Class<?> raw(Type type) {
        if (type instanceof ParameterizedType generic) {
            return raw(generic.getRawType());
        }
        return type instanceof Class<?> plain ? plain : Object.class;
    }
}
