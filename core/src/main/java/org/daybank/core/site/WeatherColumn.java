package org.daybank.core.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daybank.core.quantity.IrradianceUnit;
import org.daybank.core.quantity.SpeedUnit;
import org.daybank.core.quantity.TemperatureUnit;
import org.daybank.core.quantity.Unit;

/** What may be known of every hour, with the range in which a value can be true. */
enum WeatherColumn {
    GLOBAL("global", IrradianceUnit.WATT_PER_SQUARE_METRE, 0, 1500),
    DIRECT("direct", IrradianceUnit.WATT_PER_SQUARE_METRE, 0, 1500),
    DIFFUSE("diffuse", IrradianceUnit.WATT_PER_SQUARE_METRE, 0, 1200),
    AIR("air", TemperatureUnit.CELSIUS, -90, 60),
    WIND("wind", SpeedUnit.METRE_PER_SECOND, 0, 110);

    /** In the order of the components of {@link WeatherYear}. */
    static final List<WeatherColumn> ALL = List.of(values());

    /** Kopp and Lean 2011; one per cent on top for the scatter of instruments. */
    private static final double SOLAR_CONSTANT = 1361 * 1.01;

    private static final double LEAST_EXTRATERRESTRIAL = SOLAR_CONSTANT * (1 - 0.033);

    final String label;
    final Unit unit;
    private final double least;
    private final double most;

    WeatherColumn(String label, Unit unit, double least, double most) {
        this.label = label;
        this.unit = unit;
        this.least = least;
        this.most = most;
    }

    /** What is wrong with a value on a day of the year, or nothing. */
    Optional<String> complaint(double value, int dayOfYear) {
        if (Double.isNaN(value)) {
            return Optional.of(label + " is missing or not a number.");
        }
        if (value >= (this == AIR || this == WIND ? 999 : 9999) || value <= -999) {
            return Optional.of("%s is %s, which marks a missing value.".formatted(label, show(value)));
        }
        if (value < least || value > most) {
            return Optional.of("%s must be from %s to %s %s, but was %s."
                    .formatted(label, show(least), show(most), unit.symbol(), show(value)));
        }
        if (this == DIRECT && value > LEAST_EXTRATERRESTRIAL && value > extraterrestrial(dayOfYear)) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "direct is %s W/m², more than the %.0f W/m² that the sun sends outside the air on that day.",
                    show(value),
                    extraterrestrial(dayOfYear)));
        }
        return Optional.empty();
    }

    /** Duffie and Beckman, eq. 1.4.1a. */
    private static double extraterrestrial(int dayOfYear) {
        return SOLAR_CONSTANT * (1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365));
    }

    private static String show(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
