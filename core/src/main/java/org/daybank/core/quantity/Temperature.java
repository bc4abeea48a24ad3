package org.daybank.core.quantity;

/**
 * A point on the temperature scale, never below absolute zero; see {@link TemperatureDifference} for a span.
 *
 * @param celsius the temperature in °C, from −273.15 °C
 */
public record Temperature(double celsius) implements Quantity, Comparable<Temperature> {

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is below −273.15 °C
     */
    public Temperature {
        celsius = Finite.atLeast(-273.15, celsius, "temperature", "°C");
    }

    /** Temperature in °C. */
    public static Temperature celsius(double celsius) {
        return new Temperature(celsius);
    }

    /** Temperature in K. */
    public static Temperature kelvins(double kelvins) {
        return new Temperature(kelvins - 273.15);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 °C"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not a temperature; the message says what would be
     */
    public static Temperature parse(CharSequence text) {
        return new Temperature(UnitTables.TEMPERATURE.parse(text));
    }

    /** This temperature in K. */
    public double kelvins() {
        return celsius + 273.15;
    }

    /** This temperature as a number of the given unit. */
    public double in(TemperatureUnit unit) {
        return unit.definition().scale().fromBase(celsius);
    }

    /** How far this temperature lies above another; negative when it is the colder one. */
    public TemperatureDifference minus(Temperature other) {
        return TemperatureDifference.kelvins(celsius - other.celsius);
    }

    /** The temperature this much warmer. */
    public Temperature plus(TemperatureDifference rise) {
        return new Temperature(celsius + rise.kelvins());
    }

    /** The temperature this much colder. */
    public Temperature minus(TemperatureDifference fall) {
        return new Temperature(celsius - fall.kelvins());
    }

    @Override
    public double baseValue() {
        return celsius;
    }

    @Override
    public TemperatureUnit baseUnit() {
        return TemperatureUnit.CELSIUS;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.TEMPERATURE.print(celsius);
    }
}
