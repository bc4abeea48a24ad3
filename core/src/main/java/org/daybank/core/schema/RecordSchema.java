package org.daybank.core.schema;

import java.lang.annotation.Annotation;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a record type: its components with their types, defaults and bounds, how they are read, and how a record
 * is made of them. Described once for each type; defaults, validation, sweeps and the JSON binder all read it from here.
 *
 * <pre>{@code
 * RecordSchema bank = RecordSchema.of(BankPolicy.class);
 * bank.component("autonomy").bounds().minimum();  // 2.4 h
 * }</pre>
 */
public final class RecordSchema {
    private static final ClassValue<RecordSchema> SCHEMAS = new ClassValue<>() {
        @Override
        protected RecordSchema computeValue(Class<?> type) {
            return new RecordSchema(type.asSubclass(Record.class));
        }
    };

    private final Class<? extends Record> type;
    private final List<Component> components;
    private final MethodHandle constructor;

    private RecordSchema(Class<? extends Record> type) {
        this.type = type;
        RecordComponent[] declared = type.getRecordComponents();
        this.components = IntStream.range(0, declared.length)
                .mapToObj(index -> new Component(index, declared[index], accessor(declared[index])))
                .toList();
        this.constructor = canonicalConstructor();
    }

    /**
     * Returns the schema of a record type.
     *
     * @throws IllegalArgumentException when the package of the type is closed to this module
     */
    public static RecordSchema of(Class<?> type) {
        return SCHEMAS.get(type);
    }

    /** Returns the record type. */
    public Class<? extends Record> type() {
        return type;
    }

    /** Returns the components, in the order of their declaration. */
    public List<Component> components() {
        return components;
    }

    /** Returns the names of the components, in the order of their declaration. */
    public List<String> names() {
        return components.stream().map(Component::name).toList();
    }

    /** Returns the position of a component; −1 when there is none of that name. */
    public int indexOf(String name) {
        return IntStream.range(0, components.size())
                .filter(i -> components.get(i).name().equals(name))
                .findFirst()
                .orElse(-1);
    }

    /**
     * Returns a component.
     *
     * @throws IllegalArgumentException when there is none of that name
     */
    public Component component(String name) {
        int index = indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException(
                    "%s has no component %s but %s".formatted(type.getSimpleName(), name, String.join(", ", names())));
        }
        return components.get(index);
    }

    /** Returns the components of a record, as its accessors return them. */
    public @Nullable Object[] values(Object record) {
        @Nullable Object[] values = new @Nullable Object[components.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = components.get(i).value(record);
        }
        return values;
    }

    /** Calls the canonical constructor; what it throws is thrown unchanged. */
    public Record create(@Nullable Object[] values) {
        try {
            return (Record) constructor.invokeExact(values);
        } catch (Throwable refused) {
            throw unchecked(refused);
        }
    }

    /**
     * Returns a record with every default made explicit, those of the records within it included: what was left out and
     * follows from other components is filled in.
     */
    public static <R extends Record> R explicit(R record) {
        RecordSchema schema = of(record.getClass());
        @Nullable Object[] values = schema.values(record);
        boolean changed = false;
        for (int i = 0; i < values.length; i++) {
            Object given = values[i];
            Object resolved = explicitValue(schema.components.get(i).resolved(record));
            changed |= given != resolved;
            values[i] = resolved;
        }
        @SuppressWarnings("unchecked")
        R explicit = changed ? (R) schema.create(values) : record;
        return explicit;
    }

    private static @Nullable Object explicitValue(@Nullable Object value) {
        if (value instanceof List<?> list) {
            List<Object> elements =
                    list.stream().map(RecordSchema::explicitElement).toList();
            return IntStream.range(0, elements.size()).allMatch(i -> elements.get(i) == list.get(i)) ? list : elements;
        }
        return value == null ? null : explicitElement(value);
    }

    private static Object explicitElement(Object value) {
        return value instanceof Record record && !Scalars.readable(record.getClass()) ? explicit(record) : value;
    }

    /** Returns an unchecked exception that stands for a throwable; an error is thrown. */
    static RuntimeException unchecked(Throwable refused) {
        if (refused instanceof Error fatal) {
            throw fatal;
        }
        return refused instanceof RuntimeException cause ? cause : new IllegalStateException(refused);
    }

    private static MethodHandle accessor(RecordComponent component) {
        Method accessor = component.getAccessor();
        open(accessor.trySetAccessible(), component.getDeclaringRecord());
        try {
            return MethodHandles.lookup().unreflect(accessor).asType(MethodType.methodType(Object.class, Object.class));
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private MethodHandle canonicalConstructor() {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(types);
            open(canonical.trySetAccessible(), type);
            return MethodHandles.lookup()
                    .unreflectConstructor(canonical)
                    .asType(MethodType.genericMethodType(types.length).changeReturnType(Record.class))
                    .asSpreader(Object[].class, types.length);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void open(boolean open, Class<?> type) {
        if (!open) {
            throw new IllegalArgumentException(
                    "The package of %s must be exported or opened to org.daybank.core".formatted(type.getSimpleName()));
        }
    }

    /** One component of a record. */
    public static final class Component {
        private final int index;
        private final RecordComponent declared;
        private final MethodHandle accessor;
        private final Class<?> rawType;
        private final @Nullable Assumed assumed;
        private final ComponentBounds bounds;
        private final boolean nullable;
        private final @Nullable Object constant;

        private Component(int index, RecordComponent declared, MethodHandle accessor) {
            this.index = index;
            this.declared = declared;
            this.accessor = accessor;
            this.rawType = declared.getType();
            this.assumed = declared.getAnnotation(Assumed.class);
            this.bounds = ComponentBounds.of(declared);
            this.nullable = declared.getAnnotatedType().isAnnotationPresent(Nullable.class);
            this.constant = assumed == null || assumed.value().isEmpty()
                    ? null
                    : Scalars.parse(declared.getType(), assumed.value());
        }

        /** Returns the position among the components of its record, from 0. */
        public int index() {
            return index;
        }

        /** Returns the name. */
        public String name() {
            return declared.getName();
        }

        /** Returns the type as declared, with its type arguments. */
        public Type type() {
            return declared.getGenericType();
        }

        /** Returns the type without type arguments. */
        public Class<?> rawType() {
            return rawType;
        }

        /** Returns the type of the elements of a list, or of the value itself when it is no list. */
        public Class<?> elementType() {
            return rawType == List.class && type() instanceof ParameterizedType list
                    ? (Class<?>) list.getActualTypeArguments()[0]
                    : rawType;
        }

        /** Returns an annotation of the component, if it has it. */
        public <A extends Annotation> Optional<A> annotation(Class<A> annotation) {
            return Optional.ofNullable(declared.getAnnotation(annotation));
        }

        /** Returns what is assumed when the component is left out, if anything is. */
        public Optional<Assumed> assumed() {
            return Optional.ofNullable(assumed);
        }

        /** Returns the accepted range. */
        public ComponentBounds bounds() {
            return bounds;
        }

        /** Returns whether the accessor may return null. */
        public boolean nullable() {
            return nullable;
        }

        /** Returns whether a value must be given: nothing is assumed without one. */
        public boolean required() {
            return assumed == null && !nullable && !rawType.isPrimitive() && rawType != Optional.class;
        }

        /** Returns whether the default follows from other components, see {@link Resolvable}. */
        public boolean derived() {
            return assumed != null && constant == null && nullable;
        }

        /**
         * Returns the constant default: that of {@link Assumed}, or a record of nothing but defaults; empty when there is
         * none.
         */
        public Optional<Object> constantDefault() {
            if (constant != null) {
                return Optional.of(constant);
            }
            return assumed == null && !nullable && rawType.isRecord() && !Scalars.readable(rawType) && allDefaulted()
                    ? Optional.of(Defaults.of(rawType.asSubclass(Record.class)))
                    : Optional.empty();
        }

        private boolean allDefaulted() {
            return RecordSchema.of(rawType).components().stream()
                    .allMatch(component -> component.constantDefault().isPresent());
        }

        /** Returns the value in a record, as the accessor returns it. */
        public @Nullable Object value(Object record) {
            try {
                return accessor.invokeExact(record);
            } catch (Throwable refused) {
                throw unchecked(refused);
            }
        }

        /** Returns the value in a record, or else the default that follows from the other components. */
        public @Nullable Object resolved(Object record) {
            Object given = value(record);
            if (given != null || !derived() || !(record instanceof Resolvable<?> resolvable)) {
                return given;
            }
            Record resolved = resolvable.resolved();
            return RecordSchema.of(resolved.getClass()).component(name()).value(resolved);
        }
    }
}
