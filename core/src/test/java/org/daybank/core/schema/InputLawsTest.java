package org.daybank.core.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Changing one component of an input calculates the same as building the input anew with that change: by its wither and by
 * its builder, for every public input record and every component.
 */
class InputLawsTest {

    @Test
    void everyInputRecordHasASpecimen() {
        assertThat(InputRecords.TYPES)
                .allSatisfy(type -> assertThat(InputRecords.specimens(type))
                        .as(type.getSimpleName())
                        .isNotEmpty());
        System.out.printf(
                "Laws of inputs: %d records with %d components%n",
                InputRecords.TYPES.size(),
                InputRecords.TYPES.stream()
                        .mapToInt(type -> RecordSchema.of(type).components().size())
                        .sum());
    }

    @TestFactory
    Stream<DynamicTest> changingOneComponentIsBuildingAnew() {
        return InputRecords.TYPES.stream()
                .flatMap(type -> RecordSchema.of(type).components().stream()
                        .map(component -> DynamicTest.dynamicTest(
                                type.getSimpleName() + "." + component.name(), () -> holds(type, component))));
    }

    private static void holds(Class<? extends Record> type, RecordSchema.Component component) throws Exception {
        RecordSchema schema = RecordSchema.of(type);
        int changes = 0;
        for (Record specimen : InputRecords.specimens(type)) {
            for (@Nullable Object[] said : said(schema, specimen)) {
                Record base = create(schema, said).orElse(null);
                if (base == null) {
                    continue;
                }
                for (Object other : OtherValues.of(component, specimen)) {
                    @Nullable Object[] values = said.clone();
                    values[component.index()] = other;
                    Record anew = create(schema, values).orElse(null);
                    if (anew == null) {
                        continue;
                    }
                    changes++;
                    for (Record changed : changed(base, component, other)) {
                        assertThat(RecordSchema.explicit(changed))
                                .as("%s changed to %s", component.name(), other)
                                .isEqualTo(RecordSchema.explicit(anew));
                        assertThat(changed).isEqualTo(anew);
                    }
                }
            }
        }
        assertThat(changes).as("accepted changes of %s", component.name()).isPositive();
    }

    /** What a caller may have said: everything, and nothing but what must be given. */
    private static List<@Nullable Object[]> said(RecordSchema schema, Record specimen) {
        @Nullable Object[] all = schema.values(specimen);
        @Nullable Object[] least = all.clone();
        for (RecordSchema.Component component : schema.components()) {
            if (component.assumed().isPresent() && !component.rawType().isPrimitive()) {
                least[component.index()] = null;
            }
        }
        return List.of(least, all);
    }

    private static Optional<Record> create(RecordSchema schema, @Nullable Object[] values) {
        try {
            return Optional.of(schema.create(values));
        } catch (InvalidInput refused) {
            return Optional.empty();
        }
    }

    /** The record changed by its wither and by its builder, where it has them. */
    private static List<Record> changed(Record base, RecordSchema.Component component, Object other) throws Exception {
        List<Record> changed = new ArrayList<>();
        String name = component.name();
        String wither = "with" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
        for (Method method : base.getClass().getMethods()) {
            if (method.getName().equals(wither)
                    && method.getParameterCount() == 1
                    && method.getParameterTypes()[0] == component.rawType()) {
                changed.add((Record) method.invoke(base, other));
            }
        }
        Optional<Class<?>> builder = builder(base.getClass());
        if (builder.isPresent()) {
            Object filled = builder.get().getMethod("builder", base.getClass()).invoke(null, base);
            Method setter = Arrays.stream(builder.get().getMethods())
                    .filter(method -> method.getName().equals(name) && method.getParameterCount() == 1)
                    .findFirst()
                    .orElseThrow();
            setter.invoke(filled, other);
            changed.add((Record) builder.get().getMethod("build").invoke(filled));
        }
        // every record has its canonical constructor
        RecordSchema schema = RecordSchema.of(base.getClass());
        @Nullable Object[] values = schema.values(base);
        values[component.index()] = other;
        changed.add(schema.create(values));
        return changed;
    }

    private static Optional<Class<?>> builder(Class<?> type) throws InvocationTargetException {
        try {
            return Optional.of(Class.forName(type.getName() + "Builder"));
        } catch (ClassNotFoundException none) {
            return Optional.empty();
        }
    }
}
