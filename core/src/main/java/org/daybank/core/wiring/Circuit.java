package org.daybank.core.wiring;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * One circuit that needs a cable.
 *
 * @param name what the planner calls it
 * @param kind which circuit of a system it is
 * @param operatingVoltage in ordinary operation, between the two conductors; between lines with three phases
 * @param operatingCurrent largest in ordinary operation: what the drop is held at
 * @param designCurrent what conductor and device must stand: the short-circuit current of the strings for what modules feed,
 *     without any factor; the rated current of what feeds or draws it elsewhere (for an inverter its rated power over
 *     efficiency and lowest bank voltage)
 * @param length of the run, one way
 * @param phases of alternating current; direct current has one
 * @param highestVoltage that its device must break: the coldest morning's open-circuit voltage of an array, the highest
 *     charging voltage of a bank
 * @param faultCurrent largest current into a short circuit, which its device must break; absent when not known
 * @param yearlyEnergy that flows through it; absent when not known, and then no yearly loss is told
 * @param runningCurrent mean of the current weighted by charge ({@code ΣI²t / ΣIt}): the current at which its energy
 *     flows; left out, the operating current, which puts the loss too high
 * @param ambient air around the cable; absent, that of the policy
 * @param strings those that a string lies beside; absent for other circuits
 */
@RecordBuilder
public record Circuit(
        String name,
        CircuitKind kind,
        @Bounds(minimum = "1 V", maximum = "1500 V") Voltage operatingVoltage,

        @Bounds(minimum = "1 mA", maximum = "10 kA") Current operatingCurrent,

        @Bounds(minimum = "1 mA", maximum = "10 kA")
        @Assumed(source = "equal to operatingCurrent; array circuits must state the short-circuit current")
        @Nullable
        Current designCurrent,

        @Bounds(minimum = "0.1 m", maximum = "10000 m", sensible = "1–200 m")
        Length length,

        @Assumed(value = "single", source = "small systems have one phase")
        Phases phases,

        @Bounds(minimum = "1 V", maximum = "1500 V")
        @Assumed(source = "equal to operatingVoltage; array circuits must state the coldest open-circuit voltage")
        @Nullable
        Voltage highestVoltage,

        @Bounds(minimum = "1 mA", maximum = "200 kA") @Nullable
        Current faultCurrent,

        @Bounds(minimum = "0 Wh", maximum = "10000000 kWh") @Nullable
        Energy yearlyEnergy,

        @Bounds(minimum = "0 A", maximum = "10 kA")
        @Assumed(source = "equal to operatingCurrent: the loss is put too high rather than too low")
        @Nullable
        Current runningCurrent,

        @Bounds(minimum = "-60 Cel", maximum = "85 Cel") @Nullable
        Temperature ambient,

        @Nullable ParallelStrings strings)
        implements CircuitBuilder.With, Resolvable<Circuit.Resolved> {
    /**
     * The components whose defaults follow from others.
     *
     * @param designCurrent what conductor and device must carry
     * @param highestVoltage that its device must break
     * @param runningCurrent mean of the current weighted by charge
     */
    public record Resolved(Current designCurrent, Voltage highestVoltage, Current runningCurrent) {}

    /**
     * Validates the circuit.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public Circuit {
        phases = Defaults.otherwise(phases, Circuit.class, "phases");
        boolean modules = kind != null && kind.fedByModules();
        Validation.of(
                        Circuit.class,
                        name,
                        kind,
                        operatingVoltage,
                        operatingCurrent,
                        designCurrent,
                        length,
                        phases,
                        highestVoltage,
                        faultCurrent,
                        yearlyEnergy,
                        runningCurrent,
                        ambient,
                        strings)
                .that(
                        designCurrent != null || !modules,
                        "designCurrent",
                        ProblemCode.MISSING,
                        "designCurrent must be the short-circuit current of the strings in this circuit, but was left out.")
                .that(
                        highestVoltage != null || !modules,
                        "highestVoltage",
                        ProblemCode.MISSING,
                        "highestVoltage must be the open-circuit voltage of a string on the coldest morning, but was left out.")
                .that(
                        phases == Phases.SINGLE || kind == null || !kind.directCurrent(),
                        "phases",
                        ProblemCode.CONFLICT,
                        "phases must be left out or single in a circuit of direct current.")
                .that(
                        strings != null || kind != CircuitKind.STRING,
                        "strings",
                        ProblemCode.MISSING,
                        "strings must state how many strings are in parallel and the series fuse of the module, but was left out.")
                .that(
                        strings == null || kind == null || kind == CircuitKind.STRING,
                        "strings",
                        ProblemCode.CONFLICT,
                        "strings must be left out unless the kind of the circuit is string.")
                .notBelow("designCurrent", designCurrent, "operatingCurrent", operatingCurrent)
                .notBelow("highestVoltage", highestVoltage, "operatingVoltage", operatingVoltage)
                .notAbove("runningCurrent", runningCurrent, "operatingCurrent", operatingCurrent)
                .done();
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                designCurrent == null ? operatingCurrent : designCurrent,
                highestVoltage == null ? operatingVoltage : highestVoltage,
                runningCurrent == null ? operatingCurrent : runningCurrent);
    }

    /** Conductors that carry the current: two, or three with three phases. */
    int loadedConductors() {
        return phases == Phases.THREE ? 3 : 2;
    }

    /** Conductors to buy: the loaded ones, and the neutral where lines share it. */
    int conductors() {
        return phases == Phases.SINGLE ? 2 : loadedConductors() + 1;
    }

    /** How often the resistance of one conductor counts in the drop: there and back, or √3 between lines. */
    double dropMultiple() {
        return phases == Phases.THREE ? Math.sqrt(3) : 2;
    }
}
