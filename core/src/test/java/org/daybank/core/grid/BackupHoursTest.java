package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class BackupHoursTest {
    private static final double ROUNDING = 1e-9;

    private static BackupNeed bank(double wattHours) {
        return new BackupNeed(Energy.wattHours(wattHours), null, null, null, null);
    }

    private static final BackupNeed EVERYTHING_STATED =
            new BackupNeed(Energy.wattHours(2000), Ratio.of(0.5), true, Ratio.of(0.9), TimeSpan.days(3));

    @Test
    void aHalfFullBankInTheDarkCarriesItsHalf() {
        // 0.5 · 2000 Wh / 100 W = 10 h, whenever the outage begins
        BackupHours hours = BackupHours.of(EVERYTHING_STATED, Days.year(hour -> 0, hour -> 100));
        assertThat(hours.shortest()).isEqualTo(TimeSpan.hours(10));
    }

    /** 100 W around the clock but for 1 kW from six to seven in the evening. */
    private static final GridHours EVENING = Days.year(hour -> 0, hour -> hour == 18 ? 1000 : 100);

    @Test
    void beginsAnOutageAtEveryHour() {
        BackupHours hours = BackupHours.of(bank(2000), EVENING);

        // n hours before six the bank gives 100·n Wh by then. Up to n = 10 it carries the hour of 1 kW: n + 1 + (1000 −
        // 100·n)
        // / 100 = 11 h. From n = 11 to 19 it ends in that hour: n + (2000 − 100·n) / 1000 = 2 + 0.9·n. From 20 on: 20
        // h.
        // 11 · 11 + (9 · 2 + 0.9 · 135) + 4 · 20 = 340.5 h over 24 starts
        assertThat(hours.mean().hours()).isCloseTo(340.5 / 24, within(ROUNDING));
        assertThat(hours.shortest()).isEqualTo(TimeSpan.hours(11));
        // the first n of 10 is at eight on the first day
        assertThat(hours.shortestFrom()).isEqualTo("1 January, 08:00–09:00");
        assertThat(hours.carriedThroughout()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void tellsTheTimeAtTheMeanAndAtTheWorstHour() {
        BackupHours hours = BackupHours.of(bank(2000), EVENING);

        // (23 · 100 + 1000) W / 24 = 137.5 W; 2000 / 137.5 h; 2000 / 1000 h
        assertThat(hours.meanLoad().watts()).isCloseTo(137.5, within(ROUNDING));
        assertThat(hours.worstHourLoad()).isEqualTo(Power.watts(1000));
        assertThat(hours.atMeanLoad().hours()).isCloseTo(2000 / 137.5, within(ROUNDING));
        assertThat(hours.atWorstHour()).isEqualTo(TimeSpan.hours(2));
        assertThat(hours.working().steps()).hasSize(2);
    }

    @Test
    void startsWithWhatIsThere() {
        BackupNeed half = new BackupNeed(Energy.wattHours(2000), Ratio.of(0.5), null, null, null);
        BackupHours hours = BackupHours.of(half, EVENING);

        // at six in the evening 1000 Wh carry just that hour
        assertThat(hours.shortest()).isEqualTo(TimeSpan.hours(1));
        assertThat(hours.shortestFrom()).isEqualTo("1 January, 18:00–19:00");
    }

    @Test
    void theSunChargesWhereItCounts() {
        GridHours sunny = Days.year(hour -> hour == 12 ? 1700 : 0, hour -> 100);
        BackupNeed dark = new BackupNeed(Energy.wattHours(1000), null, false, Ratio.of(0.5), TimeSpan.days(2));
        BackupNeed light = new BackupNeed(Energy.wattHours(1000), null, true, Ratio.of(0.5), TimeSpan.days(2));

        assertThat(BackupHours.of(dark, sunny).mean()).isEqualTo(TimeSpan.hours(10));
        // From noon on: full; 10 h. From eleven: 900 Wh, at noon (1700 − 100) · 0.5 = 800 fill it up to 1000, then 10
        // h: 12 h.
        // From two at night: 10 h to noon with nothing left, then 800 Wh: 10 + 1 + 8 = 19 h. From one: out at eleven,
        // 10 h.
        BackupHours hours = BackupHours.of(light, sunny);
        // starts at 0, 1 and from 13 on: 10 h. At n hours before noon, n from 0 to 10: held 1000 − 100·n, then at most
        // 1000:
        // n + 1 + min(1000, 1800 − 100·n) / 100 = n + 11 up to n = 8; 19 for 9 and 10
        assertThat(hours.shortest()).isEqualTo(TimeSpan.hours(10));
        double sum = 13 * 10 + (9 * 11 + 36) + 2 * 19;
        assertThat(hours.mean().hours()).isCloseTo(sum / 24, within(ROUNDING));
    }

    @Test
    void whatIsCarriedLongestIsNotFollowedFurther() {
        BackupNeed large = new BackupNeed(Energy.kilowattHours(50), null, null, null, TimeSpan.days(2));
        BackupHours hours = BackupHours.of(large, EVENING);

        assertThat(hours.shortest()).isEqualTo(TimeSpan.days(2));
        assertThat(hours.atMeanLoad()).isEqualTo(TimeSpan.days(2));
        assertThat(hours.carriedThroughout()).isEqualTo(Ratio.ONE);
        assertThat(BackupHours.of(large, Days.year(hour -> 0, hour -> 0)).atWorstHour())
                .isEqualTo(TimeSpan.days(2));
    }

    @Test
    void refusesABankWithoutEnergy() {
        assertThatThrownBy(() -> bank(0))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("usable must be above 0");
        assertThatThrownBy(() -> new BackupNeed(Energy.wattHours(1), Ratio.of(1.1), null, null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("startsWith must be from 0 to 1, but was 1.1.");
    }
}
