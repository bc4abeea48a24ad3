package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The requirements on a bank of any chemistry, at its terminals. What was left out stays null; {@link #resolved()} returns
 * what it follows to.
 *
 * @param dailyEnergy energy that leaves it on a mean day
 * @param worstDailyEnergy energy that leaves it each day of the worst run as long as the autonomy
 * @param nominalVoltage nominal voltage of the DC system: 12, 24 or 48 V
 * @param lowest coldest mean temperature around the bank over the autonomy
 * @param runningPower energy-weighted mean of the power drawn
 * @param continuousPower largest power drawn for hours
 * @param surgePower largest power drawn for seconds
 * @param cutOffVoltage lowest bus voltage at which the inverter still works; absent when there is none to observe
 * @param cableResistance of the cable from the bank and back
 * @param heatLoss of the box around a heated bank
 * @param heaterSetPoint temperature to which a heater keeps the cells
 */
@RecordBuilder
public record BankNeed(
        @Bounds(minimum = "0 kWh", maximum = "100000 kWh") Energy dailyEnergy,

        @Bounds(minimum = "0 kWh", maximum = "100000 kWh")
        @Assumed(source = "equal to dailyEnergy: every day is like the mean day")
        @Nullable
        Energy worstDailyEnergy,

        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

        @Bounds(minimum = "-60 Cel", maximum = "60 Cel") Temperature lowest,

        @Bounds(minimum = "0 kW", maximum = "10000 kW") @Assumed(source = "dailyEnergy spread over 24 h") @Nullable
        Power runningPower,

        @Bounds(minimum = "0 kW", maximum = "10000 kW") @Assumed(source = "equal to runningPower") @Nullable
        Power continuousPower,

        @Bounds(minimum = "0 kW", maximum = "10000 kW") @Assumed(source = "equal to continuousPower") @Nullable
        Power surgePower,

        @Bounds(minimum = "1 V", maximum = "48 V") @Nullable Voltage cutOffVoltage,

        @Bounds(minimum = "0 Ohm", maximum = "1 Ohm") @Assumed(value = "0 Ohm", source = "no cable stated")
        Resistance cableResistance,

        @Bounds(minimum = "0.05 W/K", maximum = "50 W/K")
        @Assumed(value = "1.2 W/K", source = "box of 2 m² with 50 mm of foam")
        ThermalConductance heatLoss,

        @Bounds(minimum = "0 Cel", maximum = "25 Cel")
        @Assumed(value = "5 Cel", source = "above the limit of charging, with a reserve")
        Temperature heaterSetPoint)
        implements BankNeedBuilder.With, Resolvable<BankNeed.Resolved> {
    /** Largest resistance of a cable from the bank to an inverter and back. */
    public static final Resistance MOST_CABLE = Resistance.ohms(1);

    /**
     * The components whose defaults follow from others.
     *
     * @param worstDailyEnergy as given, or the energy of the mean day
     * @param runningPower as given, or the mean day spread over 24 hours
     * @param continuousPower as given, or the running power
     * @param surgePower as given, or the continuous power
     */
    public record Resolved(Energy worstDailyEnergy, Power runningPower, Power continuousPower, Power surgePower) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent
     */
    public BankNeed {
        cableResistance = Defaults.otherwise(cableResistance, BankNeed.class, "cableResistance");
        heatLoss = Defaults.otherwise(heatLoss, BankNeed.class, "heatLoss");
        heaterSetPoint = Defaults.otherwise(heaterSetPoint, BankNeed.class, "heaterSetPoint");
        Validation.of(
                        BankNeed.class,
                        dailyEnergy,
                        worstDailyEnergy,
                        nominalVoltage,
                        lowest,
                        runningPower,
                        continuousPower,
                        surgePower,
                        cutOffVoltage,
                        cableResistance,
                        heatLoss,
                        heaterSetPoint)
                .that(
                        BankDemand.isNominal(nominalVoltage),
                        "nominalVoltage",
                        ProblemCode.OUT_OF_RANGE,
                        BankDemand.notNominal(nominalVoltage))
                .that(
                        cutOffVoltage == null || nominalVoltage == null || cutOffVoltage.compareTo(nominalVoltage) < 0,
                        "cutOffVoltage",
                        ProblemCode.INCONSISTENT,
                        () -> "cutOffVoltage must be below nominalVoltage %s, but was %s."
                                .formatted(nominalVoltage, cutOffVoltage))
                .done();
    }

    /**
     * Returns the need that a demand of one chemistry states. What the demand leaves out, the need leaves out as well; without a
     * surge current, the surge is that of continuous operation.
     */
    public static BankNeed of(BankDemand demand) {
        Current running = demand.runningCurrent();
        Current surge = demand.surgeCurrent();
        return BankNeedBuilder.builder()
                .dailyEnergy(demand.dailyEnergy())
                .worstDailyEnergy(demand.worstDailyEnergy())
                .nominalVoltage(demand.nominalVoltage())
                .lowest(demand.lowest())
                .runningPower(running == null ? null : demand.trueNominal().times(running))
                .surgePower(
                        surge.compareTo(Current.ZERO) == 0
                                ? null
                                : demand.trueNominal().times(surge))
                .build();
    }

    @Override
    public Resolved resolved() {
        Power running = runningPower == null ? Power.watts(dailyEnergy.wattHours() / 24) : runningPower;
        Power continuous = continuousPower == null ? running : continuousPower;
        return new Resolved(
                worstDailyEnergy == null ? dailyEnergy : worstDailyEnergy,
                running,
                continuous,
                surgePower == null ? continuous : surgePower);
    }

    /** Returns the power that keeps a heated bank at its set point while it is this cold outside: {@code UA · (T_set − T)}. */
    public Power heaterPower(Temperature outside) {
        return outside.compareTo(heaterSetPoint) >= 0 ? Power.ZERO : heatLoss.times(heaterSetPoint.minus(outside));
    }
}
