package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class ArrayHoursTest {
    static final KineticWells WELLS = new KineticWells(Ratio.of(0.3), 0.6);

    private static final Offset<Double> ROUNDING = within(1e-9);

    @Test
    void aTrackingControllerLosesSomeAndGivesNoMoreThanItCan() {
        ArrayHours hours = new ArrayHours(1, true);

        // 1000 W · 0.95 = 950 W, of which 900 W are given; of 200 W all 190 W
        hours.track(0, 1000, 0.95, 900);
        hours.track(0, 200, 0.95, 900);

        assertThat(hours.converted[0]).isCloseTo(50 + 10, ROUNDING);
        assertThat(hours.clipped[0]).isCloseTo(50, ROUNDING);
        // whatever the bank holds
        assertThat(hours.atBank(0, 0)).isCloseTo(1090, ROUNDING);
        assertThat(hours.atBank(0, 1)).isCloseTo(1090, ROUNDING);
    }

    @Test
    void withoutTrackingItFallsInAStraightLineAsTheBankFills() {
        ArrayHours hours = new ArrayHours(1, false);

        hours.pass(0, 60, 50);
        hours.pass(0, 40, 30);

        // 100 W into an empty bank, 80 W into a full one
        assertThat(hours.atBank(0, 0)).isCloseTo(100, ROUNDING);
        assertThat(hours.atBank(0, 0.25)).isCloseTo(95, ROUNDING);
        assertThat(hours.atBank(0, 1)).isCloseTo(80, ROUNDING);
        // a hair beyond either end is the end
        assertThat(hours.atBank(0, 1.1)).isCloseTo(80, ROUNDING);
        assertThat(hours.atBank(0, -0.1)).isCloseTo(100, ROUNDING);
        assertThat(hours.converted[0]).isZero();
    }

    @Test
    void wellsWithoutWidthAreRefused() {
        assertThatThrownBy(() -> new KineticWells(Ratio.ONE, 0.5))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("availableShare must be from 0.001 to 0.999, but was 1.");
        assertThatThrownBy(() -> new KineticWells(null, 0.5))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("availableShare is required.");
    }
}
