package org.daybank.core.grid;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Severity;

/**
 * Whether a panel's busbar stands what main and inverter can feed into it together.
 *
 * @param sourceCurrent of the inverter, to reckon with
 * @param together main and inverter
 * @param limit what the busbar takes when they feed it from opposite ends
 * @param anyPosition whether the busbar's plain rating covers both, so that the inverter may sit anywhere on it
 * @param finding the rule
 */
public record BusbarCheck(
        Current sourceCurrent, Current together, Current limit, boolean anyPosition, Finding finding) {
    /** Holds a busbar against what feeds it. */
    public static BusbarCheck of(Busbar busbar, BusbarPolicy policy) {
        Current source = busbar.inverterCurrent().times(policy.sourceFactor());
        Current together = busbar.main().plus(source);
        Current limit = busbar.rating().times(policy.busbarFactor());
        return new BusbarCheck(
                source,
                together,
                limit,
                together.compareTo(busbar.rating()) <= 0,
                Finding.atMost(
                        "busbar",
                        together,
                        limit,
                        "The main of %s and the inverter's %s can feed %s into a busbar of %s; fed from opposite ends it is planned for up to %s (NFPA 70 705.12).",
                        busbar.main(),
                        source,
                        together,
                        busbar.rating(),
                        limit));
    }

    /** What to warn of: nothing where the inverter may sit anywhere. */
    public List<Caution> cautions() {
        if (anyPosition) {
            return List.of();
        }
        return List.of(new Caution(
                "busbar",
                finding.met() ? Severity.WARNING : Severity.DANGER,
                "panel",
                finding.sentence() + " An overloaded busbar burns without any device acting.",
                (finding.met()
                                ? "Put the inverter's breaker at the end away from the main and label it so that nobody moves it. "
                                : "Take a smaller main, a panel with a larger busbar, a smaller inverter, or connect ahead of the main. ")
                        + Caution.LOCAL_CODE));
    }
}
