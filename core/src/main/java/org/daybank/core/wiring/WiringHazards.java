package org.daybank.core.wiring;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/** What can hurt someone or something in circuits; each hazard appears exactly with its cause. */
final class WiringHazards {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    private static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    private final List<Hazard> hazards = new ArrayList<>();

    private WiringHazards() {}

    static List<Hazard> of(WiringPlan plan) {
        WiringHazards all = new WiringHazards();
        plan.circuits().forEach(all::circuit);
        all.add(
                "preliminarySizes",
                Severity.WARNING,
                "wiring",
                "Have every conductor, device and disconnect checked against the code that holds at the site, the makers' instructions and how the cables really lie.",
                "Conductors and overcurrent devices are sized to plan and to price with.");
        return List.copyOf(all.hazards);
    }

    private void circuit(CircuitSizing sized) {
        Circuit circuit = sized.circuit();
        if (!sized.fits()) {
            add(
                    "circuitDoesNotFit",
                    Severity.DANGER,
                    circuit.name(),
                    "Do not build it like this: shorten or divide the circuit, raise its voltage, or let thicker conductors be used.",
                    "No conductor and device allowed here keep every rule.");
        }
        if (circuit.kind().directCurrent() && circuit.highestVoltage().compareTo(TOUCHABLE_DC) > 0) {
            add(
                    "directVoltage",
                    Severity.DANGER,
                    circuit.name(),
                    "Use devices and disconnects rated for this direct voltage; never open a connector or draw a fuse under load.",
                    "It reaches %s of direct current: touching it can kill, and an arc does not go out by itself.",
                    circuit.highestVoltage());
        }
        if (circuit.kind().fedByBank()) {
            bankFault(circuit);
        }
        if (sized.fusing().map(StringFusing::needed).orElse(false)) {
            StringFusing fusing = sized.fusing().orElseThrow();
            add(
                    "stringFuses",
                    Severity.DANGER,
                    circuit.name(),
                    "Give each string a fuse made for photovoltaic direct current, in every pole that is not earthed.",
                    "The other strings can feed %s backwards into a faulty one; its modules stand %s, and beyond that can catch fire.",
                    fusing.reverseCurrent(),
                    fusing.seriesFuse());
        }
        if (sized.surgeProtection()) {
            add(
                    "surgeProtection",
                    Severity.WARNING,
                    circuit.name(),
                    "Fit surge protective devices at both ends, and lay the two conductors close together.",
                    "Over %s outdoors lightning nearby induces voltages that destroy controllers and inverters.",
                    circuit.length());
        }
        if (sized.policy().metal() == Metal.ALUMINIUM) {
            add(
                    "aluminiumTerminals",
                    Severity.WARNING,
                    circuit.name(),
                    "Use lugs and terminals made for aluminium, and tighten them to the maker's torque.",
                    "Aluminium creeps and oxidises under terminals made for copper, which then heat up.");
        }
    }

    private void bankFault(Circuit circuit) {
        String action =
                "Put the device right at the bank, and choose one whose interrupting rating at this direct voltage is higher.";
        if (circuit.faultCurrent() == null) {
            add(
                    "faultCurrentUnknown",
                    Severity.DANGER,
                    circuit.name(),
                    action,
                    "What the bank drives into a short circuit is not stated; it is commonly thousands of amperes.");
        } else {
            add(
                    "bankShortCircuit",
                    Severity.DANGER,
                    circuit.name(),
                    action,
                    "Short-circuited, it carries up to %s at %s until its device breaks.",
                    circuit.faultCurrent(),
                    circuit.highestVoltage());
        }
    }

    private void add(String code, Severity severity, String subject, String action, String text, Quantity... figures) {
        Object[] shown = new Object[figures.length];
        for (int i = 0; i < figures.length; i++) {
            shown[i] = figures[i].rounded(3);
        }
        hazards.add(new Hazard(code, severity, subject, text.formatted(shown), action + " " + Hazard.LOCAL_CODE));
    }
}
