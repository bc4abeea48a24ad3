package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The requirements on a bank of one chemistry. What was left out stays null; {@link #resolved()} returns what it follows to.
 *
 * @param dailyEnergy energy that leaves the bank on a mean day
 * @param worstDailyEnergy energy that leaves it each day of the worst run as long as the autonomy; left out, it is the
 *     mean day's
 * @param nominalVoltage nominal voltage of the DC system: 12, 24 or 48 V
 * @param chemistry of the cells
 * @param lowest coldest mean temperature of the bank over the autonomy
 * @param temperatureFactor share of the rated capacity at the lowest temperature; left out, the published curve of the
 *     chemistry applies
 * @param runningCurrent charge-weighted mean of the discharge current ({@code ΣI²t / ΣIt}); left out, the mean day spread
 *     over 24 hours
 * @param surgeCurrent largest short current; left out, none
 */
@RecordBuilder
public record BankDemand(
        @Bounds(minimum = "0 kWh", maximum = "100000 kWh") Energy dailyEnergy,

        @Bounds(minimum = "0 kWh", maximum = "100000 kWh")
        @Assumed(source = "equal to dailyEnergy: every day is like the mean day")
        @Nullable
        Energy worstDailyEnergy,

        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

        Chemistry chemistry,

        @Bounds(minimum = "-60 Cel", maximum = "60 Cel") Temperature lowest,

        @Bounds(minimum = "0.05", maximum = "1.5")
        @Assumed(source = "published curve of the chemistry at the lowest temperature; a data sheet wins")
        @Nullable
        Ratio temperatureFactor,

        @Bounds(minimum = "0 A", maximum = "500 kA")
        @Assumed(source = "dailyEnergy spread over 24 h at the true nominal voltage")
        @Nullable
        Current runningCurrent,

        @Bounds(minimum = "0 A", maximum = "500 kA") @Assumed(value = "0 A", source = "no surge stated")
        Current surgeCurrent)
        implements BankDemandBuilder.With, Resolvable<BankDemand.Resolved> {
    private static final List<Voltage> NOMINAL_VOLTAGES =
            List.of(Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * The components whose defaults follow from others.
     *
     * @param worstDailyEnergy as given, or the energy of the mean day
     * @param temperatureFactor as given, or that of the published curve at the lowest temperature
     * @param runningCurrent as given, or the mean day spread over 24 hours at the true nominal voltage
     */
    public record Resolved(Energy worstDailyEnergy, Ratio temperatureFactor, Current runningCurrent) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent; below the published
     *     curve of the chemistry the temperature factor must be given from the data sheet
     */
    public BankDemand {
        surgeCurrent = Defaults.otherwise(surgeCurrent, BankDemand.class, "surgeCurrent");
        Validation.of(
                        BankDemand.class,
                        dailyEnergy,
                        worstDailyEnergy,
                        nominalVoltage,
                        chemistry,
                        lowest,
                        temperatureFactor,
                        runningCurrent,
                        surgeCurrent)
                .that(isNominal(nominalVoltage), "nominalVoltage", ProblemCode.OUT_OF_RANGE, notNominal(nominalVoltage))
                .that(
                        chemistry == null
                                || lowest == null
                                || temperatureFactor != null
                                || published(chemistry, lowest).isPresent(),
                        "temperatureFactor",
                        ProblemCode.MISSING,
                        () ->
                                "temperatureFactor is required: nothing is published for this chemistry below %s, but lowest was %s; give the share of capacity that the data sheet states there."
                                        .formatted(
                                                chemistry
                                                        .traits()
                                                        .capacityByTemperature()
                                                        .coldest(),
                                                lowest))
                .done();
    }

    /** Returns whether a voltage is a nominal voltage of a DC system, missing, or beyond the bounds that refuse it anyway. */
    static boolean isNominal(@Nullable Voltage voltage) {
        return voltage == null
                || NOMINAL_VOLTAGES.contains(voltage)
                || voltage.compareTo(NOMINAL_VOLTAGES.get(0)) < 0
                || voltage.compareTo(NOMINAL_VOLTAGES.get(2)) > 0;
    }

    /** Returns the message for a voltage that is no nominal voltage of a DC system. */
    static Supplier<String> notNominal(@Nullable Voltage voltage) {
        return () -> "nominalVoltage must be 12 V, 24 V or 48 V, but was %s.".formatted(voltage);
    }

    private static Optional<Ratio> published(Chemistry chemistry, Temperature lowest) {
        return chemistry.traits().capacityByTemperature().at(lowest);
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                worstDailyEnergy == null ? dailyEnergy : worstDailyEnergy,
                temperatureFactor == null ? published(chemistry, lowest).orElseThrow() : temperatureFactor,
                runningCurrent == null
                        ? dailyEnergy.dividedBy(trueNominal()).dividedBy(TimeSpan.days(1))
                        : runningCurrent);
    }

    /** Returns the nominal voltage of the bank by cells, used in all arithmetic. */
    public Voltage trueNominal() {
        return chemistry.trueNominal(nominalVoltage);
    }
}
