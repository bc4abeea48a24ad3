package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.inverter.GridSheets.MODULE;
import static org.daybank.core.inverter.GridSheets.SINGLE_PHASE;
import static org.daybank.core.inverter.GridSheets.STRING;
import static org.daybank.core.inverter.GridSheets.SUNSHINE;
import static org.daybank.core.inverter.GridSheets.THREE_PHASE;
import static org.daybank.core.inverter.GridSheets.array;
import static org.daybank.core.inverter.InverterSheets.broken;
import static org.daybank.core.inverter.InverterSheets.check;
import static org.daybank.core.inverter.InverterSheets.margin;
import static org.daybank.core.inverter.InverterSheets.service;

import java.util.List;
import org.daybank.core.array.PvModuleBuilder;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** Each rule broken once, with nothing else broken; strings by hand. */
class StringInverterFitTest {
    private static final GridPolicy POLICY = GridPolicy.standard();

    /**
     * 12 kW on 10 kW. Strings of 5 (160 V / 32 V) to 16: 980 V / 56 V = 17.5, and at their best in the cold 40 V · (1 + 0.0045 ·
     * 40) = 47.2 V each, 800 V / 47.2 V = 16.9.
     */
    private static final GridArray THIRTY = array(30);

    @Test
    void fitsWithItsMargins() {
        StringInverterFit fit = fit(THREE_PHASE, THIRTY, STRING);

        assertThat(broken(fit.checks())).isEmpty();
        assertThat(fit.fits()).isTrue();
        assertThat(fit.count()).isEqualTo(1);
        assertThat(fit.dcAcRatio().fraction()).isCloseTo(1.2, within(1e-12));
        assertThat(fit.price()).isEqualTo(Money.of("1500", "EUR"));
        // the fewest strings: two of 15, one on each tracker
        assertThat(fit.units())
                .containsExactly(new UnitStrings(1, 30, Power.kilowatts(12), List.of(new TrackerStrings(2, 1, 15))));
        // 15 · 56 V = 840 V of 980 V; 15 · 32 V = 480 V over 160 V; 15 · 47.2 V = 708 V of 800 V
        assertThat(margin(fit.checks(), "coldestOpenCircuitVoltage")).isCloseTo(140 / 980.0, within(1e-12));
        assertThat(margin(fit.checks(), "systemVoltage")).isCloseTo(0.16, within(1e-12));
        assertThat(margin(fit.checks(), "hottestMaximumPowerVoltage")).isCloseTo(2, within(1e-12));
        assertThat(margin(fit.checks(), "coldestMaximumPowerVoltage")).isCloseTo(92 / 800.0, within(1e-12));
        // 10 A of 22 A; 10.4 A · 1.25 = 13 A of 30 A; 12 kW of 15 kW; 1.2 between 1.0 and 1.4
        assertThat(margin(fit.checks(), "inputCurrent")).isCloseTo(12 / 22.0, within(1e-12));
        assertThat(margin(fit.checks(), "shortCircuitCurrent")).isCloseTo(17 / 30.0, within(1e-12));
        assertThat(margin(fit.checks(), "maximumArrayPower")).isCloseTo(0.2, within(1e-12));
        assertThat(margin(fit.checks(), "dcAcRatio")).isCloseTo(0.2, within(1e-12));
        // 10 kW / (3 · 230 V) = 14.4928 A into each line
        assertThat(fit.lineCurrent().amperes()).isCloseTo(10_000 / 690.0, within(1e-12));
        assertThat(fit.stringFuses()).isFalse();
    }

    @Test
    void clippingIsTheShareOfTheSunAboveTheFullOutput() {
        // 14 kW · 0.9 · 0.98 = 12.348 kW in full sun: its output is full from 809.85 W/m²
        StringInverterFit fit = fit(THREE_PHASE, array(35), STRING);

        assertThat(fit.clipping().fraction())
                .isCloseTo(
                        SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(1000 * 10_000 / (14_000 * 0.9 * 0.98)))
                                .fraction(),
                        within(1e-12));
        assertThat(fit.clipping().fraction()).isPositive();
        assertThat(broken(StringInverterFit.of(THREE_PHASE, array(35), STRING, POLICY.withClippingLimit(Ratio.ZERO))
                        .checks()))
                .containsExactly("clipping");
        // in 50 °C it gives 5 K · 2 % less: 9 kW
        GridService hot = THREE_PHASE.withHottestAir(Temperature.celsius(50));
        assertThat(fit(hot, array(35), STRING).clipping().fraction())
                .isCloseTo(
                        SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(1000 * 9_000 / (14_000 * 0.9 * 0.98)))
                                .fraction(),
                        within(1e-12));
    }

    @Test
    void unevenStringsTakeTrackersOfTheirOwn() {
        // 31 = 15 + 16, one on each tracker
        assertThat(fit(THREE_PHASE, array(31), STRING).units().get(0).trackers())
                .containsExactly(new TrackerStrings(1, 1, 16), new TrackerStrings(1, 1, 15));
        // 34 take three strings: 12, 11, 11: the two short ones share a tracker
        assertThat(fit(THREE_PHASE, array(34), STRING).units().get(0).trackers())
                .containsExactly(new TrackerStrings(1, 1, 12), new TrackerStrings(1, 2, 11));
        // with one tracker 34 = 2 · 17 are too long and three strings uneven; four are more than its current takes
        StringInverterFit one = fit(THREE_PHASE, array(34), STRING.withTrackers(1));
        assertThat(one.fits()).isFalse();
        // on one tracker for four strings: 32 = 2 · 16
        assertThat(fit(THREE_PHASE, array(32), STRING.withTrackers(1))
                        .units()
                        .get(0)
                        .trackers())
                .containsExactly(new TrackerStrings(1, 2, 16));
    }

    @Test
    void severalUnitsShareTheModulesAndTheCountNearestToTheAimIsTaken() {
        // 24 kW / 10 kW / 1.2 = 2
        StringInverterFit two = fit(THREE_PHASE, array(60), STRING);
        assertThat(two.count()).isEqualTo(2);
        assertThat(two.units()).hasSize(1);
        assertThat(two.units().get(0).units()).isEqualTo(2);
        assertThat(two.units().get(0).modules()).isEqualTo(30);
        // 61 modules: 31 on one and 30 on the other
        assertThat(fit(THREE_PHASE, array(61), STRING).units())
                .extracting(UnitStrings::units, UnitStrings::modules)
                .containsExactly(tuple(1, 31), tuple(1, 30));
        // 240 kW / 10 kW / 1.2 = 20, with 30 modules on each
        StringInverterFit twenty = fit(THREE_PHASE, array(600), STRING);
        assertThat(twenty.count()).isEqualTo(20);
        assertThat(twenty.fits()).isTrue();
        assertThat(twenty.dcAcRatio().fraction()).isCloseTo(1.2, within(1e-12));
        // 20 kW: one unit would be at 2.0, two are at 1.0
        assertThat(fit(THREE_PHASE, array(50), STRING).count()).isEqualTo(2);
    }

    @Test
    void ratioOutOfRange() {
        // 3.6 kW on 10 kW: 0.36, and more units make it worse
        StringInverterFit fit = fit(THREE_PHASE, array(9), STRING);
        assertThat(broken(fit.checks())).containsExactly("dcAcRatio");
        assertThat(margin(fit.checks(), "dcAcRatio")).isCloseTo(0.36 - 1, within(1e-12));
        // 18 kW on one unit are 1.8, on two 0.9
        assertThat(broken(fit(THREE_PHASE, array(45), STRING).checks())).containsExactly("dcAcRatio");
    }

    @Test
    void voltages() {
        // five modules, 3.2 kW on 3 kW: 160 V in the heat is just enough, 280 V in the cold just too much for 285 V ·
        // 0.98
        StringInverter small = STRING.withPower(Power.watts(1700))
                .withTrackingHighest(Voltage.volts(250))
                .withMaximumInputVoltage(Voltage.volts(286));
        assertThat(broken(fit(THREE_PHASE, array(5), small).checks())).isEmpty();
        assertThat(broken(fit(THREE_PHASE, array(5), small.withMaximumInputVoltage(Voltage.volts(285)))
                        .checks()))
                .containsExactly("hottestMaximumPowerVoltage");
        assertThat(broken(fit(THREE_PHASE, array(5), small.withTrackingLowest(Voltage.volts(161)))
                        .checks()))
                .containsExactly("hottestMaximumPowerVoltage");
        // 5 · 47.2 V = 236 V
        assertThat(broken(fit(THREE_PHASE, array(5), small.withTrackingHighest(Voltage.volts(235)))
                        .checks()))
                .containsExactly("hottestMaximumPowerVoltage");
        // a single module is too much: no string can be made
        StringInverter low = small.withTrackingLowest(Voltage.volts(20))
                .withTrackingHighest(Voltage.volts(50))
                .withMaximumInputVoltage(Voltage.volts(57));
        assertThat(broken(fit(THREE_PHASE, array(1), low.withPower(Power.watts(340)))
                        .checks()))
                .containsExactly("coldestOpenCircuitVoltage");
    }

    @Test
    void insulationOfTheModules() {
        GridArray array = new GridArray(
                GridSheets.extremes(PvModuleBuilder.builder(MODULE)
                        .systemVoltage(Voltage.volts(600))
                        .build()),
                30,
                Ratio.of(0.9),
                SUNSHINE);
        // 600 V / 56 V = 10.7: three strings of ten
        assertThat(fit(THREE_PHASE, array, STRING).units().get(0).trackers())
                .containsExactly(new TrackerStrings(1, 2, 10), new TrackerStrings(1, 1, 10));
    }

    @Test
    void currents() {
        // one string on each tracker brings 10 A and, shorted, 13 A
        assertThat(broken(fit(THREE_PHASE, THIRTY, STRING.withMaximumInputCurrent(Current.amperes(9.9)))
                        .checks()))
                .containsExactly("inputCurrent");
        assertThat(broken(fit(
                                THREE_PHASE,
                                THIRTY,
                                STRING.withMaximumInputCurrent(Current.amperes(11))
                                        .withMaximumShortCircuitCurrent(Current.amperes(12.9)))
                        .checks()))
                .containsExactly("shortCircuitCurrent");
        assertThat(broken(fit(THREE_PHASE, THIRTY, STRING.withMaximumArrayPower(Power.watts(11_999)))
                        .checks()))
                .containsExactly("maximumArrayPower");
    }

    @Test
    void threeStringsOnATrackerNeedFuses() {
        // (3 − 1) · 1.25 · 10.4 A = 26 A over the 20 A that protect a module; with two 13 A
        StringInverter three = STRING.withTrackers(1)
                .withMaximumShortCircuitCurrent(Current.amperes(60))
                .withMaximumInputCurrent(Current.amperes(40));
        assertThat(fit(THREE_PHASE, array(33), three).stringFuses()).isTrue();
        assertThat(fit(THREE_PHASE, array(32), three).stringFuses()).isFalse();
        // nor where the modules stand just the 13 A
        GridArray thirteen = new GridArray(
                GridSheets.extremes(MODULE.withSeriesFuse(Current.amperes(13))), 32, Ratio.of(0.9), SUNSHINE);
        assertThat(fit(THREE_PHASE, thirteen, three).stringFuses()).isFalse();
    }

    @Test
    void serviceMatch() {
        assertThat(broken(fit(SINGLE_PHASE, THIRTY, STRING).checks())).containsExactly("phases");
        assertThat(broken(fit(THREE_PHASE.withService(service(277, Phases.THREE)), THIRTY, STRING)
                        .checks()))
                .containsExactly("outputVoltage");
        // 272 V on 256 V is just 1/16 more
        assertThat(broken(StringInverterFit.of(
                                THREE_PHASE.withService(service(256, Phases.THREE)),
                                THIRTY,
                                STRING.withOutputVoltage(Voltage.volts(272)),
                                POLICY.withVoltageTolerance(Ratio.of(0.0625)))
                        .checks()))
                .isEmpty();
        assertThat(broken(fit(THREE_PHASE, THIRTY, STRING.withFrequencies(List.of(Frequency.hertz(60))))
                        .checks()))
                .containsExactly("frequency");
    }

    @Test
    void singlePhaseUnitsAreSpreadOverTheLines() {
        // 12 kW on units of 5 kW: two at 1.2 leave one line without: 5 kVA more on the others; three are at 0.8
        StringInverter five = STRING.withPhases(Phases.SINGLE).withPower(Power.kilowatts(5));
        StringInverterFit two = fit(THREE_PHASE, THIRTY, five);
        assertThat(broken(two.checks())).containsExactly("phaseImbalance");
        assertThat(margin(two.checks(), "phaseImbalance")).isCloseTo(-400 / 4600.0, within(1e-12));
        // three of them at 0.8 are farther from the aim but balanced: taken where 0.8 is accepted
        StringInverterFit balanced =
                StringInverterFit.of(THREE_PHASE, THIRTY, five, POLICY.withLeastDcAcRatio(Ratio.of(0.8)));
        assertThat(balanced.fits()).isTrue();
        assertThat(balanced.count()).isEqualTo(3);
        // three units of 4 kW at 1.0 are balanced, and two of 4.5 kW at 1.33 differ by no more than 4.6 kVA
        StringInverterFit three = fit(THREE_PHASE, THIRTY, five.withPower(Power.kilowatts(4)));
        assertThat(broken(three.checks())).isEmpty();
        assertThat(check(fit(SINGLE_PHASE, THIRTY, five).checks(), "phaseImbalance"))
                .isNull();
        assertThat(broken(StringInverterFit.of(
                                THREE_PHASE, THIRTY, five, POLICY.withPhaseImbalance(ApparentPower.kilovoltAmperes(5)))
                        .checks()))
                .isEmpty();
    }

    @Test
    void sheetsThatContradictThemselves() {
        assertThatThrownBy(() -> STRING.withTrackingHighest(Voltage.volts(1001)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("maximumInputVoltage");
        assertThatThrownBy(() -> STRING.withTrackingLowest(Voltage.volts(800))).hasMessageContaining("trackingHighest");
        // the window may end where the input does
        assertThat(STRING.withTrackingHighest(Voltage.volts(1000)).trackingHighest())
                .isEqualTo(Voltage.volts(1000));
        assertThatThrownBy(() -> STRING.withPower(Power.watts(5)).withEfficiency(Ratio.of(0.4)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("power must be from 10 W to 1 MW, but was 5 W.");
        assertThatThrownBy(() -> POLICY.withDcAcRatio(Ratio.of(1.5)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("dcAcRatio must be at most mostDcAcRatio 1.4, but was 1.5.");
        assertThat(POLICY.withDcAcRatio(Ratio.of(1.4)).dcAcRatio()).isEqualTo(Ratio.of(1.4));
        assertThat(POLICY.withDcAcRatio(Ratio.ONE).dcAcRatio()).isEqualTo(Ratio.ONE);
        assertThatThrownBy(() -> POLICY.withClippingLimit(Ratio.of(0.6)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("clippingLimit must be from 0 to 0.5, but was 0.6.");
        assertThatThrownBy(() -> array(0)).hasMessageContaining("modules");
        // left out: 22 A · 1.25
        assertThat(StringInverterBuilder.builder(STRING)
                        .maximumShortCircuitCurrent(null)
                        .build()
                        .resolved()
                        .maximumShortCircuitCurrent())
                .isEqualTo(Current.amperes(27.5));
    }

    private static StringInverterFit fit(GridService grid, GridArray array, StringInverter inverter) {
        return StringInverterFit.of(grid, array, inverter, POLICY);
    }
}
