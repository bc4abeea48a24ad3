package org.daybank.core.wiring;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.working.Check;

/** The rules that a circuit's conductors and device are held against, each with its margin. */
final class CircuitChecks {
    private CircuitChecks() {}

    /** Whether there is a standard device for a current. */
    static Check standardDevice(Optional<OvercurrentDevice> device, Current least) {
        return Check.that(WiringRule.STANDARD_DEVICE, device.isPresent(), value("least", least));
    }

    /** The rules for conductors, and those for the device where there is one. */
    static List<Check> of(
            Circuit circuit,
            ConductorNeed need,
            CircuitRule rule,
            ConductorRun run,
            Optional<OvercurrentDevice> device) {
        List<Check> checks = new ArrayList<>();
        checks.add(Check.atLeast(WiringRule.TERMINAL_AMPACITY, run.terminalAmpacity(), need.terminals()));
        checks.add(Check.atLeast(WiringRule.CORRECTED_AMPACITY, run.correctedAmpacity(), need.conditions()));
        checks.add(Check.atMost(
                WiringRule.VOLTAGE_DROP,
                run.drop(),
                circuit.operatingVoltage().times(need.dropLimit()),
                value("dropShare", run.dropShare()),
                value("dropLimit", need.dropLimit())));
        device.ifPresent(found -> {
            checks.add(Check.atMost(
                    WiringRule.DEVICE_PROTECTS_CONDUCTOR,
                    found.ampacityNeeded(),
                    run.ampacity(),
                    value("kind", found.kind()),
                    value("rating", found.rating())));
            rule.mostDevice()
                    .map(most -> circuit.resolved().designCurrent().times(most))
                    .ifPresent(most -> checks.add(Check.atMost(WiringRule.LARGEST_DEVICE, found.rating(), most)));
            if (circuit.strings() != null) {
                checks.add(Check.atMost(
                        WiringRule.MODULE_SERIES_FUSE,
                        found.rating(),
                        circuit.strings().seriesFuse()));
            }
        });
        return checks;
    }
}
