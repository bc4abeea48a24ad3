package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.system;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.catalog.CatalogueGenerator;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.load.Load;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;

/** The search against every combination, on shelves of a few products. */
class SearchProperties {
    @Provide
    Arbitrary<DesignBrief> briefs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.03, 1.5),
                        Arbitraries.doubles().between(0.5, 5),
                        Arbitraries.of(true, false),
                        Arbitraries.of(BankLocation.class))
                .as((scale, days, onlyDirectCurrent, location) -> LarkspurRidge.BRIEF
                        .withLoads(LarkspurRidge.LOADS.stream()
                                .filter(load -> !onlyDirectCurrent || load.supply() == Supply.DC)
                                .map(load -> scaled(load, scale))
                                .toList())
                        .withBank(new BankHousing(location, Temperature.celsius(12), null, null))
                        .withPolicy(policy(days)));
    }

    private static Load scaled(Load load, double scale) {
        return load.withPower(load.power().times(scale));
    }

    private static DesignPolicy policy(double days) {
        DesignPolicy policy = DesignPolicy.standard();
        return policy.withBank(policy.bank().withAutonomy(TimeSpan.days(days)))
                .withSystem(policy.system().withSimulatedYears(0));
    }

    @Provide
    Arbitrary<Catalog> shelves() {
        Arbitrary<Integer> some = Arbitraries.integers().between(1, 6);
        return Combinators.combine(Arbitraries.longs(), some, some, some, some).as(CatalogueGenerator::of);
    }

    @Property(tries = 120, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void findsWhatEveryCombinationFinds(@ForAll("briefs") DesignBrief brief, @ForAll("shelves") Catalog shelf) {
        List<EveryCombination.Found> all = EveryCombination.of(brief, shelf);
        Optional<EveryCombination.Found> first = all.stream()
                .min(Comparator.comparingDouble(EveryCombination.Found::volts)
                        .thenComparing(EveryCombination.Found::shunt)
                        .thenComparing(EveryCombination.Found::minorUnits));
        DesignOutcome design = SystemDesigner.design(brief, shelf);

        assertThat(isDesign(design)).isEqualTo(first.isPresent());
        Statistics.label("catalogues with a design")
                .collect(isDesign(design))
                .coverage(counted -> counted.checkQuery(any -> true).count(catalogues -> catalogues >= 100));
        first.ifPresent(expected -> {
            assertThat(system(design).nominalVoltage().volts()).isEqualTo(expected.volts());
            assertThat(system(design).chargeController().controller().kind() == ControllerKind.SHUNT)
                    .isEqualTo(expected.shunt());
            assertThat(design.billOfMaterials().orElseThrow().total().minorUnits())
                    .isEqualTo(expected.minorUnits());
        });
    }
}
