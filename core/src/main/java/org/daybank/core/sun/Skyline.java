package org.daybank.core.sun;

import java.util.Arrays;
import org.daybank.core.quantity.Angle;
import org.daybank.core.site.Horizon;

/** A horizon in plain numbers: what of the sun and of the sky it leaves to a plane. */
final class Skyline {
    private static final int AZIMUTHS = 360;
    private static final int ELEVATIONS = 90;

    private static final Skyline OPEN = new Skyline(true, new double[0]);

    private final boolean open;

    /** Sine of the elevation for each whole degree of azimuth, the first one again at the end. */
    private final double[] sines;

    private Skyline(boolean open, double[] sines) {
        this.open = open;
        this.sines = sines;
    }

    static Skyline of(Horizon horizon) {
        if (horizon.open()) {
            return OPEN;
        }
        double[] sines = new double[AZIMUTHS + 1];
        Arrays.setAll(
                sines,
                degree -> horizon.elevation(Angle.degrees(degree % AZIMUTHS)).sine());
        return new Skyline(false, sines);
    }

    /** Whether the sun in this direction stands above the skyline. */
    boolean clears(double up, double north, double east) {
        if (open) {
            return up > 0;
        }
        double azimuth = (Math.toDegrees(Math.atan2(east, north)) + AZIMUTHS) % AZIMUTHS;
        int degree = (int) azimuth;
        double along = azimuth - degree;
        return up > Math.max(0, (1 - along) * sines[degree] + along * sines[degree + 1]);
    }

    /** What a plane sees of an even sky above the skyline, against the whole half dome; (1 + cos β) / 2 when it is open. */
    double skyShare(Facing plane) {
        if (open) {
            return plane.skyShare();
        }
        double seen = 0;
        double whole = 0;
        for (int azimuth = 0; azimuth < AZIMUTHS; azimuth++) {
            double radians = Math.toRadians(azimuth + 0.5);
            double skyline = (sines[azimuth] + sines[azimuth + 1]) / 2;
            for (int elevation = 0; elevation < ELEVATIONS; elevation++) {
                double height = Math.toRadians(elevation + 0.5);
                double level = Math.cos(height);
                double weight = level
                        * plane.cosIncidence(Math.sin(height), level * Math.cos(radians), level * Math.sin(radians));
                whole += weight;
                seen += Math.sin(height) > skyline ? weight : 0;
            }
        }
        return plane.skyShare() * seen / whole;
    }
}
