package org.daybank.core.wiring;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

/** What can hurt someone or something in circuits; each hazard appears exactly with its cause. */
final class WiringHazards {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    private static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    private final List<Hazard> hazards = new ArrayList<>();

    private WiringHazards() {}

    static List<Hazard> of(WiringPlan plan) {
        WiringHazards all = new WiringHazards();
        plan.circuits().forEach(all::circuit);
        all.hazards.add(Hazard.of(HazardCode.PRELIMINARY_SIZES, "wiring"));
        return List.copyOf(all.hazards);
    }

    private void circuit(CircuitSizing sized) {
        Circuit circuit = sized.circuit();
        if (!sized.fits()) {
            hazards.add(Hazard.of(HazardCode.CIRCUIT_DOES_NOT_FIT, circuit.name()));
        }
        if (circuit.kind().directCurrent() && circuit.highestVoltage().compareTo(TOUCHABLE_DC) > 0) {
            hazards.add(
                    Hazard.of(HazardCode.DIRECT_VOLTAGE, circuit.name(), value("voltage", circuit.highestVoltage())));
        }
        if (circuit.kind().fedByBank()) {
            bankFault(circuit);
        }
        if (sized.fusing().map(StringFusing::needed).orElse(false)) {
            StringFusing fusing = sized.fusing().orElseThrow();
            hazards.add(Hazard.of(
                    HazardCode.STRING_FUSES,
                    circuit.name(),
                    value("reverseCurrent", fusing.reverseCurrent()),
                    value("seriesFuse", fusing.seriesFuse())));
        }
        if (sized.surgeProtection()) {
            hazards.add(Hazard.of(HazardCode.SURGE_PROTECTION, circuit.name(), value("length", circuit.length())));
        }
        if (sized.policy().metal() == Metal.ALUMINIUM) {
            hazards.add(Hazard.of(HazardCode.ALUMINIUM_TERMINALS, circuit.name()));
        }
    }

    private void bankFault(Circuit circuit) {
        Current fault = circuit.faultCurrent();
        hazards.add(
                fault == null
                        ? Hazard.of(HazardCode.FAULT_CURRENT_UNKNOWN, circuit.name())
                        : Hazard.of(
                                        HazardCode.BANK_SHORT_CIRCUIT,
                                        circuit.name(),
                                        value("faultCurrent", fault),
                                        value("highestVoltage", circuit.highestVoltage()))
                                .variant("circuit"));
    }
}
