package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankUse;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.bank.LifePolicy;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * How long does a bank last, and what does a kilowatt-hour out of it cost?
 *
 * @param battery its data sheet, with its cycle life, its calendar life or both
 * @param nominalVoltage what the bus is called
 * @param parallel strings in parallel
 * @param use what the bank goes through in a year
 * @param policy what is assumed
 */
public record BatteryLifeRequest(
        Battery battery,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V")
        Voltage nominalVoltage,

        @Bounds(minimum = "1", maximum = "64") int parallel,
        @Inline BankUse use,
        LifePolicy policy) {
    /** Refuses what is missing, and a battery that makes no such bank or says nothing of its life. */
    public BatteryLifeRequest {
        Validation.of(BatteryLifeRequest.class, battery, nominalVoltage, parallel, use, policy)
                .that(
                        battery == null
                                || nominalVoltage == null
                                || nominalVoltage.compareTo(Voltage.ZERO) <= 0
                                || battery.seriesFor(nominalVoltage) > 0,
                        "nominalVoltage",
                        ProblemCode.INCONSISTENT,
                        () -> "no whole number of %s batteries makes %s"
                                .formatted(battery.nominalVoltage(), nominalVoltage))
                .that(
                        battery == null || battery.cycleLife() != null || battery.calendarLife() != null,
                        "battery/cycleLife",
                        ProblemCode.MISSING,
                        "the battery needs its cycleLife (as in '0.2: 3000; 0.5: 1200'), its calendarLife (as in '10 a') or both")
                .done();
    }

    /** Asks the library. */
    public BatteryLife answer() {
        BankLayout bank = BankLayout.of(battery, nominalVoltage, battery.seriesFor(nominalVoltage), parallel);
        return BatteryLife.of(bank, use, policy).orElseThrow();
    }
}
