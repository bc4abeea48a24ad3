package org.daybank.core.grid;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/**
 * Whether a panel's busbar stands what main and inverter can feed into it together.
 *
 * @param sourceCurrent of the inverter, to reckon with
 * @param together main and inverter
 * @param limit what the busbar takes when they feed it from opposite ends
 * @param anyPosition whether the busbar's plain rating covers both, so that the inverter may sit anywhere on it
 * @param check the rule
 */
public record BusbarCheck(Current sourceCurrent, Current together, Current limit, boolean anyPosition, Check check) {
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
                Check.atMost(
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
    public List<Hazard> hazards() {
        if (anyPosition) {
            return List.of();
        }
        return List.of(new Hazard(
                "busbar",
                check.passed() ? Severity.WARNING : Severity.DANGER,
                "panel",
                check.message() + " An overloaded busbar burns without any device acting.",
                (check.passed()
                                ? "Put the inverter's breaker at the end away from the main and label it so that nobody moves it. "
                                : "Take a smaller main, a panel with a larger busbar, a smaller inverter, or connect ahead of the main. ")
                        + Hazard.LOCAL_CODE));
    }
}
