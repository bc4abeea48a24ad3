package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

/**
 * Quarry Lane Workshop by hand: 42 PL-435N on a three-phase service without a bank, −22 °C on the coldest morning.
 *
 * <p>One module: 39.4 V · (1 + 0.0025 · 47) = 44.0295 V open in the cold, at its best 32.9 V · (1 + 0.00345 · 47) = 38.2347 V;
 * 26.6 V in the hottest sun are taken as given. 42 · 435 W = 18.27 kW.
 */
class QuarryLaneTest {
    private static final Catalog SAMPLE = Catalog.sample();

    private static final PvModule MODULE = SAMPLE.modules().stream()
            .filter(module -> module.model().equals("PL-435N"))
            .findFirst()
            .orElseThrow();

    private static final GridArray ARRAY = new GridArray(
            new ModuleExtremes(
                    MODULE,
                    Temperature.celsius(-22),
                    Temperature.celsius(70),
                    Voltage.volts(44.0295),
                    Voltage.volts(26.6)),
            42,
            Ratio.of(0.9),
            GridSheets.SUNSHINE);

    private static final GridService GRID = new GridService(
            new Service(Voltage.volts(230), Frequency.hertz(50), Phases.THREE), Temperature.celsius(42));

    private static final GridInverterSelection ANSWER = GridInverterSelection.of(
            GRID, ARRAY, SAMPLE.stringInverters(), SAMPLE.microinverters(), GridPolicy.standard());

    @Test
    void oneInverterOfFifteenKilowatts() {
        StringInverterFit fit = ANSWER.stringInverters().ranked().get(0);

        // 18.27 kW / 15 kW = 1.218, and 1940 EUR are less than two of 8 kW or three of 5 kW
        assertThat(fit.product()).isEqualTo("TG-T15");
        assertThat(fit.count()).isEqualTo(1);
        assertThat(fit.price()).isEqualTo(Money.of("1940", "EUR"));
        assertThat(fit.dcAcRatio().fraction()).isCloseTo(1.218, within(1e-12));
        // 980 V / 44.03 V = 22.3 and 850 V / 38.23 V = 22.2: two strings of 21, one on each tracker, 924.6 V in the
        // cold
        assertThat(fit.units().get(0).trackers()).containsExactly(new TrackerStrings(2, 1, 21));
        Check coldest = Objects.requireNonNull(InverterSheets.check(fit.checks(), "coldestOpenCircuitVoltage"));
        assertThat(coldest.value().orElseThrow().baseValue()).isCloseTo(924.6195, within(1e-4));
        // 18.27 kW · 0.9 · 0.98 = 16.114 kW in full sun: full from 930.86 W/m²
        assertThat(fit.clipping().fraction())
                .isCloseTo(
                        GridSheets.SUNSHINE
                                .shareAbove(Irradiance.wattsPerSquareMetre(1000 * 15_000 / (18_270 * 0.9 * 0.98)))
                                .fraction(),
                        within(1e-12));
    }

    @Test
    void tenAndTwentyFiveKilowattsMissTheRatio() {
        // 18.27 kW / 10 kW = 1.83, / 20 kW = 0.91; / 25 kW = 0.73
        assertThat(ANSWER.stringInverters().rejected())
                .filteredOn(rejection -> !rejection.product().equals("TG-U7"))
                .extracting(Rejection::product)
                .containsExactly("TG-T10", "TG-T25");
        assertThat(ANSWER.stringInverters().rejected())
                .filteredOn(rejection -> rejection.product().equals("TG-T10"))
                .flatExtracting(Rejection::failedChecks)
                .extracting(check -> check.rule().code())
                .containsExactly("dcAcRatio");
    }

    @Test
    void microinvertersInOrderOfPrice() {
        List<MicroinverterFit> ranked = ANSWER.microinverters().ranked();

        // 11 · 398 = 4378, 21 · 219 = 4599, 42 · 129 = 5418
        assertThat(ranked).extracting(MicroinverterFit::product).containsExactly("TM-1600T", "TM-800D", "TM-350");
        assertThat(ranked).extracting(MicroinverterFit::count).containsExactly(11, 21, 42);
        assertThat(ranked)
                .extracting(MicroinverterFit::price)
                .containsExactly(Money.of("4378", "EUR"), Money.of("4599", "EUR"), Money.of("5418", "EUR"));
        // 1600 W / 690 V = 2.319 A: six on 16 A, so 6 + 5; 800 W / 230 V = 3.478 A: four, seven on each line are 4 + 3;
        // 350 W / 230 V = 1.522 A: ten, fourteen on each line are 7 + 7
        assertThat(ranked).extracting(MicroinverterFit::mostOnBranch).containsExactly(6, 4, 10);
        assertThat(ranked).extracting(MicroinverterFit::branches).containsExactly(2, 6, 6);
        assertThat(ranked.get(0).branchCurrent().amperes()).isCloseTo(6 * 1600 / 690.0, within(1e-9));
        assertThat(ranked.get(1).branchCurrent().amperes()).isCloseTo(4 * 800 / 230.0, within(1e-9));
        assertThat(ranked.get(2).branchCurrent().amperes()).isCloseTo(7 * 350 / 230.0, within(1e-9));
    }

    @Test
    void cautionsAppearWhenTheirCauseIsThere() {
        assertThat(ANSWER.hazards())
                .extracting(hazard -> hazard.code().code())
                .containsExactly("directVoltage", "backfeed", "preliminarySizes");
        // microinverters keep the array's voltage below what is dangerous to touch
        GridInverterSelection micro =
                GridInverterSelection.of(GRID, ARRAY, List.of(), SAMPLE.microinverters(), GridPolicy.standard());
        assertThat(micro.hazards())
                .extracting(hazard -> hazard.code().code())
                .containsExactly("backfeed", "preliminarySizes");
        // one module of 60 V for one input may be touched, one of 61 V not
        for (int volts : List.of(60, 61)) {
            ModuleExtremes extremes = new ModuleExtremes(
                    MODULE,
                    Temperature.celsius(-22),
                    Temperature.celsius(70),
                    Voltage.volts(volts),
                    Voltage.volts(26.6));
            StringInverter small = GridSheets.STRING
                    .withPower(Power.watts(360))
                    .withTrackingLowest(Voltage.volts(20))
                    .withTrackingHighest(Voltage.volts(50))
                    .withMaximumInputVoltage(Voltage.volts(70));
            GridInverterSelection one = GridInverterSelection.of(
                    GRID,
                    new GridArray(extremes, 1, Ratio.of(0.9), GridSheets.SUNSHINE),
                    List.of(small),
                    List.of(),
                    GridPolicy.standard());
            assertThat(one.stringInverters().ranked()).hasSize(1);
            assertThat(one.hazards().stream()
                            .anyMatch(hazard -> hazard.code().code().equals("directVoltage")))
                    .isEqualTo(volts > 60);
        }
        GridInverterSelection none = GridInverterSelection.of(GRID, ARRAY, List.of(), List.of(), GridPolicy.standard());
        assertThat(none.hazards()).isEmpty();
    }

    @Test
    void workingShowsTheNumbersUsed() {
        assertThat(ANSWER.working().steps())
                .filteredOn(step -> step.name().contains("TG-T15"))
                .extracting(Step::result)
                .containsExactly("924.6 V", "558.6 V", "1.218");
        // 4 · 435 W / 1600 W = 1.0875, as a binary fraction a hair less
        assertThat(ANSWER.working().steps())
                .filteredOn(step -> step.name().contains("TM-1600T"))
                .extracting(Step::result)
                .containsExactly("1.087");
    }
}
