package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class DistributionTest {
    @Test
    void aUniformOneSpreadsEvenly() {
        assertThat(Distribution.uniform(2.0, 10.0).quantile(0)).isEqualTo(2);
        assertThat(Distribution.uniform(2.0, 10.0).quantile(0.25)).isEqualTo(4);
    }

    /**
     * From 0 over 2 to 10: F(x) = x² / (10 · 2) up to 2, where it is 0.2, and 1 − (10 − x)² / (10 · 8) from there. So F(1) = 0.05,
     * F(6) = 0.8.
     */
    @Test
    void aTriangularOneHasTheQuantilesOfItsAreas() {
        Distribution triangle = Distribution.triangular(0.0, 2.0, 10.0);
        assertThat(triangle.quantile(0.05)).isEqualTo(1, within(1e-12));
        assertThat(triangle.quantile(0.2)).isEqualTo(2, within(1e-12));
        assertThat(triangle.quantile(0.8)).isEqualTo(6, within(1e-12));
        // the mirror image: from 5 over 13 to 15, F(9) = 16 / 80, F(14) = 1 − 1 / 20
        Distribution mirrored = Distribution.triangular(5.0, 13.0, 15.0);
        assertThat(mirrored.quantile(0.2)).isEqualTo(9, within(1e-12));
        assertThat(mirrored.quantile(0.95)).isEqualTo(14, within(1e-12));
    }

    /** Tables of the normal distribution: Φ(1.959964) = 0.975, Φ(1) = 0.841344746. */
    @Test
    void normalOnesStandOnTheTables() {
        Distribution normal = Distribution.normal(10.0, 2.0);
        assertThat(normal.quantile(0.975)).isEqualTo(10 + 2 * 1.959964, within(1e-5));
        assertThat(normal.quantile(0.025)).isEqualTo(10 - 2 * 1.959964, within(1e-5));
        Distribution logarithmic = Distribution.logNormal(8.0, 2.0);
        assertThat(logarithmic.quantile(0.841344746)).isEqualTo(16, within(1e-6));
        assertThat(logarithmic.quantile(1 - 0.841344746)).isEqualTo(4, within(1e-6));
    }

    @Test
    void endsAreOfOneKindAndInOrder() {
        refused(() -> Distribution.uniform(2.0, 1.0), "to must be of the kind of 2.0 and no less, but was 1.0.");
        refused(() -> Distribution.<Object>uniform(Power.watts(1), TimeSpan.hours(2)), "to must be of the kind of 1 W");
        refused(() -> Distribution.uniform("a", "b"), "to must be");
        refused(() -> Distribution.triangular(2.0, 1.0, 3.0), "likeliest must be");
        refused(() -> Distribution.triangular(1.0, 3.0, 2.0), "to must be of the kind of 3.0");
        assertThatCode(() -> Distribution.uniform(2.0, 2.0)).doesNotThrowAnyException();
        assertThatCode(() -> Distribution.triangular(1.0, 1.0, 1.0)).doesNotThrowAnyException();
    }

    @Test
    void deviationsAreOfTheKindOfTheirMeanAndNotNegative() {
        refused(() -> Distribution.normal(Power.watts(9), Power.watts(-1)), "not negative, but was -1 W.");
        refused(() -> Distribution.normal(Power.watts(9), 1.0), "deviation must be");
        refused(() -> Distribution.normal("warm", "very"), "deviation must be");
        refused(() -> Distribution.normal(Temperature.celsius(20), Temperature.celsius(3)), "deviation must be");
        assertThatCode(() -> Distribution.normal(Temperature.celsius(20), TemperatureDifference.kelvins(0)))
                .doesNotThrowAnyException();
    }

    @Test
    void whatIsTakenAsALogarithmIsAboveZero() {
        refused(() -> Distribution.logNormal(0.0, 2), "median must be above zero, but was 0.0.");
        refused(() -> Distribution.logNormal("x", 2), "median must be");
        refused(() -> Distribution.logNormal(1.0, 0.99), "factor must be from 1 to 1000000");
        assertThatCode(() -> Distribution.logNormal(1e-9, 1)).doesNotThrowAnyException();
    }

    private static void refused(Runnable making, String why) {
        assertThatThrownBy(making::run).isInstanceOf(InvalidInput.class).hasMessageContaining(why);
    }
}
