package org.daybank.api.wire;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.NotRepeated;
import org.jspecify.annotations.Nullable;

/** What the wire needs to know of a record type; looked up once. */
public final class Shape {
    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return new Shape(type.asSubclass(Record.class));
        }
    };

    private final Class<? extends Record> type;
    private final List<Part> parts;
    private final List<String> names;
    private final Constructor<? extends Record> constructor;
    private final boolean policy;

    private Shape(Class<? extends Record> type) {
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        this.parts = Arrays.stream(components).map(Part::of).toList();
        this.names = parts.stream()
                .flatMap(part -> part.inline ? of(part.raw()).names.stream() : Stream.of(part.name))
                .toList();
        this.policy = hasStandard(type);
        try {
            this.constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The shape of a record type. */
    public static Shape of(Class<?> record) {
        return SHAPES.get(record);
    }

    /** The record type. */
    public Class<? extends Record> type() {
        return type;
    }

    /** The components, in order. */
    public List<Part> parts() {
        return parts;
    }

    /** The names that stand on the wire, those of inlined components included. */
    public List<String> names() {
        return names;
    }

    /** Whether this is a policy: a record with a static {@code standard()}, every component of which is told as an assumption. */
    public boolean policy() {
        return policy;
    }

    /** Calls the canonical constructor; what it throws comes out as it is. */
    Record construct(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }

    private static boolean hasStandard(Class<?> type) {
        try {
            Method standard = type.getMethod("standard");
            return Modifier.isStatic(standard.getModifiers()) && standard.getReturnType() == type;
        } catch (NoSuchMethodException none) {
            return false;
        }
    }

    /**
     * One component of a record.
     *
     * @param name of the component and on the wire
     * @param type as declared
     * @param inline whether its own components stand in its place
     * @param untold whether answers leave it out, since their reader has it already
     * @param assumed what is assumed when it is absent, if something is
     * @param nullable whether it may stay absent
     * @param key its name as JSON writes it
     * @param accessor reads it
     */
    public record Part(
            String name,
            Type type,
            boolean inline,
            boolean untold,
            @Nullable Assumed assumed,
            boolean nullable,
            SerializableString key,
            Method accessor) {

        static Part of(RecordComponent component) {
            Method accessor = component.getAccessor();
            // all of them are public; this spares the check at each call
            accessor.setAccessible(true);
            return new Part(
                    component.getName(),
                    component.getGenericType(),
                    component.isAnnotationPresent(Inline.class),
                    component.isAnnotationPresent(NotRepeated.class),
                    component.getAnnotation(Assumed.class),
                    component.getAnnotatedType().isAnnotationPresent(Nullable.class),
                    new SerializedString(component.getName()),
                    accessor);
        }

        /** The type without its type arguments. */
        public Class<?> raw() {
            return raw(type);
        }

        /** The type of what is there when something is: without type arguments, and of an optional what it holds. */
        public Class<?> content() {
            return content(type);
        }

        /** The same of a type as declared. */
        public static Class<?> content(Type type) {
            Class<?> raw = raw(type);
            return raw == Optional.class ? raw(argument(type)) : raw;
        }

        /** The type of the elements of a list, without type arguments. */
        Class<?> element() {
            return raw(argument(type));
        }

        /** How what is there looks on the wire. */
        public Form form() {
            return Form.of(content());
        }

        /** Whether an input may leave it out. */
        public boolean mayBeAbsent() {
            return assumed != null || nullable || raw() == Optional.class || policy();
        }

        /** Whether it is a policy, which may be left out because all of it has defaults. */
        public boolean policy() {
            return raw().isRecord() && Shape.of(raw()).policy();
        }

        /** Its value in a record. */
        public @Nullable Object in(Record record) {
            try {
                return accessor.invoke(record);
            } catch (ReflectiveOperationException hidden) {
                throw new IllegalStateException(hidden);
            }
        }

        /** What the constructor is handed when nothing was given. */
        @Nullable
        Object whenAbsent(Class<? extends Record> holder) {
            if (assumed != null && !assumed.value().isEmpty()) {
                return Policies.<Object>otherwise(null, holder, name);
            }
            return placeholder();
        }

        /** What the constructor is handed when what was given could not be read. */
        @Nullable
        Object placeholder() {
            Class<?> raw = raw();
            if (raw == Optional.class) {
                return Optional.empty();
            }
            if (raw == boolean.class) {
                return false;
            }
            if (raw == double.class) {
                return 0.0;
            }
            return raw == long.class ? (Object) 0L : raw == int.class ? 0 : null;
        }

        static Class<?> raw(Type type) {
            return type instanceof ParameterizedType generic ? raw(generic.getRawType()) : (Class<?>) type;
        }

        static Type argument(Type type) {
            return ((ParameterizedType) type).getActualTypeArguments()[0];
        }
    }
}
