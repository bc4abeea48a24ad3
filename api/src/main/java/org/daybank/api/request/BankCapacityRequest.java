package org.daybank.api.request;

import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Which capacity does a demand call for, and which batteries make it up?
 *
 * @param demand what is asked of the bank
 * @param cutOffVoltage lowest bus voltage at which the inverter still works; absent when nothing asks for one
 * @param cableResistance of the cable from the bank to the inverter and back; none when absent
 * @param batteries batteries on offer; those of another chemistry are left aside; those of the service when absent
 * @param policy what is assumed
 */
public record BankCapacityRequest(
        @Inline BankDemand demand,

        @Bounds(exclusiveMinimum = "0 V", maximum = "100 V") @Nullable
        Voltage cutOffVoltage,

        @Bounds(minimum = "0 Ohm", maximum = "1 Ohm") @Nullable
        Resistance cableResistance,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<Battery> batteries,

        BankPolicy policy) {
    /** Refuses what is missing, out of range or inconsistent. */
    public BankCapacityRequest {
        Validation.of(BankCapacityRequest.class, demand, cutOffVoltage, cableResistance, batteries, policy)
                .that(
                        cutOffVoltage == null || demand == null || cutOffVoltage.compareTo(demand.nominalVoltage()) < 0,
                        "cutOffVoltage",
                        ProblemCode.INCONSISTENT,
                        () -> "cutOffVoltage must be below nominalVoltage %s, but was %s."
                                .formatted(demand.nominalVoltage(), cutOffVoltage))
                .done();
        batteries = batteries == null ? null : List.copyOf(batteries);
    }

    /**
     * The capacity and the layouts that reach it.
     *
     * @param capacity what the demand calls for
     * @param layouts batteries of the chemistry, ranked and rejected
     */
    public record Answer(@Inline BankCapacity capacity, BankSelection layouts) {}

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public Answer answer(Catalog onOffer) {
        BankNeed need = BankNeed.of(demand).withCutOffVoltage(cutOffVoltage);
        List<Battery> offered = batteries == null ? onOffer.batteries() : batteries;
        return new Answer(
                BankCapacity.needed(demand, policy),
                BankSelection.of(
                        cableResistance == null ? need : need.withCableResistance(cableResistance),
                        offered.stream()
                                .filter(battery -> battery.chemistry() == demand.chemistry())
                                .toList(),
                        policy));
    }
}
