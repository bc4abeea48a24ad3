package org.daybank.core.wiring;

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
        return Check.that(
                "standardDevice",
                device.isPresent(),
                device.isPresent()
                        ? "A standard device carries %s."
                        : "No standard device carries %s: divide the circuit.",
                least);
    }

    /** The rules for conductors, and those for the device where there is one. */
    static List<Check> of(
            Circuit circuit,
            ConductorNeed need,
            CircuitRule rule,
            ConductorRun run,
            Optional<OvercurrentDevice> device) {
        List<Check> checks = new ArrayList<>();
        checks.add(Check.atLeast(
                "terminalAmpacity",
                run.terminalAmpacity(),
                need.terminals(),
                "At its terminals the conductor may carry %s; the rule asks %s.",
                run.terminalAmpacity(),
                need.terminals()));
        checks.add(Check.atLeast(
                "correctedAmpacity",
                run.correctedAmpacity(),
                need.conditions(),
                "In this air and among its neighbours the conductor may carry %s; the rule asks %s.",
                run.correctedAmpacity(),
                need.conditions()));
        checks.add(Check.atMost(
                "voltageDrop",
                run.drop(),
                circuit.operatingVoltage().times(need.dropLimit()),
                "The drop is %s, %s of the operating voltage; the limit is %s.",
                run.drop(),
                run.dropShare(),
                need.dropLimit()));
        device.ifPresent(found -> {
            checks.add(Check.atMost(
                    "deviceProtectsConductor",
                    found.ampacityNeeded(),
                    run.ampacity(),
                    "A %s rated %s protects conductors from %s upwards; to this one a device may give %s.",
                    found.kind(),
                    found.rating(),
                    found.ampacityNeeded(),
                    run.ampacity()));
            rule.mostDevice()
                    .map(most -> circuit.designCurrent().times(most))
                    .ifPresent(most -> checks.add(Check.atMost(
                            "largestDevice",
                            found.rating(),
                            most,
                            "The fuse is rated %s; to act at all on these modules it may be rated %s at most.",
                            found.rating(),
                            most)));
            if (circuit.strings() != null) {
                checks.add(Check.atMost(
                        "moduleSeriesFuse",
                        found.rating(),
                        circuit.strings().seriesFuse(),
                        "The string's fuse is rated %s; its modules allow %s.",
                        found.rating(),
                        circuit.strings().seriesFuse()));
            }
        });
        return checks;
    }
}
