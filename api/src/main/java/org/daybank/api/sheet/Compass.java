package org.daybank.api.sheet;

import java.util.List;
import org.daybank.core.quantity.Angle;

/** Names of directions. */
final class Compass {
    private static final List<String> NAMES =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

    private Compass() {}

    /** The name nearest to an azimuth, clockwise from north. */
    static String nearest(Angle azimuth) {
        int eighth = Math.floorMod(Math.round(azimuth.degrees() / 45), NAMES.size());
        return NAMES.get(eighth);
    }
}
