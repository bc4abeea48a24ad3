package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.junit.jupiter.api.Test;

class CircuitTest {
    @Test
    void whatIsLeftOutFollowsFromTheOperatingPoint() {
        Circuit circuit = Circuits.supply(CircuitKind.DC_LOADS, 24, 10, 3);
        assertThat(circuit.resolved().designCurrent()).isEqualTo(Current.amperes(10));
        assertThat(circuit.resolved().highestVoltage()).isEqualTo(Voltage.volts(24));
        assertThat(circuit.resolved().runningCurrent()).isEqualTo(Current.amperes(10));
        assertThat(circuit.phases()).isEqualTo(Phases.SINGLE);
    }

    @Test
    void anArrayMustStateWhatItsDevicesStandAgainst() {
        assertThatThrownBy(() -> CircuitBuilder.builder()
                        .name("string")
                        .kind(CircuitKind.STRING)
                        .operatingVoltage(Voltage.volts(90))
                        .operatingCurrent(Current.amperes(10))
                        .length(Length.metres(4))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/designCurrent", "/highestVoltage", "/strings"));
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThatThrownBy(() -> CircuitBuilder.builder()
                        .name(" ")
                        .kind(CircuitKind.DC_LOADS)
                        .operatingVoltage(Voltage.volts(24))
                        .operatingCurrent(Current.amperes(10))
                        .designCurrent(Current.amperes(9))
                        .highestVoltage(Voltage.volts(20))
                        .length(Length.metres(0))
                        .phases(Phases.THREE)
                        .runningCurrent(Current.amperes(11))
                        .strings(new ParallelStrings(2, Current.amperes(20), Current.ZERO))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("name must not be blank")
                .hasMessageContaining("length must be from 0.1 m to 10 km, but was 0 m.")
                .hasMessageContaining("phases must be left out or single in a circuit of direct current")
                .hasMessageContaining("strings must be left out unless the kind of the circuit is string")
                .hasMessageContaining("designCurrent must be at least operatingCurrent 10 A, but was 9 A.")
                .hasMessageContaining("highestVoltage must be at least operatingVoltage 24 V, but was 20 V.")
                .hasMessageContaining("runningCurrent must be at most operatingCurrent 10 A, but was 11 A.");
    }

    @Test
    void aPolicyHangsTogether() {
        WiringPolicy standard = WiringPolicy.standard();
        assertThatThrownBy(() -> standard.withInsulationTemperature(Temperature.celsius(75)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("insulationTemperature must be one of 70 °C, 90 °C with rule set IEC, but was 75 °C.");
        assertThatThrownBy(() -> standard.withTerminalTemperature(Temperature.celsius(60)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "terminalTemperature must be at least the first of 70 °C, 90 °C with rule set IEC, but was 60 °C.");
        assertThatThrownBy(() -> standard.withStranding(Stranding.FLEXIBLE).withMetal(Metal.ALUMINIUM))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("stranding must be stranded with aluminium");
        assertThatThrownBy(() -> standard.withCopperPricePerKilogram(Money.of("9", "USD")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("energyPricePerKilowattHour must be in the currency of the price of the metal");
        assertThatThrownBy(() -> standard.withEnergyPricePerKilowattHour(Money.of("-0.10", "EUR")))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("energyPricePerKilowattHour must be from 0.00 EUR to 10000000.00 EUR, but was -0.10 EUR.");
        assertThatThrownBy(() -> standard.withMostParallel(9).withGroundFlashDensity(51))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("mostParallel must be from 1 to 8, but was 9.");
        // terminals for just the first column
        assertThat(standard.withTerminalTemperature(Temperature.celsius(70)).terminalTemperature())
                .isEqualTo(Temperature.celsius(70));
        // metal that lies in the shed and energy that nobody else wants cost nothing
        Money nothing = Money.of("0", "EUR");
        assertThat(standard.withCopperPricePerKilogram(nothing)
                        .withAluminiumPricePerKilogram(nothing)
                        .withEnergyPricePerKilowattHour(nothing)
                        .pricePerKilogram())
                .isEqualTo(nothing);
    }

    @Test
    void stringsBesideAndControllersAreChecked() {
        assertThatThrownBy(() -> new ParallelStrings(0, Current.amperes(300), null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "count must be from 1 to 1000, but was 0. seriesFuse must be from 0.1 A to 200 A, but was 300 A.");
        assertThatThrownBy(() -> new ControllerLimit(" ", Voltage.volts(2000)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("model must not be blank")
                .hasMessageContaining("maximumVoltage must be from 5 V to");
    }
}
