package org.daybank.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.Scalars;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.wiring.WiringPolicy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Ranges are written beside a component and held by its record: whoever reads the one may rely on the other. */
class AssumedRangesTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** Records that can be made of nothing but defaults. */
    private static final List<Class<? extends Record>> POLICIES = policies();

    private static List<Class<? extends Record>> policies() {
        List<Class<? extends Record>> found = new ArrayList<>();
        for (JavaClass candidate : new ClassFileImporter()
                .withImportOption(location -> !location.contains("/test-classes/"))
                .importPackages("org.daybank.core")) {
            Class<?> type = candidate.reflect();
            if (type.isRecord() && Modifier.isPublic(type.getModifiers()) && hasDefaults(type)) {
                found.add(type.asSubclass(Record.class));
            }
        }
        return found;
    }

    /** Whether each component has a default of its own, or is a record of such. */
    private static boolean hasDefaults(Class<?> type) {
        return type.getRecordComponents().length > 0
                && Arrays.stream(type.getRecordComponents()).allMatch(component -> {
                    Assumed assumed = component.getAnnotation(Assumed.class);
                    return assumed == null
                            ? component.getType().isRecord() && hasDefaults(component.getType())
                            : !assumed.value().isEmpty();
                });
    }

    static Stream<Arguments> ranges() {
        return POLICIES.stream()
                .flatMap(type -> Arrays.stream(type.getRecordComponents())
                        .filter(component -> !limits(component).isEmpty())
                        .map(component -> arguments(type, component)));
    }

    private static List<Limit> limits(RecordComponent component) {
        Bounds bounds = component.getAnnotation(Bounds.class);
        if (bounds == null) {
            return List.of();
        }
        return Stream.of(new Limit(bounds.minimum(), -1), new Limit(bounds.maximum(), 1))
                .filter(limit -> !limit.text.isEmpty())
                .toList();
    }

    /** A limit as it is written, and which way lies beyond it. */
    private record Limit(String text, int beyond) {
        /** One more or less of a whole number, a thousandth of any other. */
        String justBeyond(Class<?> type) {
            Matcher number = NUMBER.matcher(text);
            assertThat(number.find()).as(text).isTrue();
            BigDecimal limit = new BigDecimal(number.group());
            BigDecimal step = type == int.class || type == Integer.class ? BigDecimal.ONE : new BigDecimal("0.001");
            return number.replaceFirst(
                    limit.add(step.multiply(BigDecimal.valueOf(beyond))).toPlainString());
        }
    }

    @Test
    void thereAreSuchRecords() {
        assertThat(POLICIES).contains(BankPolicy.class, SunPolicy.class, WiringPolicy.class);
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void aValueAtALimitIsInRangeAndOneBeyondIsNot(Class<? extends Record> type, RecordComponent component)
            throws Exception {
        for (Limit limit : limits(component)) {
            assertThat(outOfRange(type, component, Scalars.parse(component.getType(), limit.text)))
                    .as(limit.text)
                    .isFalse();
            Object beyond;
            try {
                beyond = Scalars.parse(component.getType(), limit.justBeyond(component.getType()));
            } catch (IllegalArgumentException nothingLess) {
                // there is no such quantity at all: less than nothing
                continue;
            }
            assertThat(outOfRange(type, component, beyond)).as("%s", beyond).isTrue();
        }
    }

    /** Whether the record refuses a value for its range, whatever else may keep it from going with the other defaults. */
    private static boolean outOfRange(Class<? extends Record> type, RecordComponent changed, Object value)
            throws Exception {
        Record standard = Defaults.of(type);
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < values.length; i++) {
            types[i] = components[i].getType();
            values[i] = components[i].getName().equals(changed.getName())
                    ? value
                    : components[i].getAccessor().invoke(standard);
        }
        try {
            type.getConstructor(types).newInstance(values);
            return false;
        } catch (InvocationTargetException refused) {
            assertThat(refused.getCause()).isInstanceOf(InvalidInput.class);
            return ((InvalidInput) refused.getCause())
                    .problems().stream().anyMatch(problem -> isOfRange(problem, changed.getName()));
        }
    }

    private static boolean isOfRange(Problem problem, String name) {
        return problem.path().matches("/" + name + "(/.*)?")
                && problem.message().matches("\\S+ must be (at least|at most|from) -?\\d.*, but was .*.");
    }
}
