package org.daybank.core.charger;

import static org.daybank.core.working.Message.value;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

/**
 * A load, mostly a heater, that takes what the array brings and a full bank cannot (NFPA 70 690.72(B)).
 *
 * @param source rated power of the array
 * @param load least power of the load at the charging voltage
 * @param voltage the charging voltage, which the load must stand all day
 * @param current what the load draws there; its cable and the controllers must carry it
 * @param resistance the most a heater of that power may have
 */
public record Diversion(Power source, Power load, Voltage voltage, Current current, Resistance resistance) {

    /** The load for an array on a bank charged at a voltage. */
    static Diversion of(Power source, Voltage voltage, ChargerPolicy policy) {
        Power load = source.times(policy.diversionFactor());
        Current current = load.dividedBy(voltage);
        return new Diversion(source, load, voltage, current, voltage.dividedBy(current));
    }

    /** What happens when the load fails. */
    public Hazard hazard() {
        return Hazard.of(HazardCode.SECOND_CHARGE_CONTROL, "diversion load", value("load", load));
    }
}
