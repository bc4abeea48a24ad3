package org.daybank.core.sun;

import java.time.Month;
import java.util.List;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.TimeSpan;

/**
 * The course of a mean day on a plane: equal slices from sunrise to sunset, noon in the middle.
 *
 * @param month which
 * @param slice how long each lasts; zero in polar night
 * @param planeOfArray mean irradiance of each slice
 */
public record DayCourse(Month month, TimeSpan slice, List<Irradiance> planeOfArray) {
    /** Keeps a copy. */
    public DayCourse {
        planeOfArray = List.copyOf(planeOfArray);
    }
}
