package org.daybank.core.design;

import java.util.List;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * An array that feeds the grid: modules, the inverters chosen for them, and what they bring.
 *
 * @param module model of the modules
 * @param modules how many
 * @param arrayPower of all modules at standard test conditions
 * @param stringInverters chosen; absent when microinverters are cheaper
 * @param microinverters chosen; absent when string inverters are cheaper
 * @param otherKind price of modules and inverters of the kind that was not chosen; absent when none of that kind fits
 * @param dailyYield into the grid on the mean day of each month, from January, ageing and clipping reckoned in
 * @param yearlyYield into the grid
 * @param yearlyUse of the loads
 * @param coverage yearly yield over yearly use; absent when the loads use nothing
 * @param flows self-use, import and export by the hour; absent when no year is run
 * @param bill what the flows cost by the tariff asked, and when the parts have paid for themselves; absent without a tariff
 */
public record GridFeed(
        String module,
        int modules,
        Power arrayPower,
        @Nullable StringInverterFit stringInverters,
        @Nullable MicroinverterFit microinverters,
        @Nullable Money otherKind,
        List<Energy> dailyYield,
        Energy yearlyYield,
        Energy yearlyUse,
        @Nullable Ratio coverage,
        @Nullable GridFlows flows,
        @Nullable GridBill bill) {
    /** Keeps a copy. */
    public GridFeed {
        dailyYield = List.copyOf(dailyYield);
    }
}
