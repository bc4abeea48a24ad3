package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.GridDesign;
import org.daybank.core.design.GridSystem;
import org.daybank.core.design.SystemKind;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.Load;
import org.daybank.core.load.Supply;
import org.daybank.core.wiring.CircuitKind;
import org.daybank.core.wiring.CircuitSizing;
import org.daybank.core.wiring.DeviceKind;
import org.jspecify.annotations.Nullable;

/**
 * The one-line diagram: the parts from the array downwards, what branches off to the right of them, and on each line between
 * them the conductor and the device of the circuit.
 */
final class OneLine {
    private static final int WIDTH = 660;
    private static final int LEFT = 2;
    private static final int BOX = 250;
    private static final int TALL = 48;
    private static final int STEP = 118;
    private static final int SPINE = 40;
    private static final int BRANCH = 408;

    private final DesignOutcome design;
    private final List<Box> spine = new ArrayList<>();

    /**
     * A part.
     *
     * @param title what it is
     * @param detail which and how many
     * @param next circuit to the part below
     * @param branches what else hangs on it
     */
    private record Box(
            String title, String detail, @Nullable CircuitSizing next, List<Branch> branches) {}

    /** A part beside the others, and the circuit to it. */
    private record Branch(
            String title, String detail, @Nullable CircuitSizing circuit) {}

    private OneLine(DesignOutcome design) {
        this.design = design;
    }

    static Html of(DesignOutcome design) {
        OneLine diagram = new OneLine(design);
        design.batterySystem().ifPresent(diagram::onBank);
        if (design instanceof GridDesign grid) {
            diagram.feed(grid.system());
        }
        return diagram.spine.isEmpty() ? new Html() : diagram.draw();
    }

    private @Nullable CircuitSizing circuit(CircuitKind kind) {
        return design.wiring().stream()
                .flatMap(wiring -> wiring.circuits().stream())
                .filter(circuit -> circuit.kind() == kind)
                .findFirst()
                .orElse(null);
    }

    private void onBank(BatterySystem system) {
        ChargerFit charger = system.chargeController();
        InverterFit inverter = system.inverter().orElse(null);
        BankLayout bank = system.bankLayout();
        part(
                "Array, " + Words.of(charger.array().power()),
                "%s × %s, %s in series, %s parallel"
                        .formatted(
                                charger.array().modules(),
                                charger.array().product(),
                                charger.array().series(),
                                charger.array().strings()),
                circuit(CircuitKind.ARRAY_TO_CONTROLLER),
                List.of());
        part(
                "Charge controller",
                "%s × %s".formatted(charger.count(), charger.product()),
                circuit(CircuitKind.CONTROLLER_TO_BANK),
                List.of());
        part(
                "Battery bank, " + Words.of(bank.nominalVoltage()),
                "%s × %s, %s in series, %s parallel"
                        .formatted(bank.count(), bank.product(), bank.series(), bank.parallel()),
                inverter == null ? null : circuit(CircuitKind.BANK_TO_INVERTER),
                bankBranches());
        if (inverter != null) {
            part(
                    "Inverter",
                    "%s × %s".formatted(inverter.count(), inverter.product()),
                    circuit(CircuitKind.AC_OUTPUT),
                    sources());
            boolean backup = design.brief().kind() == SystemKind.GRID_BACKUP;
            part(backup ? "Essential loads panel" : "AC loads", service(), null, List.of());
        }
    }

    private List<Branch> bankBranches() {
        List<Branch> branches = new ArrayList<>();
        var alternator = design.brief().alternator();
        if (alternator != null) {
            branches.add(new Branch("Alternator", "through a DC converter, " + Words.of(alternator.current()), null));
        }
        if (design.brief().loads().stream().anyMatch(load -> load.supply() == Supply.DC)) {
            branches.add(new Branch("DC loads", loads(Supply.DC), circuit(CircuitKind.DC_LOADS)));
        }
        return branches;
    }

    private List<Branch> sources() {
        List<Branch> branches = new ArrayList<>();
        var shore = design.brief().shore();
        if (shore != null) {
            branches.add(new Branch("Shore power", "at most " + Words.of(shore.power()), null));
        }
        if (design.brief().kind() == SystemKind.GRID_BACKUP) {
            branches.add(new Branch("Grid", service(), circuit(CircuitKind.GRID)));
        }
        return branches;
    }

    private void feed(GridSystem feed) {
        part(
                "Array, " + Words.of(feed.arrayPower()),
                "%s × %s".formatted(feed.modules(), feed.module()),
                circuit(CircuitKind.ARRAY_TO_CONTROLLER),
                List.of());
        CircuitSizing toGrid = circuit(CircuitKind.GRID);
        feed.stringInverters()
                .ifPresent(fit ->
                        part("String inverter", "%s × %s".formatted(fit.count(), fit.product()), toGrid, List.of()));
        feed.microinverters()
                .ifPresent(fit ->
                        part("Microinverters", "%s × %s".formatted(fit.count(), fit.product()), toGrid, List.of()));
        part("Main panel", service(), null, List.of(new Branch("Loads", loads(Supply.AC), null)));
        part("Grid", "through the meter and the main switch", null, List.of());
    }

    private String loads(Supply supply) {
        String names = design.brief().loads().stream()
                .filter(load -> load.supply() == supply)
                .map(Load::name)
                .collect(Collectors.joining(", "));
        return names.length() <= 40 ? names : names.substring(0, 39) + "…";
    }

    private String service() {
        Service service = design.brief().service();
        return "%s, %s, %s phase"
                .formatted(Words.of(service.voltage()), Words.of(service.frequency()), Words.of(service.phases()));
    }

    private void part(String title, String detail, @Nullable CircuitSizing next, List<Branch> branches) {
        spine.add(new Box(title, detail, next, branches));
    }

    private Html draw() {
        String told = spine.stream().map(OneLine::told).collect(Collectors.joining("; then "));
        Svg svg = new Svg("one-line", WIDTH, (spine.size() - 1) * STEP + TALL + 4, "One-line diagram", told);
        for (int i = 0; i < spine.size(); i++) {
            int top = 2 + i * STEP;
            Box box = spine.get(i);
            box(svg, LEFT, top, box.title(), box.detail());
            for (int j = 0; j < box.branches().size(); j++) {
                branch(svg, box.branches().get(j), top, j);
            }
            if (i + 1 < spine.size()) {
                down(svg, box.next(), top + TALL);
            }
        }
        return new Html()
                .open("figure")
                .add(svg.done())
                .element(
                        "figcaption",
                        "A box on a line is a fuse, a cross a circuit-breaker. Each line stands for all conductors of"
                                + " its circuit; the wiring schedule has the rest.")
                .close();
    }

    private static String told(Box box) {
        String beside = box.branches().stream().map(Branch::title).collect(Collectors.joining(" and "));
        return box.title() + " (" + box.detail() + ")" + (beside.isEmpty() ? "" : ", beside it " + beside);
    }

    private static void box(Svg svg, int x, int top, String title, String detail) {
        svg.rectangle(x, top, BOX, TALL, "#fff");
        svg.strong(x + 10, top + 20, title).text(x + 10, top + 38, "start", detail);
    }

    private static void down(Svg svg, @Nullable CircuitSizing circuit, int top) {
        int bottom = top + STEP - TALL;
        svg.line(SPINE, top, SPINE, bottom);
        if (circuit != null) {
            device(svg, circuit, SPINE, top + (bottom - top) / 2.0, true);
            svg.text(SPINE + 18, top + 28, "start", WiringSchedule.conductor(circuit))
                    .text(SPINE + 18, top + 46, "start", WiringSchedule.device(circuit));
        }
    }

    private static void branch(Svg svg, Branch branch, int top, int place) {
        int boxTop = top + place * (TALL + 12);
        int y = boxTop + TALL / 2;
        int elbow = LEFT + BOX + 14;
        if (place == 0) {
            svg.line(LEFT + BOX, y, BRANCH, y);
        } else {
            svg.line(elbow, top + TALL / 2.0, elbow, y).line(elbow, y, BRANCH, y);
        }
        svg.rectangle(BRANCH, boxTop, BOX, TALL, "#fff");
        svg.strong(BRANCH + 10, boxTop + 20, branch.title()).text(BRANCH + 10, boxTop + 38, "start", branch.detail());
        CircuitSizing circuit = branch.circuit();
        if (circuit != null) {
            device(svg, circuit, BRANCH - 18, y, false);
            svg.text(elbow + 6, y - 6, "start", WiringSchedule.conductor(circuit))
                    .text(elbow + 6, y + 16, "start", WiringSchedule.device(circuit));
        }
    }

    private static void device(Svg svg, CircuitSizing circuit, double x, double y, boolean upright) {
        circuit.device().ifPresent(device -> {
            if (device.kind() == DeviceKind.BREAKER) {
                svg.line(x - 6, y - 6, x + 6, y + 6).line(x - 6, y + 6, x + 6, y - 6);
            } else if (upright) {
                svg.rectangle(x - 5, y - 12, 10, 24, "none");
            } else {
                svg.rectangle(x - 12, y - 5, 24, 10, "none");
            }
        });
    }
}
