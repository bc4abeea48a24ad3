package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BatteryTest {
    @Test
    void whatTheSheetLeavesOutIsTypicalOfTheChemistry() {
        Battery agm = Batteries.AGM_12V
                .withMaximumChargeCurrent(null)
                .withMaximumDischargeCurrent(null)
                .withPeakDischargeCurrent(null)
                .withMostInSeries(null)
                .withMostInParallel(null)
                .withColdestCharge(null);

        // 200 Ah: charged with 0.25 C, 50 A; drawn in an hour, 200 A; twice that for seconds; 48 V / 12 V in series
        assertThat(agm.resolved().maximumChargeCurrent().amperes()).isCloseTo(50, within(1e-9));
        assertThat(agm.resolved().maximumDischargeCurrent().amperes()).isCloseTo(200, within(1e-9));
        assertThat(agm.resolved().peakDischargeCurrent().amperes()).isCloseTo(400, within(1e-9));
        assertThat(agm.resolved().mostInSeries()).isEqualTo(4);
        assertThat(agm.mostInParallel()).isEqualTo(4);
        assertThat(agm.resolved().coldestCharge()).isEqualTo(Temperature.celsius(-30));
        assertThat(agm.resolved().capacityByTemperature())
                .isEqualTo(Chemistry.AGM.traits().capacityByTemperature());
        assertThat(agm.heater()).isNull();
    }

    @Test
    void lithiumIsNotChargedBelowFreezing() {
        assertThat(Batteries.LITHIUM_12V.withColdestCharge(null).resolved().coldestCharge())
                .isEqualTo(Temperature.celsius(0));
    }

    @ParameterizedTest
    @CsvSource({
        // lead-acid 2 V, lithium iron phosphate 3.2 V a cell
        "VENTED_LEAD_ACID, 2, 1, 2",
        "VENTED_LEAD_ACID, 6, 3, 6",
        "GEL, 12, 6, 12",
        "LITHIUM_IRON_PHOSPHATE, 12, 4, 12.8",
        "LITHIUM_IRON_PHOSPHATE, 24, 8, 25.6",
        "LITHIUM_IRON_PHOSPHATE, 48, 16, 51.2"
    })
    void cellsAndTrueNominalVoltage(Chemistry chemistry, double nominal, int cells, double volts) {
        Battery battery = Batteries.AGM_12V.withChemistry(chemistry).withNominalVoltage(Voltage.volts(nominal));

        assertThat(battery.cells()).isEqualTo(cells);
        assertThat(battery.trueNominal().volts()).isCloseTo(volts, within(1e-12));
    }

    /** Else one bank has two nominal voltages: that of its bus and that of its batteries. */
    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void batteriesInSeriesHaveTheCellsOfTheirBus(Chemistry chemistry) {
        Battery battery = Batteries.AGM_12V.withChemistry(chemistry);
        for (int series : new int[] {1, 2, 4}) {
            Voltage bus = Voltage.volts(12 * series);

            assertThat(series * battery.cells()).isEqualTo(chemistry.cellsFor(bus));
            assertThat(battery.trueNominal().times(series).volts())
                    .isCloseTo(chemistry.trueNominal(bus).volts(), within(1e-9));
        }
    }

    /** A battery whose sheet says the least there is to say. */
    private static BatteryBuilder silent(Chemistry chemistry) {
        return BatteryBuilder.builder()
                .model("silent")
                .chemistry(chemistry)
                .nominalVoltage(Voltage.volts(12))
                .capacity(DischargeCurve.parse("20 h: 100 Ah"))
                .resistance(Resistance.milliohms(5))
                .mass(Mass.kilograms(20))
                .price(Money.of("100", "EUR"));
    }

    /** What is typical of a chemistry stands in its table; nothing beside it may forbid what the table allows. */
    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void chargingBeginsWhereTheTypicalRatesBegin(Chemistry chemistry) {
        Temperature begins =
                chemistry.traits().chargeRateByTemperature().steps().get(0).from();
        Battery silent = silent(chemistry).build();
        ChargeSettings settings = ChargeSettings.of(
                new ChargeSettings.Facts(
                        chemistry, Voltage.volts(12), Temperature.celsius(-40), Temperature.celsius(30)),
                ChargePolicy.standard());

        // as the contract says: lithium from 0 °C on, lead-acid from −30 °C
        assertThat(begins).isEqualTo(Temperature.celsius(chemistry.family() == BatteryFamily.LITHIUM ? 0 : -30));
        assertThat(silent.resolved().coldestCharge()).isEqualTo(begins);
        assertThat(settings.chargingFrom())
                .isEqualTo(chemistry.family() == BatteryFamily.LITHIUM ? Optional.of(begins) : Optional.empty());
    }

    /** What its own sheet says wins over what is typical; lead-acid has no such set-point. */
    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void settingsForABatteryAllowChargingFromWhereItsSheetDoes(Chemistry chemistry) {
        Battery cautious =
                silent(chemistry).coldestCharge(Temperature.celsius(5)).build();
        ChargeSettings settings = ChargeSettings.of(
                new ChargeSettings.Facts(
                        chemistry, Voltage.volts(24), Temperature.celsius(-10), Temperature.celsius(30)),
                ChargePolicy.standard());

        assertThat(settings.forBattery(cautious).chargingFrom())
                .isEqualTo(
                        chemistry.family() == BatteryFamily.LITHIUM
                                ? Optional.of(Temperature.celsius(5))
                                : Optional.empty());
        assertThat(settings.forBattery(cautious).withChargingFrom(settings.chargingFrom()))
                .isEqualTo(settings);
    }

    @Test
    void everythingMissingIsToldAtOnce() {
        assertThatThrownBy(() -> BatteryBuilder.builder()
                        .resistance(Resistance.ZERO)
                        .mostInSeries(0)
                        .heater(Power.ZERO)
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/model MISSING",
                                        "/chemistry MISSING",
                                        "/nominalVoltage MISSING",
                                        "/capacity MISSING",
                                        "/resistance OUT_OF_RANGE",
                                        "/mostInSeries OUT_OF_RANGE",
                                        "/heater OUT_OF_RANGE",
                                        "/mass MISSING",
                                        "/price MISSING"));
    }

    @Test
    void aSheetThatContradictsItselfIsRefused() {
        assertThatThrownBy(() -> Batteries.LITHIUM_12V.withPeakDischargeCurrent(Current.amperes(90)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("peakDischargeCurrent must be at least maximumDischargeCurrent 100 A, but was 90 A.");
        assertThat(Batteries.LITHIUM_12V
                        .withPeakDischargeCurrent(Current.amperes(100))
                        .peakDischargeCurrent()
                        .amperes())
                .isEqualTo(100);
        assertThatThrownBy(() -> Batteries.LITHIUM_12V.withNominalVoltage(Voltage.volts(6)))
                .hasMessage("nominalVoltage must be 12 V, 24 V or 48 V for a lithium battery, but was 6 V.");
        assertThatThrownBy(() -> Batteries.AGM_12V.withNominalVoltage(Voltage.volts(8)))
                .hasMessage("nominalVoltage must be one of [2 V, 6 V, 12 V, 24 V, 48 V], but was 8 V.");
    }

    /** Published: open circuit by the specific gravity; Peukert, charge rate and self-discharge customary by chemistry. */
    @ParameterizedTest
    @CsvSource({
        "VENTED_LEAD_ACID, 2.10, 2.15, 1.20, 1.30, 0.20, 0.04, 0.10",
        "AGM, 2.12, 2.17, 1.05, 1.15, 0.30, 0.01, 0.03",
        "GEL, 2.12, 2.17, 1.10, 1.20, 0.20, 0.01, 0.03",
        "LITHIUM_IRON_PHOSPHATE, 3.3, 3.45, 1.02, 1.05, 1, 0.01, 0.03"
    })
    void typicalValuesLieInPublishedRanges(
            Chemistry chemistry,
            double leastOpen,
            double mostOpen,
            double leastPeukert,
            double mostPeukert,
            double mostCharge,
            double leastLost,
            double mostLost) {
        Chemistry.Traits traits = chemistry.traits();

        assertThat(traits.openCircuit().volts()).isBetween(leastOpen, mostOpen);
        assertThat(traits.peukertExponent().fraction()).isBetween(leastPeukert, mostPeukert);
        assertThat(traits.maximumChargeRate().fraction()).isBetween(0.1, mostCharge);
        assertThat(traits.selfDischargePerMonth().fraction()).isBetween(leastLost, mostLost);
        assertThat(traits.disconnect()).isLessThan(traits.reconnect());
        assertThat(traits.reconnect()).isLessThan(traits.openCircuit());
    }
}
