package org.daybank.core.load;

import java.time.Month;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;

/**
 * What the loads draw in one month.
 *
 * @param month which
 * @param dailyEnergy energy that leaves the bank on a mean day
 * @param worstDailyEnergy energy that leaves it each day of the worst run as long as the autonomy
 * @param acEnergy energy that AC loads take on a mean day, at the loads
 * @param dcEnergy energy that DC loads take on a mean day, at the loads
 * @param inverterLoss what the inverter itself takes on a mean day, idle draw included
 * @param wiringLoss what DC wiring takes on a mean day
 * @param standingEnergy what the system's own parts take on a mean day: controllers, a heater
 * @param essentialEnergy part of the AC and DC energy at the loads that is essential
 * @param afterDark share of the energy that leaves the bank while it is dark
 * @param runningPower energy-weighted mean of the power that leaves the bank ({@code ΣP²t / ΣPt}); divided by the voltage
 *     it is the running current of IEEE 1013
 */
public record MonthBudget(
        Month month,
        Energy dailyEnergy,
        Energy worstDailyEnergy,
        Energy acEnergy,
        Energy dcEnergy,
        Energy inverterLoss,
        Energy wiringLoss,
        Energy standingEnergy,
        Energy essentialEnergy,
        Ratio afterDark,
        Power runningPower) {

    /** Energy that all loads take on a mean day, at the loads. */
    public Energy atLoads() {
        return acEnergy.plus(dcEnergy);
    }
}
