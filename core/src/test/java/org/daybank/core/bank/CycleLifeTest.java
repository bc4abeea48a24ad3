package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CycleLifeTest {
    private static final CycleLife SHEET = CycleLife.parse("0.8: 500; 0.2: 4000; 40 %: 2000");

    @ParameterizedTest
    @CsvSource({
        // the points
        "0.2, 4000",
        "0.4, 2000",
        "0.8, 500",
        // half way on both logarithmic axes: sqrt(0.2 · 0.4) and sqrt(4000 · 2000); sqrt(0.4 · 0.8) and sqrt(2000 ·
        // 500)
        "0.282842712, 2828.42712",
        "0.565685425, 1000",
        // shallower, the same throughput: 4000 · 0.2 / 0.1
        "0.1, 8000",
        // deeper, the last slope, ln(1/4) / ln 2 = −2: 500 · (0.8 / 1)²
        "1, 320"
    })
    void betweenAndBeyondThePoints(double depth, double cycles) {
        // nine digits of the depth, squared, leave eight of the cycles
        assertThat(SHEET.at(Ratio.of(depth))).isCloseTo(cycles, within(1e-8 * cycles));
    }

    @Test
    void aSinglePointKeepsItsThroughput() {
        // 3000 · 0.5 = 1500 full cycles at any depth
        CycleLife one = CycleLife.parse("0.5: 3000");

        assertThat(one.at(Ratio.of(0.1))).isCloseTo(15_000, within(1e-9));
        assertThat(one.at(Ratio.ONE)).isCloseTo(1500, within(1e-9));
    }

    @Test
    void deeperThanASlopeThatIsTooFlatKeepsTheThroughput() {
        // from 1000 to 900 over a doubling; beyond, 900 · 0.5 / 1
        assertThat(CycleLife.parse("0.25: 1000; 0.5: 900").at(Ratio.ONE)).isCloseTo(450, within(1e-9));
    }

    @Test
    void isReadAsItIsWritten() {
        assertThat(SHEET).hasToString("0.2: 4000; 0.4: 2000; 0.8: 500");
        assertThat(CycleLife.parse(SHEET.toString())).isEqualTo(SHEET);
    }

    @Test
    void refusesWhatIsNone() {
        assertThatThrownBy(() -> CycleLife.parse("0: 0; 2: 10"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("depth must be from 0.001 to 1, but was 0. cycles must be from 1 to 100000000, but was 0.");
        assertThatThrownBy(() -> CycleLife.parse("0.5: 20; 2: 10"))
                .hasMessage("depth must be from 0.001 to 1, but was 2.");
        assertThatThrownBy(() -> CycleLife.parse("0.2: 1000; 0.5: 1200; 0.5: 900"))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "1200 cycles at a depth of 0.5 do not follow 1000 at 0.2: each depth stands once and a deeper one lasts no longer. "
                                + "900 cycles at a depth of 0.5 do not follow 1200 at 0.5: each depth stands once and a deeper one lasts no longer.");
        // a deeper discharge may last as long
        assertThat(CycleLife.parse("0.2: 1000; 0.5: 1000").at(Ratio.of(0.3))).isCloseTo(1000, within(1e-9));
        assertThatThrownBy(() -> CycleLife.parse("0.5")).isInstanceOf(IllegalArgumentException.class);
    }
}
