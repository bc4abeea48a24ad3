package org.daybank.core.design;

import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Length;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Where the array may stand.
 *
 * @param tilt from the horizontal; absent when the best for the design month is wanted
 * @param azimuth where it faces, clockwise from north; absent when it may face the equator
 * @param cableLength one way from the array to the bank
 */
public record ArrayWish(
        @Nullable Angle tilt,
        @Nullable Angle azimuth,

        @Bounds(minimum = "0 m", maximum = "5000 m") @Assumed(value = "10 m", source = "no distance stated")
        Length cableLength) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value can never be right
     */
    public ArrayWish {
        cableLength = Defaults.otherwise(cableLength, ArrayWish.class, "cableLength");
        new Validation()
                .within("tilt", tilt, Angle.ZERO, Angle.degrees(90))
                .within("azimuth", azimuth, Angle.degrees(-360), Angle.degrees(360))
                .within("cableLength", cableLength, Length.ZERO, Length.metres(5000))
                .done();
    }

    /** Free to stand as is best, ten metres away. */
    public static ArrayWish free() {
        return new ArrayWish(null, null, Length.metres(10));
    }
}
