package org.daybank.core.wiring;

import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;

/**
 * The next size up that keeps every rule as well, and whether it would pay.
 *
 * @param size of each conductor
 * @param parallel conductors side by side
 * @param dropShare at the operating current
 * @param extraCost of its metal over that of the chosen size
 * @param yearlySaving energy that it does not lose; absent when the yearly energy is not known
 * @param payBack time until the energy saved has paid the metal; absent when nothing is saved
 */
public record LargerConductor(
        ConductorSize size,
        int parallel,
        Ratio dropShare,
        Money extraCost,
        Optional<Energy> yearlySaving,
        Optional<TimeSpan> payBack) {

    static LargerConductor of(ConductorRun chosen, ConductorRun larger, WiringPolicy policy) {
        Money extra = larger.metalCost().minus(chosen.metalCost());
        Optional<Energy> saving =
                chosen.yearlyLoss().flatMap(loss -> larger.yearlyLoss().map(loss::minus));
        return new LargerConductor(
                larger.size(),
                larger.parallel(),
                larger.dropShare(),
                extra,
                saving,
                saving.map(energy -> energy.kilowattHours()
                                * policy.energyPricePerKilowattHour().minorUnits())
                        .filter(minorUnitsEachYear -> minorUnitsEachYear > 0)
                        .map(minorUnitsEachYear -> TimeSpan.years(extra.minorUnits() / minorUnitsEachYear)));
    }
}
