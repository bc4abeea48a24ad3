package org.daybank.core.wiring;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * An array whose strings may be made longer or shorter, and how far away it may stand.
 *
 * @param modules in all
 * @param moduleVoltage of one in ordinary operation, at the maximum power point
 * @param moduleCurrent of one in ordinary operation
 * @param moduleShortCircuitCurrent of one, light on the back included
 * @param moduleColdestVoltage open-circuit voltage of one on the coldest morning
 * @param moduleSystemVoltage that the modules stand
 * @param lengths of the run to the controller, one way
 * @param controllers whose voltage limit is of interest
 * @param yearlyEnergy of the array; absent when not known
 */
@RecordBuilder
public record ArrayRuns(
        int modules,
        Voltage moduleVoltage,
        Current moduleCurrent,
        Current moduleShortCircuitCurrent,
        Voltage moduleColdestVoltage,

        @Assumed(value = "1000 V", source = "customary; the data sheet wins")
        Voltage moduleSystemVoltage,

        List<Length> lengths,
        @Assumed(source = "none named") List<ControllerLimit> controllers,
        @Nullable Energy yearlyEnergy)
        implements ArrayRunsBuilder.With {
    private static final int MOST_LENGTHS = 40;
    /** What one circuit may be asked to carry. */
    private static final Current MOST_CURRENT = Current.kiloamperes(10);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right
     */
    public ArrayRuns {
        moduleSystemVoltage = Defaults.otherwise(moduleSystemVoltage, ArrayRuns.class, "moduleSystemVoltage");
        controllers = List.copyOf(Objects.requireNonNullElse(controllers, List.of()));
        Validation checks = new Validation()
                .within("modules", modules, 1, 10_000)
                .required("moduleVoltage", moduleVoltage)
                .within("moduleVoltage", moduleVoltage, Voltage.volts(1), Voltage.volts(400))
                .required("moduleCurrent", moduleCurrent)
                .within("moduleCurrent", moduleCurrent, Current.milliamperes(10), Current.amperes(100))
                .required("moduleShortCircuitCurrent", moduleShortCircuitCurrent)
                .within("moduleShortCircuitCurrent", moduleShortCircuitCurrent, Current.ZERO, Current.amperes(100))
                .required("moduleColdestVoltage", moduleColdestVoltage)
                .within("moduleColdestVoltage", moduleColdestVoltage, Voltage.ZERO, Voltage.volts(600))
                .within("moduleSystemVoltage", moduleSystemVoltage, Voltage.volts(50), Voltage.volts(1500))
                .notEmpty("lengths", lengths)
                .eachWithin("lengths", lengths, Length.metres(0.1), Length.metres(10_000))
                .that(
                        lengths == null || lengths.size() <= MOST_LENGTHS,
                        "lengths",
                        ProblemCode.OUT_OF_RANGE,
                        "lengths must be at most " + MOST_LENGTHS)
                .within("yearlyEnergy", yearlyEnergy, Energy.ZERO, Energy.kilowattHours(10_000_000));
        if (moduleVoltage != null) {
            checks.atLeast("moduleColdestVoltage", moduleColdestVoltage, moduleVoltage);
        }
        if (moduleCurrent != null) {
            checks.atLeast("moduleShortCircuitCurrent", moduleShortCircuitCurrent, moduleCurrent);
        }
        if (moduleSystemVoltage != null) {
            checks.atMost("moduleColdestVoltage", moduleColdestVoltage, moduleSystemVoltage);
        }
        checks.that(
                        moduleShortCircuitCurrent == null
                                || moduleShortCircuitCurrent.times(modules).compareTo(MOST_CURRENT) <= 0,
                        "modules",
                        ProblemCode.OUT_OF_RANGE,
                        "modules side by side must not give more than %s of short-circuit current but are %s of %s"
                                .formatted(MOST_CURRENT, modules, moduleShortCircuitCurrent))
                .done();
        lengths = List.copyOf(lengths);
    }
}
