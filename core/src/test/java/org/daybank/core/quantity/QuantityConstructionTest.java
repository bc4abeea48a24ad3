package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class QuantityConstructionTest {
    static final List<Dimension> DIMENSIONS = Dimension.ALL;

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void onlyFiniteNumbersAreQuantities(Dimension dimension) {
        for (double number : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> dimension.ofBase().apply(number))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must be a finite number")
                    .hasMessageEndingWith("but was " + number + ".");
        }
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void minusZeroIsZero(Dimension dimension) {
        Quantity minusZero = dimension.ofBase().apply(-0.0);

        assertThat(minusZero).isEqualTo(dimension.ofBase().apply(0.0));
        assertThat(1 / minusZero.baseValue()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(dimension.parse().apply("-0 " + dimension.baseUnit().code())).isEqualTo(minusZero);
        assertThat(minusZero.toString()).startsWith("0 ");
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void whatTheDomainForbidsIsRefused(Dimension dimension) {
        if (dimension.least() < -1e9) {
            assertThat(dimension.ofBase().apply(-1).baseValue()).isEqualTo(-1);
            return;
        }
        assertThat(dimension.ofBase().apply(dimension.least()).baseValue()).isEqualTo(dimension.least());
        assertThatThrownBy(() -> dimension.ofBase().apply(Math.nextDown(dimension.least()) - 1e-9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be at least")
                .hasMessageContaining(dimension.baseUnit().symbol());
    }

    @Test
    void messagesSayWhatIsAllowedAndWhatCame() {
        assertThatThrownBy(() -> Irradiance.wattsPerSquareMetre(-5))
                .hasMessage("An irradiance must be at least 0 W/m², but was -5 W/m².");
        assertThatThrownBy(() -> Temperature.celsius(-300))
                .hasMessage("A temperature must be at least -273.15 °C, but was -300 °C.");
        assertThatThrownBy(() -> TimeSpan.parse("-2 h")).hasMessage("A time span must be at least 0 h, but was -2 h.");
    }

    @Test
    void differencesBelowZeroAreRefusedWhereTheDomainHasNone() {
        assertThatThrownBy(() -> TimeSpan.hours(1).minus(TimeSpan.hours(2)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Power.watts(1).minus(Power.watts(2))).isEqualTo(Power.watts(-1));
    }

    @Test
    void divisionByZeroIsRefused() {
        assertThatThrownBy(() -> Power.watts(5).dividedBy(Voltage.ZERO)).hasMessageContaining("finite number of A");
        assertThatThrownBy(() -> Power.watts(5).dividedBy(Power.ZERO))
                .hasMessageContaining("ratio of two power values");
        assertThatThrownBy(() -> Power.ZERO.dividedBy(Power.ZERO)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Power.watts(5).dividedBy(0.0)).hasMessageContaining("finite number of W");
    }

    @Test
    void overflowIsRefused() {
        assertThatThrownBy(() -> Power.watts(1e308).plus(Power.watts(1e308))).hasMessageContaining("Infinity");
        assertThatThrownBy(() -> Voltage.volts(1e200).times(Current.amperes(1e200)))
                .hasMessageContaining("Infinity");
    }
}
