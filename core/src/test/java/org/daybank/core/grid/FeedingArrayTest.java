package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.YieldModel;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.junit.jupiter.api.Test;

/** Ten PL-435N of 435 W in a sun of 1 kW/m² from noon to one, every day. */
class FeedingArrayTest {
    private static final PvModule MODULE = Catalog.sample().modules().stream()
            .filter(module -> module.model().equals("PL-435N"))
            .findFirst()
            .orElseThrow();
    private static final ArrayPolicy PROPORTIONAL = ArrayPolicy.standard().withYieldModel(YieldModel.PROPORTIONAL);
    private static final FeedingArray TEN = new FeedingArray(MODULE, 10, Power.kilowatts(3), null);

    /** In air of −3.75 °C a cell of 43 °C NOCT is (43 − 20) / 0.8 = 28.75 K warmer in full sun: 25 °C. */
    private static final SunnyYears SUN = sun();

    private static final LoadProfile LOADS = LoadProfile.of(
            EnergyDemandBuilder.builder()
                    .loads(List.of(
                            LoadBuilder.builder()
                                    .name("kept")
                                    .supply(Supply.AC)
                                    .power(Power.watts(100))
                                    .hoursPerDay(24.0)
                                    .essential(true)
                                    .build(),
                            LoadBuilder.builder()
                                    .name("oven")
                                    .supply(Supply.AC)
                                    .power(Power.watts(1400))
                                    .windows(List.of(TimeWindow.parse("18:00-19:00")))
                                    .daysPerWeek(5.0)
                                    .build()))
                    .build(),
            LoadPolicy.standard());

    private static SunnyYears sun() {
        HourlySeries dark = HourlySeries.wattsPerSquareMetre(new double[Days.CALENDAR.hours()]);
        HourlySeries noon = HourlySeries.wattsPerSquareMetre(IntStream.range(0, Days.CALENDAR.hours())
                .mapToDouble(hour -> hour % 24 == 12 ? 1000 : 0)
                .toArray());
        HourlySeries air = HourlySeries.celsius(Collections.nCopies(Days.CALENDAR.hours(), -3.75).stream()
                .mapToDouble(Double::doubleValue)
                .toArray());
        return new SunnyYears(List.of(new SunnyYears.Year(
                new HourlySun(
                        ExposureBuilder.builder()
                                .plane(new Plane(Angle.degrees(30), Angle.degrees(180)))
                                .build(),
                        SunPolicy.standard(),
                        Days.CALENDAR,
                        noon,
                        dark,
                        dark,
                        noon,
                        noon),
                air)));
    }

    private static List<Ratio> snow(double january) {
        return IntStream.range(0, 12)
                .mapToObj(month -> Ratio.of(month == 0 ? january : 0))
                .toList();
    }

    @Test
    void offersWhatDirtAgeAndSnowLeave() {
        GridHours hours = TEN.beside(LOADS, SUN, snow(0.5), PROPORTIONAL).get(0);

        // 10 · 435 W · 0.95 · 0.98 · 0.98 · 0.95 · 0.97 = 3657.300… W before the inverters' 3 kW; half of it in January
        double whole = 4350 * 0.95 * 0.98 * 0.98 * 0.95 * 0.97;
        assertThat(hours.array().at(12)).isCloseTo(whole / 2, within(1e-9));
        assertThat(hours.array().at(31 * 24 + 12)).isCloseTo(whole, within(1e-9));
        assertThat(hours.array().at(13)).isZero();
    }

    @Test
    void laysTheMeanDayOfTheLoadsOverTheYear() {
        GridHours hours = TEN.beside(LOADS, SUN, snow(0), PROPORTIONAL).get(0);

        // at six 100 W + 1400 W · 5 / 7
        assertThat(hours.load().at(3)).isCloseTo(100, within(1e-9));
        assertThat(hours.load().at(18)).isCloseTo(1100, within(1e-9));
        assertThat(hours.load().at(200 * 24 + 18)).isCloseTo(1100, within(1e-9));
    }

    @Test
    void inAnOutageOnlyTheEssentialLoadsDraw() {
        GridHours outage =
                TEN.beside(LOADS, SUN, snow(0), PROPORTIONAL).get(0).ofEssentials(LOADS, TEN.inverterPower());

        // the inverter is taken as (100 + 1400) W · 1.25 with 0.8 % idle draw and 92 %: 15 + 100 / 0.92
        assertThat(outage.load().at(18)).isCloseTo(15 + 100 / 0.92, within(1e-9));
        assertThat(outage.array().at(12)).isEqualTo(3000);
    }

    @Test
    void refusesAnArrayOfNothing() {
        assertThatThrownBy(() -> new FeedingArray(MODULE, 0, Power.ZERO, null))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/modules", "/inverterPower"));
        assertThatThrownBy(() -> new FeedingArray(MODULE, 1, Power.kilowatts(1), Ratio.of(0.4)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("inverterEfficiency must be from 0.5 to 1, but was 0.4.");
        assertThatThrownBy(() -> TEN.beside(LOADS, SUN, List.of(), PROPORTIONAL))
                .isInstanceOf(InvalidInput.class);
    }
}
