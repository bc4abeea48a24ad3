package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ChargeSettingsTest {
    private static ChargeSettings of(Chemistry chemistry, double coldest, double hottest) {
        return ChargeSettings.of(
                new ChargeSettings.Facts(
                        chemistry, Voltage.volts(24), Temperature.celsius(coldest), Temperature.celsius(hottest)),
                ChargePolicy.standard());
    }

    @Test
    void aColdVentedBankOf24Volts() {
        ChargeSettings settings = of(Chemistry.VENTED_LEAD_ACID, -10, 35);

        // 12 cells · 2.45, 2.22, 2.60, 1.90 and 2.10 V
        assertThat(settings.cells()).isEqualTo(12);
        assertThat(settings.absorption().volts()).isCloseTo(29.4, within(1e-9));
        assertThat(settings.floating().orElseThrow().volts()).isCloseTo(26.64, within(1e-9));
        assertThat(settings.equalisation())
                .hasValueSatisfying(voltage -> assertThat(voltage.volts()).isCloseTo(31.2, within(1e-9)));
        assertThat(settings.disconnect().volts()).isCloseTo(22.8, within(1e-9));
        assertThat(settings.reconnect().volts()).isCloseTo(25.2, within(1e-9));
        assertThat(settings.absorptionTime()).isEqualTo(TimeSpan.hours(3));
        // 12 · −5 mV/K = −60 mV/K; at −10 °C 29.4 + 0.06 · 35 = 31.5 V; at 35 °C 29.4 − 0.06 · 10 = 28.8 V
        assertThat(settings.compensation().millivoltsPerKelvin()).isCloseTo(-60, within(1e-9));
        assertThat(settings.absorptionWhenCold().volts()).isCloseTo(31.5, within(1e-9));
        assertThat(settings.absorptionWhenHot().volts()).isCloseTo(28.8, within(1e-9));
        assertThat(settings.chargingFrom()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // 12 · 2.45 + 0.06 · 45 = 32.1; 12 · 2.40 + 2.7 = 31.5: both pass 31 V; gel 12 · 2.35 + 2.7 = 30.9
        "VENTED_LEAD_ACID, 32.1",
        "AGM, 31.5",
        "GEL, 30.9"
    })
    void belowTheClampTheVoltageRisesNoFurther(Chemistry chemistry, double volts) {
        assertThat(of(chemistry, -20, 20).absorptionWhenCold().volts()).isCloseTo(volts, within(1e-9));
        assertThat(of(chemistry, -45, 20).absorptionWhenCold().volts()).isCloseTo(volts, within(1e-9));
    }

    @Test
    void aboveTheClampTheVoltageFallsNoFurther() {
        // 29.4 − 0.06 · 25 = 27.9 V at 50 °C
        assertThat(of(Chemistry.VENTED_LEAD_ACID, 0, 50).absorptionWhenHot().volts())
                .isCloseTo(27.9, within(1e-9));
        assertThat(of(Chemistry.VENTED_LEAD_ACID, 0, 58).absorptionWhenHot().volts())
                .isCloseTo(27.9, within(1e-9));
    }

    @Test
    void lithiumIsNeitherCompensatedNorEqualisedNorChargedBelowFreezing() {
        ChargeSettings settings = of(Chemistry.LITHIUM_IRON_PHOSPHATE, -20, 40);

        // 8 cells · 3.5 V, hot or cold
        assertThat(settings.absorption().volts()).isCloseTo(28, within(1e-9));
        assertThat(settings.absorptionWhenCold()).isEqualTo(settings.absorption());
        assertThat(settings.absorptionWhenHot()).isEqualTo(settings.absorption());
        assertThat(settings.compensation()).isEqualTo(VoltageCoefficient.ZERO);
        assertThat(settings.equalisation()).isEmpty();
        // full cells rest, unless the data sheet asks for a float voltage: 8 · 3.375 V
        assertThat(settings.floating()).isEmpty();
        assertThat(ChargeSettings.of(settings.facts(), ChargePolicy.standard().withLithiumFloat(true))
                        .floating())
                .hasValueSatisfying(voltage -> assertThat(voltage.volts()).isCloseTo(27, within(1e-9)));
        assertThat(settings.chargingFrom()).contains(Temperature.celsius(0));
        // 8 · 2.9 V
        assertThat(settings.disconnect().volts()).isCloseTo(23.2, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void onlyVentedCellsAreEqualised(Chemistry chemistry) {
        ChargeSettings settings = of(chemistry, 0, 30);
        boolean vented = chemistry == Chemistry.VENTED_LEAD_ACID;
        assertThat(settings.equalisation().isPresent()).isEqualTo(vented);
        // the policy's month and two hours
        assertThat(settings.equalisationInterval())
                .isEqualTo(vented ? Optional.of(TimeSpan.days(30)) : Optional.empty());
        assertThat(settings.equalisationTime()).isEqualTo(vented ? Optional.of(TimeSpan.hours(2)) : Optional.empty());
    }

    /** Volts per cell at 25 °C customary in manufacturers' charging instructions. */
    @ParameterizedTest
    @CsvSource({
        "VENTED_LEAD_ACID, 2.40, 2.50, 2.20, 2.25",
        "AGM, 2.38, 2.45, 2.25, 2.30",
        "GEL, 2.33, 2.40, 2.25, 2.30",
        "LITHIUM_IRON_PHOSPHATE, 3.45, 3.65, 3.35, 3.40"
    })
    void setPointsLieInPublishedRanges(
            Chemistry chemistry, double leastAbsorption, double mostAbsorption, double leastFloat, double mostFloat) {
        ChargeSettings settings = ChargeSettings.of(
                of(chemistry, 25, 25).facts(), ChargePolicy.standard().withLithiumFloat(true));

        assertThat(settings.absorption().volts() / settings.cells()).isBetween(leastAbsorption, mostAbsorption);
        assertThat(settings.floating().orElseThrow().volts() / settings.cells()).isBetween(leastFloat, mostFloat);
        assertThat(settings.absorptionWhenCold()).isEqualTo(settings.absorption());
    }

    @Test
    void theWorkingShowsTheNumbersThatWereUsed() {
        assertThat(of(Chemistry.VENTED_LEAD_ACID, -10, 35).working().steps().get(1))
                .satisfies(step -> {
                    assertThat(step.substituted()).isEqualTo("29.4 V + -60 mV/K · (-10 °C − 25 °C)");
                    assertThat(step.result()).isEqualTo("31.5 V");
                });
        // clamped at −20 °C: what is written must make what stands behind it, 29.4 + 0.06 · 45
        assertThat(of(Chemistry.VENTED_LEAD_ACID, -45, 35).working().steps().get(1))
                .satisfies(step -> {
                    assertThat(step.substituted()).isEqualTo("29.4 V + -60 mV/K · (-20 °C − 25 °C)");
                    assertThat(step.result()).isEqualTo("32.1 V");
                });
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThatThrownBy(() -> new ChargeSettings.Facts(
                        null, Voltage.volts(36), Temperature.celsius(20), Temperature.celsius(10)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("chemistry is required. nominalVoltage must be 12 V, 24 V or 48 V, but was 36 V. "
                        + "hottest must be at least coldest 20 °C, but was 10 °C.");
    }

    @Test
    void aPolicyOutOfRangeIsRefused() {
        ChargePolicy standard = ChargePolicy.standard();

        assertThatThrownBy(() -> standard.withColdestCompensated(Temperature.celsius(-41)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("coldestCompensated must be from -40 °C to 25 °C, but was -41 °C.");
        assertThatThrownBy(() -> standard.withLeadAcidCompensation(VoltageCoefficient.millivoltsPerKelvin(-9)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("leadAcidCompensation must be from -8 mV/K to 0 V/K, but was -9 mV/K.");
    }
}
