package org.daybank.core.sweep.kernel;

/** Numbers that look drawn but are functions of their arguments, so that any of them can be had at once. */
public final class Mix {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private Mix() {}

    /** 64 mixed bits of one number: the finaliser of SplitMix64 (Steele, Lea and Flood 2014). */
    public static long bits(long number) {
        long mixed = number + GOLDEN;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    /** 64 mixed bits of three numbers. */
    public static long bits(long seed, long dimension, long row) {
        return bits(bits(bits(seed) + dimension) + row);
    }

    /** A number from 0 to below 1, made of the upper 53 bits. */
    public static double unit(long bits) {
        return (bits >>> 11) * 0x1p-53;
    }
}
