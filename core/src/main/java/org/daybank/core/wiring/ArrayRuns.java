package org.daybank.core.wiring;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
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
        @Bounds(minimum = "1", maximum = "10000") int modules,

        @Bounds(minimum = "1 V", maximum = "400 V") Voltage moduleVoltage,

        @Bounds(minimum = "10 mA", maximum = "100 A") Current moduleCurrent,

        @Bounds(minimum = "10 mA", maximum = "100 A") Current moduleShortCircuitCurrent,

        @Bounds(minimum = "1 V", maximum = "600 V") Voltage moduleColdestVoltage,

        @Bounds(minimum = "50 V", maximum = "1500 V", sensible = "600–1500 V")
        @Assumed(value = "1000 V", source = "customary; the data sheet wins")
        Voltage moduleSystemVoltage,

        @Bounds(minimum = "0.1 m", maximum = "10000 m", minimumItems = 1, maximumItems = 40)
        List<Length> lengths,

        @Bounds(maximumItems = 1000) @Assumed(source = "none named")
        List<ControllerLimit> controllers,

        @Bounds(minimum = "0 Wh", maximum = "10000000 kWh") @Nullable
        Energy yearlyEnergy)
        implements ArrayRunsBuilder.With {
    /** Largest current of one circuit. */
    private static final Current MOST_CURRENT = Current.kiloamperes(10);

    /**
     * Validates the array.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public ArrayRuns {
        moduleSystemVoltage = Defaults.otherwise(moduleSystemVoltage, ArrayRuns.class, "moduleSystemVoltage");
        controllers = Objects.requireNonNullElse(controllers, List.of());
        Validation.of(
                        ArrayRuns.class,
                        modules,
                        moduleVoltage,
                        moduleCurrent,
                        moduleShortCircuitCurrent,
                        moduleColdestVoltage,
                        moduleSystemVoltage,
                        lengths,
                        controllers,
                        yearlyEnergy)
                .notBelow("moduleColdestVoltage", moduleColdestVoltage, "moduleVoltage", moduleVoltage)
                .notBelow("moduleShortCircuitCurrent", moduleShortCircuitCurrent, "moduleCurrent", moduleCurrent)
                .notAbove("moduleColdestVoltage", moduleColdestVoltage, "moduleSystemVoltage", moduleSystemVoltage)
                .that(
                        moduleShortCircuitCurrent == null
                                || moduleShortCircuitCurrent.times(modules).compareTo(MOST_CURRENT) <= 0,
                        "modules",
                        ProblemCode.INCONSISTENT,
                        () -> "modules must give at most %s of short-circuit current in parallel, but was %s of %s."
                                .formatted(MOST_CURRENT, modules, moduleShortCircuitCurrent))
                .done();
        controllers = List.copyOf(controllers);
        lengths = List.copyOf(lengths);
    }
}
