package org.daybank.core.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Ranges are written beside a component and held by its record, for every public input record and every component. */
class BoundsLawsTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** Types whose own constructor holds their range. */
    private static final Set<Class<?>> BOUNDED_BY_THEMSELVES = Set.of(Latitude.class, Longitude.class);

    @TestFactory
    Stream<DynamicTest> everyNumberAndEveryListHasARange() {
        return components((type, component) -> {
            Bounds bounds = component.bounds().declared().orElse(null);
            if (isNumber(component.elementType())) {
                assertThat(bounds).as("@Bounds").isNotNull();
                assertThat(bounds.minimum() + bounds.exclusiveMinimum())
                        .as("a lower limit")
                        .isNotEmpty();
                if (component.elementType() != Money.class) {
                    assertThat(bounds.maximum() + bounds.exclusiveMaximum())
                            .as("an upper limit")
                            .isNotEmpty();
                }
            }
            if (component.rawType() == List.class) {
                assertThat(bounds).as("@Bounds").isNotNull();
                assertThat(bounds.maximumItems()).as("elements").isLessThanOrEqualTo(1_000_000);
            }
        });
    }

    private static boolean isNumber(Class<?> type) {
        return !BOUNDED_BY_THEMSELVES.contains(type)
                && (Quantity.class.isAssignableFrom(type)
                        || type == Ratio.class
                        || type == Money.class
                        || type == int.class
                        || type == Integer.class
                        || type == double.class
                        || type == Double.class);
    }

    @TestFactory
    Stream<DynamicTest> aValueAtALimitIsInRangeAndOneBeyondIsNot() {
        return components((type, component) -> {
            Bounds bounds = component.bounds().declared().orElse(null);
            if (bounds == null || component.elementType() == Money.class) {
                return;
            }
            holds(type, component, bounds.minimum(), -1, true);
            holds(type, component, bounds.maximum(), 1, true);
            holds(type, component, bounds.exclusiveMinimum(), 0, false);
            holds(type, component, bounds.exclusiveMaximum(), 0, false);
        });
    }

    /** A limit holds where the limit itself is accepted or not, as it should be, and what lies beyond is refused. */
    private static void holds(
            Class<? extends Record> type,
            RecordSchema.Component component,
            String limit,
            int beyond,
            boolean included) {
        if (limit.isEmpty()) {
            return;
        }
        Object atLimit = Scalars.parse(component.elementType(), limit);
        assertThat(isOutOfRange(type, component, atLimit))
                .as("%s at %s", component.name(), limit)
                .isEqualTo(!included);
        if (beyond != 0) {
            parse(component.elementType(), justBeyond(component.elementType(), limit, beyond))
                    .ifPresent(value -> assertThat(isOutOfRange(type, component, value))
                            .as("%s at %s", component.name(), value)
                            .isTrue());
        }
    }

    /** One more or less of a whole number, a thousandth of any other; there may be no such value, as less than nothing. */
    private static String justBeyond(Class<?> type, String limit, int beyond) {
        Matcher number = NUMBER.matcher(limit);
        assertThat(number.find()).as(limit).isTrue();
        BigDecimal step = type == int.class || type == Integer.class ? BigDecimal.ONE : new BigDecimal("0.001");
        return number.replaceFirst(new BigDecimal(number.group())
                .add(step.multiply(BigDecimal.valueOf(beyond)))
                .toPlainString());
    }

    private static Optional<Object> parse(Class<?> type, String text) {
        try {
            return Optional.of(Scalars.parse(type, text));
        } catch (IllegalArgumentException noSuchValue) {
            return Optional.empty();
        }
    }

    /** Whether the record refuses a value for its range, whatever else may keep it from going with the other components. */
    private static boolean isOutOfRange(Class<? extends Record> type, RecordSchema.Component component, Object value) {
        RecordSchema schema = RecordSchema.of(type);
        @Nullable Object[] values = schema.values(InputRecords.specimens(type).get(0));
        Object given = value;
        if (component.rawType() == List.class) {
            int size = values[component.index()] instanceof List<?> list
                    ? list.size()
                    : component.bounds().declared().orElseThrow().minimumItems();
            given = Collections.nCopies(Math.max(1, size), value);
        }
        values[component.index()] = given;
        try {
            schema.create(values);
            return false;
        } catch (InvalidInput refused) {
            return refused.problems().stream()
                    .anyMatch(problem -> problem.path().matches("/" + component.name() + "(/.*)?")
                            && problem.code() == ProblemCode.OUT_OF_RANGE
                            && problem.message()
                                    .matches("\\S+ must be (at least|at most|above|below|from) .*, but was .*"));
        }
    }

    @Test
    void toManyElementsAndNoneAreRefused() {
        for (Class<? extends Record> type : InputRecords.TYPES) {
            RecordSchema schema = RecordSchema.of(type);
            for (RecordSchema.Component component : schema.components()) {
                Bounds bounds = component.bounds().declared().orElse(null);
                Record specimen = InputRecords.specimens(type).get(0);
                if (component.rawType() != List.class
                        || bounds == null
                        || bounds.maximumItems() > 10_000
                        || !(component.resolved(specimen) instanceof List<?> list)
                        || list.isEmpty()) {
                    continue;
                }
                @Nullable Object[] values = schema.values(specimen);
                values[component.index()] = Collections.nCopies(bounds.maximumItems() + 1, list.get(0));
                assertThat(codes(schema, values, component))
                        .as(type + "." + component.name())
                        .isNotEmpty();
                if (bounds.minimumItems() > 0) {
                    values[component.index()] = List.of();
                    assertThat(codes(schema, values, component))
                            .as(type + "." + component.name())
                            .isNotEmpty();
                }
            }
        }
    }

    private static List<ProblemCode> codes(
            RecordSchema schema, @Nullable Object[] values, RecordSchema.Component component) {
        try {
            schema.create(values);
            return List.of();
        } catch (InvalidInput refused) {
            return refused.problems().stream()
                    .filter(problem -> problem.path().startsWith("/" + component.name()))
                    .map(Problem::code)
                    .toList();
        }
    }

    /** Something that holds for a component. */
    private interface Law {
        void check(Class<? extends Record> type, RecordSchema.Component component);
    }

    private static Stream<DynamicTest> components(Law law) {
        return InputRecords.TYPES.stream()
                .flatMap(type -> RecordSchema.of(type).components().stream()
                        .map(component -> DynamicTest.dynamicTest(
                                type.getSimpleName() + "." + component.name(), () -> law.check(type, component))));
    }
}
