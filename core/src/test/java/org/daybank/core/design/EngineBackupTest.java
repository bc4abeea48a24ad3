package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.evidence;
import static org.daybank.core.design.Designs.system;

import org.daybank.core.catalog.Catalog;
import org.daybank.core.generator.GeneratorMonth;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.simulation.Reliability;
import org.junit.jupiter.api.Test;

/** What an engine would add to the field station, whose winter is longer than its bank. */
class EngineBackupTest {
    private static final DesignOutcome DESIGN = SystemDesigner.design(LarkspurRidge.BRIEF, Catalog.sample());
    private static final EngineBackup ENGINE = system(DESIGN).generator().orElseThrow();
    private static final Reliability ALONE = evidence(DESIGN).availability().orElseThrow();

    @Test
    void isToldWhereTheHoursLackSomething() {
        assertThat(ALONE.lossOfLoad()).isGreaterThan(TimeSpan.ZERO);
        assertThat(ENGINE.availability().availability()).isGreaterThan(ALONE.availability());
        assertThat(ENGINE.availability().engineTime()).isGreaterThan(TimeSpan.ZERO);
        assertThat(ALONE.engineTime()).isEqualTo(TimeSpan.ZERO);
    }

    @Test
    void itsMonthsAreThoseThatLack() {
        for (GeneratorMonth month : ENGINE.size().months()) {
            var hours = ALONE.months().get(month.month().getValue() - 1);
            double lacking = hours.demand().minus(hours.served()).wattHours();
            // what leaves the bank for a load is more than what the load gets, and less than twice as much
            assertThat(month.shortfall().wattHours()).isBetween(lacking - 1e-6, 2 * lacking + 1e-6);
        }
    }

    @Test
    void chargesWithinBankAndInverter() {
        var layout = system(DESIGN).bankLayout();
        Current planned = layout.ratedCapacity().dividedBy(TimeSpan.hours(10));
        assertThat(ENGINE.size().chargeCurrent())
                .isLessThanOrEqualTo(planned)
                .isLessThanOrEqualTo(layout.maximumChargeCurrent());
    }

    @Test
    void comparesWithModulesAsTheyAreBought() {
        var charger = system(DESIGN).chargeController();
        var compared = ENGINE.engineOrModules().orElseThrow();
        Money each = compared.more().pricePerModule();
        assertThat(each.times(charger.array().modules()).minorUnits())
                .isCloseTo(charger.priceWithArray().minorUnits(), within((long)
                        charger.array().modules()));
    }

    @Test
    void isAbsentWhereNothingIsRun() {
        DesignBrief unproved = LarkspurRidge.BRIEF.withPolicy(LarkspurRidge.BRIEF
                .policy()
                .withSystem(LarkspurRidge.BRIEF.policy().system().withSimulatedYears(0)));
        assertThat(system(SystemDesigner.design(unproved, Catalog.sample())).generator())
                .isEmpty();
    }
}
