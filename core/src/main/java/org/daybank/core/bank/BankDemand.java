package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What is asked of a bank.
 *
 * @param dailyEnergy energy that leaves the bank on a mean day
 * @param worstDailyEnergy energy that leaves it each day of the worst run as long as the autonomy; left out, it is the
 *     mean day's
 * @param nominalVoltage what the bus is called: 12, 24 or 48 V
 * @param chemistry of the cells
 * @param lowest coldest mean temperature of the bank over the autonomy
 * @param temperatureFactor share of the rated capacity at the lowest temperature; left out, the published curve of the
 *     chemistry is taken
 * @param runningCurrent charge-weighted mean of the discharge current ({@code ΣI²t / ΣIt}); left out, the mean day spread
 *     over 24 hours
 * @param surgeCurrent largest short current; left out, none
 */
@RecordBuilder
public record BankDemand(
        Energy dailyEnergy,

        @Assumed(source = "equal to dailyEnergy: every day is like the mean day")
        Energy worstDailyEnergy,

        Voltage nominalVoltage,
        Chemistry chemistry,
        Temperature lowest,

        @Assumed(source = "published curve of the chemistry at the lowest temperature; a data sheet wins")
        Ratio temperatureFactor,

        @Assumed(source = "dailyEnergy spread over 24 h at the true nominal voltage")
        Current runningCurrent,

        @Assumed(value = "0 A", source = "no surge stated") Current surgeCurrent)
        implements BankDemandBuilder.With {
    /** What a bus may be called. */
    static final List<Voltage> BUSES = List.of(Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right; below the published
     *     curve of the chemistry the temperature factor must be given from the data sheet
     */
    public BankDemand {
        Validation checks = new Validation()
                .required("dailyEnergy", dailyEnergy)
                .within("dailyEnergy", dailyEnergy, Energy.ZERO, Energy.kilowattHours(100_000))
                .required("nominalVoltage", nominalVoltage)
                .that(
                        nominalVoltage == null || BUSES.contains(nominalVoltage),
                        "nominalVoltage",
                        ProblemCode.OUT_OF_RANGE,
                        () -> "nominalVoltage must be 12 V, 24 V or 48 V, but was " + nominalVoltage + ".")
                .required("chemistry", chemistry)
                .required("lowest", lowest)
                .within("lowest", lowest, Temperature.celsius(-60), Temperature.celsius(60))
                .within("temperatureFactor", temperatureFactor, Ratio.of(0.05), Ratio.of(1.5));
        if (chemistry != null && lowest != null && temperatureFactor == null) {
            TemperatureCurve curve = chemistry.traits().capacityByTemperature();
            temperatureFactor = curve.at(lowest).orElse(null);
            checks.that(
                    temperatureFactor != null,
                    "temperatureFactor",
                    ProblemCode.MISSING,
                    () ->
                            "temperatureFactor is missing: nothing is published for this chemistry below %s and lowest is %s; give the share of capacity that the data sheet states there"
                                    .formatted(curve.coldest(), lowest));
        }
        checks.within("worstDailyEnergy", worstDailyEnergy, Energy.ZERO, Energy.kilowattHours(100_000))
                .within("runningCurrent", runningCurrent, Current.ZERO, Current.kiloamperes(100))
                .within("surgeCurrent", surgeCurrent, Current.ZERO, Current.kiloamperes(100))
                .done();
        worstDailyEnergy = worstDailyEnergy == null ? dailyEnergy : worstDailyEnergy;
        runningCurrent = runningCurrent == null
                ? dailyEnergy.dividedBy(chemistry.trueNominal(nominalVoltage)).dividedBy(TimeSpan.days(1))
                : runningCurrent;
        surgeCurrent = surgeCurrent == null ? Current.ZERO : surgeCurrent;
    }

    /** The bank's true nominal voltage, used in all arithmetic. */
    public Voltage trueNominal() {
        return chemistry.trueNominal(nominalVoltage);
    }
}
