package org.daybank.core.bank;

import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.NotRepeated;

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
 * @param evenStrings strings that would carry as much if they shared every current evenly, {@code 1 + f · (N_p − 1)}
 * @param maximumChargeCurrent most that it may be charged with for hours
 * @param maximumDischargeCurrent most that it gives for hours
 * @param peakDischargeCurrent most that it gives for seconds
 * @param disconnectVoltage voltage at which its loads are switched off
 * @param mass of all batteries
 * @param price of all batteries
 */
public record BankLayout(
        String product,
        @NotRepeated Battery battery,
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
        double evenStrings,
        Current maximumChargeCurrent,
        Current maximumDischargeCurrent,
        Current peakDischargeCurrent,
        Voltage disconnectVoltage,
        Mass mass,
        Money price) {

    /** The layout of a battery in so many strings of so many that share every current evenly. */
    public static BankLayout of(Battery battery, Voltage nominalVoltage, int series, int parallel) {
        return of(battery, nominalVoltage, series, parallel, Ratio.ONE);
    }

    /**
     * The layout of a battery in so many strings of so many.
     *
     * @param parallelFactor share of its own current that each string after the first adds
     */
    public static BankLayout of(
            Battery battery, Voltage nominalVoltage, int series, int parallel, Ratio parallelFactor) {
        Chemistry.Traits traits = battery.chemistry().traits();
        Battery.Resolved sheet = battery.resolved();
        int count = series * parallel;
        Voltage trueNominal = battery.trueNominal().times(series);
        Charge rated = battery.capacity().slowest().times(parallel);
        double evenStrings = 1 + parallelFactor.fraction() * (parallel - 1);
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
                evenStrings,
                sheet.maximumChargeCurrent().times(evenStrings),
                sheet.maximumDischargeCurrent().times(evenStrings),
                sheet.peakDischargeCurrent().times(evenStrings),
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
        return battery.maximumChargeCurrentAt(cells).times(evenStrings);
    }
}
