package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when an array is sized. Each factor counts once.
 *
 * @param arrayToLoadRatio array energy over load energy in the design month; one carries the load but never refills the bank
 * @param soilingFactor what dirt leaves
 * @param mismatchFactor what unequal modules leave
 * @param wiringFactor what the array's wiring leaves
 * @param ageingFactor what the years leave of the yield
 * @param voltageAgeingFactor what the years leave of the voltage; most of ageing is lost current
 * @param chargerEfficiency of a tracking controller while none is chosen
 * @param yieldModel how a module's yield is reckoned
 */
@RecordBuilder
public record ArrayPolicy(
        @Bounds(minimum = "1", maximum = "5", sensible = "1.1–1.4") @Assumed(value = "1.3", source = "IEEE 1562")
        Ratio arrayToLoadRatio,

        @Bounds(minimum = "0.3", maximum = "1", sensible = "0.92–0.98")
        @Assumed(value = "0.95", source = "winter practice")
        Ratio soilingFactor,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–1")
        @Assumed(value = "0.98", source = "winter practice")
        Ratio mismatchFactor,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.95–1")
        @Assumed(value = "0.98", source = "2 % drop at full sun")
        Ratio wiringFactor,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.92–0.98")
        @Assumed(value = "0.95", source = "ten years at 0.5 % a year")
        Ratio ageingFactor,

        @Bounds(minimum = "0.8", maximum = "1", sensible = "0.95–1")
        @Assumed(value = "0.98", source = "most of ageing is lost current")
        Ratio voltageAgeingFactor,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.93–0.98")
        @Assumed(value = "0.96", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Assumed(value = "singleDiode", source = "De Soto, Klein and Beckman 2006, fitted to the data sheet")
        YieldModel yieldModel)
        implements ArrayPolicyBuilder.With {
    private static final ArrayPolicy STANDARD = Defaults.of(ArrayPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public ArrayPolicy {
        Validation.of(
                        ArrayPolicy.class,
                        arrayToLoadRatio,
                        soilingFactor,
                        mismatchFactor,
                        wiringFactor,
                        ageingFactor,
                        voltageAgeingFactor,
                        chargerEfficiency,
                        yieldModel)
                .done();
    }

    /** The cited defaults. */
    public static ArrayPolicy standard() {
        return STANDARD;
    }

    /** What dirt, mismatch and wiring leave of a new array. */
    public Ratio whenNew() {
        return soilingFactor.times(mismatchFactor).times(wiringFactor);
    }

    /** What dirt, mismatch, wiring and the years leave. */
    public Ratio whenAged() {
        return whenNew().times(ageingFactor);
    }
}
