package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Latitude;
import org.junit.jupiter.api.Test;

class SolarDayTest {
    private static final SunPolicy OLDER_CONSTANT =
            SunPolicy.standard().withSolarConstant(Irradiance.wattsPerSquareMetre(1367));

    @Test
    void exampleOfDuffieAndBeckmanForThe15thOfApril() {
        // Duffie and Beckman, "Solar Engineering of Thermal Processes", example 1.10.1: 43° N, δ = 9.4°, H0 = 33.8
        // MJ/m²
        SolarDay day = SolarDay.on(Latitude.degrees(43), 105, OLDER_CONSTANT);

        assertThat(day.declination().degrees()).isCloseTo(9.4, within(0.05));
        // printed to three digits
        assertThat(day.extraterrestrial().megajoulesPerSquareMetre()).isCloseTo(33.8, within(0.05));
        // cos ω_s = −tan 43° · tan 9.4149° = −0.15462: ω_s = 98.895°, 13.186 h
        assertThat(day.sunsetHourAngle().degrees()).isCloseTo(98.895, within(0.001));
        assertThat(day.dayLength().hours()).isCloseTo(13.186, within(0.001));
    }

    @Test
    void exampleOfFao56ForThe3rdOfSeptember() {
        // FAO Irrigation and Drainage Paper 56, example 8: 20° S, day 246: δ = 0.120 rad, ω_s = 1.527 rad,
        // Ra = 32.2 MJ/m². Its formula for δ is another one; the two differ by up to half a degree over the year, here
        // by less than 0.1° (0.002 rad), which is 0.1 % of Ra.
        SolarDay day = SolarDay.on(Latitude.degrees(-20), 246, OLDER_CONSTANT);

        assertThat(day.declination().radians()).isCloseTo(0.120, within(0.002));
        assertThat(day.sunsetHourAngle().radians()).isCloseTo(1.527, within(0.001));
        assertThat(day.extraterrestrial().megajoulesPerSquareMetre()).isCloseTo(32.2, within(0.1));
    }

    @Test
    void polesHaveDayAndNight() {
        SolarDay summer = SolarDay.on(Latitude.degrees(90), 172, SunPolicy.standard());
        SolarDay winter = SolarDay.on(Latitude.degrees(90), 355, SunPolicy.standard());

        assertThat(summer.dayLength().hours()).isCloseTo(24, within(1e-9));
        // the sun circles at the height of its declination: 24 h · 1361 W/m² · 0.9675 · sin 23.45°
        assertThat(summer.extraterrestrial().kilowattHoursPerSquareMetre())
                .isCloseTo(
                        24 * 1.361 * (1 + 0.033 * Math.cos(2 * Math.PI * 172 / 365)) * Math.sin(Math.toRadians(23.45)),
                        within(1e-3));
        assertThat(winter.dayLength().hours()).isZero();
        assertThat(winter.extraterrestrial().kilowattHoursPerSquareMetre()).isZero();
    }

    @Test
    void thereIsNo367thDay() {
        assertThatThrownBy(() -> SolarDay.on(Latitude.degrees(0), 367, SunPolicy.standard()))
                .hasMessageContaining("dayOfYear must be from 1 to 366, but was 367.");
    }
}
