package org.daybank.api.wire;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.schema.RecordSchema;
import org.jspecify.annotations.Nullable;

/** What the wire adds to the {@link RecordSchema} of a record type: inlined components, names as JSON writes them. */
public final class Shape {
    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return new Shape(RecordSchema.of(type));
        }
    };

    private final RecordSchema schema;
    private final List<Part> parts;
    private final List<String> names;
    private final boolean policy;

    private Shape(RecordSchema schema) {
        this.schema = schema;
        this.parts = schema.components().stream().map(Part::of).toList();
        this.names = parts.stream()
                .flatMap(part -> part.inline ? of(part.raw()).names.stream() : Stream.of(part.name()))
                .toList();
        this.policy = hasStandard(schema.type());
    }

    /** Returns the shape of a record type. */
    public static Shape of(Class<?> record) {
        return SHAPES.get(record);
    }

    /** Returns the record type. */
    public Class<? extends Record> type() {
        return schema.type();
    }

    /** Returns the components, in order. */
    public List<Part> parts() {
        return parts;
    }

    /** Returns the names on the wire, those of inlined components included. */
    public List<String> names() {
        return names;
    }

    /**
     * Returns whether this is a policy: a record with a static {@code standard()}, every component of which is listed as an
     * assumption.
     */
    public boolean policy() {
        return policy;
    }

    /** Calls the canonical constructor; what it throws is thrown unchanged. */
    Record construct(@Nullable Object[] values) {
        return schema.create(values);
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
     * @param component its schema
     * @param inline whether its own components take its place
     * @param notRepeated whether answers leave it out, since their reader has it already
     * @param key its name as JSON writes it
     */
    public record Part(RecordSchema.Component component, boolean inline, boolean notRepeated, SerializableString key) {

        static Part of(RecordSchema.Component component) {
            return new Part(
                    component,
                    component.annotation(Inline.class).isPresent(),
                    component.annotation(NotRepeated.class).isPresent(),
                    new SerializedString(component.name()));
        }

        /** Returns the name of the component, in Java and on the wire. */
        public String name() {
            return component.name();
        }

        /** Returns the type as declared. */
        public Type type() {
            return component.type();
        }

        /** Returns the type without its type arguments. */
        public Class<?> raw() {
            return component.rawType();
        }

        /** Returns what is assumed when it is absent, if anything is. */
        public Optional<Assumed> assumed() {
            return component.assumed();
        }

        /** Returns whether it may stay absent. */
        public boolean nullable() {
            return component.nullable();
        }

        /** Returns the type without type arguments, of an optional that of its content. */
        public Class<?> content() {
            return content(type());
        }

        /** Returns the same of a type as declared. */
        public static Class<?> content(Type type) {
            Class<?> raw = raw(type);
            return raw == Optional.class ? raw(argument(type)) : raw;
        }

        /** Returns the type of the elements of a list, without type arguments. */
        Class<?> element() {
            return raw(argument(type()));
        }

        /** Returns the form of its values on the wire. */
        public Form form() {
            return Form.of(content());
        }

        /** Returns whether an input may leave it out. */
        public boolean mayBeAbsent() {
            return assumed().isPresent() || nullable() || raw() == Optional.class || policy();
        }

        /** Returns whether it is a policy, which may be left out because all of it has defaults. */
        public boolean policy() {
            return raw().isRecord() && Shape.of(raw()).policy();
        }

        /** Returns its value in a record. */
        public @Nullable Object in(Record record) {
            return component.value(record);
        }

        /** Returns what the constructor receives when nothing was given. */
        @Nullable
        Object whenAbsent() {
            return assumed().isPresent() ? component.constantDefault().orElseGet(this::placeholder) : placeholder();
        }

        /** Returns what the constructor receives when what was given could not be read. */
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
