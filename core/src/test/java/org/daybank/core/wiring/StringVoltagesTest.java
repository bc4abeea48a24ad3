package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** Six modules of 31.2 V and 13.14 A, one, two, three or six in series. */
class StringVoltagesTest {
    private static final ArrayRuns SIX = ArrayRunsBuilder.builder()
            .modules(6)
            .moduleVoltage(Voltage.volts(31.2))
            .moduleCurrent(Current.amperes(13.14))
            .moduleShortCircuitCurrent(Current.amperes(13.9))
            .moduleColdestVoltage(Voltage.volts(42.6))
            .lengths(List.of(Length.metres(10), Length.metres(38)))
            .controllers(List.of(
                    new ControllerLimit("HN-T20", Voltage.volts(98)),
                    new ControllerLimit("HN-T40", Voltage.volts(137.2))))
            .build();

    private final List<StringVoltages.Row> rows =
            StringVoltages.of(SIX, WiringPolicy.standard()).rows();

    @Test
    void everyWholeDivisionOfTheArrayIsShown() {
        assertThat(rows).extracting(StringVoltages.Row::series).containsExactly(1, 2, 3, 6);
        assertThat(rows).extracting(StringVoltages.Row::strings).containsExactly(6, 3, 2, 1);
        // modules that stand 100 V only: 2 · 42.6 V = 85.2 V, 3 · 42.6 V = 127.8 V
        assertThat(StringVoltages.of(SIX.withModuleSystemVoltage(Voltage.volts(100)), WiringPolicy.standard())
                        .rows())
                .extracting(StringVoltages.Row::series)
                .containsExactly(1, 2);
        // that stand just the 85.2 V of two
        assertThat(StringVoltages.of(SIX.withModuleSystemVoltage(Voltage.volts(85.2)), WiringPolicy.standard())
                        .rows())
                .extracting(StringVoltages.Row::series)
                .containsExactly(1, 2);
    }

    @Test
    void theSamePowerComesAtLessCurrent() {
        assertThat(rows)
                .allSatisfy(row -> assertThat(row.operatingVoltage()
                                .times(row.operatingCurrent())
                                .watts())
                        // 6 · 31.2 V · 13.14 A
                        .isCloseTo(2459.808, within(1e-9)));
    }

    @Test
    void controllersAreNamedUpToTheVoltageTheyStand() {
        assertThat(rows)
                .extracting(StringVoltages.Row::controllers)
                .containsExactly(
                        List.of("HN-T20", "HN-T40"), List.of("HN-T20", "HN-T40"), List.of("HN-T40"), List.of());
        // one that stands just the 85.2 V of two
        assertThat(StringVoltages.of(
                                SIX.withControllers(List.of(new ControllerLimit("just", Voltage.volts(85.2)))),
                                WiringPolicy.standard())
                        .rows())
                .extracting(StringVoltages.Row::controllers)
                .containsExactly(List.of("just"), List.of("just"), List.of(), List.of());
    }

    @Test
    void theRunTakesWhatTheCircuitByItselfTakes() {
        // three in series is the circuit worked by hand: 25 mm² over 38 m, 152.02 EUR; in air of 30 °C the drop asks as
        // much
        StringVoltages.Run far = rows.get(2).runs().get(1);
        assertThat(far.size().size()).isEqualTo("25 mm²");
        assertThat(far.metalCost()).isEqualTo(Money.of("152.02", "EUR"));
        // six in series: 1.25 · 13.9 A; 2 % of 187.2 V over 38 m at 13.14 A asks R ≤ 3.749 mΩ/m: 6 mm² has 3.08,
        // warm (1 + 0.00393 · (10 + 60 · (13.14 / 54)²)) · 3.08 = 3.24; 4 mm² 4.61
        assertThat(rows.get(3).runs().get(1).size().size()).isEqualTo("6 mm²");
    }

    @Test
    void metalNeverGrowsWithVoltageAndGrowsWithLength() {
        for (int length = 0; length < 2; length++) {
            int at = length;
            assertThat(rows)
                    .extracting(row -> row.runs().get(at).metalCost().minorUnits())
                    .isSortedAccordingTo((one, other) -> Long.compare(other, one));
        }
        assertThat(rows)
                .allSatisfy(row -> assertThat(row.runs().get(1).metalCost())
                        .isGreaterThan(row.runs().get(0).metalCost()));
    }

    @Test
    void whatCannotBeRightIsRefused() {
        assertThatThrownBy(() -> SIX.withLengths(List.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("lengths must not be empty.");
        assertThatThrownBy(() -> SIX.withModuleColdestVoltage(Voltage.volts(30)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("moduleColdestVoltage must be at least moduleVoltage 31.2 V, but was 30 V.");
        assertThatThrownBy(() -> SIX.withModules(9999))
                .isInstanceOf(InvalidInput.class)
                .hasMessageStartingWith("modules must give at most 10 kA of short-circuit current in parallel");
        // 500 · 20 A = 10 kA are not more
        ArrayRuns wide = SIX.withModuleShortCircuitCurrent(Current.amperes(20));
        assertThat(wide.withModules(500).modules()).isEqualTo(500);
        assertThatThrownBy(() -> wide.withModules(501))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "modules must give at most 10 kA of short-circuit current in parallel, but was 501 of 20 A.");
        assertThatThrownBy(() -> SIX.withModuleShortCircuitCurrent(Current.amperes(13)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("moduleShortCircuitCurrent must be at least moduleCurrent 13.14 A, but was 13 A.");
        assertThatThrownBy(() ->
                        SIX.withModuleColdestVoltage(Voltage.volts(60)).withModuleSystemVoltage(Voltage.volts(50)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("moduleColdestVoltage must be at most moduleSystemVoltage 50 V, but was 60 V.");
        List<Length> forty = Collections.nCopies(40, Length.metres(10));
        assertThat(SIX.withLengths(forty).lengths()).hasSize(40);
        assertThatThrownBy(() -> SIX.withLengths(Collections.nCopies(41, Length.metres(10))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("lengths must have at most 40 elements, but has 41.");
    }

    @Test
    void everythingMissingIsToldAtOnce() {
        assertThatThrownBy(() -> ArrayRunsBuilder.builder()
                        .moduleShortCircuitCurrent(Current.amperes(10))
                        .moduleColdestVoltage(Voltage.volts(40))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "modules must be from 1 to 10000, but was 0. moduleVoltage is required. moduleCurrent is required. "
                                + "lengths is required.");
    }
}
