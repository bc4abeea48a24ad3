package org.daybank.api.sheet;

import java.util.List;
import org.daybank.core.design.NominalVoltage;
import org.daybank.core.design.SystemDesign;
import org.daybank.core.working.Check;

/** What stood in the way of a complete design, and what else should be known. */
final class Missing {
    private Missing() {}

    /** For each voltage the rules that the nearest product breaks. */
    static Html of(SystemDesign design) {
        Html html = new Html();
        for (NominalVoltage.PassedOver voltage : design.missing()) {
            html.element("h3", "At " + Words.of(voltage.voltage())).list(Rejected.sentences(voltage.reasons()));
        }
        return html;
    }

    /** Rules that do not rule a design out, those not kept first. */
    static Html checks(List<Check> checks) {
        Html html = new Html();
        if (checks.isEmpty()) {
            return html;
        }
        html.open("ul");
        checks.stream().filter(check -> !check.passed()).forEach(check -> item(html, "Not kept: ", check));
        checks.stream().filter(Check::passed).forEach(check -> item(html, "", check));
        return html.close();
    }

    private static void item(Html html, String mark, Check check) {
        html.open("li");
        if (!mark.isEmpty()) {
            html.element("strong", mark);
        }
        html.text(check.message()).close();
    }
}
