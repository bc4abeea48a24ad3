package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What all quantities can do, tried on each by its name: 12 and 4 of the base unit. A temperature is no amount and cannot. */
class ArithmeticOfEveryDimensionTest {
    static final List<Dimension> AMOUNTS = Dimension.ALL.stream()
            .filter(dimension -> !(dimension.ofBase().apply(1) instanceof Temperature))
            .toList();

    static final List<Dimension> DIMENSIONS = Dimension.ALL;

    private static Object call(Object on, String method, Class<?> type, Object argument) throws Exception {
        return on.getClass().getMethod(method, type).invoke(on, argument);
    }

    @ParameterizedTest
    @FieldSource("AMOUNTS")
    void sumsProductsAndQuotients(Dimension dimension) throws Exception {
        Quantity twelve = dimension.ofBase().apply(12);
        Quantity four = dimension.ofBase().apply(4);
        Class<?> type = twelve.getClass();

        assertThat(call(twelve, "plus", type, four))
                .isEqualTo(dimension.ofBase().apply(16));
        assertThat(call(twelve, "minus", type, four))
                .isEqualTo(dimension.ofBase().apply(8));
        assertThat(call(twelve, "times", double.class, 3.0))
                .isEqualTo(dimension.ofBase().apply(36));
        // 12 · 25 %
        assertThat(call(twelve, "times", Ratio.class, Ratio.percent(25)))
                .isEqualTo(dimension.ofBase().apply(3));
        assertThat(call(twelve, "dividedBy", double.class, 8.0))
                .isEqualTo(dimension.ofBase().apply(1.5));
        assertThat(call(twelve, "dividedBy", type, four)).isEqualTo(3.0);
    }

    @ParameterizedTest
    @FieldSource("AMOUNTS")
    void whatIsNeverNegativeDoesNotBecomeSo(Dimension dimension) throws Exception {
        Quantity twelve = dimension.ofBase().apply(12);
        Quantity four = dimension.ofBase().apply(4);

        if (dimension.least() == 0) {
            assertThatThrownBy(() -> call(four, "minus", twelve.getClass(), twelve))
                    .isInstanceOf(InvocationTargetException.class)
                    .cause()
                    .isInstanceOf(IllegalArgumentException.class);
        } else {
            assertThat(call(four, "minus", twelve.getClass(), twelve))
                    .isEqualTo(dimension.ofBase().apply(-8));
        }
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void theLessComesFirst(Dimension dimension) throws Exception {
        Quantity twelve = dimension.ofBase().apply(12);
        Quantity four = dimension.ofBase().apply(4);

        assertThat((int) call(four, "compareTo", four.getClass(), twelve)).isNegative();
        assertThat((int) call(twelve, "compareTo", four.getClass(), four)).isPositive();
        assertThat((int) call(
                        four, "compareTo", four.getClass(), dimension.ofBase().apply(4)))
                .isZero();
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void aNumberOfAUnitIsTheNumberThatWasRead(Dimension dimension) throws Exception {
        for (Unit unit : dimension.units()) {
            Quantity seven = dimension.parse().apply("7 " + unit.code());

            // a scale there and back rounds twice; degrees Fahrenheit subtract a number some sixty times as large
            assertThat((double) call(seven, "in", unit.getClass(), unit))
                    .as(unit.code())
                    .isCloseTo(7, within(1e-12));
        }
    }

    /** A factory and the number it was given have one name, and that name means one of the units. */
    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void aNumberIsMadeIntoAQuantityAndBack(Dimension dimension) throws Exception {
        Class<?> type = dimension.ofBase().apply(1).getClass();
        List<Method> factories = factories(type);

        assertThat(factories).isNotEmpty();
        for (Method factory : factories) {
            Quantity seven = (Quantity) factory.invoke(null, 7.0);

            assertThat((double) type.getMethod(factory.getName()).invoke(seven))
                    .as(factory.getName())
                    .isCloseTo(7, within(1e-12));
            // to rounding, for π/180 and 0.3048 are no binary fractions; kelvins are no unit that a temperature is read
            // in
            if (!(seven instanceof Temperature)) {
                assertThat(dimension.units().stream()
                                .map(unit -> dimension.parse().apply("7 " + unit.code()))
                                .filter(read -> Math.abs(read.baseValue() - seven.baseValue())
                                        <= 1e-12 * Math.abs(seven.baseValue())))
                        .as(factory.getName())
                        .hasSize(1);
            }
        }
    }

    private static List<Method> factories(Class<?> type) {
        return Arrays.stream(type.getMethods())
                .filter(method -> Modifier.isStatic(method.getModifiers())
                        && method.getReturnType() == type
                        && Arrays.equals(method.getParameterTypes(), new Class<?>[] {double.class})
                        && Stream.of(type.getMethods())
                                .anyMatch(getter ->
                                        getter.getName().equals(method.getName()) && getter.getParameterCount() == 0))
                .toList();
    }

    @Test
    void temperaturesMoveByDifferences() {
        // 20 °C + 5 K, 20 °C − 5 K, 20 °C over −5 °C, 0 °C = 273.15 K
        assertThat(Temperature.celsius(20).plus(TemperatureDifference.kelvins(5)))
                .isEqualTo(Temperature.celsius(25));
        assertThat(Temperature.celsius(20).minus(TemperatureDifference.kelvins(5)))
                .isEqualTo(Temperature.celsius(15));
        assertThat(Temperature.celsius(20).minus(Temperature.celsius(-5))).isEqualTo(TemperatureDifference.kelvins(25));
        assertThat(Temperature.kelvins(273.15)).isEqualTo(Temperature.celsius(0));
        assertThat(Temperature.celsius(0).kelvins()).isEqualTo(273.15);
    }
}
