package org.daybank.core.bank;

import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.ToldElsewhere;

/**
 * Batteries in series and parallel that make up a bank.
 *
 * @param product model of the battery
 * @param battery its data sheet
 * @param nominalVoltage what the bus is called
 * @param series batteries in each string
 * @param parallel strings
 * @param count batteries in all
 * @param trueNominal true nominal voltage of the bank
 * @param ratedCapacity at the slowest published discharge
 * @param ratedEnergy rated capacity at the true nominal voltage
 * @param resistance of the whole bank when full
 * @param shortCircuitCurrent what flows when the terminals of the full bank are bridged, {@code U_oc / R}, the cable left out
 * @param minimumChargeCurrent least that keeps it healthy
 * @param maximumChargeCurrent most that it may be charged with for hours
 * @param maximumDischargeCurrent most that it gives for hours
 * @param disconnectVoltage voltage at which its loads are switched off
 * @param mass of all batteries
 * @param price of all batteries
 */
public record BankLayout(
        String product,
        @ToldElsewhere Battery battery,
        Voltage nominalVoltage,
        int series,
        int parallel,
        int count,
        Voltage trueNominal,
        Charge ratedCapacity,
        Energy ratedEnergy,
        Resistance resistance,
        Current shortCircuitCurrent,
        Current minimumChargeCurrent,
        Current maximumChargeCurrent,
        Current maximumDischargeCurrent,
        Voltage disconnectVoltage,
        Mass mass,
        Money price) {

    /** The layout of a battery in so many strings of so many. */
    public static BankLayout of(Battery battery, Voltage nominalVoltage, int series, int parallel) {
        Chemistry.Traits traits = battery.chemistry().traits();
        int count = series * parallel;
        Voltage trueNominal = battery.trueNominal().times(series);
        Charge rated = battery.capacity().slowest().times(parallel);
        Resistance resistance = battery.resistance().times(series).dividedBy(parallel);
        return new BankLayout(
                battery.model(),
                battery,
                nominalVoltage,
                series,
                parallel,
                count,
                trueNominal,
                rated,
                rated.times(trueNominal),
                resistance,
                traits.openCircuit().times(battery.cells() * series).dividedBy(resistance),
                rated.dividedBy(TimeSpan.hours(1)).times(traits.minimumChargeRate()),
                battery.maximumChargeCurrent().times(parallel),
                battery.maximumDischargeCurrent().times(parallel),
                traits.disconnect().times(battery.cells() * series),
                battery.mass().times(count),
                battery.price().times(count));
    }

    /** Capacity at a current of the whole bank, by the data sheet's discharge times. */
    public Charge capacityAt(Current current) {
        return battery.capacity()
                .at(current.dividedBy(parallel), battery.chemistry().traits().peukertExponent())
                .times(parallel);
    }

    /**
     * Most that it may be charged with for hours, cells at a temperature: nothing below the coldest charge; a lithium bank
     * takes less while it is cool.
     */
    public Current maximumChargeCurrentAt(Temperature cells) {
        if (cells.compareTo(battery.coldestCharge()) < 0) {
            return Current.ZERO;
        }
        Current allowed = battery.chemistry()
                .traits()
                .chargeRateByTemperature()
                .map(rates -> ratedCapacity.dividedBy(TimeSpan.hours(1)).times(rates.stepAt(cells)))
                .orElse(maximumChargeCurrent);
        return allowed.compareTo(maximumChargeCurrent) < 0 ? allowed : maximumChargeCurrent;
    }

    /** Most that it gives for seconds. */
    public Current peakDischargeCurrent() {
        return battery.peakDischargeCurrent().times(parallel);
    }
}
