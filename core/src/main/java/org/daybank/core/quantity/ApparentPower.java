package org.daybank.core.quantity;

/**
 * Apparent power, the product of effective voltage and current.
 *
 * @param voltAmperes the apparent power in VA, finite and not negative
 */
public record ApparentPower(double voltAmperes) implements Quantity, Comparable<ApparentPower> {

    /** Nothing. */
    public static final ApparentPower ZERO = new ApparentPower(0);

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is not finite or is negative
     */
    public ApparentPower {
        voltAmperes = Finite.notNegative(voltAmperes, "apparent power", "VA");
    }

    /** Apparent power in VA. */
    public static ApparentPower voltAmperes(double voltAmperes) {
        return new ApparentPower(voltAmperes);
    }

    /** Apparent power in kVA. */
    public static ApparentPower kilovoltAmperes(double kilovoltAmperes) {
        return new ApparentPower(kilovoltAmperes * 1000);
    }

    /**
     * Reads a number with its unit, as in {@code "12.5 VA"}: a UCUM code or the way people write it.
     *
     * @throws QuantityFormatException when the text is not an apparent power; the message says what would be
     */
    public static ApparentPower parse(CharSequence text) {
        return new ApparentPower(UnitTables.APPARENT_POWER.parse(text));
    }

    /** This apparent power in kVA. */
    public double kilovoltAmperes() {
        return voltAmperes / 1000;
    }

    /** This apparent power as a number of the given unit. */
    public double in(ApparentPowerUnit unit) {
        return unit.definition().scale().fromBase(voltAmperes);
    }

    /** Sum of the two. */
    public ApparentPower plus(ApparentPower other) {
        return new ApparentPower(voltAmperes + other.voltAmperes);
    }

    /** Difference of the two.
     *
     * @throws IllegalArgumentException when the other is larger
     */
    public ApparentPower minus(ApparentPower other) {
        return new ApparentPower(voltAmperes - other.voltAmperes);
    }

    /** This many times as much. */
    public ApparentPower times(double factor) {
        return new ApparentPower(voltAmperes * factor);
    }

    /** This share of it. */
    public ApparentPower times(Ratio share) {
        return new ApparentPower(voltAmperes * share.fraction());
    }

    /** One of so many equal parts; the divisor must not be zero. */
    public ApparentPower dividedBy(double divisor) {
        return new ApparentPower(voltAmperes / divisor);
    }

    /** How many times the other goes into this; the other must not be zero. */
    public double dividedBy(ApparentPower other) {
        return Finite.number(voltAmperes / other.voltAmperes, "ratio of two apparent power values", "");
    }

    /** Real power at a power factor: {@code P = S · cos φ}. */
    public Power atPowerFactor(Ratio powerFactor) {
        return Power.watts(voltAmperes * powerFactor.fraction());
    }

    @Override
    public double baseValue() {
        return voltAmperes;
    }

    @Override
    public ApparentPowerUnit baseUnit() {
        return ApparentPowerUnit.VOLT_AMPERE;
    }

    @Override
    public int compareTo(ApparentPower other) {
        return Double.compare(voltAmperes, other.voltAmperes);
    }

    /** Readable text, as in {@code 1.2 kW}, that {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return UnitTables.APPARENT_POWER.print(voltAmperes);
    }
}
