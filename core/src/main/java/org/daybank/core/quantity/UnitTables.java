package org.daybank.core.quantity;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The dimensions and their units: one table each. */
final class UnitTables {
    static final UnitTable POWER = new UnitTable("power", PowerUnit.values());
    static final UnitTable APPARENT_POWER = new UnitTable("apparent power", ApparentPowerUnit.values());
    static final UnitTable ENERGY = new UnitTable("energy", EnergyUnit.values());
    static final UnitTable CHARGE = new UnitTable("charge", ChargeUnit.values());
    static final UnitTable VOLTAGE = new UnitTable("voltage", VoltageUnit.values());
    static final UnitTable CURRENT = new UnitTable("current", CurrentUnit.values());
    static final UnitTable RESISTANCE = new UnitTable("resistance", ResistanceUnit.values())
            .readIn(ResistanceUnit.MILLIOHM, ResistanceUnit.OHM, ResistanceUnit.KILOOHM);
    static final UnitTable TEMPERATURE = new UnitTable("temperature", TemperatureUnit.values());
    static final UnitTable TEMPERATURE_DIFFERENCE =
            new UnitTable("temperature difference", TemperatureDifferenceUnit.values());
    static final UnitTable TEMPERATURE_COEFFICIENT = new UnitTable(
                    "temperature coefficient", TemperatureCoefficientUnit.values())
            .readIn(TemperatureCoefficientUnit.PERCENT_PER_KELVIN);
    static final UnitTable VOLTAGE_COEFFICIENT = new UnitTable("voltage coefficient", VoltageCoefficientUnit.values())
            .readIn(VoltageCoefficientUnit.MILLIVOLT_PER_KELVIN);
    static final UnitTable THERMAL_CONDUCTANCE = new UnitTable("thermal conductance", ThermalConductanceUnit.values());
    static final UnitTable IRRADIANCE = new UnitTable("irradiance", IrradianceUnit.values());
    static final UnitTable IRRADIATION = new UnitTable("irradiation", IrradiationUnit.values());
    static final UnitTable LENGTH = new UnitTable("length", LengthUnit.values());
    static final UnitTable CROSS_SECTION = new UnitTable("cross-section", CrossSectionUnit.values());
    static final UnitTable MASS = new UnitTable("mass", MassUnit.values());
    static final UnitTable SPEED = new UnitTable("speed", SpeedUnit.values());
    static final UnitTable FREQUENCY = new UnitTable("frequency", FrequencyUnit.values());
    static final UnitTable VOLUME = new UnitTable("volume", VolumeUnit.values());
    static final UnitTable VOLUME_FLOW = new UnitTable("volume flow", VolumeFlowUnit.values());
    static final UnitTable TIME_SPAN = new UnitTable("time span", TimeSpanUnit.values())
            .readIn(TimeSpanUnit.SECOND, TimeSpanUnit.MINUTE, TimeSpanUnit.HOUR, TimeSpanUnit.DAY);
    static final UnitTable ANGLE = new UnitTable("angle", AngleUnit.values());

    private static final List<UnitTable> ALL = List.of(
            POWER,
            APPARENT_POWER,
            ENERGY,
            CHARGE,
            VOLTAGE,
            CURRENT,
            RESISTANCE,
            TEMPERATURE,
            TEMPERATURE_DIFFERENCE,
            TEMPERATURE_COEFFICIENT,
            VOLTAGE_COEFFICIENT,
            THERMAL_CONDUCTANCE,
            IRRADIANCE,
            IRRADIATION,
            LENGTH,
            CROSS_SECTION,
            MASS,
            SPEED,
            FREQUENCY,
            VOLUME,
            VOLUME_FLOW,
            TIME_SPAN,
            ANGLE);

    private static final Map<Class<?>, UnitTable> BY_UNIT =
            ALL.stream().collect(Collectors.toUnmodifiableMap(UnitTable::unitType, table -> table));

    private UnitTables() {}

    /** The table that holds a unit. */
    static UnitTable of(Unit unit) {
        return Objects.requireNonNull(BY_UNIT.get(unit.getClass()));
    }

    /** Why a unit does not fit where it stands: it measures something else, or nothing known. */
    static String complaint(String spelling) {
        return ALL.stream()
                .filter(table -> table.has(spelling))
                .findFirst()
                .map(table -> "%s is a unit of %s".formatted(spelling, table.noun()))
                .orElseGet(() -> "unknown unit '%s'".formatted(QuantityFormatException.shown(spelling)));
    }
}
