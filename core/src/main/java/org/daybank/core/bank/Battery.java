package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Charge;
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
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of a battery.
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
        Voltage nominalVoltage,
        DischargeCurve capacity,
        Resistance resistance,

        @Assumed(source = "maximum charge rate customary for the chemistry, times the capacity")
        Current maximumChargeCurrent,

        @Assumed(source = "the capacity drawn in one hour") Current maximumDischargeCurrent,

        @Assumed(source = "twice the maximum discharge current")
        Current peakDischargeCurrent,

        @Assumed(source = "as many as make 48 V") Integer mostInSeries,

        @Assumed(value = "4", source = "customary limit without further measures")
        Integer mostInParallel,

        @Assumed(source = "published curve of the chemistry")
        TemperatureCurve capacityByTemperature,

        @Assumed(
                source =
                        "lithium 0.1 C from 0 °C, 0.3 C from 5 °C, 0.5 C from 15 °C, as customary; lead-acid no limit of its own")
        ChargeRateSteps chargeRateByTemperature,

        @Assumed(source = "lithium 0 °C; lead-acid −30 °C") Temperature coldestCharge,
        @Nullable Power heater,
        @Nullable CycleLife cycleLife,
        @Nullable TimeSpan calendarLife,
        Mass mass,
        Money price)
        implements BatteryBuilder.With {
    private static final List<Voltage> VOLTAGES =
            List.of(Voltage.volts(2), Voltage.volts(6), Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or the sheet contradicts itself
     */
    public Battery {
        mostInParallel = Defaults.otherwise(mostInParallel, Battery.class, "mostInParallel");
        new Validation()
                .required("model", model)
                .required("chemistry", chemistry)
                .required("nominalVoltage", nominalVoltage)
                .that(
                        nominalVoltage == null || VOLTAGES.contains(nominalVoltage),
                        "nominalVoltage",
                        ProblemCode.OUT_OF_RANGE,
                        "nominalVoltage must be one of %s, but was %s.".formatted(VOLTAGES, nominalVoltage))
                .that(
                        chemistry == null
                                || chemistry.family() != BatteryFamily.LITHIUM
                                || nominalVoltage == null
                                || nominalVoltage.compareTo(Voltage.volts(12)) >= 0,
                        "nominalVoltage",
                        ProblemCode.INCONSISTENT,
                        "a lithium battery has 12, 24 or 48 V but this one has " + nominalVoltage)
                .required("capacity", capacity)
                .required("resistance", resistance)
                .above("resistance", resistance, Resistance.ZERO)
                .above("maximumChargeCurrent", maximumChargeCurrent, Current.ZERO)
                .above("maximumDischargeCurrent", maximumDischargeCurrent, Current.ZERO)
                .above("peakDischargeCurrent", peakDischargeCurrent, Current.ZERO)
                .within("mostInSeries", mostInSeries, 1, 48)
                .within("mostInParallel", mostInParallel, 1, 64)
                .above("heater", heater, Power.ZERO)
                .within("calendarLife", calendarLife, TimeSpan.years(0.1), TimeSpan.years(100))
                .required("mass", mass)
                .required("price", price)
                .done();
        Chemistry.Traits typical = chemistry.traits();
        Charge rated = capacity.slowest();
        Current oneHour = rated.dividedBy(TimeSpan.hours(1));
        maximumChargeCurrent =
                Objects.requireNonNullElse(maximumChargeCurrent, oneHour.times(typical.maximumChargeRate()));
        maximumDischargeCurrent = Objects.requireNonNullElse(maximumDischargeCurrent, oneHour);
        peakDischargeCurrent = Objects.requireNonNullElse(peakDischargeCurrent, maximumDischargeCurrent.times(2));
        mostInSeries = Objects.requireNonNullElse(mostInSeries, (int) (48 / nominalVoltage.volts()));
        capacityByTemperature = Objects.requireNonNullElse(capacityByTemperature, typical.capacityByTemperature());
        chargeRateByTemperature =
                Objects.requireNonNullElse(chargeRateByTemperature, typical.chargeRateByTemperature());
        coldestCharge = Objects.requireNonNullElse(
                coldestCharge, typical.chargeRateByTemperature().begin());
        new Validation()
                .that(
                        peakDischargeCurrent.compareTo(maximumDischargeCurrent) >= 0,
                        "peakDischargeCurrent",
                        ProblemCode.INCONSISTENT,
                        "peakDischargeCurrent %s must not be below maximumDischargeCurrent %s"
                                .formatted(peakDischargeCurrent, maximumDischargeCurrent))
                .done();
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
        if (cells.compareTo(coldestCharge) < 0) {
            return Current.ZERO;
        }
        Current allowed = capacity.slowest().dividedBy(TimeSpan.hours(1)).times(chargeRateByTemperature.at(cells));
        return allowed.compareTo(maximumChargeCurrent) < 0 ? allowed : maximumChargeCurrent;
    }

    /** Share of the rated capacity at a temperature; empty below what is published. */
    public Optional<Ratio> temperatureFactor(Temperature temperature) {
        return capacityByTemperature.at(temperature);
    }
}
