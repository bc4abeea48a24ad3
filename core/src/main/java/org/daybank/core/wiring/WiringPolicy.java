package org.daybank.core.wiring;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when cables are sized.
 *
 * @param ruleSet whose rules, and with them which sizes
 * @param arrayDrop largest drop in a circuit that modules feed, of its operating voltage
 * @param bankDrop largest drop between controller and bank and between bank and inverter
 * @param loadDrop largest drop in an AC circuit and towards DC loads
 * @param metal of the conductors
 * @param stranding of metric conductors
 * @param insulationTemperature that the insulation stands: 60, 75 or 90 °C with NFPA 70, 70 or 90 °C with IEC
 * @param terminalTemperature that the terminals stand; the table's column at or below it is read for them
 * @param ambient air around the cables, where a circuit says nothing else
 * @param method how the cables lie
 * @param groupedCircuits circuits that lie together, this one included
 * @param largestCrossSection of one conductor; beyond it several are laid in parallel
 * @param mostParallel conductors in parallel for each pole or line
 * @param groundFlashDensity lightning flashes to earth for each km² and year: surge protection is due for long runs outdoors
 * @param copperPricePerKilogram of the copper in a cable
 * @param aluminiumPricePerKilogram of the aluminium in a cable
 * @param energyPricePerKilowattHour what a kilowatt-hour that is not lost is worth
 */
@RecordBuilder
public record WiringPolicy(
        @Assumed(value = "iec", source = "IEC 60364 holds in most countries; NFPA 70 in the United States")
        RuleSet ruleSet,

        @Bounds(minimum = "0.001", maximum = "0.2", sensible = "0.01–0.03") @Assumed(value = "0.02", source = "custom")
        Ratio arrayDrop,

        @Bounds(minimum = "0.001", maximum = "0.2", sensible = "0.01–0.02") @Assumed(value = "0.01", source = "custom")
        Ratio bankDrop,

        @Bounds(minimum = "0.001", maximum = "0.2", sensible = "0.02–0.05")
        @Assumed(value = "0.03", source = "NFPA 70 210.19 informational note; IEC 60364-5-52 Annex G for lighting")
        Ratio loadDrop,

        @Assumed(value = "copper", source = "custom up to 120 mm²")
        Metal metal,

        @Assumed(value = "stranded", source = "IEC 60228 class 2 in fixed wiring")
        Stranding stranding,

        @Bounds(minimum = "60 Cel", maximum = "90 Cel")
        @Assumed(value = "90 Cel", source = "cross-linked insulation, as in photovoltaic cable to EN 50618 or THWN-2")
        Temperature insulationTemperature,

        @Bounds(minimum = "60 Cel", maximum = "90 Cel", sensible = "60–75 °C")
        @Assumed(
                value = "75 Cel",
                source =
                        "NFPA 70 110.14(C); with IEC the 70 °C column is read, as IEC 60364-5-52 523.1 asks without word of the maker")
        Temperature terminalTemperature,

        @Bounds(minimum = "-40 Cel", maximum = "85 Cel", sensible = "30–60 °C; on a roof in the sun the hot end")
        @Assumed(value = "30 Cel", source = "base of the tables of IEC 60364-5-52 and NFPA 70 310.16")
        Temperature ambient,

        @Assumed(value = "conduit", source = "cools worse than clipped direct: the careful guess")
        InstallationMethod method,

        @Bounds(minimum = "1", maximum = "20") @Assumed(value = "1", source = "each circuit lies by itself")
        int groupedCircuits,

        @Bounds(minimum = "1.5 mm2", maximum = "300 mm2", sensible = "70–120 mm²")
        @Assumed(value = "120 mm2", source = "terminals and bending of bank cable; 4/0 AWG is 107 mm²")
        CrossSection largestCrossSection,

        @Bounds(minimum = "1", maximum = "8") @Assumed(value = "4", source = "what a busbar takes without crowding")
        int mostParallel,

        @Bounds(minimum = "0", maximum = "50", sensible = "0.5–10")
        @Assumed(
                value = "4",
                source = "IEC 60364-7-712 takes the local figure; this one is on the careful side for Europe")
        double groundFlashDensity,

        @Bounds(minimum = "0", maximum = "100000000")
        @Assumed(
                value = "9 EUR",
                source = "about the exchange price of refined copper, 2024; a cable's price list wins")
        Money copperPricePerKilogram,

        @Bounds(minimum = "0", maximum = "100000000")
        @Assumed(
                value = "2.5 EUR",
                source = "about the exchange price of primary aluminium, 2024; a cable's price list wins")
        Money aluminiumPricePerKilogram,

        @Bounds(minimum = "0", maximum = "10000000")
        @Assumed(value = "0.3 EUR", source = "what one more kWh costs off the grid at the least; a tariff wins")
        Money energyPricePerKilowattHour)
        implements WiringPolicyBuilder.With {
    private static final WiringPolicy STANDARD = Defaults.of(WiringPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds or contradicts another
     */
    public WiringPolicy {
        ruleSet = Defaults.otherwise(ruleSet, WiringPolicy.class, "ruleSet");
        arrayDrop = Defaults.otherwise(arrayDrop, WiringPolicy.class, "arrayDrop");
        bankDrop = Defaults.otherwise(bankDrop, WiringPolicy.class, "bankDrop");
        loadDrop = Defaults.otherwise(loadDrop, WiringPolicy.class, "loadDrop");
        metal = Defaults.otherwise(metal, WiringPolicy.class, "metal");
        stranding = Defaults.otherwise(stranding, WiringPolicy.class, "stranding");
        insulationTemperature = Defaults.otherwise(insulationTemperature, WiringPolicy.class, "insulationTemperature");
        terminalTemperature = Defaults.otherwise(terminalTemperature, WiringPolicy.class, "terminalTemperature");
        ambient = Defaults.otherwise(ambient, WiringPolicy.class, "ambient");
        method = Defaults.otherwise(method, WiringPolicy.class, "method");
        largestCrossSection = Defaults.otherwise(largestCrossSection, WiringPolicy.class, "largestCrossSection");
        copperPricePerKilogram =
                Defaults.otherwise(copperPricePerKilogram, WiringPolicy.class, "copperPricePerKilogram");
        aluminiumPricePerKilogram =
                Defaults.otherwise(aluminiumPricePerKilogram, WiringPolicy.class, "aluminiumPricePerKilogram");
        energyPricePerKilowattHour =
                Defaults.otherwise(energyPricePerKilowattHour, WiringPolicy.class, "energyPricePerKilowattHour");
        Validation.of(
                        WiringPolicy.class,
                        ruleSet,
                        arrayDrop,
                        bankDrop,
                        loadDrop,
                        metal,
                        stranding,
                        insulationTemperature,
                        terminalTemperature,
                        ambient,
                        method,
                        groupedCircuits,
                        largestCrossSection,
                        mostParallel,
                        groundFlashDensity,
                        copperPricePerKilogram,
                        aluminiumPricePerKilogram,
                        energyPricePerKilowattHour)
                .done();
        String columns = InsulationColumn.names(ruleSet);
        RuleSet rules = ruleSet;
        Temperature insulation = insulationTemperature;
        Temperature terminals = terminalTemperature;
        new Validation()
                .that(
                        InsulationColumn.exists(ruleSet, insulationTemperature),
                        "insulationTemperature",
                        ProblemCode.INCONSISTENT,
                        () -> "insulationTemperature must be one of %s with rule set %s, but was %s."
                                .formatted(columns, rules, insulation))
                .that(
                        InsulationColumn.reaches(ruleSet, terminalTemperature),
                        "terminalTemperature",
                        ProblemCode.INCONSISTENT,
                        () -> "terminalTemperature must be at least the first of %s with rule set %s, but was %s."
                                .formatted(columns, rules, terminals))
                .that(
                        metal == Metal.COPPER || stranding == Stranding.STRANDED,
                        "stranding",
                        ProblemCode.CONFLICT,
                        "stranding must be stranded with aluminium: no flexible aluminium is listed.")
                .that(
                        energyPricePerKilowattHour
                                .currency()
                                .equals(pricePerKilogram(metal, copperPricePerKilogram, aluminiumPricePerKilogram)
                                        .currency()),
                        "energyPricePerKilowattHour",
                        ProblemCode.CONFLICT,
                        "energyPricePerKilowattHour must be in the currency of the price of the metal.")
                .done();
    }

    /** The cited defaults. */
    public static WiringPolicy standard() {
        return STANDARD;
    }

    /** What the metal of the conductors costs. */
    Money pricePerKilogram() {
        return pricePerKilogram(metal, copperPricePerKilogram, aluminiumPricePerKilogram);
    }

    private static Money pricePerKilogram(Metal metal, Money copper, Money aluminium) {
        return switch (metal) {
            case COPPER -> copper;
            case ALUMINIUM -> aluminium;
        };
    }
}
