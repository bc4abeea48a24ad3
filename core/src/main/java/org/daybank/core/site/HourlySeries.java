package org.daybank.core.site;

import java.util.Arrays;
import org.daybank.core.quantity.CurrentUnit;
import org.daybank.core.quantity.IrradianceUnit;
import org.daybank.core.quantity.PowerUnit;
import org.daybank.core.quantity.SpeedUnit;
import org.daybank.core.quantity.TemperatureUnit;
import org.daybank.core.quantity.Unit;

/**
 * One number for each hour of a year, all of one unit; unchangeable. The first hour is the one from midnight to one on 1
 * January.
 */
public final class HourlySeries {
    private final Unit unit;
    private final double[] values;

    private HourlySeries(Unit unit, double[] values) {
        this.unit = unit;
        this.values = values.clone();
        for (int hour = 0; hour < values.length; hour++) {
            if (!Double.isFinite(values[hour])) {
                throw new IllegalArgumentException("Hour %s must be a finite number of %s, but was %s."
                        .formatted(hour, unit.symbol(), values[hour]));
            }
        }
    }

    /**
     * Irradiances in W/m².
     *
     * @throws IllegalArgumentException when one is not finite
     */
    public static HourlySeries wattsPerSquareMetre(double... values) {
        return new HourlySeries(IrradianceUnit.WATT_PER_SQUARE_METRE, values);
    }

    /**
     * Powers in W.
     *
     * @throws IllegalArgumentException when one is not finite
     */
    public static HourlySeries watts(double... values) {
        return new HourlySeries(PowerUnit.WATT, values);
    }

    /**
     * Currents in A.
     *
     * @throws IllegalArgumentException when one is not finite
     */
    public static HourlySeries amperes(double... values) {
        return new HourlySeries(CurrentUnit.AMPERE, values);
    }

    /**
     * Temperatures in °C.
     *
     * @throws IllegalArgumentException when one is not finite
     */
    public static HourlySeries celsius(double... values) {
        return new HourlySeries(TemperatureUnit.CELSIUS, values);
    }

    /**
     * Speeds in m/s.
     *
     * @throws IllegalArgumentException when one is not finite
     */
    public static HourlySeries metresPerSecond(double... values) {
        return new HourlySeries(SpeedUnit.METRE_PER_SECOND, values);
    }

    /**
     * Numbers of the unit with a UCUM code: {@code W/m2}, {@code Cel} or {@code m/s}.
     *
     * @throws IllegalArgumentException when a number is not finite, or the unit is another
     */
    public static HourlySeries of(String unitCode, double... values) {
        return switch (unitCode) {
            case "W/m2" -> wattsPerSquareMetre(values);
            case "Cel" -> celsius(values);
            case "m/s" -> metresPerSecond(values);
            default ->
                throw new IllegalArgumentException(
                        "'%s' is not a unit of hourly weather: W/m2, Cel or m/s are".formatted(unitCode));
        };
    }

    /** The unit of every number. */
    public Unit unit() {
        return unit;
    }

    /** How many hours. */
    public int size() {
        return values.length;
    }

    /** The number of one hour. */
    public double at(int hour) {
        return values[hour];
    }

    /** All numbers, in an array of the caller's own. */
    public double[] values() {
        return values.clone();
    }

    /** Mean of the hours from one (included) to another (excluded). */
    public double mean(int from, int to) {
        return sum(from, to) / (to - from);
    }

    /** Sum of the hours from one (included) to another (excluded). */
    public double sum(int from, int to) {
        double sum = 0;
        for (int hour = from; hour < to; hour++) {
            sum += values[hour];
        }
        return sum;
    }

    /** Smallest of the numbers. */
    public double least() {
        return Arrays.stream(values).min().orElseThrow();
    }

    /** Largest of the numbers. */
    public double most() {
        return Arrays.stream(values).max().orElseThrow();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HourlySeries series && unit.equals(series.unit) && Arrays.equals(values, series.values);
    }

    @Override
    public int hashCode() {
        return 31 * unit.hashCode() + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return values.length + " hours in " + unit.symbol();
    }
}
