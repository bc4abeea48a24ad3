package org.daybank.core.sweep.kernel;

import java.math.BigInteger;

/**
 * The shortest decimal that reads back to a given double, and of those the nearest: the algorithm of Giulietti, "The
 * Schubfach way to render doubles" (2020); section numbers below are of that paper.
 */
final class ShortestDecimal {
    private static final int PRECISION = 53;
    private static final int LEAST_EXPONENT = -1074;
    private static final long HIDDEN_BIT = 1L << (PRECISION - 1);
    private static final long FRACTION = HIDDEN_BIT - 1;
    private static final int EXPONENT = 0x7FF;
    private static final long LOW_63_BITS = Long.MAX_VALUE;

    private static final int LEAST_POWER = -324;
    private static final int MOST_POWER = 292;

    /** Upper and lower 63 bits of 10⁻ᵏ scaled to 126 bits and rounded up, by k (section 9.8). */
    private static final long[] POWERS = powers();

    /** The digits found last, as a whole number. */
    private long digits;

    /** The power of ten by which the digits are multiplied. */
    private int exponent;

    /** Finds the digits of a finite number above zero. */
    void find(double number) {
        long bits = Double.doubleToRawLongBits(number);
        int biased = (int) (bits >>> (PRECISION - 1)) & EXPONENT;
        long fraction = bits & FRACTION;
        if (biased == 0) {
            // below the normal range; the very smallest need one more digit to start from
            find(LEAST_EXPONENT, fraction < 3 ? 10 * fraction : fraction, fraction < 3 ? -1 : 0);
        } else {
            find(biased + LEAST_EXPONENT - 1, HIDDEN_BIT | fraction, 0);
        }
        while (digits % 10 == 0) {
            digits /= 10;
            exponent++;
        }
    }

    long digits() {
        return digits;
    }

    int exponent() {
        return exponent;
    }

    /** The shortest decimal within the rounding interval of {@code c · 2^q} (section 9.9, figure 7). */
    private void find(int q, long c, int shift) {
        long odd = c & 1;
        boolean regular = c != HIDDEN_BIT || q == LEAST_EXPONENT;
        long middle = c << 2;
        long lower = regular ? middle - 2 : middle - 1;
        long upper = middle + 2;
        int k = regular ? floorLog10Pow2(q) : floorLog10ThreeQuartersPow2(q);
        int h = q + floorLog2Pow10(-k) + 2;
        long high = POWERS[2 * (k - LEAST_POWER)];
        long low = POWERS[2 * (k - LEAST_POWER) + 1];
        long v = product(high, low, middle << h);
        long left = product(high, low, lower << h) + odd;
        long right = product(high, low, upper << h) - odd;
        long s = v >> 2;
        if (s >= 100) {
            long tens = s / 10 * 10;
            boolean below = left <= tens << 2;
            boolean above = (tens + 10) << 2 <= right;
            if (below != above) {
                keep(below ? tens : tens + 10, k + shift);
                return;
            }
        }
        boolean below = left <= s << 2;
        boolean above = (s + 1) << 2 <= right;
        if (below != above) {
            keep(below ? s : s + 1, k + shift);
            return;
        }
        long nearer = v - ((2 * s + 1) << 1);
        keep(nearer < 0 || (nearer == 0 && (s & 1) == 0) ? s : s + 1, k + shift);
    }

    private void keep(long found, int power) {
        digits = found;
        exponent = power;
    }

    /** The product of a power of ten and a number, rounded to odd (section 9.10, figure 8). */
    private static long product(long high, long low, long number) {
        long carried = Math.multiplyHigh(low, number);
        long lowHalf = high * number;
        long highHalf = Math.multiplyHigh(high, number);
        long sum = (lowHalf >>> 1) + carried;
        long whole = highHalf + (sum >>> 63);
        return whole | (((sum & LOW_63_BITS) + LOW_63_BITS) >>> 63);
    }

    /** ⌊log₁₀ 2^q⌋. */
    private static int floorLog10Pow2(int q) {
        return (int) ((q * 661_971_961_083L) >> 41);
    }

    /** ⌊log₁₀ (¾ · 2^q)⌋. */
    private static int floorLog10ThreeQuartersPow2(int q) {
        return (int) ((q * 661_971_961_083L - 274_743_187_321L) >> 41);
    }

    /** ⌊log₂ 10^k⌋. */
    private static int floorLog2Pow10(int k) {
        return (int) ((k * 913_124_641_741L) >> 38);
    }

    private static long[] powers() {
        long[] powers = new long[2 * (MOST_POWER - LEAST_POWER + 1)];
        for (int k = LEAST_POWER; k <= MOST_POWER; k++) {
            BigInteger scaled = scaled(-k).add(BigInteger.ONE);
            powers[2 * (k - LEAST_POWER)] = scaled.shiftRight(63).longValueExact();
            powers[2 * (k - LEAST_POWER) + 1] =
                    scaled.and(BigInteger.valueOf(LOW_63_BITS)).longValueExact();
        }
        return powers;
    }

    /** ⌊10^k · 2^r⌋ with the r that makes it 126 bits long. */
    private static BigInteger scaled(int k) {
        if (k >= 0) {
            BigInteger power = BigInteger.TEN.pow(k);
            return power.shiftLeft(126 - power.bitLength());
        }
        BigInteger divisor = BigInteger.TEN.pow(-k);
        BigInteger quotient =
                BigInteger.ONE.shiftLeft(126 + divisor.bitLength()).divide(divisor);
        return quotient.shiftRight(quotient.bitLength() - 126);
    }
}
