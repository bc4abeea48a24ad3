package org.daybank.core.quantity;

/** What every dimensional value object has in common: a number of base units. */
public sealed interface Quantity
        permits Power,
                ApparentPower,
                Energy,
                Charge,
                Voltage,
                Current,
                Resistance,
                Temperature,
                TemperatureDifference,
                TemperatureCoefficient,
                VoltageCoefficient,
                ThermalConductance,
                Irradiance,
                Irradiation,
                Length,
                CrossSection,
                Mass,
                Speed,
                Frequency,
                Volume,
                VolumeFlow,
                TimeSpan,
                Angle {

    /** The number of {@linkplain #baseUnit() base units}; always finite. */
    double baseValue();

    /** The unit in which values of this dimension are held and answered. */
    Unit baseUnit();

    /** Text to so many significant digits, for a person to read; it need not read back to an equal value. */
    default String rounded(int significantDigits) {
        return UnitTables.of(baseUnit()).print(baseValue(), significantDigits);
    }

    /** Text to four significant digits, for a sentence. */
    default String rounded() {
        return rounded(4);
    }
}
