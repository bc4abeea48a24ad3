package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of a photovoltaic module. Figures are at standard test conditions: 1000 W/m², cells at 25 °C, air mass 1.5.
 *
 * @param model what the maker calls it
 * @param power at the maximum power point
 * @param openCircuitVoltage V<sub>oc</sub>
 * @param shortCircuitCurrent I<sub>sc</sub>, front side alone for a bifacial module
 * @param maximumPowerVoltage V<sub>mp</sub>
 * @param maximumPowerCurrent I<sub>mp</sub>
 * @param openCircuitVoltageCoefficient relative change of V<sub>oc</sub> for each kelvin; negative
 * @param shortCircuitCurrentCoefficient relative change of I<sub>sc</sub> for each kelvin
 * @param powerCoefficient relative change of the maximum power for each kelvin; negative
 * @param nominalOperatingCellTemperature of the cells at 800 W/m², 20 °C air and 1 m/s wind, nothing connected
 * @param cellsInSeries cells that the voltage adds up over; a module of half cells in two parallel halves counts one half
 * @param systemVoltage highest voltage against earth that the module may stand in
 * @param seriesFuse largest overcurrent device that protects it
 * @param nominalGroup bank voltage that a module without tracking charges well, 12 V or 24 V; absent for modules that
 *     belong to no such group
 * @param bifacialGain what light on the back adds to the current, as a share of the front's; 0 for one-sided modules
 * @param price of one module
 */
@RecordBuilder
public record PvModule(
        String model,
        Power power,
        Voltage openCircuitVoltage,
        Current shortCircuitCurrent,
        Voltage maximumPowerVoltage,
        Current maximumPowerCurrent,

        @Bounds(sensible = "−0.36…−0.24 %/K, modern cells at the low end")
        @Assumed(value = "-0.30 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient openCircuitVoltageCoefficient,

        @Bounds(sensible = "0.04…0.06 %/K")
        @Assumed(value = "0.05 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient shortCircuitCurrentCoefficient,

        @Bounds(sensible = "−0.50…−0.34 %/K")
        @Assumed(value = "-0.40 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient powerCoefficient,

        @Bounds(sensible = "42…48 °C")
        @Assumed(
                value = "45 Cel",
                source = "typical of framed glass modules on an open rack (IEC 61215 test); the data sheet wins")
        Temperature nominalOperatingCellTemperature,

        int cellsInSeries,
        Voltage systemVoltage,
        Current seriesFuse,
        @Nullable Voltage nominalGroup,

        @Bounds(sensible = "0.05–0.15 for bifacial modules over bright ground")
        @Assumed(value = "0", source = "a one-sided module, or a dark ground behind it")
        Ratio bifacialGain,

        Money price)
        implements PvModuleBuilder.With {
    /** How far V_mp · I_mp may stand from the stated power: each of the three figures is rounded. */
    private static final Ratio ROUNDING = Ratio.percent(3);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, can never be right or contradicts the rest
     *     of the sheet; everything that is wrong is told at once
     */
    public PvModule {
        Validation checks = new Validation()
                .required("model", model)
                .required("power", power)
                .within("power", power, Power.watts(0.1), Power.kilowatts(2))
                .required("openCircuitVoltage", openCircuitVoltage)
                .within("openCircuitVoltage", openCircuitVoltage, Voltage.volts(0.5), Voltage.volts(500))
                .required("shortCircuitCurrent", shortCircuitCurrent)
                .within("shortCircuitCurrent", shortCircuitCurrent, Current.milliamperes(5), Current.amperes(100))
                .required("maximumPowerVoltage", maximumPowerVoltage)
                .required("maximumPowerCurrent", maximumPowerCurrent);
        checkKnee(checks, "maximumPowerVoltage", maximumPowerVoltage, "openCircuitVoltage", openCircuitVoltage);
        checkKnee(checks, "maximumPowerCurrent", maximumPowerCurrent, "shortCircuitCurrent", shortCircuitCurrent);
        checkProduct(checks, power, maximumPowerVoltage, maximumPowerCurrent);
        checkCoefficient(checks, "openCircuitVoltageCoefficient", openCircuitVoltageCoefficient, -0.6, -0.1);
        checkCoefficient(checks, "shortCircuitCurrentCoefficient", shortCircuitCurrentCoefficient, 0, 0.2);
        checkCoefficient(checks, "powerCoefficient", powerCoefficient, -0.8, -0.1);
        checks.within(
                "nominalOperatingCellTemperature",
                nominalOperatingCellTemperature,
                Temperature.celsius(30),
                Temperature.celsius(70));
        checkCells(checks, cellsInSeries, openCircuitVoltage);
        checks.required("systemVoltage", systemVoltage)
                .atMost("systemVoltage", systemVoltage, Voltage.volts(3000))
                .required("seriesFuse", seriesFuse)
                .atMost("seriesFuse", seriesFuse, Current.amperes(200));
        checkNotBelow(checks, "systemVoltage", systemVoltage, "openCircuitVoltage", openCircuitVoltage);
        checkNotBelow(checks, "seriesFuse", seriesFuse, "shortCircuitCurrent", shortCircuitCurrent);
        checks.above("nominalGroup", nominalGroup, Voltage.ZERO);
        checkNotBelow(checks, "maximumPowerVoltage", maximumPowerVoltage, "nominalGroup", nominalGroup);
        checks.within("bifacialGain", bifacialGain, Ratio.ZERO, Ratio.percent(50))
                .required("price", price)
                .that(
                        price == null || price.minorUnits() >= 0,
                        "price",
                        ProblemCode.OUT_OF_RANGE,
                        "price must not be negative, but was " + price + ".")
                .done();
        openCircuitVoltageCoefficient = otherwise(openCircuitVoltageCoefficient, "openCircuitVoltageCoefficient");
        shortCircuitCurrentCoefficient = otherwise(shortCircuitCurrentCoefficient, "shortCircuitCurrentCoefficient");
        powerCoefficient = otherwise(powerCoefficient, "powerCoefficient");
        nominalOperatingCellTemperature = otherwise(nominalOperatingCellTemperature, "nominalOperatingCellTemperature");
        bifacialGain = otherwise(bifacialGain, "bifacialGain");
    }

    private static <T> T otherwise(@Nullable T given, String component) {
        return Defaults.otherwise(given, PvModule.class, component);
    }

    /** The maximum power point lies inside its corner: over half of the end of the curve, and short of it. */
    private static <Q extends Quantity> void checkKnee(
            Validation checks, String field, @Nullable Q point, String endField, @Nullable Q end) {
        if (point != null && end != null) {
            checks.that(
                    point.baseValue() > end.baseValue() / 2 && point.baseValue() < end.baseValue(),
                    field,
                    ProblemCode.INCONSISTENT,
                    () -> "%s must lie between half of %s, which is %s, and the whole of it, but was %s."
                            .formatted(field, endField, end, point));
        }
    }

    private static void checkProduct(
            Validation checks, @Nullable Power power, @Nullable Voltage voltage, @Nullable Current current) {
        if (power != null && voltage != null && current != null) {
            Power product = voltage.times(current);
            checks.that(
                    Math.abs(product.watts() - power.watts()) <= ROUNDING.fraction() * power.watts(),
                    "power",
                    ProblemCode.INCONSISTENT,
                    () ->
                            "power must agree with maximumPowerVoltage · maximumPowerCurrent to %s: %s · %s = %s but power is %s"
                                    .formatted(ROUNDING.rounded(), voltage, current, product.rounded(), power));
        }
    }

    private static void checkCoefficient(
            Validation checks, String field, @Nullable TemperatureCoefficient given, double least, double most) {
        checks.within(
                field,
                given,
                TemperatureCoefficient.percentPerKelvin(least),
                TemperatureCoefficient.percentPerKelvin(most));
    }

    /** A cell of any common technology opens at 0.45 V to 1 V; half cells counted twice fall below. */
    private static void checkCells(Validation checks, int cells, @Nullable Voltage openCircuit) {
        checks.within("cellsInSeries", cells, 1, 1000);
        if (cells >= 1 && openCircuit != null) {
            Voltage each = openCircuit.dividedBy(cells);
            checks.that(
                    each.volts() >= 0.45 && each.volts() <= 1,
                    "cellsInSeries",
                    ProblemCode.INCONSISTENT,
                    () ->
                            "cellsInSeries must give each cell 0.45 V to 1 V of openCircuitVoltage but %s cells of %s give %s each; of half cells in two parallel halves only one half counts"
                                    .formatted(cells, openCircuit, each.rounded(3)));
        }
    }

    private static <Q extends Quantity & Comparable<Q>> void checkNotBelow(
            Validation checks, String field, @Nullable Q given, String limitField, @Nullable Q limit) {
        if (given != null && limit != null) {
            checks.that(
                    given.compareTo(limit) >= 0,
                    field,
                    ProblemCode.INCONSISTENT,
                    () -> "%s must be at least %s, which is %s,, but was %s."
                            .formatted(field, limitField, limit, given));
        }
    }
}
