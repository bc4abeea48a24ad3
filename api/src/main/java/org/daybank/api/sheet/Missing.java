package org.daybank.api.sheet;

import java.util.List;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.NoDesign;
import org.daybank.core.design.RejectedVoltage;
import org.daybank.core.working.Check;

/** The reasons why there is no design, and the checks of one. */
final class Missing {
    private Missing() {}

    /** The rules that the nearest product fails, for each voltage where there are several. */
    static Html of(DesignOutcome design) {
        Html html = new Html();
        if (design instanceof NoDesign none) {
            List<RejectedVoltage> voltages = none.rejected().rejectedVoltages();
            if (voltages.isEmpty()) {
                html.list(Rejected.sentences(none.failedChecks()));
            }
            for (RejectedVoltage voltage : voltages) {
                html.element("h3", "At " + Words.of(voltage.voltage()))
                        .list(Rejected.sentences(voltage.failedChecks()));
            }
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
