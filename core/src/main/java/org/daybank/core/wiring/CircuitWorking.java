package org.daybank.core.wiring;

import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Working;

/** The steps behind a circuit's sizing, each named after the circuit. */
final class CircuitWorking {
    private final CircuitSizing sized;
    private final Circuit circuit;
    private final WiringPolicy policy;
    private final ConductorRun run;
    private final Working.Builder steps = Working.builder();

    private CircuitWorking(CircuitSizing sized) {
        this.sized = sized;
        this.circuit = sized.circuit();
        this.policy = sized.policy();
        this.run = sized.conductors();
    }

    static Working of(CircuitSizing sized) {
        CircuitWorking working = new CircuitWorking(sized);
        working.currents();
        working.ampacity();
        working.drop();
        working.metal();
        return working.steps.build();
    }

    private void currents() {
        CircuitRule rule = CircuitRule.of(policy.ruleSet(), circuit.kind());
        sized.fusing()
                .ifPresent(fusing -> step(
                        "reverse current",
                        "I_r = (N_p − 1) · 1.25 · I_sc + backfeed",
                        "IEC 62548-1",
                        fusing.reverseCurrent(),
                        "(%s − 1) · 1.25 · %s + %s",
                        fusing.strings(),
                        circuit.resolved().designCurrent(),
                        Objects.requireNonNull(circuit.strings()).backfeed()));
        asked("ampacity at the terminals", "I₁", rule.terminals(), sized.need().terminals(), rule);
        asked(
                "ampacity under conditions of use",
                "I₂",
                rule.conditions(),
                sized.need().conditions(),
                rule);
        sized.device().ifPresent(device -> {
            step(
                    "overcurrent device",
                    "I_n: next standard rating from factor · I",
                    rule.source(),
                    device.rating(),
                    "%s · %s",
                    rule.device(),
                    circuit.resolved().designCurrent());
            step(
                    "ampacity that the device protects",
                    "I = I_n · max(1, acts at / 1.45)",
                    "IEC 60364-4-43 433.1; NFPA 70 240.4",
                    device.ampacityNeeded(),
                    "%s · max(1, %s / 1.45)",
                    device.rating(),
                    device.actsAt());
        });
    }

    /** Without a fuse a string's conductor stands what the others feed back as well. */
    private void asked(String name, String symbol, Ratio factor, Current result, CircuitRule rule) {
        Optional<StringFusing> unfused = sized.fusing().filter(fusing -> !fusing.needed());
        if (unfused.isPresent()) {
            step(
                    name,
                    symbol + " = max(factor · I, I_r)",
                    rule.source(),
                    result,
                    "max(%s · %s, %s)",
                    factor,
                    circuit.resolved().designCurrent(),
                    unfused.get().reverseCurrent());
        } else {
            step(
                    name,
                    symbol + " = factor · I",
                    rule.source(),
                    result,
                    "%s · %s",
                    factor,
                    circuit.resolved().designCurrent());
        }
    }

    private void ampacity() {
        step(
                "corrected ampacity",
                "I_z = n · I_t · f_ambient · f_grouping",
                policy.ruleSet() == RuleSet.IEC ? "IEC 60364-5-52" : "NFPA 70 310.15",
                run.correctedAmpacity(),
                "%s × %s · %s · %s",
                run.parallel(),
                run.size().size(),
                sized.ambientFactor(),
                run.groupingFactor());
        step(
                "conductor temperature",
                "T = T_a + (T_insulation − T_a) · (I / I_z)²",
                "heat goes with the square of the current",
                run.temperature(),
                "%s + (%s − %s) · (%s / %s)²",
                sized.ambient(),
                policy.insulationTemperature(),
                sized.ambient(),
                circuit.operatingCurrent(),
                run.correctedAmpacity());
    }

    private void drop() {
        String multiple = circuit.loadedConductors() == 3 ? "√3" : "2";
        step(
                "resistance one way",
                "R = R₂₀ · (1 + α · (T − 20 °C)) · L / n",
                policy.ruleSet() == RuleSet.IEC ? "IEC 60228" : "ASTM B258, ASTM B8",
                run.resistance(),
                "R₂₀(%s) · (1 + %s · (%s − 20 °C)) · %s / %s",
                run.size().size(),
                policy.metal().coefficient(),
                run.temperature(),
                circuit.length(),
                run.parallel());
        step(
                "drop",
                "U_d = " + multiple + " · I · R",
                "Ohm's law",
                run.drop(),
                multiple + " · %s · %s",
                circuit.operatingCurrent(),
                run.resistance());
        run.yearlyLoss()
                .ifPresent(loss -> step(
                        "yearly loss",
                        "E_l = E · " + multiple + " · I_running · R / U",
                        "Ohm's law; I_running = ΣI²t / ΣIt",
                        loss,
                        "%s · " + multiple + " · %s · %s / %s",
                        Objects.requireNonNull(circuit.yearlyEnergy()),
                        circuit.resolved().runningCurrent(),
                        run.resistance(),
                        circuit.operatingVoltage()));
    }

    private void metal() {
        step(
                "metal",
                "m = conductors · A · L · density",
                "IEC 60028, IEC 60889",
                run.metalMass(),
                "%s · %s · %s · %s kg/m³",
                circuit.conductors(),
                run.crossSection(),
                circuit.length(),
                policy.metal().density());
        sized.nextSizeUp()
                .ifPresent(larger -> larger.payBack()
                        .ifPresent(payBack -> step(
                                "pay-back of the next size up",
                                "t = extra cost / (yearly saving · energy price)",
                                "simple pay-back",
                                payBack,
                                "%s / (%s · %s/kWh)",
                                larger.extraCost(),
                                larger.yearlySaving().orElseThrow(),
                                policy.energyPricePerKilowattHour())));
    }

    private void step(
            String name, String formula, String source, Object result, String substitution, Object... values) {
        steps.step(circuit.name() + ": " + name, formula, source, result, substitution, values);
    }
}
