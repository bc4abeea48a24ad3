package org.daybank.core.inverter;

import java.util.List;
import java.util.Optional;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Solvable;
import org.daybank.core.working.Working;

/**
 * Both ways to feed an array into the grid side by side.
 *
 * @param extremes the module's voltages at the site, from which those of the strings follow
 * @param stringInverters modules in strings, a few inverters
 * @param microinverters an inverter behind each module, or each few
 */
public record GridInverterSelection(
        ModuleExtremes extremes, StringInverterSelection stringInverters, MicroinverterSelection microinverters)
        implements Solvable {
    /** Holds both kinds against the array and the grid. */
    public static GridInverterSelection of(
            GridService grid,
            GridArray array,
            List<StringInverter> stringInverters,
            List<Microinverter> microinverters,
            GridPolicy policy) {
        return new GridInverterSelection(
                array.extremes(),
                StringInverterSelection.of(grid, array, stringInverters, policy),
                MicroinverterSelection.of(grid, array, microinverters, policy));
    }

    /** What can hurt someone in a system made of what fits. */
    public List<Hazard> hazards() {
        return GridHazards.of(this);
    }

    /** The steps to the module's voltages and to the cheapest of each kind, as one would write them on paper. */
    public Working working() {
        Working.Builder steps = Working.builder().all(extremes.working());
        stringInverters.ranked().stream().findFirst().ifPresent(fit -> addStrings(steps, fit));
        microinverters.ranked().stream().findFirst().ifPresent(fit -> addUnit(steps, fit));
        return steps.build();
    }

    private void addStrings(Working.Builder steps, StringInverterFit fit) {
        int longest = fit.units().stream().mapToInt(UnitStrings::longest).max().orElseThrow();
        int shortest =
                fit.units().stream().mapToInt(UnitStrings::shortest).min().orElseThrow();
        steps.step(
                        "coldest open-circuit voltage of the longest string on " + fit.product(),
                        "V = N_s · V_oc,cold",
                        "IEC 62548-1",
                        extremes.coldestOpenCircuit(longest),
                        "%s · %s",
                        longest,
                        extremes.coldestOpenCircuit())
                .step(
                        "hottest maximum-power voltage of the shortest string on " + fit.product(),
                        "V = N_s · V_mp,hot",
                        "IEC 62548-1",
                        extremes.hottestMaximumPower(shortest),
                        "%s · %s",
                        shortest,
                        extremes.hottestMaximumPower());
        steps.step(
                "power of the modules over that of " + fit.product(),
                "P_dc / P_ac",
                "of what is connected",
                fit.dcAcRatio(),
                "%s / %s",
                fit.arrayPower(),
                fit.power());
    }

    private void addUnit(Working.Builder steps, MicroinverterFit fit) {
        steps.step(
                "power of the modules on a full unit over that of " + fit.product(),
                "n · P_module / P_ac",
                "of what is connected",
                fit.dcAcRatio(),
                "%s · %s / %s",
                fit.modulesOnEach(),
                extremes.module().power(),
                fit.inverter().power());
    }

    @Override
    public Optional<String> unsolvedReason() {
        return stringInverters.ranked().isEmpty() ? microinverters.unsolvedReason() : Optional.empty();
    }
}
