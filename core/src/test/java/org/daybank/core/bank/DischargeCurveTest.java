package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DischargeCurveTest {
    /** 36 A over five hours, 11 A over twenty, 2.5 A over a hundred. */
    private static final DischargeCurve CURVE = DischargeCurve.parse("20 h: 220 Ah; 5 h: 180 Ah; 100 h: 250 Ah");

    @ParameterizedTest
    @CsvSource({
        // at the published currents
        "36, 180",
        "11, 220",
        "2.5, 250",
        // half way on the logarithmic scale: at √(36 · 11) = 19.8997 A, √(180 · 220) = 198.9975 Ah
        "19.899748742, 198.9974874",
        // a third of the way: at 36 · (11/36)^⅓ = 24.24743 A, 180 · (220/180)^⅓ = 192.4520 Ah
        "24.24743, 192.4520",
        // by Peukert beyond the fastest, k = 1.25: at 72 A 180 · 0.5^0.25 = 151.3614 Ah; at 576 A 180 / 16^0.25 = 90 Ah
        "72, 151.3614",
        "576, 90",
        // never more than at the slowest
        "1, 250",
        "0, 250"
    })
    void capacityFollowsTheCurrent(double amperes, double ampereHours) {
        assertThat(CURVE.at(Current.amperes(amperes), Ratio.of(1.25)).ampereHours())
                .isCloseTo(ampereHours, within(1e-4));
    }

    @Test
    void thePointsMayComeInAnyOrder() {
        assertThat(CURVE.slowest().ampereHours()).isEqualTo(250);
        assertThat(CURVE).isEqualTo(DischargeCurve.parse("100 h: 250 Ah; 5 h: 180 Ah; 20 h: 220 Ah"));
    }

    @Test
    void writesWhatItReads() {
        assertThat(DischargeCurve.parse(CURVE.toString())).isEqualTo(CURVE);
    }

    @Test
    void onePointIsEnough() {
        DischargeCurve single = DischargeCurve.parse("20 h: 100 Ah");

        // 5 A; at 10 A 100 · 0.5^0.03 = 97.9420 Ah
        assertThat(single.at(Current.amperes(5), Ratio.of(1.03)).ampereHours()).isCloseTo(100, within(1e-9));
        assertThat(single.at(Current.amperes(10), Ratio.of(1.03)).ampereHours()).isCloseTo(97.9420, within(1e-4));
    }

    @Test
    void everySlowerDischargeThatYieldsLessIsTold() {
        assertThatThrownBy(() -> DischargeCurve.parse("5 h: 180 Ah; 20 h: 170 Ah; 100 h: 160 Ah"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("capacity over 20 h must be at least 180 Ah, that over 5 h, but was 170 Ah."
                        + " capacity over 100 h must be at least 170 Ah, that over 20 h, but was 160 Ah.");
    }

    @Test
    void aSlowerDischargeTakesASmallerCurrent() {
        // 50 Ah over an hour and 150 Ah over two: 50 A and 75 A
        assertThatThrownBy(() -> DischargeCurve.parse("1 h: 50 Ah; 2 h: 150 Ah"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("150 Ah over 2 h must take a smaller current than 50 Ah over 1 h.");
        // 50 A both times
        assertThatThrownBy(() -> DischargeCurve.parse("1 h: 50 Ah; 2 h: 100 Ah"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("100 Ah over 2 h must take a smaller current than 50 Ah over 1 h.");
        assertThatThrownBy(() -> DischargeCurve.parse("20 h: 200 Ah; 20 h: 220 Ah"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("220 Ah over 20 h must take a smaller current than 200 Ah over 20 h.");
    }

    @Test
    void refusesWhatIsNoPoint() {
        assertThatThrownBy(() -> new DischargeCurve(List.of())).hasMessage("points must not be empty.");
        assertThatThrownBy(() -> DischargeCurve.parse("0 h: -5 Ah"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("over must be from")
                .hasMessageContaining("capacity must be above 0");
        assertThatThrownBy(() -> DischargeCurve.parse("20 h")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aSlowerDischargeMayYieldTheSame() {
        // at 20 A, between the 36 A and the 9 A of the two points
        assertThat(DischargeCurve.parse("5 h: 180 Ah; 20 h: 180 Ah")
                        .at(Current.amperes(20), Ratio.of(1.25))
                        .ampereHours())
                .isCloseTo(180, within(1e-9));
    }
}
