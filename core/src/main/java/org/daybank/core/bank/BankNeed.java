package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a bank of any chemistry: figures at the bank's terminals.
 *
 * @param dailyEnergy energy that leaves it on a mean day
 * @param worstDailyEnergy energy that leaves it each day of the worst run as long as the autonomy
 * @param nominalVoltage what the bus is called: 12, 24 or 48 V
 * @param lowest coldest mean temperature around the bank over the autonomy
 * @param runningPower energy-weighted mean of the power drawn
 * @param continuousPower most that is drawn for hours
 * @param surgePower most that is drawn for seconds
 * @param cutOffVoltage lowest bus voltage at which the inverter still works; absent when nothing asks for one
 * @param cableResistance of the cable from the bank and back
 * @param heatLoss of the box around a heated bank
 * @param heaterSetPoint temperature to which a heater keeps the cells
 */
@RecordBuilder
public record BankNeed(
        Energy dailyEnergy,

        @Assumed(source = "equal to dailyEnergy: every day is like the mean day")
        Energy worstDailyEnergy,

        Voltage nominalVoltage,
        Temperature lowest,
        @Assumed(source = "dailyEnergy spread over 24 h") Power runningPower,
        @Assumed(source = "equal to runningPower") Power continuousPower,
        @Assumed(source = "equal to continuousPower") Power surgePower,

        @Nullable Voltage cutOffVoltage,

        @Assumed(value = "0 Ohm", least = "0 Ohm", most = "1 Ohm", source = "no cable stated")
        Resistance cableResistance,

        @Assumed(value = "1.2 W/K", least = "0.05 W/K", most = "50 W/K", source = "box of 2 m² with 50 mm of foam")
        ThermalConductance heatLoss,

        @Assumed(
                value = "5 Cel",
                least = "0 Cel",
                most = "25 Cel",
                source = "above the limit of charging, with a reserve")
        Temperature heaterSetPoint)
        implements BankNeedBuilder.With {
    /** The lowest temperature around a bank that any battery is evaluated for. */
    public static final Temperature MINIMUM_TEMPERATURE = Temperature.celsius(-60);

    private static final Temperature MAXIMUM_TEMPERATURE = Temperature.celsius(60);

    /** Most that a cable from the bank to an inverter and back may have. */
    public static final Resistance MOST_CABLE = Resistance.ohms(1);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or can never be right
     */
    public BankNeed {
        cableResistance = Policies.otherwise(cableResistance, BankNeed.class, "cableResistance");
        heatLoss = Policies.otherwise(heatLoss, BankNeed.class, "heatLoss");
        heaterSetPoint = Policies.otherwise(heaterSetPoint, BankNeed.class, "heaterSetPoint");
        new Validation()
                .required("dailyEnergy", dailyEnergy)
                .within("dailyEnergy", dailyEnergy, Energy.ZERO, Energy.kilowattHours(100_000))
                .within("worstDailyEnergy", worstDailyEnergy, Energy.ZERO, Energy.kilowattHours(100_000))
                .required("nominalVoltage", nominalVoltage)
                .that(
                        nominalVoltage == null || BankDemand.BUSES.contains(nominalVoltage),
                        "nominalVoltage",
                        "outOfRange",
                        () -> "nominalVoltage must be 12 V, 24 V or 48 V but is " + nominalVoltage)
                .required("lowest", lowest)
                .within("lowest", lowest, MINIMUM_TEMPERATURE, MAXIMUM_TEMPERATURE)
                .atLeast("runningPower", runningPower, Power.ZERO)
                .atLeast("continuousPower", continuousPower, Power.ZERO)
                .atLeast("surgePower", surgePower, Power.ZERO)
                .above("cutOffVoltage", cutOffVoltage, Voltage.ZERO)
                .that(
                        cutOffVoltage == null || nominalVoltage == null || cutOffVoltage.compareTo(nominalVoltage) < 0,
                        "cutOffVoltage",
                        "inconsistent",
                        () -> "cutOffVoltage %s must be below nominalVoltage %s"
                                .formatted(cutOffVoltage, nominalVoltage))
                .within("cableResistance", cableResistance, Resistance.ZERO, MOST_CABLE)
                .done();
        worstDailyEnergy = worstDailyEnergy == null ? dailyEnergy : worstDailyEnergy;
        runningPower = runningPower == null ? Power.watts(dailyEnergy.wattHours() / 24) : runningPower;
        continuousPower = continuousPower == null ? runningPower : continuousPower;
        surgePower = surgePower == null ? continuousPower : surgePower;
    }

    /** The need that a demand of one chemistry states. */
    public static BankNeed of(BankDemand demand) {
        return BankNeedBuilder.builder()
                .dailyEnergy(demand.dailyEnergy())
                .worstDailyEnergy(demand.worstDailyEnergy())
                .nominalVoltage(demand.nominalVoltage())
                .lowest(demand.lowest())
                .runningPower(demand.trueNominal().times(demand.runningCurrent()))
                .surgePower(demand.trueNominal().times(demand.surgeCurrent()))
                .build();
    }

    /** Power that keeps a heated bank at its set point while it is this cold outside: {@code UA · (T_set − T)}. */
    public Power heaterPower(Temperature outside) {
        return outside.compareTo(heaterSetPoint) >= 0 ? Power.ZERO : heatLoss.times(heaterSetPoint.minus(outside));
    }
}
