package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Check;
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
 * @param nextSizeUp what a larger conductor would save; absent where there is none, or nothing fits
 * @param checks every rule with its margin
 */
public record CircuitSizing(
        @NotRepeated Circuit circuit,
        @NotRepeated WiringPolicy policy,
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
        List<Check> checks) {
    /** IEC 60364-7-712, dwellings, the shortest: metres of critical length, times flashes to earth for each km² and year. */
    private static final double CRITICAL_LENGTH = 115;

    /** Keeps a copy of the checks. */
    public CircuitSizing {
        checks = List.copyOf(checks);
    }

    /**
     * Sizes one circuit. The device never exceeds the ampacity of the conductor: that NFPA 70 240.4(B) lets it be the next
     * standard size above is not made use of.
     *
     * @throws org.daybank.core.schema.InvalidInput when the tables hold nothing for the policy: air too hot for the
     *     insulation, or three loaded conductors of aluminium with IEC
     */
    public static CircuitSizing of(Circuit circuit, WiringPolicy policy) {
        CircuitRule rule = CircuitRule.of(policy.ruleSet(), circuit.kind());
        Ratio ambientFactor = CorrectionFactors.ambient(policy, circuit);
        Optional<StringFusing> fusing =
                circuit.strings() == null ? Optional.empty() : Optional.of(StringFusing.of(circuit));
        boolean wantsDevice = fusing.map(StringFusing::needed).orElse(true);
        Current leastRating = circuit.resolved().designCurrent().times(rule.device());
        Optional<OvercurrentDevice> device =
                wantsDevice ? DeviceRatings.next(policy.ruleSet(), circuit, leastRating) : Optional.empty();
        // without a fuse the conductor must stand what the other strings feed back
        Current reverse = wantsDevice
                ? Current.ZERO
                : fusing.map(StringFusing::reverseCurrent).orElse(Current.ZERO);
        ConductorNeed need = new ConductorNeed(
                larger(circuit.resolved().designCurrent().times(rule.terminals()), reverse),
                larger(circuit.resolved().designCurrent().times(rule.conditions()), reverse),
                device.map(OvercurrentDevice::ampacityNeeded),
                circuit.kind().dropLimit(policy));
        SizeSearch search = new SizeSearch(circuit, policy, ambientFactor, need);
        SizeSearch.Found found = search.find();
        Current protection = device.map(OvercurrentDevice::rating).orElse(larger(leastRating, reverse));
        List<Check> checks = CircuitChecks.of(circuit, need, rule, found.run(), device);
        if (wantsDevice) {
            checks.add(CircuitChecks.standardDevice(device, leastRating));
        }
        return new CircuitSizing(
                circuit,
                policy,
                circuit.name(),
                circuit.kind(),
                found.keepsAll() && checks.stream().allMatch(Check::passed),
                air(circuit, policy),
                ambientFactor,
                need,
                found.sizes(),
                found.governing(),
                found.run(),
                device,
                new Disconnect(
                        protection,
                        circuit.resolved().highestVoltage(),
                        circuit.kind().directCurrent()),
                EarthingConductor.of(circuit, policy, search.table(), protection, found.byAmpacity(), found.run()),
                circuit.kind().fedByModules() && circuit.length().compareTo(criticalLength(policy)) >= 0,
                fusing,
                found.larger().map(run -> LargerConductor.of(found.run(), run, policy)),
                checks);
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

    /** The steps, as one would write them on paper. */
    public Working working() {
        return CircuitWorking.of(this);
    }
}
