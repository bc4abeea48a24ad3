package org.daybank.core.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.batteries;
import static org.daybank.core.design.Designs.controllers;
import static org.daybank.core.design.Designs.gridInverters;
import static org.daybank.core.design.Designs.inverters;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.modules;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.design.BillLine;
import org.daybank.core.design.BillOfMaterials;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.ModuleSelection;
import org.daybank.core.design.NoDesign;
import org.daybank.core.design.SystemDesigner;
import org.daybank.core.design.SystemKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.load.Load;
import org.daybank.core.load.Supply;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/** What holds for the designs of every kind of system, whatever the brief. */
class KindsProperties {
    /** Without shunt controllers, which come last whatever they cost. */
    private static final Catalog CATALOG = new Catalog(
            Catalog.sample().modules(),
            Catalog.sample().batteries(),
            Catalog.sample().controllers().stream()
                    .filter(controller -> controller.kind() != ControllerKind.SHUNT)
                    .toList(),
            Catalog.sample().inverters(),
            Catalog.sample().stringInverters(),
            Catalog.sample().microinverters(),
            List.of());

    private static DesignOutcome design(DesignBrief brief) {
        return SystemDesigner.design(brief, CATALOG);
    }

    /** The same at the bus voltage of a design: across voltages the lowest that does is taken, whatever it costs. */
    private static DesignBrief atVoltage(DesignBrief brief, DesignOutcome design) {
        return design.batterySystem()
                .map(system -> brief.withWishes(brief.wishes().withNominalVoltage(system.nominalVoltage())))
                .orElse(brief);
    }

    @Property(tries = 80, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void everyCompleteDesignPassesInspection(@ForAll SystemKind kind, @ForAll long seed) {
        DesignOutcome design = design(KindsOfBriefs.of(kind, seed));

        if (isDesign(design)) {
            assertThat(Inspection.of(design, CATALOG)).isEmpty();
        }
        // some briefs nothing can serve, but an inspection of nothing would prove nothing
        Statistics.label("complete")
                .collect(isDesign(design))
                .coverage(share -> share.check(true).percentage(percent -> percent > 30));
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void everyProductIsRankedOrRejected(@ForAll SystemKind kind, @ForAll long seed) {
        assertEveryProductIsTold(design(KindsOfBriefs.of(kind, seed)), CATALOG);
    }

    /** On a shelf with little on it, most designs are not complete. */
    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void whereNothingFitsEveryProductIsToldToo(@ForAll SystemKind kind, @ForAll long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Catalog few = kept(model -> dice.nextInt(10) < 2);
        DesignOutcome design = SystemDesigner.design(KindsOfBriefs.of(kind, seed), few);

        assertEveryProductIsTold(design, few);
        if (design instanceof NoDesign none) {
            assertThat(none.failedChecks()).isNotEmpty().noneMatch(Check::passed);
            assertThat(none.rejected().rejectedVoltages())
                    .allSatisfy(voltage ->
                            assertThat(voltage.failedChecks()).isNotEmpty().noneMatch(Check::passed));
        }
        Statistics.label("complete")
                .collect(isDesign(design))
                .coverage(share -> share.check(false).percentage(percent -> percent > 30));
    }

    private static void assertEveryProductIsTold(DesignOutcome design, Catalog catalog) {
        DesignBrief brief = design.brief();
        ModuleSelection modules = modules(design).orElse(null);
        if (modules != null) {
            told(modules.ranked(), choice -> choice.product(), modules.rejected(), catalog.modules(), PvModule::model);
        }
        // only where the catalogue has no module or no inverter at all is there nothing to hold the one against the
        // other
        assertThat(modules == null)
                .isEqualTo(brief.kind() == SystemKind.GRID_INTERACTIVE
                        && (catalog.modules().isEmpty()
                                || (catalog.stringInverters().isEmpty()
                                        && catalog.microinverters().isEmpty())));
        if (brief.kind() == SystemKind.GRID_INTERACTIVE) {
            assertGridInvertersAreTold(design, catalog);
        } else {
            var batteries = batteries(design);
            told(batteries.ranked(), fit -> fit.product(), batteries.rejected(), catalog.batteries(), Battery::model);
            assertThat(batteries.ranked())
                    .allSatisfy(fit -> assertThat(brief.wishes().chemistries())
                            .contains(fit.battery().chemistry()));
            var controllers = controllers(design);
            told(
                    controllers.ranked(),
                    fit -> fit.product(),
                    controllers.rejected(),
                    catalog.controllers(),
                    ChargeController::model);
            var inverters = inverters(design).orElse(null);
            assertThat(inverters != null).isEqualTo(loads(brief).anyMatch(load -> load.supply() == Supply.AC));
            if (inverters != null) {
                told(
                        inverters.ranked(),
                        fit -> fit.product(),
                        inverters.rejected(),
                        catalog.inverters(),
                        Inverter::model);
            }
        }
        assertThat(isDesign(design) ? chosen(design) : List.of()).isSubsetOf(ranked(design));
    }

    private static void assertGridInvertersAreTold(DesignOutcome design, Catalog catalog) {
        var feeding = gridInverters(design).orElse(null);
        boolean offered = !catalog.stringInverters().isEmpty()
                || !catalog.microinverters().isEmpty();
        // without a module on the shelf there is nothing to hold them against, without an inverter nothing to hold
        assertThat(feeding != null).isEqualTo(offered && !catalog.modules().isEmpty());
        if (feeding != null) {
            told(
                    feeding.stringInverters().ranked(),
                    fit -> fit.product(),
                    feeding.stringInverters().rejected(),
                    catalog.stringInverters(),
                    StringInverter::model);
            told(
                    feeding.microinverters().ranked(),
                    fit -> fit.product(),
                    feeding.microinverters().rejected(),
                    catalog.microinverters(),
                    Microinverter::model);
        }
    }

    /** The loads that the bank carries. */
    private static Stream<Load> loads(DesignBrief brief) {
        return brief.loads().stream().filter(load -> brief.kind() != SystemKind.GRID_BACKUP || load.essential());
    }

    private static <F, P> void told(
            List<F> ranked,
            Function<F, String> product,
            List<Rejection> rejected,
            List<P> offered,
            Function<P, String> model) {
        assertThat(rejected).allSatisfy(one -> assertThat(one.failedChecks()).isNotEmpty());
        assertThat(Stream.concat(ranked.stream().map(product), rejected.stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(offered.stream().map(model).toList());
    }

    private static List<String> chosen(DesignOutcome design) {
        return bill(design).lines().stream()
                .filter(line -> !line.part().equals("module"))
                .map(BillLine::product)
                .toList();
    }

    private static List<String> ranked(DesignOutcome design) {
        List<String> ranked = new ArrayList<>();
        if (design.brief().kind() != SystemKind.GRID_INTERACTIVE) {
            batteries(design).ranked().forEach(fit -> ranked.add(fit.product()));
            controllers(design).ranked().forEach(fit -> ranked.add(fit.product()));
        }
        if (design.brief().kind() != SystemKind.GRID_INTERACTIVE) {
            inverters(design).ifPresent(all -> all.ranked().forEach(fit -> ranked.add(fit.product())));
        }
        gridInverters(design).ifPresent(all -> {
            all.stringInverters().ranked().forEach(fit -> ranked.add(fit.product()));
            all.microinverters().ranked().forEach(fit -> ranked.add(fit.product()));
        });
        return ranked;
    }

    @Property(tries = 16, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void withoutAChosenProductNothingIsCheaper(@ForAll SystemKind kind, @ForAll long seed) {
        DesignBrief brief = KindsOfBriefs.of(kind, seed);
        DesignOutcome design = design(brief);
        if (!isDesign(design)) {
            return;
        }
        for (BillLine line : bill(design).lines()) {
            Catalog narrower = kept(model -> !model.equals(line.product()));
            DesignOutcome other = SystemDesigner.design(atVoltage(brief, design), narrower);
            if (isDesign(other)) {
                assertThat(bill(other).total())
                        .as("without %s", line.product())
                        .isGreaterThanOrEqualTo(bill(design).total());
            }
        }
    }

    @Property(tries = 24, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void aLargerCatalogueIsNeverDearer(@ForAll SystemKind kind, @ForAll long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Catalog some = kept(model -> dice.nextInt(10) < 7);
        DesignBrief brief = KindsOfBriefs.of(kind, seed);
        DesignOutcome narrow = SystemDesigner.design(brief, some);

        if (isDesign(narrow)) {
            DesignOutcome wide = design(atVoltage(brief, narrow));
            assertThat(isDesign(wide)).isTrue();
            assertThat(bill(wide).total()).isLessThanOrEqualTo(bill(narrow).total());
        }
    }

    /** Whoever writes the brief and the data sheets in other units gets the same design. */
    @Property(tries = 24, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void unitsDoNotMatter(@ForAll SystemKind kind, @ForAll long seed) {
        DesignBrief brief = KindsOfBriefs.of(kind, seed);
        Restated restated = new Restated(seed);
        DesignOutcome design = design(brief);
        DesignOutcome other = SystemDesigner.design(restated.of(brief), restated.of(CATALOG));

        assertThat(isDesign(other)).isEqualTo(isDesign(design));
        assertThat(other.billOfMaterials()).isEqualTo(design.billOfMaterials());
        double before = design.budget().heaviestRun().worstDailyEnergy().wattHours();
        // what is read back is off by a unit in the last place or two
        assertThat(other.budget().heaviestRun().worstDailyEnergy().wattHours())
                .isCloseTo(before, within(1e-12 * before));
    }

    private static BillOfMaterials bill(DesignOutcome design) {
        return design.billOfMaterials().orElseThrow();
    }

    private static Catalog kept(Predicate<String> model) {
        return new Catalog(
                kept(CATALOG.modules(), PvModule::model, model),
                kept(CATALOG.batteries(), Battery::model, model),
                kept(CATALOG.controllers(), ChargeController::model, model),
                kept(CATALOG.inverters(), Inverter::model, model),
                kept(CATALOG.stringInverters(), StringInverter::model, model),
                kept(CATALOG.microinverters(), Microinverter::model, model),
                List.of());
    }

    private static <T> List<T> kept(List<T> products, Function<T, String> model, Predicate<String> which) {
        return products.stream()
                .filter(product -> which.test(model.apply(product)))
                .toList();
    }
}
