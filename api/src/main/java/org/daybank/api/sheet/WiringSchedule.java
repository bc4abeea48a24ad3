package org.daybank.api.sheet;

import java.util.List;
import java.util.Optional;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.SystemKind;
import org.daybank.core.wiring.CircuitSizing;
import org.daybank.core.wiring.StringVoltages;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.working.Check;

/** Every circuit with its conductors, its device and its switch. */
final class WiringSchedule {
    private WiringSchedule() {}

    static Html of(DesignOutcome design) {
        Html html = new Html();
        WiringPlan wiring = design.wiring().orElse(null);
        if (wiring == null) {
            return html;
        }
        html.table(
                "Circuits",
                List.of(
                        "Circuit",
                        "Length, one way",
                        "Conductors",
                        "Current",
                        "Drop",
                        "Device",
                        "It must break",
                        "Disconnect",
                        "Earthing"),
                wiring.circuits().stream().map(WiringSchedule::row).toList());
        html.element(
                "p",
                "Current: in ordinary operation, and what conductor and device must stand. The device must break the"
                        + " fault current at the voltage stated.");
        if (otherInputs(design.brief())) {
            html.element(
                    "p",
                    "The inputs from shore, alternator or grid are not in this schedule: they need a conductor, a device"
                            + " and a disconnect as well.");
        }
        wiring.circuits().stream()
                .filter(circuit -> !circuit.fits())
                .forEach(circuit -> html.element("p", circuit.name() + " does not keep every rule:")
                        .list(circuit.checks().stream()
                                .filter(check -> !check.passed())
                                .map(Check::message)
                                .map(String::valueOf)
                                .toList()));
        html.element(
                "p",
                "All conductors together hold %s of metal worth about %s%s."
                        .formatted(
                                Words.of(wiring.metalMass()),
                                wiring.metalCost(),
                                wiring.yearlyLoss()
                                        .map(loss -> " and lose %s a year".formatted(Words.of(loss)))
                                        .orElse("")));
        design.<Optional<StringVoltages>>fold(
                        standAlone -> Optional.of(standAlone.alternatives().stringVoltages()),
                        backup -> Optional.of(backup.alternatives().stringVoltages()),
                        grid -> Optional.empty(),
                        none -> Optional.empty())
                .ifPresent(voltages -> html.table(
                        "The same array at other string voltages",
                        List.of(
                                "In series",
                                "Strings",
                                "Voltage",
                                "Current",
                                "Conductors",
                                "Metal",
                                "Controllers that stand it"),
                        voltages.rows().stream().map(WiringSchedule::row).toList()));
        return html;
    }

    /** Whether something besides the array feeds the system on the bank; a design does not derive its circuit. */
    private static boolean otherInputs(DesignBrief brief) {
        return brief.shore() != null || brief.alternator() != null || brief.kind() == SystemKind.GRID_BACKUP;
    }

    private static List<String> row(StringVoltages.Row voltage) {
        // the first run is as long as the brief says
        StringVoltages.Run run = voltage.runs().get(0);
        String conductors =
                "%s, %s".formatted(parallel(run.parallel(), run.size().size()), Words.of(run.length()));
        return List.of(
                String.valueOf(voltage.series()),
                String.valueOf(voltage.strings()),
                Words.of(voltage.operatingVoltage()),
                Words.of(voltage.operatingCurrent()),
                run.fits() ? conductors : "none fits",
                run.metalCost().toString(),
                voltage.controllers().isEmpty() ? "none" : String.join(", ", voltage.controllers()));
    }

    private static List<String> row(CircuitSizing circuit) {
        String kind = circuit.disconnect().directCurrent() ? "DC" : "AC";
        return List.of(
                circuit.name(),
                Words.of(circuit.circuit().length()),
                size(circuit),
                "%s; %s"
                        .formatted(
                                Words.of(circuit.circuit().operatingCurrent()),
                                Words.of(circuit.circuit().resolved().designCurrent())),
                "%s, %s"
                        .formatted(
                                Words.of(circuit.conductors().drop()),
                                Words.percent(circuit.conductors().dropShare())),
                device(circuit),
                circuit.device()
                        .map(device -> "%s %s%s"
                                .formatted(
                                        Words.of(device.leastVoltage()),
                                        device.directCurrent() ? "DC" : "AC",
                                        device.leastInterruptingRating()
                                                .map(fault -> ", " + Words.of(fault))
                                                .orElse("")))
                        .orElse("–"),
                "%s, %s %s"
                        .formatted(
                                Words.of(circuit.disconnect().leastCurrent()),
                                Words.of(circuit.disconnect().leastVoltage()),
                                kind),
                circuit.earthing().map(earthing -> named(earthing.size())).orElse("–"));
    }

    /** Conductors and length of a circuit. */
    static String conductor(CircuitSizing circuit) {
        return "%s, %s".formatted(size(circuit), Words.of(circuit.circuit().length()));
    }

    /** Device of a circuit. */
    static String device(CircuitSizing circuit) {
        return circuit.device()
                .map(device -> "%s %s".formatted(Words.of(device.rating()), Words.of(device.kind())))
                .orElse("no fuse needed");
    }

    private static String size(CircuitSizing circuit) {
        return parallel(
                circuit.conductors().parallel(), circuit.conductors().size().size());
    }

    private static String parallel(int parallel, String size) {
        return (parallel == 1 ? "" : parallel + " × ") + named(size);
    }

    private static String named(String size) {
        return Character.isDigit(size.charAt(size.length() - 1)) ? size + " AWG" : size;
    }
}
