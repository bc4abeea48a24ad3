package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
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
 * The data sheet of a battery. What it leaves out stays null; {@link #resolved()} returns what that follows to.
 *
 * @param model its code
 * @param chemistry of its cells
 * @param nominalVoltage what it is called: 2, 6, 12, 24 or 48 V
 * @param capacity rated capacity by discharge time
 * @param resistance internal resistance when full at 25 °C, above zero
 * @param maximumChargeCurrent what it takes for hours
 * @param maximumDischargeCurrent what it gives for hours
 * @param peakDischargeCurrent what it gives for seconds
 * @param mostInSeries batteries that may be connected in series
 * @param mostInParallel strings that may be connected in parallel
 * @param capacityByTemperature share of the capacity at a temperature; left out, what is published for the chemistry
 * @param chargeRateByTemperature most charging current from a temperature of the cells on; left out, what is customary for the
 *     chemistry
 * @param coldestCharge coldest temperature of the cells at which it may be charged
 * @param heater power of a heater built in; absent when there is none
 * @param cycleLife discharges of a depth until it is worn; absent when the sheet says nothing of it
 * @param calendarLife time at 25 °C until it is too old, however little it is used; absent when the sheet says nothing of it
 * @param mass of one
 * @param price of one
 */
@RecordBuilder
public record Battery(
        String model,
        Chemistry chemistry,

        @Bounds(minimum = "2 V", maximum = "48 V") Voltage nominalVoltage,

        DischargeCurve capacity,

        @Bounds(exclusiveMinimum = "0 Ohm", maximum = "10 Ohm")
        Resistance resistance,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA")
        @Assumed(source = "maximum charge rate customary for the chemistry, times the capacity")
        @Nullable
        Current maximumChargeCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "100 kA")
        @Assumed(source = "the capacity drawn in one hour")
        @Nullable
        Current maximumDischargeCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "200 kA")
        @Assumed(source = "twice the maximum discharge current")
        @Nullable
        Current peakDischargeCurrent,

        @Bounds(minimum = "1", maximum = "48") @Assumed(source = "as many as make 48 V") @Nullable
        Integer mostInSeries,

        @Bounds(minimum = "1", maximum = "64")
        @Assumed(value = "4", source = "customary limit without further measures")
        Integer mostInParallel,

        @Assumed(source = "published curve of the chemistry") @Nullable
        TemperatureCurve capacityByTemperature,

        @Assumed(
                source =
                        "lithium 0.1 C from 0 °C, 0.3 C from 5 °C, 0.5 C from 15 °C, as customary; lead-acid no limit of its own")
        @Nullable
        ChargeRateSteps chargeRateByTemperature,

        @Bounds(minimum = "-60 Cel", maximum = "40 Cel") @Assumed(source = "lithium 0 °C; lead-acid −30 °C") @Nullable
        Temperature coldestCharge,

        @Bounds(exclusiveMinimum = "0 W", maximum = "5 kW") @Nullable
        Power heater,

        @Nullable CycleLife cycleLife,

        @Bounds(minimum = "0.1 a", maximum = "100 a") @Nullable
        TimeSpan calendarLife,

        @Bounds(minimum = "0 kg", maximum = "10000 kg") Mass mass,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements BatteryBuilder.With, Resolvable<Battery.Resolved> {
    private static final List<Voltage> VOLTAGES =
            List.of(Voltage.volts(2), Voltage.volts(6), Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * The components whose defaults follow from others.
     *
     * @param maximumChargeCurrent as given, or the customary charge rate of the chemistry times the capacity
     * @param maximumDischargeCurrent as given, or the capacity drawn in one hour
     * @param peakDischargeCurrent as given, or twice the maximum discharge current
     * @param mostInSeries as given, or as many as make 48 V
     * @param capacityByTemperature as given, or the published curve of the chemistry
     * @param chargeRateByTemperature as given, or the customary steps of the chemistry
     * @param coldestCharge as given, or the temperature at which the customary steps of the chemistry begin
     */
    public record Resolved(
            Current maximumChargeCurrent,
            Current maximumDischargeCurrent,
            Current peakDischargeCurrent,
            Integer mostInSeries,
            TemperatureCurve capacityByTemperature,
            ChargeRateSteps chargeRateByTemperature,
            Temperature coldestCharge) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range, or the sheet contradicts itself
     */
    public Battery {
        mostInParallel = Defaults.otherwise(mostInParallel, Battery.class, "mostInParallel");
        Current continuous =
                maximumDischargeCurrent == null && capacity != null ? inOneHour(capacity) : maximumDischargeCurrent;
        Validation.of(
                        Battery.class,
                        model,
                        chemistry,
                        nominalVoltage,
                        capacity,
                        resistance,
                        maximumChargeCurrent,
                        maximumDischargeCurrent,
                        peakDischargeCurrent,
                        mostInSeries,
                        mostInParallel,
                        capacityByTemperature,
                        chargeRateByTemperature,
                        coldestCharge,
                        heater,
                        cycleLife,
                        calendarLife,
                        mass,
                        price)
                .that(
                        nominalVoltage == null
                                || VOLTAGES.contains(nominalVoltage)
                                || nominalVoltage.compareTo(VOLTAGES.get(0)) < 0
                                || nominalVoltage.compareTo(VOLTAGES.get(VOLTAGES.size() - 1)) > 0,
                        "nominalVoltage",
                        ProblemCode.OUT_OF_RANGE,
                        () -> "nominalVoltage must be one of %s, but was %s.".formatted(VOLTAGES, nominalVoltage))
                .that(
                        chemistry == null
                                || chemistry.family() != BatteryFamily.LITHIUM
                                || nominalVoltage == null
                                || nominalVoltage.compareTo(Voltage.volts(12)) >= 0,
                        "nominalVoltage",
                        ProblemCode.INCONSISTENT,
                        () -> "nominalVoltage must be 12 V, 24 V or 48 V for a lithium battery, but was %s."
                                .formatted(nominalVoltage))
                .notBelow("peakDischargeCurrent", peakDischargeCurrent, "maximumDischargeCurrent", continuous)
                .done();
    }

    private static Current inOneHour(DischargeCurve capacity) {
        return capacity.slowest().dividedBy(TimeSpan.hours(1));
    }

    @Override
    public Resolved resolved() {
        Chemistry.Traits typical = chemistry.traits();
        Current oneHour = inOneHour(capacity);
        Current continuous = Objects.requireNonNullElse(maximumDischargeCurrent, oneHour);
        return new Resolved(
                maximumChargeCurrent == null ? oneHour.times(typical.maximumChargeRate()) : maximumChargeCurrent,
                continuous,
                peakDischargeCurrent == null ? continuous.times(2) : peakDischargeCurrent,
                mostInSeries == null ? (Integer) (int) (48 / nominalVoltage.volts()) : mostInSeries,
                Objects.requireNonNullElse(capacityByTemperature, typical.capacityByTemperature()),
                Objects.requireNonNullElse(chargeRateByTemperature, typical.chargeRateByTemperature()),
                coldestCharge == null ? typical.chargeRateByTemperature().begin() : coldestCharge);
    }

    /** Cells in series within one. */
    public int cells() {
        return chemistry.cellsFor(nominalVoltage);
    }

    /** True nominal voltage of one. */
    public Voltage trueNominal() {
        return chemistry.traits().nominalCellVoltage().times(cells());
    }

    /** How many in series make a bus of a nominal voltage; none when no whole number does. */
    public int seriesFor(Voltage nominal) {
        double exact = nominal.dividedBy(nominalVoltage);
        return exact >= 1 && exact == Math.rint(exact) ? (int) exact : 0;
    }

    /** Most that one may be charged with for hours, cells at a temperature: nothing below the coldest charge. */
    public Current maximumChargeCurrentAt(Temperature cells) {
        Resolved sheet = resolved();
        if (cells.compareTo(sheet.coldestCharge()) < 0) {
            return Current.ZERO;
        }
        Current allowed =
                inOneHour(capacity).times(sheet.chargeRateByTemperature().at(cells));
        return allowed.compareTo(sheet.maximumChargeCurrent()) < 0 ? allowed : sheet.maximumChargeCurrent();
    }

    /** Share of the rated capacity at a temperature; empty below what is published. */
    public Optional<Ratio> temperatureFactor(Temperature temperature) {
        TemperatureCurve curve = capacityByTemperature;
        return (curve == null ? chemistry.traits().capacityByTemperature() : curve).at(temperature);
    }
}
