package org.daybank.core.sweep;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** How a record type is read and made, as method handles that are looked up once. */
final class RecordType {
    private static final ClassValue<RecordType> TYPES = new ClassValue<>() {
        @Override
        protected RecordType computeValue(Class<?> type) {
            return new RecordType(type);
        }
    };

    private final Class<?> type;
    private final List<RecordComponent> components;
    private final List<MethodHandle> accessors;
    private final MethodHandle constructor;

    private RecordType(Class<?> type) {
        this.type = type;
        this.components = List.of(type.getRecordComponents());
        this.accessors = components.stream().map(this::accessor).toList();
        this.constructor = constructor();
    }

    /**
     * What is known of a record type.
     *
     * @throws IllegalArgumentException when its package is closed to this module
     */
    static RecordType of(Class<?> type) {
        return TYPES.get(type);
    }

    List<RecordComponent> components() {
        return components;
    }

    List<String> names() {
        return components.stream().map(RecordComponent::getName).toList();
    }

    /** The place of a component among the others; −1 when there is none of that name. */
    int indexOf(String name) {
        return IntStream.range(0, components.size())
                .filter(i -> components.get(i).getName().equals(name))
                .findFirst()
                .orElse(-1);
    }

    /** Reads one component; takes and gives an {@code Object}. */
    MethodHandle accessor(int index) {
        return accessors.get(index);
    }

    @Nullable
    Object value(int index, Object record) {
        try {
            return accessors.get(index).invokeExact(record);
        } catch (Throwable refused) {
            throw unchecked(refused);
        }
    }

    @Nullable
    Object[] values(Object record) {
        @Nullable Object[] values = new @Nullable Object[components.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(i, record);
        }
        return values;
    }

    /** Calls the canonical constructor; what it throws comes out as it is. */
    Object make(@Nullable Object[] values) {
        try {
            return constructor.invokeExact(values);
        } catch (Throwable refused) {
            throw unchecked(refused);
        }
    }

    static RuntimeException unchecked(Throwable refused) {
        if (refused instanceof Error fatal) {
            throw fatal;
        }
        return refused instanceof RuntimeException cause ? cause : new IllegalStateException(refused);
    }

    private MethodHandle accessor(RecordComponent component) {
        Method accessor = component.getAccessor();
        return handle(() -> {
            open(accessor.trySetAccessible());
            return MethodHandles.lookup().unreflect(accessor).asType(MethodType.methodType(Object.class, Object.class));
        });
    }

    private MethodHandle constructor() {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        return handle(() -> {
            Constructor<?> canonical = type.getDeclaredConstructor(types);
            open(canonical.trySetAccessible());
            return MethodHandles.lookup()
                    .unreflectConstructor(canonical)
                    .asType(MethodType.genericMethodType(types.length))
                    .asSpreader(Object[].class, types.length);
        });
    }

    private void open(boolean open) {
        if (!open) {
            throw new IllegalArgumentException(
                    "%s cannot be varied: its package must be exported or opened to org.daybank.core"
                            .formatted(type.getSimpleName()));
        }
    }

    private static MethodHandle handle(Lookup lookup) {
        try {
            return lookup.find();
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Finds a handle. */
    private interface Lookup {
        MethodHandle find() throws ReflectiveOperationException;
    }
}
