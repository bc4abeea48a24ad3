package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How numbers of a unit become numbers of the base unit of its dimension: {@code base = (number + shift) · multiplier ÷
 * divisor}.
 *
 * <p>Text is converted in decimal arithmetic and rounded once, so that {@code "0.7 kW"} and {@code "700 W"} are equal.
 *
 * @param shift added before scaling, zero but for temperatures
 * @param multiplier above zero
 * @param divisor above zero
 */
public record Scale(BigDecimal shift, BigDecimal multiplier, BigDecimal divisor) {

    static Scale of(String multiplier, String divisor) {
        return shifted("0", multiplier, divisor);
    }

    static Scale shifted(String shift, String multiplier, String divisor) {
        return new Scale(new BigDecimal(shift), new BigDecimal(multiplier), new BigDecimal(divisor));
    }

    /** The number of base units that this decimal number of units is. */
    public double toBase(BigDecimal number) {
        BigDecimal scaled = shift.signum() == 0
                ? number.multiply(multiplier)
                : number.add(shift).multiply(multiplier);
        // most units are a whole number of base units, and a division costs more than all else here
        return divisor.compareTo(BigDecimal.ONE) == 0
                ? scaled.doubleValue()
                : scaled.divide(divisor, MathContext.DECIMAL128).doubleValue();
    }

    /** The number of units that this number of base units is. */
    public double fromBase(double base) {
        return base * divisor.doubleValue() / multiplier.doubleValue() - shift.doubleValue();
    }
}
