package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.energy;
import static org.daybank.core.design.Designs.rejectedVoltages;
import static org.daybank.core.design.Designs.system;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.load.Load;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

/**
 * The search finds the cheapest. Each brief fixes the bus voltage: across voltages the lowest that does is taken, whatever it
 * costs. Shunt controllers are left out, for they come last whatever they cost.
 */
class SystemDesignerProperties {
    private static final Catalog OFFER = new Catalog(
            Catalog.sample().modules(),
            Catalog.sample().batteries(),
            Catalog.sample().controllers().stream()
                    .filter(controller -> controller.kind() != ControllerKind.SHUNT)
                    .toList(),
            Catalog.sample().inverters());

    @Provide
    Arbitrary<DesignBrief> briefs() {
        return Combinators.combine(
                        Arbitraries.of(12.0, 24.0, 48.0),
                        Arbitraries.of(Chemistry.class),
                        Arbitraries.doubles().between(0.05, 1.2),
                        Arbitraries.doubles().between(1, 5))
                .as((volts, chemistry, scale, days) -> LarkspurRidge.BRIEF
                        .withLoads(scaled(scale))
                        .withWishes(Wishes.none()
                                .withNominalVoltage(Voltage.volts(volts))
                                .withChemistries(List.of(chemistry)))
                        .withPolicy(autonomy(days)));
    }

    private static List<Load> scaled(double scale) {
        return LarkspurRidge.LOADS.stream()
                .map(load -> load.withPower(load.power().times(scale)))
                .toList();
    }

    private static DesignPolicy autonomy(double days) {
        DesignPolicy policy = DesignPolicy.standard();
        return policy.withBank(policy.bank().withAutonomy(TimeSpan.days(days)));
    }

    private static Optional<Money> price(DesignBrief brief, Catalog catalog) {
        return SystemDesigner.design(brief, catalog).billOfMaterials().map(BillOfMaterials::total);
    }

    @Property(tries = 12, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void withoutTheChosenProductNothingIsCheaper(@ForAll("briefs") DesignBrief brief) {
        DesignOutcome design = SystemDesigner.design(brief, OFFER);
        BillOfMaterials bill = design.billOfMaterials().orElse(null);
        if (bill == null) {
            return;
        }
        for (BillLine line : bill.lines()) {
            price(brief, without(line.product()))
                    .ifPresent(other ->
                            assertThat(other).as("without %s", line.product()).isGreaterThanOrEqualTo(bill.total()));
        }
    }

    private static Catalog without(String product) {
        return new Catalog(
                all(OFFER.modules(), PvModule::model, product),
                all(OFFER.batteries(), Battery::model, product),
                all(OFFER.controllers(), ChargeController::model, product),
                all(OFFER.inverters(), Inverter::model, product));
    }

    private static <T> List<T> all(List<T> products, Function<T, String> model, String but) {
        return products.stream()
                .filter(product -> !model.apply(product).equals(but))
                .toList();
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void aLargerCatalogueIsNeverDearer(@ForAll("briefs") DesignBrief brief, @ForAll long seed) {
        Random random = new Random(seed);
        Catalog some = new Catalog(
                some(OFFER.modules(), random),
                some(OFFER.batteries(), random),
                some(OFFER.controllers(), random),
                some(OFFER.inverters(), random));

        price(brief, some)
                .ifPresent(
                        narrow -> assertThat(price(brief, OFFER).orElseThrow()).isLessThanOrEqualTo(narrow));
    }

    private static <T> List<T> some(List<T> products, Random random) {
        return products.stream().filter(product -> random.nextInt(10) < 7).toList();
    }

    @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void moreAutonomyIsNeverCheaper(
            @ForAll("briefs") DesignBrief brief, @ForAll @DoubleRange(min = 0, max = 3) double more) {
        double days = brief.policy().bank().autonomy().days();
        Optional<Money> longer = price(brief.withPolicy(autonomy(days + more)), OFFER);

        longer.ifPresent(price -> assertThat(price(brief, OFFER).orElseThrow()).isLessThanOrEqualTo(price));
    }

    @Property(tries = 15, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void whatIsCompleteHoldsTogether(@ForAll("briefs") DesignBrief brief) {
        DesignOutcome design = SystemDesigner.design(brief, OFFER);
        BillOfMaterials bill = design.billOfMaterials().orElse(null);
        if (bill == null) {
            assertThat(rejectedVoltages(design)).isNotEmpty();
            return;
        }
        // money adds up, in cents
        long cents = 0;
        for (BillLine line : bill.lines()) {
            cents += line.unitPrice().minorUnits() * line.count();
        }
        assertThat(bill.total().minorUnits()).isEqualTo(cents);
        // every month is covered, and the part of a month's energy that the ratio asks for on top
        assertThat(energy(design).monthlyBalance().months())
                .allSatisfy(month -> assertThat(month.yield().wattHours())
                        .isGreaterThanOrEqualTo(month.need().wattHours() * 1.3 * (1 - 1e-9)));
        // the controllers chosen draw no more than the budget reckons with in summer, when no heater runs
        double drawn = system(design).chargeController().count()
                * system(design)
                        .chargeController()
                        .controller()
                        .selfConsumption()
                        .watts();
        assertThat(design.budget().months().get(6).standingEnergy().wattHours())
                .isGreaterThanOrEqualTo(24 * drawn - 1e-9);
        // the bank holds what it must
        var bank = system(design).bank();
        var layout = Objects.requireNonNull(bank.layout());
        assertThat(layout.ratedCapacity().ampereHours())
                .isGreaterThanOrEqualTo(Objects.requireNonNull(bank.capacity())
                                .requiredCapacity()
                                .ampereHours()
                        * (1 - 1e-9));
        // and takes what the array gives
        assertThat(system(design).chargeController().chargingCurrent())
                .isLessThanOrEqualTo(layout.maximumChargeCurrent());
    }
}
