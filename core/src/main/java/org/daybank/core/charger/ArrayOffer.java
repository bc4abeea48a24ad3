package org.daybank.core.charger;

import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The modules that a controller is to carry: as many as the need requires through that controller, or exactly so many.
 *
 * @param extremes of the module at the site
 * @param exactTracking modules that would just do where the best point is tracked without loss
 * @param modulesDirect modules needed at the bank's own voltage
 * @param whenNew what dirt, mismatch and wiring leave of a new array's power
 * @param sunshine the year's sunshine on the array
 * @param yearlyTracking what one module brings in a year where the best point is tracked without loss
 * @param yearlyDirect what one module brings in a year at the bank's own voltage; absent when it belongs to no voltage group
 * @param exact whether exactly {@code modulesDirect} modules are to be connected through any controller, not fewer and not
 *     more; if not, whole strings may add some
 */
public record ArrayOffer(
        ModuleExtremes extremes,
        Ratio exactTracking,
        int modulesDirect,
        Ratio whenNew,
        IrradianceDistribution sunshine,
        Energy yearlyTracking,
        @Nullable Energy yearlyDirect,
        boolean exact) {
    /** As many modules as the need requires through a controller. */
    public ArrayOffer(
            ModuleExtremes extremes,
            Ratio exactTracking,
            int modulesDirect,
            Ratio whenNew,
            IrradianceDistribution sunshine,
            Energy yearlyTracking,
            @Nullable Energy yearlyDirect) {
        this(extremes, exactTracking, modulesDirect, whenNew, sunshine, yearlyTracking, yearlyDirect, false);
    }

    /**
     * Returns the offer of exactly so many modules, whichever controller carries them.
     *
     * @param modules from 1 to {@link ArraySize#MOST_MODULES}
     * @param need of the controller: at the bank's own voltage the modules run half way between nominal and charging voltage
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the data sheet, or the number is out of range
     */
    public static ArrayOffer of(
            PvModule module,
            int modules,
            ChargerNeed need,
            Site site,
            IrradianceDistribution sunshine,
            ArrayPolicy policy) {
        new Validation().within("modules", modules, 1, ArraySize.MOST_MODULES).done();
        ModuleOutput output = ModuleOutput.of(module, policy.yieldModel());
        Voltage group = module.nominalGroup();
        return new ArrayOffer(
                ModuleExtremes.of(module, site, policy),
                Ratio.of(modules),
                modules,
                policy.whenNew(),
                sunshine,
                ModuleYield.tracking(output, site, sunshine, policy.withChargerEfficiency(Ratio.ONE))
                        .yearly(),
                group == null
                        ? null
                        : ModuleYield.direct(
                                        output,
                                        (int) Math.max(
                                                1,
                                                Math.rint(need.nominalVoltage().dividedBy(group))),
                                        need.trueNominal(),
                                        need.trueNominal()
                                                .plus(need.resolved().chargingVoltage())
                                                .dividedBy(2),
                                        site,
                                        sunshine,
                                        policy)
                                .yearly(),
                true);
    }

    /** The module. */
    public PvModule module() {
        return extremes.module();
    }

    /**
     * Returns the power of modules in full sun, light on their backs included as in the yield.
     *
     * @param rated power of the modules at standard test conditions
     * @param whenNew what soiling and the like leave of it
     */
    public static Power fullSunPower(Power rated, PvModule module, Ratio whenNew) {
        return rated.times(module.bifacialGain().onePlus()).times(whenNew);
    }

    /** What one module brings the bank in a year through a controller whose output is never full. */
    Energy yearlyThrough(ChargeController controller) {
        return switch (controller.kind().path()) {
            case TRACKING -> yearlyTracking.times(controller.efficiency());
            case DIRECT -> yearlyDirect == null ? Energy.ZERO : yearlyDirect;
        };
    }

    /** Returns the number of modules to be connected through a controller. */
    int modulesFor(ChargeController controller) {
        if (exact) {
            return modulesDirect;
        }
        return switch (controller.kind().path()) {
            case TRACKING ->
                (int) Math.min(
                        ArraySize.MOST_MODULES,
                        Math.ceil(exactTracking.fraction()
                                        / controller.efficiency().fraction()
                                - 1e-9));
            case DIRECT -> modulesDirect;
        };
    }
}
