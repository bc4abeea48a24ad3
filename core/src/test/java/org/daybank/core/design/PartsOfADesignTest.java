package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.controllers;
import static org.daybank.core.design.Designs.system;

import java.util.List;
import java.util.Objects;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ControllerFunction;
import org.daybank.core.charger.Diversion;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

/** What a whole design asks of its parts beyond what each step asks alone. */
class PartsOfADesignTest {
    private static final Catalog SAMPLE = Catalog.sample();

    private static final Load LANTERNS = LoadBuilder.builder()
            .name("lanterns")
            .supply(Supply.DC)
            .power(Power.watts(120))
            .hoursPerDay(2.0)
            .build();

    private static DesignOutcome lanternsWith(ControllerFunction function) {
        DesignPolicy policy = LarkspurRidge.BRIEF.policy();
        return SystemDesigner.design(
                LarkspurRidge.BRIEF
                        .withLoads(List.of(LANTERNS))
                        .withWishes(new Wishes(null, List.of(Chemistry.AGM), List.of(function), null, null, null))
                        .withPolicy(policy.withSystem(policy.system().withSimulatedYears(0))),
                SAMPLE);
    }

    @Test
    void theLoadOutputCarriesTheDcLoads() {
        DesignOutcome design = lanternsWith(ControllerFunction.LOAD_OUTPUT);
        Check carried = system(design).chargeController().checks().stream()
                .filter(limit -> limit.rule().code().equals("loadOutputCurrent"))
                .findFirst()
                .orElseThrow();

        // 120 W / 0.97 / (6 · 1.9 V) = 10.852 A: an output of 10 A is too small for them
        assertThat(carried.value().orElseThrow().baseValue()).isCloseTo(10.852, within(1e-3));
        assertThat(carried.passed()).isTrue();
        assertThat(controllers(design).rejected())
                .filteredOn(rejection -> rejection.product().equals("HN-P10"))
                .flatExtracting(Rejection::failedChecks)
                .extracting(check -> check.rule().code())
                .contains("loadOutputCurrent");
    }

    @Test
    void aDiversionLoadTakesHalfAsMuchAgainAsTheArray() {
        DesignOutcome design = lanternsWith(ControllerFunction.DIVERSION_CONTROL);
        ChargerFit charger = system(design).chargeController();
        Diversion diversion = Objects.requireNonNull(charger.diversion());

        assertThat(diversion.load().watts())
                .isCloseTo(1.5 * charger.array().power().watts(), within(1e-9));
        assertThat(design.hazards()).extracting(hazard -> hazard.code().code()).contains("secondChargeControl");
        assertThat(lanternsWith(ControllerFunction.DISPLAY).hazards())
                .extracting(hazard -> hazard.code().code())
                .doesNotContain("secondChargeControl");
    }

    @Test
    void aStartLeavesTheInverterItsVoltage() {
        DesignOutcome design = SystemDesigner.design(LarkspurRidge.BRIEF, SAMPLE);
        BankLayout bank = system(design).bankLayout();
        InverterFit inverter = system(design).inverter().orElseThrow();
        Check sag = system(design).bank().checks().stream()
                .filter(limit -> limit.rule().code().equals("surgeSag"))
                .findFirst()
                .orElseThrow();
        double cutOff = inverter.inverter().lowestInput().volts();
        double start = (design.budget().peak().surge().watts()
                                / inverter.inverter().fullLoadEfficiency().fraction()
                        + design.budget().dcPeak().watts())
                / cutOff;

        // 51.2 V less what bank and cable take: the bank half as much again as full and warm, the cable 1 % at the
        // rating
        double cable = 0.01 * 51.2 / inverter.currentAtRating().amperes();
        assertThat(sag.value().orElseThrow().baseValue())
                .isCloseTo(51.2 - start * (1.5 * bank.resistance().ohms() + cable), within(1e-9));
        assertThat(sag.limit().orElseThrow().baseValue()).isEqualTo(cutOff);
        assertThat(sag.passed()).isTrue();
    }

    @Test
    void coolCellsAreChargedMoreSlowly() {
        DesignOutcome design = SystemDesigner.design(
                LarkspurRidge.BRIEF.withWishes(
                        new Wishes(null, List.of(Chemistry.LITHIUM_IRON_PHOSPHATE), null, null, null, null)),
                SAMPLE);
        BankLayout bank = system(design).bankLayout();
        Check cold = design.checks().stream()
                .filter(check -> check.rule().code().equals("coldChargeCurrent"))
                .findFirst()
                .orElseThrow();

        // heated to 5 °C: 0.3 C of each string, those after the first nine tenths of it
        double one = 0.3 * bank.ratedCapacity().ampereHours() / bank.parallel();
        assertThat(cold.limit().orElseThrow().baseValue())
                .isCloseTo(one * (1 + 0.9 * (bank.parallel() - 1)), within(1e-9));
        assertThat(cold.value().orElseThrow().baseValue())
                .isEqualTo(system(design).chargeController().chargingCurrent().amperes());
    }
}
