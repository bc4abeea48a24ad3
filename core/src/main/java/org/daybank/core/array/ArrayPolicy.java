package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

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
        @Assumed(value = "1.3", least = "1", most = "5", sensible = "1.1–1.4", source = "IEEE 1562")
        Ratio arrayToLoadRatio,

        @Assumed(value = "0.95", least = "0.3", most = "1", sensible = "0.92–0.98", source = "winter practice")
        Ratio soilingFactor,

        @Assumed(value = "0.98", least = "0.5", most = "1", sensible = "0.95–1", source = "winter practice")
        Ratio mismatchFactor,

        @Assumed(value = "0.98", least = "0.5", most = "1", sensible = "0.95–1", source = "2 % drop at full sun")
        Ratio wiringFactor,

        @Assumed(
                value = "0.95",
                least = "0.5",
                most = "1",
                sensible = "0.92–0.98",
                source = "ten years at 0.5 % a year")
        Ratio ageingFactor,

        @Assumed(
                value = "0.98",
                least = "0.8",
                most = "1",
                sensible = "0.95–1",
                source = "most of ageing is lost current")
        Ratio voltageAgeingFactor,

        @Assumed(value = "0.96", least = "0.5", most = "1", sensible = "0.93–0.98", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Assumed(value = "singleDiode", source = "De Soto, Klein and Beckman 2006, fitted to the data sheet")
        YieldModel yieldModel)
        implements ArrayPolicyBuilder.With {
    private static final ArrayPolicy STANDARD = Policies.standard(ArrayPolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.working.InvalidInput when any is absent or out of range
     */
    public ArrayPolicy {
        Policies.check(
                ArrayPolicy.class,
                arrayToLoadRatio,
                soilingFactor,
                mismatchFactor,
                wiringFactor,
                ageingFactor,
                voltageAgeingFactor,
                chargerEfficiency,
                yieldModel);
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
