package org.daybank.core.design;

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

/** What the modules of a catalogue bring at one site, each reckoned once, however often a brief is looked at again. */
final class ModuleYields {
    private final Site site;
    private final IrradianceDistribution sunshine;
    private final ArrayPolicy policy;
    private final IdentityHashMap<PvModule, ModuleOutput> outputs = new IdentityHashMap<>();
    private final IdentityHashMap<PvModule, ModuleExtremes> extremes = new IdentityHashMap<>();
    private final IdentityHashMap<PvModule, ModuleYield> tracking = new IdentityHashMap<>();
    private final Map<DirectKey, ModuleYield> direct = new HashMap<>();

    /** A module, by its model, held at a voltage in strings of so many. */
    private record DirectKey(String model, int series, Voltage nominal, Voltage charging) {}

    /** Yields under a sun; of the policy the array-to-load ratio does not matter. */
    ModuleYields(Site site, IrradianceDistribution sunshine, ArrayPolicy policy) {
        this.site = site;
        this.sunshine = sunshine;
        this.policy = policy;
    }

    IrradianceDistribution sunshine() {
        return sunshine;
    }

    /** Its voltages on the coldest morning and in the hottest sun. */
    ModuleExtremes extremes(PvModule module) {
        return extremes.computeIfAbsent(module, any -> ModuleExtremes.of(any, site, policy));
    }

    private ModuleOutput output(PvModule module) {
        return outputs.computeIfAbsent(module, any -> ModuleOutput.of(any, policy.yieldModel()));
    }

    /** What a module brings at its best point, through a controller without loss. */
    ModuleYield tracking(PvModule module) {
        return tracking.computeIfAbsent(
                module,
                any -> ModuleYield.tracking(output(any), site, sunshine, policy.withChargerEfficiency(Ratio.ONE)));
    }

    /**
     * What a module brings at a bank's own voltage; while the sun shines that lies between nominal and absorption. A module of
     * no voltage group stands in the shortest string that still charges in the hottest sun.
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
