package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.evidence;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.system;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.Load;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.working.Hazard;
import org.junit.jupiter.api.Test;

/** A hazard is there exactly when its cause is. The causes are looked up in the design once more, in bare numbers. */
class HazardsTest {
    private static final List<DesignOutcome> DESIGNS = designs();

    private static List<DesignOutcome> designs() {
        List<DesignOutcome> designs = new ArrayList<>();
        DesignBrief low = LarkspurRidge.BRIEF
                .withSite(SiteBuilder.builder(LarkspurRidge.SITE)
                        .elevation(Length.metres(200))
                        .build())
                .withArray(new ArrayWish(Angle.degrees(60), null, Length.metres(5)));
        List<Load> direct = LarkspurRidge.LOADS.stream()
                .filter(load -> load.supply() == Supply.DC)
                .toList();
        List<Load> many = Stream.of(1, 2, 3, 4, 5)
                .flatMap(copy ->
                        LarkspurRidge.LOADS.stream().filter(load -> load.name().equals("laptop")))
                .map(load -> load.withHoursPerDay(24.0).withCount(6))
                .toList();
        // never colder than the bank stands on the mean, but once below what lithium may be charged at
        DesignBrief mild = low.withSite(SiteBuilder.builder(LarkspurRidge.SITE)
                .elevation(Length.metres(200))
                .recordLow(Temperature.celsius(-3))
                .months(MonthlyClimateBuilder.builder()
                        .dailyIrradiation(LarkspurRidge.SITE.months().dailyIrradiation())
                        .meanAir(Collections.nCopies(12, Temperature.celsius(16)))
                        .build())
                .build());
        DesignPolicy stormy = LarkspurRidge.BRIEF
                .policy()
                .withWiring(LarkspurRidge.BRIEF.policy().wiring().withGroundFlashDensity(25.0));
        List<DesignBrief> briefs = List.of(
                mild,
                mild.withPolicy(stormy),
                LarkspurRidge.BRIEF,
                low,
                low.withSite(LarkspurRidge.SITE),
                low.withArray(new ArrayWish(Angle.degrees(60), null, Length.metres(31))),
                low.withLoads(direct),
                low.withLoads(List.of(direct.get(1))),
                low.withLoads(many),
                low.withBank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(16), null, null)),
                low.withBank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(-6), null, null)));
        for (DesignBrief brief : briefs) {
            for (Chemistry chemistry : Chemistry.values()) {
                designs.add(SystemDesigner.design(
                        brief.withWishes(Wishes.none().withChemistries(List.of(chemistry))), Catalog.sample()));
            }
        }
        return designs;
    }

    @Test
    void exactlyWhatItsCauseCallsFor() {
        Set<String> seen = new TreeSet<>();
        Set<String> absent = new TreeSet<>();
        for (DesignOutcome design : DESIGNS) {
            Set<String> told = design.hazards().stream()
                    .map(hazard -> hazard.code().code())
                    .collect(Collectors.toCollection(TreeSet::new));
            Set<String> expected = expected(design);
            assertThat(told).as("%s", design.billOfMaterials()).isEqualTo(expected);
            seen.addAll(expected);
            for (String code : CONDITIONAL) {
                if (!expected.contains(code)) {
                    absent.add(code);
                }
            }
        }
        // the briefs above bring up each cause, and leave each out
        assertThat(seen).containsAll(CONDITIONAL);
        assertThat(absent).containsExactlyInAnyOrderElementsOf(CONDITIONAL);
    }

    private static final List<String> CONDITIONAL = List.of(
            "busVoltage",
            "lifting",
            "mixedBatteries",
            "parallelStrings",
            "hydrogen",
            "acid",
            "closedCupboard",
            "chargingInTheCold",
            "freezing",
            "batteryManagement",
            "lithiumFire",
            "heatedBank",
            "directVoltage",
            "stringFuses",
            "surgeProtection",
            "liveOutput",
            "neutralEarthBond",
            "storedCharge",
            "generatorExhaust",
            "generatorTransfer",
            "bankIndoors");

    private static Set<String> expected(DesignOutcome design) {
        if (!isDesign(design)) {
            return Set.of();
        }
        BankLayout bank = system(design).bankLayout();
        Chemistry chemistry = bank.battery().chemistry();
        boolean lithium = chemistry == Chemistry.LITHIUM_IRON_PHOSPHATE;
        var array = system(design).array();
        var module = array.module();
        double coldest = array.series()
                * module.openCircuitVoltage().volts()
                * (1
                        + module.openCircuitVoltageCoefficient().perKelvin()
                                * (design.brief().resolved().site().recordLow().celsius() - 25));
        double oneString = module.shortCircuitCurrent().amperes()
                * (1 + module.bifacialGain().fraction())
                * 1.25;
        int fullest = array.stringsOnEach().get(0);
        boolean indoors = design.brief().bank().location() == BankLocation.INDOORS;
        double recordLow = design.brief().resolved().site().recordLow().celsius();
        double coldestMonth = design.brief().resolved().site().months().meanAir().stream()
                .mapToDouble(Temperature::celsius)
                .min()
                .orElseThrow();
        double around = indoors
                ? design.brief().bank().indoorLowest().celsius()
                : coldestMonth - (coldestMonth - recordLow) / 2; // halfway to the record low
        boolean heated = bank.battery().heater() != null && around < 5;

        double cells = chemistry.cellsFor(bank.nominalVoltage());
        double cold = lithium ? 0 : 0.005 * (25 - Math.max(-20, around));
        double equalised = chemistry == Chemistry.VENTED_LEAD_ACID ? 2.6 : 0;
        double highest = cells * Math.max(chemistry.traits().absorption().volts() + cold, equalised);

        Set<String> expected = new TreeSet<>(Set.of(
                "bankArc",
                "bankShortCircuit",
                "hotTerminals",
                "reversePolarity",
                "connectorsUnderLoad",
                "arrayFaults",
                "windAndSnow",
                "preliminarySizes"));
        addIf(expected, "busVoltage", highest > 60);
        addIf(expected, "lifting", bank.battery().mass().kilograms() > 25);
        addIf(expected, "mixedBatteries", bank.series() * bank.parallel() > 1);
        addIf(expected, "parallelStrings", bank.parallel() > 1);
        addIf(expected, "hydrogen", !lithium);
        addIf(expected, "acid", chemistry == Chemistry.VENTED_LEAD_ACID);
        addIf(expected, "freezing", !lithium && around < 0);
        addIf(expected, "batteryManagement", lithium);
        addIf(expected, "lithiumFire", lithium);
        addIf(expected, "closedCupboard", !lithium && around < 0);
        addIf(expected, "heatedBank", lithium && heated);
        addIf(expected, "chargingInTheCold", lithium && !indoors && !heated && recordLow < 0);
        // a string in the cold, or a circuit of the bank while it is charged in the cold
        double charged = cells * (chemistry.traits().absorption().volts() + cold);
        addIf(expected, "directVoltage", coldest > 60 || charged > 60);
        addIf(
                expected,
                "stringFuses",
                (fullest - 1) * oneString > module.seriesFuse().amperes());
        addIf(
                expected,
                "surgeProtection",
                design.brief().resolved().site().elevation().metres() > 1000
                        || design.brief().array().cableLength().metres() > 30
                        // a dwelling's critical length, IEC 62305 by way of IEC 60364-7-712: 115 / N_g metres
                        || design.brief().array().cableLength().metres()
                                >= 115 / design.brief().policy().wiring().groundFlashDensity());
        addIf(expected, "liveOutput", system(design).inverter().isPresent());
        addIf(expected, "neutralEarthBond", system(design).inverter().isPresent());
        addIf(expected, "storedCharge", system(design).inverter().isPresent());
        addIf(expected, "bankIndoors", indoors);
        // an engine is told where the hours lack something
        boolean lacks =
                evidence(design).availability().orElseThrow().lossOfLoad().hours() > 0;
        addIf(expected, "generatorExhaust", lacks);
        addIf(expected, "generatorTransfer", lacks);
        return expected;
    }

    private static void addIf(Set<String> codes, String code, boolean cause) {
        if (cause) {
            codes.add(code);
        }
    }

    @Test
    void eachSaysWhatToDoAndLeavesLocalCodesToTheDocument() {
        assertThat(DESIGNS.get(0).hazards()).isNotEmpty().allSatisfy(hazard -> {
            assertThat(hazard.action()).endsWith(".").doesNotContain(Hazard.LOCAL_CODE);
            assertThat(hazard.subject()).isNotBlank();
            assertThat(hazard.text()).endsWith(".").doesNotContain("{", "null");
        });
    }
}
