package org.daybank.core.array;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Working;

/**
 * The smallest array of one module that covers the need of every month with the array-to-load ratio asked for.
 *
 * @param product model of the module
 * @param need what was asked
 * @param policy what was assumed
 * @param moduleYield what one module brings
 * @param path how its energy reaches the bank
 * @param months need and module yield of each month
 * @param designMonth the month that asks for the most modules
 * @param exactModules modules that would just do, before rounding up
 * @param modules whole modules; at least one unless nothing is needed
 * @param power at standard test conditions
 */
public record ArraySize(
        String product,
        @NotRepeated ArrayNeed need,
        @NotRepeated ArrayPolicy policy,
        @NotRepeated ModuleYield moduleYield,
        ChargePath path,
        List<MonthlyYield> months,
        Month designMonth,
        Ratio exactModules,
        int modules,
        Power power) {
    /** Modules beyond which no array is laid out. */
    public static final int MOST_MODULES = 100_000;

    /** Keeps a copy. */
    public ArraySize {
        months = List.copyOf(months);
    }

    /**
     * Need and yield of the mean day of one month.
     *
     * @param month which
     * @param need what must reach the bank, the battery's loss included
     * @param moduleYield what one module brings there
     * @param yield what all modules bring there
     * @param arrayToLoadRatio yield over need; absent from the list of reasons when nothing is needed, then 0
     */
    public record MonthlyYield(Month month, Energy need, Energy moduleYield, Energy yield, Ratio arrayToLoadRatio) {}

    /** The array of a module that covers a need. */
    public static ArraySize of(ArrayNeed need, ModuleYield moduleYield, ArrayPolicy policy) {
        double most = 0;
        Month designMonth = Month.JANUARY;
        for (Month month : Month.values()) {
            double modules = exactModules(need, moduleYield, policy, month);
            if (modules > most) {
                most = modules;
                designMonth = month;
            }
        }
        return laidOut(
                need, moduleYield, policy, designMonth, most, (int) Math.min(MOST_MODULES + 1, Math.ceil(most - 1e-9)));
    }

    /**
     * Modules that would just do, before rounding up: all that a search asks of most modules.
     *
     * @return {@link Double#MAX_VALUE} when no number of them would
     */
    public static double exactModules(ArrayNeed need, ModuleYield moduleYield, ArrayPolicy policy) {
        double most = 0;
        for (Month month : Month.values()) {
            most = Math.max(most, exactModules(need, moduleYield, policy, month));
        }
        return most;
    }

    private static double exactModules(ArrayNeed need, ModuleYield moduleYield, ArrayPolicy policy, Month month) {
        double asked = need.atBank(month.getValue() - 1, moduleYield.path()).wattHours()
                * policy.arrayToLoadRatio().fraction();
        double brought = moduleYield.in(month).wattHours();
        return asked == 0 ? 0 : brought == 0 ? Double.MAX_VALUE : asked / brought;
    }

    private static ArraySize laidOut(
            ArrayNeed need, ModuleYield moduleYield, ArrayPolicy policy, Month designMonth, double exact, int modules) {
        List<MonthlyYield> months = new ArrayList<>();
        for (Month month : Month.values()) {
            Energy asked = need.atBank(month.getValue() - 1, moduleYield.path());
            Energy one = moduleYield.in(month);
            Energy all = one.times(modules);
            months.add(new MonthlyYield(
                    month, asked, one, all, Ratio.of(asked.wattHours() == 0 ? 0 : all.dividedBy(asked))));
        }
        return new ArraySize(
                moduleYield.module().model(),
                need,
                policy,
                moduleYield,
                moduleYield.path(),
                months,
                designMonth,
                Ratio.of(exact),
                modules,
                moduleYield.module().power().times(modules));
    }

    /** The same array with more modules, as whole strings ask for. */
    public ArraySize withModules(int count) {
        return laidOut(need, moduleYield, policy, designMonth, exactModules.fraction(), count);
    }

    /** Whether any number of modules can cover the need: in polar night none can. */
    public boolean possible() {
        return modules <= MOST_MODULES;
    }

    /** Need and yield in the design month. */
    public MonthlyYield inDesignMonth() {
        return months.get(designMonth.getValue() - 1);
    }

    private String formula() {
        boolean diode = policy.yieldModel() == YieldModel.SINGLE_DIODE;
        if (moduleYield.path() == ChargePath.TRACKING) {
            return diode
                    ? "E₁ = Σ P_mp(G, T_cell) · t · factors · η"
                    : "E₁ = Σ P · G / (1 kW/m²) · (1 + γ·(T_cell − 25 °C)) · t · factors · η";
        }
        return diode
                ? "E₁ = U_nominal / n · Σ I(U_charging / n, G, T_cell) · t · factors"
                : "E₁ = U_nominal / n · Σ I_mp · G / (1 kW/m²) · t · factors";
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        MonthlyYield month = inDesignMonth();
        return Working.builder()
                .step(
                        "need at the bank in the design month",
                        "E = E_day · (1 − s + s / η)",
                        "share s drawn after dark passes through the battery",
                        month.need(),
                        "%s · (1 − %s + %s / %s)",
                        need.dailyEnergy().get(designMonth.getValue() - 1),
                        need.afterDark().get(designMonth.getValue() - 1),
                        need.afterDark().get(designMonth.getValue() - 1),
                        need.batteryEfficiency(moduleYield.path()))
                .step(
                        "yield of one module in the design month",
                        formula(),
                        policy.yieldModel() == YieldModel.SINGLE_DIODE
                                ? "De Soto, Klein and Beckman 2006; cells by Ross 1976"
                                : "in proportion to irradiance; cells by Ross 1976",
                        month.moduleYield(),
                        "%s module, factors %s",
                        moduleYield.module().power(),
                        policy.whenAged())
                .step(
                        "modules",
                        "n = E · ratio / E₁, rounded up",
                        "IEEE 1562 array-to-load ratio",
                        modules,
                        "%s · %s / %s = %s",
                        month.need(),
                        policy.arrayToLoadRatio(),
                        month.moduleYield(),
                        exactModules)
                .build();
    }
}
