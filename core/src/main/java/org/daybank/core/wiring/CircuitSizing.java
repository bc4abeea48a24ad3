package org.daybank.core.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.working.Finding;
import org.daybank.core.working.ToldElsewhere;
import org.daybank.core.working.Working;

/**
 * Conductors, overcurrent device, disconnect and earthing conductor of one circuit.
 *
 * @param circuit what was asked
 * @param policy what was assumed
 * @param name of the circuit
 * @param kind of the circuit
 * @param fits whether conductors and device keep every rule; where not, the conductors are the largest allowed
 * @param ambient air around the cable
 * @param ambientFactor share of the ampacity that the air leaves
 * @param need what each rule asks
 * @param sizes that each rule alone would take
 * @param governing rule that asks the most
 * @param conductors the choice, and what comes of it
 * @param device what protects the circuit; absent where a string needs no fuse, or where none is large enough
 * @param disconnect the switch
 * @param earthing equipment earthing conductor; absent where the table ends before
 * @param surgeProtection whether surge protection is due: outdoors, beyond the critical length
 * @param fusing whether a string needs a fuse; absent for other circuits
 * @param nextSizeUp what a larger conductor would save; absent where there is none
 * @param findings every rule with its margin
 */
public record CircuitSizing(
        @ToldElsewhere Circuit circuit,
        @ToldElsewhere WiringPolicy policy,
        String name,
        CircuitKind kind,
        boolean fits,
        Temperature ambient,
        Ratio ambientFactor,
        ConductorNeed need,
        SizesByRule sizes,
        SizingRule governing,
        ConductorRun conductors,
        Optional<OvercurrentDevice> device,
        Disconnect disconnect,
        Optional<ConductorSize> earthing,
        boolean surgeProtection,
        Optional<StringFusing> fusing,
        Optional<LargerConductor> nextSizeUp,
        List<Finding> findings) {
    /** IEC 60364-7-712, dwellings, the shortest: metres of critical length, times flashes to earth for each km² and year. */
    private static final double CRITICAL_LENGTH = 115;

    /** Keeps a copy of the findings. */
    public CircuitSizing {
        findings = List.copyOf(findings);
    }

    /**
     * Sizes one circuit. The device never exceeds the ampacity of the conductor: that NFPA 70 240.4(B) lets it be the next
     * standard size above is not made use of.
     *
     * @throws org.daybank.core.working.InvalidInput when the tables hold nothing for the policy: air too hot for the
     *     insulation, or three loaded conductors of aluminium with IEC
     */
    public static CircuitSizing of(Circuit circuit, WiringPolicy policy) {
        CircuitRule rule = CircuitRule.of(policy.ruleSet(), circuit.kind());
        Ratio ambientFactor = CorrectionFactors.ambient(policy, circuit);
        Optional<StringFusing> fusing =
                circuit.strings() == null ? Optional.empty() : Optional.of(StringFusing.of(circuit));
        boolean wantsDevice = fusing.map(StringFusing::needed).orElse(true);
        Current leastRating = circuit.designCurrent().times(rule.device());
        Optional<OvercurrentDevice> device =
                wantsDevice ? DeviceRatings.next(policy.ruleSet(), circuit, leastRating) : Optional.empty();
        // without a fuse the conductor must stand what the other strings feed back
        Current reverse = wantsDevice
                ? Current.ZERO
                : fusing.map(StringFusing::reverseCurrent).orElse(Current.ZERO);
        ConductorNeed need = new ConductorNeed(
                larger(circuit.designCurrent().times(rule.terminals()), reverse),
                larger(circuit.designCurrent().times(rule.conditions()), reverse),
                device.map(OvercurrentDevice::ampacityNeeded),
                circuit.kind().dropLimit(policy));
        SizeSearch search = new SizeSearch(circuit, policy, ambientFactor, need);
        SizeSearch.Found found = search.find();
        Current protection = device.map(OvercurrentDevice::rating).orElse(larger(leastRating, reverse));
        List<Finding> findings = findings(
                circuit, need, rule, found.run(), device, wantsDevice ? Optional.of(leastRating) : Optional.empty());
        return new CircuitSizing(
                circuit,
                policy,
                circuit.name(),
                circuit.kind(),
                found.keepsAll() && findings.stream().allMatch(Finding::met),
                air(circuit, policy),
                ambientFactor,
                need,
                found.sizes(),
                found.governing(),
                found.run(),
                device,
                new Disconnect(
                        protection, circuit.highestVoltage(), circuit.kind().directCurrent()),
                EarthingConductor.of(circuit, policy, search.table(), protection, found.byAmpacity(), found.run()),
                circuit.kind().fedByModules() && circuit.length().compareTo(criticalLength(policy)) >= 0,
                fusing,
                found.larger().map(run -> LargerConductor.of(found.run(), run, policy)),
                findings);
    }

    /** Air around a circuit's cable. */
    static Temperature air(Circuit circuit, WiringPolicy policy) {
        return circuit.ambient() == null ? policy.ambient() : circuit.ambient();
    }

    /** Run outdoors from which surge protection is due; without lightning, longer than any. */
    private static Length criticalLength(WiringPolicy policy) {
        return policy.groundFlashDensity() == 0
                ? Length.metres(Double.MAX_VALUE)
                : Length.metres(CRITICAL_LENGTH / policy.groundFlashDensity());
    }

    private static Current larger(Current one, Current other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private static List<Finding> findings(
            Circuit circuit,
            ConductorNeed need,
            CircuitRule rule,
            ConductorRun run,
            Optional<OvercurrentDevice> device,
            Optional<Current> leastRating) {
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.atLeast(
                "terminalAmpacity",
                run.terminalAmpacity(),
                need.terminals(),
                "At its terminals the conductor may carry %s; the rule asks %s.",
                run.terminalAmpacity(),
                need.terminals()));
        findings.add(Finding.atLeast(
                "correctedAmpacity",
                run.correctedAmpacity(),
                need.conditions(),
                "In this air and among its neighbours the conductor may carry %s; the rule asks %s.",
                run.correctedAmpacity(),
                need.conditions()));
        findings.add(Finding.atMost(
                "voltageDrop",
                run.drop(),
                circuit.operatingVoltage().times(need.dropLimit()),
                "The drop is %s, %s of the operating voltage; the limit is %s.",
                run.drop(),
                run.dropShare(),
                need.dropLimit()));
        device.ifPresent(found -> {
            findings.add(Finding.atMost(
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
                    .ifPresent(most -> findings.add(Finding.atMost(
                            "largestDevice",
                            found.rating(),
                            most,
                            "The fuse is rated %s; to act at all on these modules it may be rated %s at most.",
                            found.rating(),
                            most)));
            if (circuit.strings() != null) {
                findings.add(Finding.atMost(
                        "moduleSeriesFuse",
                        found.rating(),
                        circuit.strings().seriesFuse(),
                        "The string's fuse is rated %s; its modules allow %s.",
                        found.rating(),
                        circuit.strings().seriesFuse()));
            }
        });
        leastRating.ifPresent(least -> findings.add(Finding.that(
                "standardDevice",
                device.isPresent(),
                device.isPresent()
                        ? "A standard device carries %s."
                        : "No standard device carries %s: divide the circuit.",
                least)));
        return findings;
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        CircuitRule rule = CircuitRule.of(policy.ruleSet(), kind);
        Working.Builder steps = Working.builder();
        steps.step(
                name + ": ampacity at the terminals",
                "I₁ = factor · I",
                rule.source(),
                need.terminals(),
                "%s · %s",
                rule.terminals(),
                circuit.designCurrent());
        steps.step(
                name + ": ampacity under conditions of use",
                "I₂ = factor · I",
                rule.source(),
                need.conditions(),
                "%s · %s",
                rule.conditions(),
                circuit.designCurrent());
        device.ifPresent(found -> steps.step(
                name + ": overcurrent device",
                "next standard rating from factor · I",
                rule.source(),
                found.rating(),
                "%s · %s",
                rule.device(),
                circuit.designCurrent()));
        fusing.ifPresent(found -> steps.step(
                name + ": reverse current",
                "I_r = (N_p − 1) · 1.25 · I_sc + backfeed",
                "IEC 62548-1",
                found.reverseCurrent(),
                "(%s − 1) · 1.25 · %s + %s",
                found.strings(),
                circuit.designCurrent(),
                Objects.requireNonNull(circuit.strings()).backfeed()));
        return steps.step(
                        name + ": corrected ampacity",
                        "I_z = n · I_t · f_ambient · f_grouping",
                        policy.ruleSet() == RuleSet.IEC ? "IEC 60364-5-52" : "NFPA 70 310.15",
                        conductors.correctedAmpacity(),
                        "%s × %s · %s · %s",
                        conductors.parallel(),
                        conductors.size().size(),
                        ambientFactor,
                        conductors.groupingFactor())
                .step(
                        name + ": conductor temperature",
                        "T = T_a + (T_insulation − T_a) · (I / I_z)²",
                        "heat balance",
                        conductors.temperature(),
                        "%s + (%s − %s) · (%s / %s)²",
                        ambient,
                        policy.insulationTemperature(),
                        ambient,
                        circuit.operatingCurrent(),
                        conductors.correctedAmpacity())
                .step(
                        name + ": resistance one way",
                        "R = R₂₀ · (1 + α · (T − 20 °C)) · L / n",
                        policy.ruleSet() == RuleSet.IEC ? "IEC 60228" : "ASTM B258, ASTM B8",
                        conductors.resistance(),
                        "R₂₀(%s) · (1 + %s · (%s − 20 °C)) · %s / %s",
                        conductors.size().size(),
                        policy.metal().coefficient(),
                        conductors.temperature(),
                        circuit.length(),
                        conductors.parallel())
                .step(
                        name + ": drop",
                        circuit.loadedConductors() == 3 ? "U = √3 · I · R" : "U = 2 · I · R",
                        "Ohm's law",
                        conductors.drop(),
                        circuit.loadedConductors() == 3 ? "√3 · %s · %s" : "2 · %s · %s",
                        circuit.operatingCurrent(),
                        conductors.resistance())
                .step(
                        name + ": metal",
                        "m = conductors · A · L · density",
                        "IEC 60028, IEC 60889",
                        conductors.metalMass(),
                        "%s · %s · %s · %s",
                        circuit.conductors(),
                        conductors.crossSection(),
                        circuit.length(),
                        policy.metal())
                .build();
    }
}
