package org.daybank.core.quantity;

import java.util.Arrays;
import java.util.List;

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

    /**
     * The units of a quantity, its base unit first.
     *
     * @param quantity one of the records that are quantities
     * @throws IllegalArgumentException when it is none
     */
    static List<Unit> units(Class<?> quantity) {
        if (!Quantity.class.isAssignableFrom(quantity) || !quantity.isRecord()) {
            throw new IllegalArgumentException("%s is not one quantity".formatted(quantity.getSimpleName()));
        }
        try {
            Class<?> units = quantity.getMethod("baseUnit").getReturnType();
            return Arrays.stream(units.getEnumConstants()).map(Unit.class::cast).toList();
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Text to so many significant digits, for a person to read; it need not read back to an equal value. */
    default String rounded(int significantDigits) {
        return UnitTables.of(baseUnit()).print(baseValue(), significantDigits);
    }

    /** Text to four significant digits, for a sentence. */
    default String rounded() {
        return rounded(4);
    }
}
