package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas of American sizes as wire tables print them, to their last digit; resistances by hand. */
class ConductorSizeTest {
    @ParameterizedTest
    @CsvSource({
        "14, 14 AWG, 2.08",
        "10, 10 AWG, 5.26",
        "1, 1 AWG, 42.4",
        "1/0, 1/0 AWG, 53.5",
        "4/0, 4/0 AWG, 107.2",
        // 250 000 circular mils: 250 000 · π/4 · (0.0254 mm)² = 126.677 mm²
        "250, 250 kcmil, 126.677",
        "500, 500 kcmil, 253.35"
    })
    void americanSizesHaveTheAreasOfTheirTables(String name, String size, double squareMillimetres) {
        ConductorSize american = ConductorSize.american(name);

        assertThat(american.size()).isEqualTo(size);
        assertThat(american.crossSection().squareMillimetres())
                .isCloseTo(squareMillimetres, within(2e-3 * squareMillimetres));
    }

    @Test
    void aHundredMetresOfCopperAndOfAluminium() {
        // 0.017241 Ω·mm²/m · 100 m / 4 mm² = 0.431025 Ω; aluminium 0.028264 · 100 / 4 = 0.7066 Ω
        CrossSection four = CrossSection.squareMillimetres(4);
        assertThat(Metal.COPPER.resistance(Length.metres(100), four).ohms()).isCloseTo(0.431025, within(1e-12));
        assertThat(Metal.ALUMINIUM.resistance(Length.metres(100), four).ohms()).isCloseTo(0.7066, within(1e-12));
        // 70 °C, 50 K over 20 °C: · (1 + 50 · 0.00393) = · 1.1965
        assertThat(Metal.COPPER
                        .at(Temperature.celsius(70), Metal.COPPER.resistance(Length.metres(100), four))
                        .ohms())
                .isCloseTo(0.431025 * 1.1965, within(1e-12));
        // 100 m · 4 mm² · 8890 kg/m³ = 3.556 kg
        assertThat(Metal.COPPER.mass(Length.metres(100), four).kilograms()).isCloseTo(3.556, within(1e-12));
    }
}
