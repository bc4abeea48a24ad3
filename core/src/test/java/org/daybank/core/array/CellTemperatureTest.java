package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Speed;
import org.daybank.core.quantity.Temperature;
import org.junit.jupiter.api.Test;

class CellTemperatureTest {
    private static final Temperature AIR = Temperature.celsius(20);
    private static final Irradiance TEST_SUN = Irradiance.wattsPerSquareMetre(800);

    @Test
    void rossGivesTheNominalTemperatureUnderTheConditionsOfItsTest() {
        assertThat(CellTemperature.ross(AIR, TEST_SUN, Temperature.celsius(45))).isEqualTo(Temperature.celsius(45));
    }

    @Test
    void rossGoesWithTheSun() {
        // −10 + (44 − 20) / 800 · 600 = −10 + 18 = 8 °C
        assertThat(CellTemperature.ross(
                                Temperature.celsius(-10), Irradiance.wattsPerSquareMetre(600), Temperature.celsius(44))
                        .celsius())
                .isCloseTo(8, within(1e-12));
    }

    @Test
    void faimanCoolsWithTheWind() {
        // 20 + 800 / (25.0 + 6.84 · 1) = 20 + 800 / 31.84 = 45.1256 °C
        assertThat(CellTemperature.faiman(AIR, TEST_SUN, Speed.metresPerSecond(1))
                        .celsius())
                .isCloseTo(45.1256, within(1e-4));
        // still air: 20 + 800 / 25 = 52 °C
        assertThat(CellTemperature.faiman(AIR, TEST_SUN, Speed.ZERO).celsius()).isCloseTo(52, within(1e-12));
    }

    @Test
    void atNightTheCellsAreAsWarmAsTheAir() {
        assertThat(CellTemperature.ross(AIR, Irradiance.ZERO, Temperature.celsius(45)))
                .isEqualTo(AIR);
        assertThat(CellTemperature.faiman(AIR, Irradiance.ZERO, Speed.metresPerSecond(9)))
                .isEqualTo(AIR);
    }
}
