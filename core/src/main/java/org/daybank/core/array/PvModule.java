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
        @Bounds(minimum = "0.1 W", maximum = "2000 W") Power power,

        @Bounds(minimum = "0.5 V", maximum = "500 V") Voltage openCircuitVoltage,

        @Bounds(minimum = "0.005 A", maximum = "100 A") Current shortCircuitCurrent,

        @Bounds(exclusiveMinimum = "0 V", maximum = "500 V") Voltage maximumPowerVoltage,

        @Bounds(exclusiveMinimum = "0 A", maximum = "100 A") Current maximumPowerCurrent,

        @Bounds(minimum = "-0.6 %/K", maximum = "-0.1 %/K", sensible = "−0.36…−0.24 %/K, modern cells at the low end")
        @Assumed(value = "-0.30 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient openCircuitVoltageCoefficient,

        @Bounds(minimum = "0 %/K", maximum = "0.2 %/K", sensible = "0.04…0.06 %/K")
        @Assumed(value = "0.05 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient shortCircuitCurrentCoefficient,

        @Bounds(minimum = "-0.8 %/K", maximum = "-0.1 %/K", sensible = "−0.50…−0.34 %/K")
        @Assumed(value = "-0.40 %/K", source = "typical of crystalline silicon; the data sheet wins")
        TemperatureCoefficient powerCoefficient,

        @Bounds(minimum = "30 Cel", maximum = "70 Cel", sensible = "42…48 °C")
        @Assumed(
                value = "45 Cel",
                source = "typical of framed glass modules on an open rack (IEC 61215 test); the data sheet wins")
        Temperature nominalOperatingCellTemperature,

        @Bounds(minimum = "1", maximum = "1000") int cellsInSeries,

        @Bounds(minimum = "0.5 V", maximum = "3000 V") Voltage systemVoltage,

        @Bounds(exclusiveMinimum = "0 A", maximum = "200 A") Current seriesFuse,

        @Bounds(exclusiveMinimum = "0 V", maximum = "48 V") @Nullable
        Voltage nominalGroup,

        @Bounds(minimum = "0", maximum = "0.5", sensible = "0.05–0.15 for bifacial modules over bright ground")
        @Assumed(value = "0", source = "a one-sided module, or a dark ground behind it")
        Ratio bifacialGain,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements PvModuleBuilder.With {
    /** How far V_mp · I_mp may stand from the stated power: each of the three figures is rounded. */
    private static final Ratio ROUNDING = Ratio.percent(3);

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or contradicts the rest of the
     *     sheet; with every problem at once
     */
    public PvModule {
        openCircuitVoltageCoefficient = otherwise(openCircuitVoltageCoefficient, "openCircuitVoltageCoefficient");
        shortCircuitCurrentCoefficient = otherwise(shortCircuitCurrentCoefficient, "shortCircuitCurrentCoefficient");
        powerCoefficient = otherwise(powerCoefficient, "powerCoefficient");
        nominalOperatingCellTemperature = otherwise(nominalOperatingCellTemperature, "nominalOperatingCellTemperature");
        bifacialGain = otherwise(bifacialGain, "bifacialGain");
        Validation validation = Validation.of(
                PvModule.class,
                model,
                power,
                openCircuitVoltage,
                shortCircuitCurrent,
                maximumPowerVoltage,
                maximumPowerCurrent,
                openCircuitVoltageCoefficient,
                shortCircuitCurrentCoefficient,
                powerCoefficient,
                nominalOperatingCellTemperature,
                cellsInSeries,
                systemVoltage,
                seriesFuse,
                nominalGroup,
                bifacialGain,
                price);
        checkKnee(validation, "maximumPowerVoltage", maximumPowerVoltage, "openCircuitVoltage", openCircuitVoltage);
        checkKnee(validation, "maximumPowerCurrent", maximumPowerCurrent, "shortCircuitCurrent", shortCircuitCurrent);
        checkProduct(validation, power, maximumPowerVoltage, maximumPowerCurrent);
        checkCells(validation, cellsInSeries, openCircuitVoltage);
        validation
                .notBelow("systemVoltage", systemVoltage, "openCircuitVoltage", openCircuitVoltage)
                .notBelow("seriesFuse", seriesFuse, "shortCircuitCurrent", shortCircuitCurrent)
                .notBelow("maximumPowerVoltage", maximumPowerVoltage, "nominalGroup", nominalGroup)
                .done();
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
                            "power must agree with maximumPowerVoltage · maximumPowerCurrent to %s: %s · %s = %s, but was %s."
                                    .formatted(ROUNDING.rounded(), voltage, current, product.rounded(), power));
        }
    }

    /** A cell of any common technology opens at 0.45 V to 1 V; half cells counted twice fall below. */
    private static void checkCells(Validation checks, int cells, @Nullable Voltage openCircuit) {
        if (cells >= 1 && openCircuit != null) {
            Voltage each = openCircuit.dividedBy(cells);
            checks.that(
                    each.volts() >= 0.45 && each.volts() <= 1,
                    "cellsInSeries",
                    ProblemCode.INCONSISTENT,
                    () ->
                            "cellsInSeries must give each cell 0.45 V to 1 V of openCircuitVoltage but %s cells of %s give %s each; of half cells in two parallel halves only one half counts."
                                    .formatted(cells, openCircuit, each.rounded(3)));
        }
    }
}
