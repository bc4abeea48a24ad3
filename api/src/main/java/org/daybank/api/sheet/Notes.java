package org.daybank.api.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.schema.Assumption;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;
import org.daybank.core.working.Working;

/** What stands behind a design and around it: hazards, working, assumptions. */
final class Notes {
    private Notes() {}

    /** The gravest first. */
    static Html hazards(List<Hazard> hazards) {
        Html html = new Html();
        for (Severity severity : List.of(Severity.DANGER, Severity.WARNING, Severity.CAUTION, Severity.NOTICE)) {
            List<Hazard> these =
                    hazards.stream().filter(one -> one.severity() == severity).toList();
            if (!these.isEmpty()) {
                html.element("h3", heading(severity)).open("dl", "class", "hazards");
                these.forEach(one -> html.element("dt", "%s: %s".formatted(one.subject(), one.text()))
                        .element("dd", one.action().toString()));
                html.close();
            }
        }
        return html.isEmpty() ? html : html.element("p", Hazard.LOCAL_CODE, "class", "strong");
    }

    private static String heading(Severity severity) {
        return switch (severity) {
            case DANGER -> "Danger: will cause death or serious injury if not avoided";
            case WARNING -> "Warning: can cause death or serious injury if not avoided";
            case CAUTION -> "Caution: can cause minor or moderate injury if not avoided";
            case NOTICE -> "Notice: concerns property and performance";
        };
    }

    /** Each step as one would write it on paper. */
    static Html working(Working working) {
        Html html = new Html();
        return working.steps().isEmpty()
                ? html
                : html.table(
                        "Steps",
                        List.of("What", "Formula", "With the numbers", "Result", "After"),
                        working.steps().stream()
                                .map(step -> List.of(
                                        step.name(), step.formula(), step.substituted(), step.result(), step.source()))
                                .toList());
    }

    /** What was assumed because nobody said otherwise, then what was given where an assumption would have stood. */
    static Html assumptions(List<Assumption> assumptions) {
        Html html = new Html();
        Stream<Assumption> ordered = Stream.concat(
                assumptions.stream().filter(Assumption::assumed),
                assumptions.stream().filter(one -> !one.assumed()));
        return assumptions.isEmpty()
                ? html
                : html.table(
                        "Values that may be argued with",
                        List.of("Where in the brief", "Value", "Taken or given", "Why"),
                        ordered.map(one -> List.of(
                                        one.path().substring(1).replace("/", " › "),
                                        Words.value(one.value()),
                                        one.assumed() ? "taken" : "given",
                                        one.source()))
                                .toList());
    }
}
