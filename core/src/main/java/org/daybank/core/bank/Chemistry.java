package org.daybank.core.bank;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Table;

/** The chemistries on offer, each with what is typical of it; a data sheet always wins over these values. */
public enum Chemistry {
    /** Vented (flooded) lead-acid: takes water, gives hydrogen. */
    VENTED_LEAD_ACID,
    /** Valve-regulated lead-acid with absorbed glass mat. */
    AGM,
    /** Valve-regulated lead-acid with gelled electrolyte. */
    GEL,
    /** Lithium iron phosphate, with a battery management system. */
    LITHIUM_IRON_PHOSPHATE;

    /**
     * What is typical of one chemistry; voltages for one cell at 25 °C.
     *
     * @param family which family it belongs to
     * @param nominalCellVoltage true nominal voltage of a cell, for arithmetic
     * @param cellsPer12V cells in series that make a battery for a 12 V bus
     * @param openCircuit voltage of a full cell at rest
     * @param absorption voltage held until the bank is full
     * @param floating voltage held afterwards
     * @param equalisation voltage of the occasional equalising charge; only vented cells have one
     * @param disconnect voltage at which loads are switched off
     * @param reconnect voltage at which they come back
     * @param absorptionTime customary time at the absorption voltage
     * @param compensation change of the charging voltage of a cell for each kelvin over 25 °C
     * @param coulombicEfficiency charge out over charge in
     * @param energyEfficiency energy out over energy in
     * @param peukertExponent k in {@code C(I) = C_n · (I_n / I)^(k − 1)}
     * @param minimumChargeRate charging current that keeps it healthy, in multiples of the capacity for each hour
     * @param maximumChargeRate charging current that it stands, in multiples of the capacity for each hour
     * @param chargeRateByTemperature most charging current from a temperature of the cells on
     * @param selfDischargePerMonth share of the capacity lost each month at 25 °C
     * @param capacityByTemperature share of the rated capacity at a temperature
     */
    public record Traits(
            BatteryFamily family,
            Voltage nominalCellVoltage,
            int cellsPer12V,
            Voltage openCircuit,
            Voltage absorption,
            Voltage floating,
            Optional<Voltage> equalisation,
            Voltage disconnect,
            Voltage reconnect,
            TimeSpan absorptionTime,
            VoltageCoefficient compensation,
            Ratio coulombicEfficiency,
            Ratio energyEfficiency,
            Ratio peukertExponent,
            Ratio minimumChargeRate,
            Ratio maximumChargeRate,
            ChargeRateSteps chargeRateByTemperature,
            Ratio selfDischargePerMonth,
            TemperatureCurve capacityByTemperature) {}

    /** What is typical of this chemistry. */
    public Traits traits() {
        return Objects.requireNonNull(
                Published.TRAITS.get(this), () -> "chemistries.csv has no line for " + Scalars.name(this));
    }

    /** The family of this chemistry. */
    public BatteryFamily family() {
        return traits().family();
    }

    /** Cells in series in what is called 12, 24 or 48 V; of lead-acid, 2 or 6 V as well. */
    public int cellsFor(Voltage nominal) {
        return (int) Math.max(1, Math.round(traits().cellsPer12V() * nominal.volts() / 12));
    }

    /** The true nominal voltage of a bank on a bus called 12, 24 or 48 V: 25.6 V for lithium iron phosphate at 24 V. */
    public Voltage trueNominal(Voltage nominal) {
        return traits().nominalCellVoltage().times(cellsFor(nominal));
    }

    /** Reads the table once, when first asked. */
    private static final class Published {
        private static final Map<Chemistry, Traits> TRAITS = read();

        private static Map<Chemistry, Traits> read() {
            Map<Chemistry, Traits> traits = new EnumMap<>(Chemistry.class);
            for (Table.Row row :
                    Table.resource(Chemistry.class, "chemistries.csv").rows()) {
                traits.put(row.value(Chemistry.class, "chemistry"), traits(row));
            }
            return traits;
        }

        private static Traits traits(Table.Row row) {
            return new Traits(
                    row.value(BatteryFamily.class, "family"),
                    volts(row, "nominal_V"),
                    row.value(Integer.class, "cellsPer12V"),
                    volts(row, "openCircuit_V"),
                    volts(row, "absorption_V"),
                    volts(row, "float_V"),
                    row.optionalValue(Double.class, "equalisation_V").map(Voltage::volts),
                    volts(row, "disconnect_V"),
                    volts(row, "reconnect_V"),
                    TimeSpan.hours(row.value(Double.class, "absorptionTime_h")),
                    VoltageCoefficient.millivoltsPerKelvin(row.value(Double.class, "compensation_mVperK")),
                    row.value(Ratio.class, "coulombicEfficiency"),
                    row.value(Ratio.class, "energyEfficiency"),
                    row.value(Ratio.class, "peukertExponent"),
                    row.value(Ratio.class, "minimumChargeRate"),
                    row.value(Ratio.class, "maximumChargeRate"),
                    row.value(ChargeRateSteps.class, "chargeRateByTemperature"),
                    row.value(Ratio.class, "selfDischargePerMonth"),
                    row.value(TemperatureCurve.class, "capacityByTemperature"));
        }

        private static Voltage volts(Table.Row row, String column) {
            return Voltage.volts(row.value(Double.class, column));
        }
    }
}
