package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class GridFlowsTest {
    /** Of sums over some thousand hours, in Wh. */
    private static final double ROUNDING = 1e-6;

    /** 3 kW from ten to two, 500 W of load around the clock. */
    private static final GridHours YEAR = Days.year(hour -> hour >= 10 && hour < 14 ? 3000 : 0, hour -> 500);

    @Test
    void loadsTakeWhatTheyNeedFirst() {
        GridFlows flows = GridFlows.of(YEAR, null, null);
        EnergyFlows january = flows.months().get(0).flows();

        // a day: 12 kWh of load, 4 h · 500 W of it from the array, 12 kWh offered; 31 days
        assertThat(january.load().wattHours()).isCloseTo(31 * 12_000, within(ROUNDING));
        assertThat(january.selfUse().wattHours()).isCloseTo(31 * 2_000, within(ROUNDING));
        assertThat(january.imported().wattHours()).isCloseTo(31 * 10_000, within(ROUNDING));
        assertThat(january.exported().wattHours()).isCloseTo(31 * 10_000, within(ROUNDING));
        assertThat(january.clipped().wattHours()).isZero();
        assertThat(flows.months().get(1).flows().load().wattHours()).isCloseTo(28 * 12_000, within(ROUNDING));
        // 2 of 12 kWh either way
        assertThat(flows.selfUseShare().fraction()).isCloseTo(1 / 6.0, within(1e-12));
        assertThat(flows.loadCovered().fraction()).isCloseTo(1 / 6.0, within(1e-12));
    }

    @Test
    void invertersAndGridTakeNoMoreThanTheirLimits() {
        GridFlows flows = GridFlows.of(YEAR, Power.kilowatts(2), Power.watts(1200));

        // an hour: 3 kW offered, 2 kW given, 0.5 kW used, of 1.5 kW left 1.2 kW exported; 1.3 kW clipped; 4 h, 365 days
        assertThat(flows.yearly().exported().wattHours()).isCloseTo(365 * 4 * 1200, within(ROUNDING));
        assertThat(flows.yearly().clipped().wattHours()).isCloseTo(365 * 4 * 1300, within(ROUNDING));
        assertThat(flows.yearly().imported().wattHours()).isCloseTo(365 * 10_000, within(ROUNDING));
        // 0.5 kW of 1.7 kW
        assertThat(flows.selfUseShare().fraction()).isCloseTo(0.5 / 1.7, within(1e-12));
    }

    @Test
    void aMeanYearIsTheMeanOfTheYears() {
        GridFlows flows = GridFlows.of(List.of(YEAR, Days.year(hour -> 0, hour -> 1000)), null, null);

        assertThat(flows.years()).isEqualTo(2);
        assertThat(flows.months()).hasSize(24);
        assertThat(flows.months().get(12))
                .extracting(FlowMonth::year, FlowMonth::month)
                .containsExactly(1, Month.JANUARY);
        // (12 + 24) kWh / 2 a day
        assertThat(flows.yearly().load().wattHours()).isCloseTo(365 * 18_000, within(ROUNDING));
    }

    @Test
    void withoutSunOrLoadThereAreNoShares() {
        GridFlows flows = GridFlows.of(Days.year(hour -> 0, hour -> 0), null, null);

        assertThat(flows.selfUseShare().fraction()).isZero();
        assertThat(flows.loadCovered().fraction()).isZero();
    }

    @Test
    void warnsOfBackfeedAndShowsItsSums() {
        GridFlows flows = GridFlows.of(YEAR, null, null);

        assertThat(flows.hazards()).extracting(hazard -> hazard.code().code()).containsExactly("backfeed");
        // 365 · 12 kWh = 4.38 MWh, 365 · 2 kWh = 730 kWh
        assertThat(flows.working().steps()).extracting(Step::substituted).contains("4.38 MWh − 730 kWh");
    }

    @Test
    void refusesHoursThatDoNotGoTogether() {
        assertThatThrownBy(() -> new GridHours(
                        Days.alike(hour -> hour - 1.0),
                        Days.alike(hour -> 1),
                        new HourCalendar(2024, HourCalendar.LEAP)))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path, Problem::code)
                                .containsExactly(
                                        tuple("/array", ProblemCode.INCONSISTENT),
                                        tuple("/array", ProblemCode.OUT_OF_RANGE),
                                        tuple("/load", ProblemCode.INCONSISTENT)))
                .hasMessage("array must have the year's 8784 hours, but has 8760. "
                        + "array must be at least 0 W in every hour, but was -1.0 W. "
                        + "load must have the year's 8784 hours, but has 8760.");
        assertThatThrownBy(() -> GridFlows.of(List.of(), null, null)).isInstanceOf(InvalidInput.class);
    }
}
