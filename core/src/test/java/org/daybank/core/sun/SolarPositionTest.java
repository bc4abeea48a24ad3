package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.working.Table;
import org.junit.jupiter.api.Test;

class SolarPositionTest {
    private static Place place(double latitude, double longitude) {
        return new Place(Latitude.degrees(latitude), Longitude.degrees(longitude), UtcOffset.hours(0), null);
    }

    @Test
    void exampleOfRedaAndAndreas() {
        // I. Reda, A. Andreas, Solar Energy 76 (2004) 577-589, table A5.1: 17 October 2003, 12:30:30 UTC−7, 1830.14 m,
        // 820 mbar, 11 °C: zenith 50.11162°, azimuth 194.34024°, incidence 25.18700° on a 30° slope turned 10° east of
        // south.
        SolarPosition sun = SolarPosition.at(place(39.742476, -105.1786), Instant.parse("2003-10-17T19:30:30Z"));
        Angle apparent = sun.apparentZenith(Length.metres(1830.14), Temperature.celsius(11));

        // ours is good to 0.005°
        assertThat(apparent.degrees()).isCloseTo(50.11162, within(0.005));
        assertThat(sun.azimuth().degrees()).isCloseTo(194.34024, within(0.005));
        // without refraction, which is 0.0163° here and for the most part lifts the sun toward the slope
        assertThat(sun.incidence(new Plane(Angle.degrees(30), Angle.degrees(170)))
                        .degrees())
                .isCloseTo(25.187, within(0.02));
    }

    @Test
    void positionsOfAPreciseEphemeris() {
        for (Table.Row row : Reference.table("sun/positions.csv").rows()) {
            Place place = place(row.value(Double.class, "lat_deg"), row.value(Double.class, "lon_deg_east"));
            SolarPosition sun =
                    SolarPosition.at(place, Instant.parse(row.text("utc").replace(' ', 'T') + "Z"));

            assertThat(sun.zenith().degrees())
                    .isCloseTo(row.value(Double.class, "zenith_geometric_topocentric_deg"), within(0.005));
            double azimuthError = sun.azimuth().degrees() - row.value(Double.class, "azimuth_deg_from_north_clockwise");
            // near the zenith the azimuth turns fast: what counts is the angle on the sky
            assertThat(azimuthError * sun.zenith().sine()).isCloseTo(0, within(0.005));
        }
    }

    @Test
    void publishedDeclinationsAndEquationOfTime() {
        for (Table.Row row :
                Reference.table("sun/declination-equation-of-time-1999-01.csv").rows()) {
            SolarPosition sun = SolarPosition.at(place(0, 0), Instant.parse(row.text("date_0h_UT") + "T00:00:00Z"));

            assertThat(sun.declination().degrees())
                    .isCloseTo(row.value(Double.class, "declination_deg_read"), within(0.005));
            // at midnight the mean sun stands at 180°; four minutes for each degree
            double equationOfTime = Math.IEEEremainder(sun.hourAngle().degrees() - 180, 360) * 4;
            assertThat(equationOfTime).isCloseTo(row.value(Double.class, "eot_astropy"), within(0.02));
        }
    }

    @Test
    void incidenceExampleOfDuffieAndBeckman() {
        // Example 1.6.1: 43° N, 13 February, 10:30 solar time, tilt 45°, 15° west of south: θ = 35°, reckoned with a
        // declination of −14°. On 13 February 2001 it is −13.4°: within half a degree. The equation of time is −14.2
        // min.
        SolarPosition sun = SolarPosition.at(place(43, 0), Instant.parse("2001-02-13T10:44:12Z"));

        assertThat(sun.hourAngle().degrees()).isCloseTo(-22.5, within(0.05));
        assertThat(sun.incidence(new Plane(Angle.degrees(45), Angle.degrees(195)))
                        .degrees())
                .isCloseTo(35, within(0.5));
    }

    @Test
    void airLiftsTheSettingSunByHalfADegree() {
        // customary: 34 minutes of arc at the horizon. On the equator the sun of an equinox sets upright; find where
        // its
        // centre is seen on the horizon
        Place place = place(0, 0);
        Instant evening = Instant.parse("2001-03-20T18:09:00Z");
        SolarPosition sun = SolarPosition.at(place, evening);
        double lift = sun.zenith().degrees()
                - sun.apparentZenith(Length.ZERO, Temperature.celsius(10)).degrees();

        assertThat(sun.zenith().degrees()).isBetween(90.0, 91.0);
        assertThat(lift * 60).isBetween(28.0, 40.0);
    }
}
