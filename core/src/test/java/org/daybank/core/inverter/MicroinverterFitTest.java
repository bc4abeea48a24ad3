package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.inverter.GridSheets.MICRO;
import static org.daybank.core.inverter.GridSheets.SINGLE_PHASE;
import static org.daybank.core.inverter.GridSheets.SUNSHINE;
import static org.daybank.core.inverter.GridSheets.THREE_PHASE;
import static org.daybank.core.inverter.GridSheets.array;
import static org.daybank.core.inverter.InverterSheets.broken;
import static org.daybank.core.inverter.InverterSheets.margin;
import static org.daybank.core.inverter.InverterSheets.service;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** Each rule broken once, with nothing else broken; branch circuits by hand. */
class MicroinverterFitTest {
    private static final GridPolicy POLICY = GridPolicy.standard();

    @Test
    void fitsWithItsMargins() {
        MicroinverterFit fit = fit(SINGLE_PHASE, array(20), MICRO);

        assertThat(broken(fit.checks())).isEmpty();
        assertThat(fit.count()).isEqualTo(20);
        assertThat(fit.price()).isEqualTo(Money.of("2400", "EUR"));
        assertThat(fit.power()).isEqualTo(Power.watts(6900));
        assertThat(fit.dcAcRatio().fraction()).isCloseTo(400 / 345.0, within(1e-12));
        // 345 W / 230 V = 1.5 A; 20 A / 1.25 = 16 A carry ten: two branch circuits of ten, 15 A each
        assertThat(fit.lineCurrent().amperes()).isCloseTo(1.5, within(1e-12));
        assertThat(fit.mostOnBranch()).isEqualTo(10);
        assertThat(fit.branches()).isEqualTo(2);
        assertThat(fit.branchCurrent().amperes()).isCloseTo(15, within(1e-12));
        assertThat(margin(fit.checks(), "branchCurrent")).isCloseTo(1 / 16.0, within(1e-12));
        // 56 V of 60 V · 0.98 = 58.8 V; 32 V over 25 V; 47.2 V of 50 V
        assertThat(margin(fit.checks(), "coldestOpenCircuitVoltage")).isCloseTo(2.8 / 58.8, within(1e-12));
        assertThat(margin(fit.checks(), "hottestMaximumPowerVoltage")).isCloseTo(7 / 25.0, within(1e-12));
        assertThat(margin(fit.checks(), "coldestMaximumPowerVoltage")).isCloseTo(2.8 / 50, within(1e-12));
        // 400 W of 450 W; 10 A of 12 A; 13 A of 15 A
        assertThat(margin(fit.checks(), "modulePower")).isCloseTo(50 / 450.0, within(1e-12));
        assertThat(margin(fit.checks(), "inputCurrent")).isCloseTo(2 / 12.0, within(1e-12));
        assertThat(margin(fit.checks(), "shortCircuitCurrent")).isCloseTo(2 / 15.0, within(1e-12));
        // 400 W · 0.9 · 0.96 = 345.6 W in full sun
        assertThat(fit.clipping().fraction())
                .isCloseTo(
                        SUNSHINE.shareAbove(Irradiance.wattsPerSquareMetre(1000 * 345 / 345.6))
                                .fraction(),
                        within(1e-12));
    }

    @Test
    void branchesAreCountedLineByLine() {
        // 25 on three lines are 9, 8 and 8: one branch circuit each; 31 are 11, 10 and 10: two, one and one
        MicroinverterFit fit = fit(THREE_PHASE, array(25), MICRO);
        assertThat(fit.branches()).isEqualTo(3);
        assertThat(fit.unitsOnLine()).isEqualTo(9);
        assertThat(fit.branchCurrent().amperes()).isCloseTo(13.5, within(1e-12));
        assertThat(margin(fit.checks(), "phaseImbalance")).isCloseTo(1 - 345 / 4600.0, within(1e-12));

        MicroinverterFit more = fit(THREE_PHASE, array(31), MICRO);
        assertThat(more.branches()).isEqualTo(4);
        // the eleven on the first line are six and five
        assertThat(more.branchCurrent().amperes()).isCloseTo(15, within(1e-12));
        // 30 are balanced
        assertThat(fit(THREE_PHASE, array(30), MICRO).unitsOnLine()).isEqualTo(10);
        assertThat(margin(fit(THREE_PHASE, array(30), MICRO).checks(), "phaseImbalance"))
                .isEqualTo(1);
    }

    @Test
    void theTrunkCableMayTakeFewerThanTheDevice() {
        // five on each: twenty take four
        MicroinverterFit fit = fit(SINGLE_PHASE, array(20), MICRO.withMostOnBranch(5));
        assertThat(fit.mostOnBranch()).isEqualTo(5);
        assertThat(fit.branches()).isEqualTo(4);
        // 4140 W / 230 V = 18 A: not even one on 16 A
        assertThat(broken(fit(
                                SINGLE_PHASE,
                                array(9),
                                MICRO.withPower(Power.watts(4140)).withModulesOnEach(8))
                        .checks()))
                .contains("branchCurrent");
    }

    @Test
    void oneUnitForSeveralModules() {
        // 21 modules on inputs of four: six units, the last with one module
        Microinverter four = MICRO.withModulesOnEach(4).withPhases(Phases.THREE).withPower(Power.watts(1380));
        MicroinverterFit fit = fit(THREE_PHASE, array(21), four);
        assertThat(broken(fit.checks())).isEmpty();
        assertThat(fit.count()).isEqualTo(6);
        // a full unit: 1600 W on 1380 W; 1380 W / (3 · 230 V) = 2 A: eight on 16 A
        assertThat(fit.dcAcRatio().fraction()).isCloseTo(1600 / 1380.0, within(1e-12));
        assertThat(fit.lineCurrent().amperes()).isCloseTo(2, within(1e-12));
        assertThat(fit.mostOnBranch()).isEqualTo(8);
        assertThat(fit.branches()).isEqualTo(1);
        assertThat(fit.branchCurrent().amperes()).isCloseTo(12, within(1e-12));
    }

    @Test
    void eachRuleBroken() {
        assertBroken(MICRO.withMaximumInputVoltage(Voltage.volts(57.1)), "coldestOpenCircuitVoltage");
        assertBroken(MICRO.withTrackingLowest(Voltage.volts(32.1)), "hottestMaximumPowerVoltage");
        assertBroken(MICRO.withTrackingHighest(Voltage.volts(47.1)), "coldestMaximumPowerVoltage");
        assertBroken(MICRO.withMaximumModulePower(Power.watts(399)), "modulePower");
        assertBroken(MICRO.withMaximumInputCurrent(Current.amperes(9.9)), "inputCurrent");
        assertBroken(MICRO.withMaximumShortCircuitCurrent(Current.amperes(12.9)), "shortCircuitCurrent");
        assertBroken(MICRO.withPower(Power.watts(401)), "dcAcRatio");
        assertBroken(MICRO.withPhases(Phases.SPLIT), "phases");
        // 345.6 W in full sun are a little over its 345 W
        MicroinverterFit clipping =
                MicroinverterFit.of(SINGLE_PHASE, array(20), MICRO, POLICY.withClippingLimit(Ratio.ZERO));
        assertThat(broken(clipping.checks())).containsExactly("clipping");
        assertThat(clipping.fits()).isFalse();
        assertThat(fit(SINGLE_PHASE, array(20), MICRO).fits()).isTrue();
        assertThat(broken(fit(SINGLE_PHASE.withService(service(120, Phases.SINGLE)), array(5), MICRO)
                        .checks()))
                .containsExactly("outputVoltage");
    }

    @Test
    void whatTheSheetLeavesOutAndWhatItMayNotSay() {
        // 12 A · 1.25
        Microinverter plain = MICRO.withFrequencies(null).withMaximumShortCircuitCurrent(null);
        assertThat(plain.frequencies()).containsExactly(Frequency.hertz(50), Frequency.hertz(60));
        assertThat(plain.resolved().maximumShortCircuitCurrent()).isEqualTo(Current.amperes(15));
        assertThat(MICRO.withFrequencies(List.of(Frequency.hertz(60))).frequencies())
                .containsExactly(Frequency.hertz(60));
        assertThatThrownBy(() -> MicroinverterBuilder.builder().build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/model MISSING",
                                        "/power MISSING",
                                        "/maximumModulePower MISSING",
                                        "/maximumInputVoltage MISSING",
                                        "/trackingLowest MISSING",
                                        "/trackingHighest MISSING",
                                        "/maximumInputCurrent MISSING",
                                        "/price MISSING"));
    }

    private static MicroinverterFit fit(GridService grid, GridArray array, Microinverter inverter) {
        return MicroinverterFit.of(grid, array, inverter, POLICY);
    }

    private static void assertBroken(Microinverter inverter, String rule) {
        assertThat(broken(fit(SINGLE_PHASE, array(20), inverter).checks())).containsExactly(rule);
    }
}
