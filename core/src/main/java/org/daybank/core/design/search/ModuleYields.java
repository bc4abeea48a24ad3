package org.daybank.core.design.search;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;

/** The yields of modules at one site, each calculated once for all searches of a design. */
public final class ModuleYields {
    private final Site site;
    private final IrradianceDistribution sunshine;
    private final ArrayPolicy policy;
    private final IdentityHashMap<PvModule, ModuleOutput> outputs = new IdentityHashMap<>();
    private final IdentityHashMap<PvModule, ModuleExtremes> extremes = new IdentityHashMap<>();
    private final IdentityHashMap<PvModule, ModuleYield> tracking = new IdentityHashMap<>();
    private final Map<DirectKey, ModuleYield> direct = new HashMap<>();

    /** What the yield of a module at a bank's own voltage depends on. */
    private record DirectKey(String model, int series, Voltage nominal, Voltage charging) {}

    /**
     * Creates yields at a site; no yield depends on the array-to-load ratio of the policy.
     *
     * @param sunshine distribution of the irradiance on the array
     */
    public ModuleYields(Site site, IrradianceDistribution sunshine, ArrayPolicy policy) {
        this.site = site;
        this.sunshine = sunshine;
        this.policy = policy;
    }

    /** Returns the distribution of the irradiance on the array. */
    public IrradianceDistribution sunshine() {
        return sunshine;
    }

    /** Returns the voltages of a module on the coldest morning and in the hottest sun. */
    public ModuleExtremes extremes(PvModule module) {
        return extremes.computeIfAbsent(module, any -> ModuleExtremes.of(any, site, policy));
    }

    private ModuleOutput output(PvModule module) {
        return outputs.computeIfAbsent(module, any -> ModuleOutput.of(any, policy.yieldModel()));
    }

    /** Returns the yield of a module at its maximum power point, through a controller without loss. */
    public ModuleYield tracking(PvModule module) {
        return tracking.computeIfAbsent(
                module,
                any -> ModuleYield.tracking(output(any), site, sunshine, policy.withChargerEfficiency(Ratio.ONE)));
    }

    /**
     * Returns the yield of a module at the voltage of a bank, which in sunshine lies between nominal and absorption. A module
     * without a voltage group is connected in the shortest string that still charges in the hottest sun.
     */
    ModuleYield direct(PvModule module, Voltage voltage, Chemistry chemistry, Voltage absorption) {
        Voltage trueNominal = chemistry.trueNominal(voltage);
        Voltage group = module.nominalGroup();
        double series = group == null
                ? Math.ceil(absorption.dividedBy(extremes(module).hottestMaximumPower()))
                : Math.rint(voltage.dividedBy(group));
        DirectKey key = new DirectKey(
                module.model(),
                (int) Math.max(1, series),
                trueNominal,
                trueNominal.plus(absorption).dividedBy(2));
        return direct.computeIfAbsent(
                key,
                any -> ModuleYield.direct(
                        output(module), any.series(), any.nominal(), any.charging(), site, sunshine, policy));
    }
}
