package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

/** By IEC 62485-2: {@code Q = 0.05 · n · I_gas · C_rt · 10⁻³} m³/h and openings of {@code 28 · Q} cm². */
class VentilationTest {
    private static Ventilation of(Battery battery, int series, int parallel) {
        return Ventilation.of(BankLayout.of(battery, Voltage.volts(48), series, parallel))
                .orElseThrow();
    }

    @Test
    void ventedCells() {
        Ventilation air = of(Batteries.VENTED_6V, 8, 2);

        // 24 cells, 2 · 250 Ah: boost 0.05 · 24 · 20 · 500 / 1000 = 12 m³/h
        assertThat(air.chargingFlow().cubicMetresPerHour()).isCloseTo(12, within(1e-9));
        // equalised at C/20, 50 mA/Ah: 0.05 · 24 · 50 · 500 / 1000 = 30 m³/h
        assertThat(air.equalisingFlow())
                .hasValueSatisfying(
                        flow -> assertThat(flow.cubicMetresPerHour()).isCloseTo(30, within(1e-9)));
        assertThat(air.flow().cubicMetresPerHour()).isCloseTo(30, within(1e-9));
        // 28 · 30 = 840 cm²
        assertThat(air.openings().squareCentimetres()).isCloseTo(840, within(1e-9));
        // 30 m³/h · 1.2 kg/m³ · 1005 J/(kg·K) / 3600 s/h = 10.05 W/K
        assertThat(air.heatLoss().wattsPerKelvin()).isCloseTo(10.05, within(1e-9));
    }

    @Test
    void valveRegulatedCellsGasLessAndAreNotEqualised() {
        Ventilation air = of(Batteries.AGM_12V, 4, 1);

        // 24 cells, 200 Ah: 0.05 · 24 · 8 · 200 / 1000 = 1.92 m³/h; 28 · 1.92 = 53.76 cm²
        assertThat(air.flow().cubicMetresPerHour()).isCloseTo(1.92, within(1e-9));
        assertThat(air.chargingFlow()).isEqualTo(air.flow());
        assertThat(air.equalisingFlow()).isEmpty();
        assertThat(air.openings().squareCentimetres()).isCloseTo(53.76, within(1e-9));
    }

    @Test
    void lithiumGivesNoHydrogen() {
        assertThat(Ventilation.of(BankLayout.of(Batteries.LITHIUM_12V, Voltage.volts(48), 4, 1)))
                .isEmpty();
    }
}
