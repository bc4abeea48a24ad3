package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;

/** Inputs about circuits: what was left out follows the other components, and no absurd value is accepted. */
class WiringInputsTest {
    private static final Circuit LOADS = Circuits.supply(CircuitKind.DC_LOADS, 24, 10, 3);
    private static final Circuit OUTPUT = Circuits.supply(CircuitKind.AC_OUTPUT, 400, 20, 15)
            .withDesignCurrent(Current.amperes(25))
            .withHighestVoltage(Voltage.volts(440))
            .withFaultCurrent(Current.kiloamperes(1))
            .withYearlyEnergy(Energy.kilowattHours(3000))
            .withRunningCurrent(Current.amperes(8))
            .withAmbient(Temperature.celsius(35));
    private static final ArrayRuns RUNS = ArrayRunsBuilder.builder()
            .modules(6)
            .moduleVoltage(Voltage.volts(31.2))
            .moduleCurrent(Current.amperes(13.14))
            .moduleShortCircuitCurrent(Current.amperes(13.9))
            .moduleColdestVoltage(Voltage.volts(42.5))
            .lengths(List.of(Length.metres(10)))
            .build();

    private static void refused(ThrowingCallable construction, String path, ProblemCode code) {
        assertThatThrownBy(construction)
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::path, Problem::code)
                                .containsExactly(tuple(path, code)));
    }

    private static void outOfRange(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.OUT_OF_RANGE);
    }

    private static void inconsistent(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.INCONSISTENT);
    }

    @Test
    void currentsAndVoltagesFollowTheOperatingPoint() {
        Circuit moved = LOADS.withOperatingCurrent(Current.amperes(20)).withOperatingVoltage(Voltage.volts(48));

        assertThat(moved.designCurrent()).isNull();
        assertThat(moved.highestVoltage()).isNull();
        assertThat(moved.runningCurrent()).isNull();
        assertThat(moved.resolved())
                .isEqualTo(new Circuit.Resolved(Current.amperes(20), Voltage.volts(48), Current.amperes(20)));
        // what was given stays
        assertThat(LOADS.withRunningCurrent(Current.amperes(4))
                        .withOperatingCurrent(Current.amperes(20))
                        .resolved()
                        .runningCurrent())
                .isEqualTo(Current.amperes(4));
    }

    @Test
    void aCircuitWithAChangeIsSizedLikeOneBuiltAnew() {
        Circuit anew = Circuits.supply(CircuitKind.DC_LOADS, 48, 40, 3).withYearlyEnergy(Energy.kilowattHours(500));
        Circuit changed = LOADS.withYearlyEnergy(Energy.kilowattHours(500))
                .withOperatingCurrent(Current.amperes(40))
                .withOperatingVoltage(Voltage.volts(48));

        CircuitSizing sized = CircuitSizing.of(changed, WiringPolicy.standard());
        assertThat(sized).isEqualTo(CircuitSizing.of(anew, WiringPolicy.standard()));
        // a device for 40 A and not for the 10 A that the circuit had before
        assertThat(sized.device().orElseThrow().rating()).isGreaterThanOrEqualTo(Current.amperes(40));
        assertThat(sized.disconnect().leastVoltage()).isEqualTo(Voltage.volts(48));
    }

    @Test
    void noCircuitIsAbsurd() {
        outOfRange(() -> LOADS.withOperatingVoltage(Voltage.volts(1501)), "/operatingVoltage");
        refused(() -> LOADS.withPhases(Phases.THREE), "/phases", ProblemCode.CONFLICT);
        assertThat(OUTPUT.withPhases(Phases.THREE).conductors()).isEqualTo(4);
        outOfRange(() -> LOADS.withOperatingCurrent(Current.amperes(-5)), "/operatingCurrent");
        outOfRange(() -> LOADS.withLength(Length.metres(1e308)), "/length");
        outOfRange(() -> LOADS.withFaultCurrent(Current.kiloamperes(201)), "/faultCurrent");
        outOfRange(() -> LOADS.withYearlyEnergy(Energy.wattHours(-1)), "/yearlyEnergy");
        outOfRange(() -> LOADS.withAmbient(Temperature.celsius(86)), "/ambient");
        outOfRange(() -> LOADS.withRunningCurrent(Current.amperes(-1)), "/runningCurrent");
        inconsistent(() -> LOADS.withRunningCurrent(Current.amperes(11)), "/runningCurrent");
        inconsistent(() -> LOADS.withDesignCurrent(Current.amperes(9)), "/designCurrent");
        inconsistent(() -> LOADS.withHighestVoltage(Voltage.volts(20)), "/highestVoltage");
        outOfRange(() -> new ParallelStrings(2, Current.amperes(20), Current.amperes(-1)), "/backfeed");
    }

    @Test
    void noArrayIsAbsurd() {
        outOfRange(() -> RUNS.withModules(0), "/modules");
        outOfRange(() -> RUNS.withModuleSystemVoltage(Voltage.volts(1501)), "/moduleSystemVoltage");
        inconsistent(() -> RUNS.withModuleColdestVoltage(Voltage.volts(30)), "/moduleColdestVoltage");
        inconsistent(() -> RUNS.withModuleShortCircuitCurrent(Current.amperes(13)), "/moduleShortCircuitCurrent");
        // 1000 · 13.9 A = 13.9 kA
        inconsistent(() -> RUNS.withModules(1000), "/modules");
        refused(() -> RUNS.withLengths(List.of()), "/lengths", ProblemCode.MISSING);
        outOfRange(() -> RUNS.withLengths(Collections.nCopies(41, Length.metres(1))), "/lengths");
        refused(() -> RUNS.withLengths(Arrays.asList(Length.metres(1), null)), "/lengths/1", ProblemCode.MISSING);
        refused(() -> RUNS.withControllers(Collections.singletonList(null)), "/controllers/0", ProblemCode.MISSING);
    }

    @Test
    void noPriceIsAbsurd() {
        WiringPolicy standard = WiringPolicy.standard();
        assertThat(standard.withRuleSet(null)).isEqualTo(standard);
        inconsistent(() -> standard.withTerminalTemperature(Temperature.celsius(60)), "/terminalTemperature");
        outOfRange(() -> standard.withCopperPricePerKilogram(Money.of("-0.01", "EUR")), "/copperPricePerKilogram");
        outOfRange(
                () -> standard.withEnergyPricePerKilowattHour(Money.of("99999999999", "EUR")),
                "/energyPricePerKilowattHour");
    }
}
