package org.daybank.core.bank;

import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

/**
 * Batteries in series and parallel that make up a bank.
 *
 * @param battery the battery it is made of
 * @param nominalVoltage what the bus is called
 * @param series batteries in each string
 * @param parallel strings
 */
public record BankLayout(Battery battery, Voltage nominalVoltage, int series, int parallel) {
    /** Batteries in all. */
    public int count() {
        return series * parallel;
    }

    /** Cells in series. */
    public int cells() {
        return battery.cells() * series;
    }

    /** True nominal voltage of the bank. */
    public Voltage trueNominal() {
        return battery.trueNominal().times(series);
    }

    /** Capacity at a current of the whole bank, by the data sheet's discharge times. */
    public Charge capacityAt(Current current) {
        return battery.capacity()
                .at(current.dividedBy(parallel), battery.chemistry().traits().peukertExponent())
                .times(parallel);
    }

    /** Capacity at the slowest published discharge. */
    public Charge ratedCapacity() {
        return battery.capacity().slowest().times(parallel);
    }

    /** Rated capacity at the true nominal voltage. */
    public Energy ratedEnergy() {
        return ratedCapacity().times(trueNominal());
    }

    /** Internal resistance of the bank when full. */
    public Resistance resistance() {
        return battery.resistance().times(series).dividedBy(parallel);
    }

    /** What flows when its terminals are bridged: {@code U / R}, the cable left out. */
    public Current shortCircuitCurrent() {
        return trueNominal().dividedBy(resistance());
    }

    /** Most that it may be charged with. */
    public Current maximumChargeCurrent() {
        return battery.maximumChargeCurrent().times(parallel);
    }

    /** Least charging current that keeps it healthy. */
    public Current minimumChargeCurrent() {
        return ratedCapacity()
                .dividedBy(TimeSpan.hours(1))
                .times(battery.chemistry().traits().minimumChargeRate());
    }

    /** Most that it gives for hours. */
    public Current maximumDischargeCurrent() {
        return battery.maximumDischargeCurrent().times(parallel);
    }

    /** Voltage at which its loads are switched off. */
    public Voltage disconnectVoltage() {
        return battery.chemistry().traits().disconnect().times(cells());
    }

    /** Mass of all batteries. */
    public Mass mass() {
        return battery.mass().times(count());
    }

    /** Price of all batteries. */
    public Money price() {
        return battery.price().times(count());
    }
}
