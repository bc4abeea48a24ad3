package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.daybank.core.Refused;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class AxisTest {
    static final List<Axis> AXES = List.of(
            Axis.of(1.0, 2.0, 3.0),
            Axis.range(Power.watts(1), Power.watts(9), 9),
            Axis.logRange(Power.watts(2), Power.watts(8), 3),
            Axis.drawn(Distribution.logNormal(Power.watts(5), 2)));

    static final List<Sampling> SAMPLINGS = List.of(Sampling.random(100, 7), Sampling.sobol(64), Sampling.grid());

    private static final NumberForm NUMBERS =
            NumberForm.of(double.class, null, null).orElseThrow();

    @Test
    void aListHasOneToAMillionValues() {
        assertThat(Refused.places(() -> Axis.of())).containsExactly("/values");
        assertThat(new Axis.Listed(Collections.nCopies(Axis.MOST, "x")).values())
                .hasSize(Axis.MOST);
        assertThatThrownBy(() -> new Axis.Listed(Collections.nCopies(Axis.MOST + 1, "x")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("values must have at most 1000000 elements, but has 1000001.");
    }

    @Test
    void aRangeHasTwoEndsOfOneKindAndOneToAMillionValues() {
        assertThat(Refused.places(() -> Axis.range(Power.watts(1), Energy.wattHours(2), 0)))
                .containsExactly("/count", "/to");
        assertThatThrownBy(() -> Axis.range(Power.watts(1), Energy.wattHours(2), 2))
                .hasMessageContaining("must be two quantities or numbers of one kind but are 1 W and 2 Wh");
        assertThat(Refused.places(() -> Axis.range("a", "b", 2))).containsExactly("/to");
        assertThat(Refused.places(() -> new Axis.Range(null, 1.0, 2, false))).containsExactly("/from");
        assertThat(Refused.places(() -> new Axis.Range(1.0, null, 2, true))).containsExactly("/to");
        assertThat(Refused.places(() -> Axis.range(1.0, 2.0, Axis.MOST + 1))).containsExactly("/count");
        assertThatCode(() -> Axis.range(2.0, -1.0, Axis.MOST)).doesNotThrowAnyException();
        assertThatCode(() -> Axis.range(2.0, -1.0, 1)).doesNotThrowAnyException();
    }

    @Test
    void bothEndsOfALogarithmicRangeAreAboveZero() {
        assertThatThrownBy(() -> Axis.logRange(0.0, 1.0, 2))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("must be above zero but are 0.0 and 1.0");
        assertThat(Refused.places(() -> Axis.logRange(1.0, 0.0, 2))).containsExactly("/from");
        assertThat(Refused.places(() -> Axis.logRange(-1.0, -2.0, 2))).containsExactly("/from");
        assertThatCode(() -> Axis.logRange(1e-9, 1.0, 2)).doesNotThrowAnyException();
    }

    /** A quarter of the way from 2 to 10 is 4; of the orders of magnitude from 1 to 10,000, 10. */
    @Test
    void aRangeThatIsDrawnFromGivesEveryValueBetweenItsEnds() {
        AxisValues straight = AxisValues.range(new Axis.Range(2.0, 10.0, 2, false), NUMBERS);
        assertThat((double) straight.drawn(0.25)).isEqualTo(4, within(1e-12));
        assertThat((double) straight.drawn(0)).isEqualTo(2);
        AxisValues logarithmic = AxisValues.range(new Axis.Range(1.0, 10_000.0, 2, true), NUMBERS);
        assertThat((double) logarithmic.drawn(0.25)).isEqualTo(10, within(1e-12));
        assertThat((double) logarithmic.drawn(0.75)).isEqualTo(1000, within(1e-9));
    }

    @Test
    void aRangeOnAGridHasItsEndsAndRoundStepsBetweenThem() {
        AxisValues tenths = AxisValues.range(new Axis.Range(0.0, 1.0, 11, false), NUMBERS);
        assertThat(List.of(tenths.at(0), tenths.at(1), tenths.at(3), tenths.at(7), tenths.at(10)))
                .containsExactly(0.0, 0.1, 0.3, 0.7, 1.0);
        assertThat(AxisValues.range(new Axis.Range(3.0, 9.0, 1, false), NUMBERS).at(0))
                .as("a single value is the first end")
                .isEqualTo(3.0);
        AxisValues powers = AxisValues.range(new Axis.Range(2.0, 32.0, 5, true), NUMBERS);
        assertThat((double) powers.at(1)).isEqualTo(4, within(1e-12));
        assertThat((double) powers.at(3)).isEqualTo(16, within(1e-12));
        assertThat(powers.at(4)).isEqualTo(32.0);
    }

    @Test
    void aListThatIsDrawnFromGivesEachValueAsOften() {
        AxisValues four = AxisValues.listed(List.of("a", "b", "c", "d"));
        assertThat(List.of(four.drawn(0), four.drawn(0.24), four.drawn(0.25), four.drawn(0.74), four.drawn(0.999)))
                .containsExactly("a", "a", "b", "c", "d");
    }

    /** Drawn, a distribution of one value is that value; on a grid it has none. */
    @Test
    void aDistributionIsOnlyDrawnFrom() {
        AxisValues drawn = AxisValues.drawn(Distribution.uniform(TimeSpan.days(2), TimeSpan.days(2)), NUMBERS);
        assertThat((double) drawn.drawn(0.3)).isEqualTo(48, within(1e-12));
        assertThat(drawn.count()).isZero();
        assertThatThrownBy(() -> drawn.at(0)).isInstanceOf(IllegalStateException.class);
    }
}
