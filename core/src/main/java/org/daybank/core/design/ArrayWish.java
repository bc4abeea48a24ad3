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
        @Bounds(minimum = "0 deg", maximum = "90 deg") @Nullable
        Angle tilt,

        @Bounds(minimum = "-360 deg", maximum = "360 deg") @Nullable
        Angle azimuth,

        @Bounds(minimum = "0 m", maximum = "5000 m") @Assumed(value = "10 m", source = "no distance stated")
        Length cableLength) {
    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value can never be right
     */
    public ArrayWish {
        cableLength = Defaults.otherwise(cableLength, ArrayWish.class, "cableLength");
        Validation.of(ArrayWish.class, tilt, azimuth, cableLength).done();
    }

    /** Free to stand as is best, ten metres away. */
    public static ArrayWish free() {
        return new ArrayWish(null, null, Length.metres(10));
    }
}
