package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.system;

import java.util.List;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.simulation.ManyDesigns;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.simulation.SizedSystemResult;
import org.junit.jupiter.api.Test;

/** Larkspur Ridge with its array and bank in other sizes. */
class ManySizesTest {
    private static final SystemParts PARTS =
            system(SystemDesigner.design(LarkspurRidge.BRIEF, Catalog.sample())).parts();

    @Test
    void theStationAsItIsIsNotOneSinceItsLoadsAreOfTwoRanks() {
        SimulationBrief brief = new SimulationBrief(LarkspurRidge.BRIEF, PARTS, null, null);

        assertThatThrownBy(() -> SystemSimulator.many(brief, Catalog.sample()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("loads must all be essential, or none")
                .hasMessageContaining("reconnectRise must be 0");
    }

    @Test
    void withoutRanksAndCutOffItsOwnSizesServeWhatTheSimulationServes() {
        DesignBrief alike = LarkspurRidge.BRIEF
                .withBank(new BankHousing(BankLocation.INDOORS, null, null, null))
                .withLoads(LarkspurRidge.LOADS.stream()
                        .map(load -> load.withEssential(false))
                        .toList())
                .withPolicy(DesignPolicy.standard()
                        .withSimulation(DesignPolicy.standard().simulation().withReconnectRise(Ratio.ZERO)));
        SimulationBrief brief = new SimulationBrief(alike, PARTS, null, null);
        ManyDesigns many = SystemSimulator.many(brief, Catalog.sample());
        Power module = Catalog.sample().modules().stream()
                .filter(one -> one.model().equals(PARTS.module()))
                .findFirst()
                .orElseThrow()
                .power();
        Power array = module.times(PARTS.series() * PARTS.strings());
        Energy bank = many.bankOfTheSystem();

        SizedSystemResult own = many.run(List.of(array), List.of(bank)).at(0, 0);
        SizedSystemResult half = many.run(List.of(array.dividedBy(2)), List.of(bank.dividedBy(2)))
                .at(0, 0);

        Reliability simulated = SystemSimulator.run(brief, Catalog.sample()).reliability();
        // many sizes have controllers that never limit; a real one clips no more than 2 % of the year, in bright hours
        assertThat(own.lossOfLoad().hours()).isCloseTo(simulated.lossOfLoad().hours(), within(1.0));
        assertThat(half.lossOfLoad().hours()).isGreaterThan(own.lossOfLoad().hours());
    }
}
