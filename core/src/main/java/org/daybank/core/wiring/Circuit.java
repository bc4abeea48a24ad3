package org.daybank.core.wiring;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
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
        Voltage operatingVoltage,
        Current operatingCurrent,

        @Assumed(source = "equal to operatingCurrent; array circuits must state the short-circuit current")
        Current designCurrent,

        Length length,

        @Assumed(value = "single", source = "small systems have one phase")
        Phases phases,

        @Assumed(source = "equal to operatingVoltage; array circuits must state the coldest open-circuit voltage")
        Voltage highestVoltage,

        @Nullable Current faultCurrent,
        @Nullable Energy yearlyEnergy,

        @Assumed(source = "equal to operatingCurrent: the loss is put too high rather than too low")
        Current runningCurrent,

        @Nullable Temperature ambient,
        @Nullable ParallelStrings strings)
        implements CircuitBuilder.With {
    private static final Current LEAST = Current.milliamperes(1);
    private static final Current MOST = Current.kiloamperes(10);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right
     */
    public Circuit {
        phases = Defaults.otherwise(phases, Circuit.class, "phases");
        boolean modules = kind != null && kind.fedByModules();
        Validation checks = new Validation()
                .required("name", name)
                .required("kind", kind)
                .required("operatingVoltage", operatingVoltage)
                .within("operatingVoltage", operatingVoltage, Voltage.volts(1), Voltage.volts(1500))
                .required("operatingCurrent", operatingCurrent)
                .within("operatingCurrent", operatingCurrent, LEAST, MOST)
                .within("designCurrent", designCurrent, LEAST, MOST)
                .that(
                        designCurrent != null || !modules,
                        "designCurrent",
                        ProblemCode.MISSING,
                        "designCurrent is missing: give the short-circuit current of the strings in this circuit")
                .required("length", length)
                .within("length", length, Length.metres(0.1), Length.metres(10_000))
                .that(
                        highestVoltage != null || !modules,
                        "highestVoltage",
                        ProblemCode.MISSING,
                        "highestVoltage is missing: give the open-circuit voltage of a string on the coldest morning")
                .within("highestVoltage", highestVoltage, Voltage.volts(1), Voltage.volts(1500))
                .within("faultCurrent", faultCurrent, LEAST, Current.kiloamperes(200))
                .within("yearlyEnergy", yearlyEnergy, Energy.ZERO, Energy.kilowattHours(10_000_000))
                .within("ambient", ambient, Temperature.celsius(-60), Temperature.celsius(85))
                .that(
                        phases == Phases.SINGLE || kind == null || !kind.directCurrent(),
                        "phases",
                        ProblemCode.CONFLICT,
                        "phases must be left out or single in a circuit of direct current")
                .that(
                        strings != null || kind != CircuitKind.STRING,
                        "strings",
                        ProblemCode.MISSING,
                        "strings is missing: say how many strings are in parallel and which fuse the module allows")
                .that(
                        strings == null || kind == null || kind == CircuitKind.STRING,
                        "strings",
                        ProblemCode.CONFLICT,
                        "strings belongs to a circuit of kind string only");
        if (operatingCurrent != null && designCurrent != null) {
            checks.atLeast("designCurrent", designCurrent, operatingCurrent);
        }
        if (operatingVoltage != null && highestVoltage != null) {
            checks.atLeast("highestVoltage", highestVoltage, operatingVoltage);
        }
        if (operatingCurrent != null) {
            checks.within("runningCurrent", runningCurrent, Current.ZERO, operatingCurrent);
        }
        checks.done();
        designCurrent = designCurrent == null ? operatingCurrent : designCurrent;
        highestVoltage = highestVoltage == null ? operatingVoltage : highestVoltage;
        runningCurrent = runningCurrent == null ? operatingCurrent : runningCurrent;
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
