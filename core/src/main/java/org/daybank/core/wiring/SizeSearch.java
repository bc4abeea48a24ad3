package org.daybank.core.wiring;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;

/**
 * Looks for the fewest conductors in parallel, and then the thinnest, that keep every rule. Within one number in parallel a
 * larger size keeps every rule that a smaller one keeps, so that the largest of the sizes by rule is the answer.
 */
final class SizeSearch {
    /** NFPA 70 310.10(G): conductors may lie in parallel from 1/0 AWG upwards. */
    private static final CrossSection LEAST_IN_PARALLEL =
            ConductorSize.american("1/0").crossSection();

    private final Circuit circuit;
    private final WiringPolicy policy;
    private final Ratio ambientFactor;
    private final ConductorNeed need;
    private final List<Conductor> table;

    SizeSearch(Circuit circuit, WiringPolicy policy, Ratio ambientFactor, ConductorNeed need) {
        this.circuit = circuit;
        this.policy = policy;
        this.ambientFactor = ambientFactor;
        this.need = need;
        this.table = ConductorTable.of(policy, circuit.loadedConductors());
    }

    /** A size with what comes of it. */
    private record Option(Conductor conductor, ConductorRun run) {}

    /**
     * What was found.
     *
     * @param run the conductors; where none keep every rule, the largest allowed
     * @param sizes that each rule alone would take
     * @param governing rule that asks the most
     * @param keepsAll whether every rule is kept
     * @param byAmpacity area of each conductor that ampacity alone would take
     * @param larger next size up, where there is one
     */
    record Found(
            ConductorRun run,
            SizesByRule sizes,
            SizingRule governing,
            boolean keepsAll,
            CrossSection byAmpacity,
            Optional<ConductorRun> larger) {}

    Found find() {
        Found found = null;
        for (int parallel = 1; parallel <= policy.mostParallel(); parallel++) {
            List<Option> options = options(parallel);
            if (options.isEmpty()) {
                break;
            }
            found = judged(options, parallel);
            if (found.keepsAll()) {
                break;
            }
        }
        if (found == null) {
            throw new InvalidInput(List.of(new Problem(
                    "/policy/largestCrossSection",
                    ProblemCode.OUT_OF_RANGE,
                    "largestCrossSection must be at least %s, the thinnest conductor listed, but was %s."
                            .formatted(table.get(0).size().crossSection().rounded(3), policy.largestCrossSection()))));
        }
        return found;
    }

    private List<Option> options(int parallel) {
        Optional<Ratio> grouping = CorrectionFactors.grouping(policy, circuit.loadedConductors(), parallel);
        return grouping.stream()
                .flatMap(factor -> conductors(parallel)
                        .map(conductor -> new Option(
                                conductor,
                                ConductorRun.of(conductor, parallel, ambientFactor, factor, circuit, policy))))
                .toList();
    }

    private Stream<Conductor> conductors(int parallel) {
        return table.stream().filter(conductor -> {
            CrossSection area = conductor.size().crossSection();
            return area.compareTo(policy.largestCrossSection()) <= 0
                    && (parallel == 1 || policy.ruleSet() == RuleSet.IEC || area.compareTo(LEAST_IN_PARALLEL) >= 0);
        });
    }

    private Found judged(List<Option> options, int parallel) {
        Map<SizingRule, Optional<Option>> byRule = new EnumMap<>(SizingRule.class);
        for (SizingRule rule : SizingRule.values()) {
            byRule.put(
                    rule, options.stream().filter(option -> keeps(option, rule)).findFirst());
        }
        Option largest = options.get(options.size() - 1);
        Option chosen = thickest(byRule.values().stream(), largest);
        Option byAmpacity = thickest(
                byRule.entrySet().stream()
                        .filter(entry -> entry.getKey() != SizingRule.DROP)
                        .map(Map.Entry::getValue),
                largest);
        return new Found(
                chosen.run,
                new SizesByRule(
                        size(byRule, SizingRule.TERMINALS),
                        size(byRule, SizingRule.CONDITIONS),
                        need.device().flatMap(any -> size(byRule, SizingRule.DEVICE)),
                        size(byRule, SizingRule.DROP)),
                governing(byRule),
                keepsAll(chosen),
                byAmpacity.run.size().crossSection(),
                larger(options, chosen, parallel));
    }

    private boolean keepsAll(Option option) {
        return Arrays.stream(SizingRule.values()).allMatch(rule -> keeps(option, rule));
    }

    private boolean keeps(Option option, SizingRule rule) {
        ConductorRun run = option.run;
        return switch (rule) {
            case TERMINALS -> run.terminalAmpacity().compareTo(need.terminals()) >= 0;
            case CONDITIONS -> run.correctedAmpacity().compareTo(need.conditions()) >= 0;
            case DEVICE -> run.ampacity().compareTo(need.device().orElse(Current.ZERO)) >= 0;
            case DROP -> run.drop().compareTo(circuit.operatingVoltage().times(need.dropLimit())) <= 0;
        };
    }

    /** The rule that asks for the largest area, the first of them where several do; one that no size keeps asks the most. */
    private static SizingRule governing(Map<SizingRule, Optional<Option>> byRule) {
        SizingRule governing = SizingRule.TERMINALS;
        for (Map.Entry<SizingRule, Optional<Option>> entry : byRule.entrySet()) {
            if (area(entry.getValue()) > area(byRule.getOrDefault(governing, Optional.empty()))) {
                governing = entry.getKey();
            }
        }
        return governing;
    }

    private static Option thickest(Stream<Optional<Option>> options, Option largest) {
        return options.map(option -> option.orElse(largest))
                .max(Comparator.comparing(option -> option.run.crossSection()))
                .orElse(largest);
    }

    private Optional<ConductorRun> larger(List<Option> options, Option chosen, int parallel) {
        if (!keepsAll(chosen)) {
            return Optional.empty();
        }
        Stream<Option> further = parallel < policy.mostParallel() ? options(parallel + 1).stream() : Stream.empty();
        return Stream.concat(options.stream(), further)
                .filter(this::keepsAll)
                .map(Option::run)
                .filter(run -> run.crossSection().compareTo(chosen.run.crossSection()) > 0
                        && run.resistance().compareTo(chosen.run.resistance()) < 0)
                .findFirst();
    }

    private static Optional<ConductorSize> size(Map<SizingRule, Optional<Option>> byRule, SizingRule rule) {
        return byRule.getOrDefault(rule, Optional.empty()).map(found -> found.run.size());
    }

    private static double area(Optional<Option> option) {
        return option.map(found -> found.run.crossSection().squareMillimetres()).orElse(Double.POSITIVE_INFINITY);
    }

    List<Conductor> table() {
        return table;
    }
}
