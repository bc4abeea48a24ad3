package org.daybank.core.grid;

import static org.daybank.core.working.Message.value;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

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
                        GridRule.BUSBAR,
                        together,
                        limit,
                        value("main", busbar.main()),
                        value("source", source),
                        value("rating", busbar.rating())));
    }

    /** What to warn of: nothing where the inverter may sit anywhere. */
    public List<Hazard> hazards() {
        if (anyPosition) {
            return List.of();
        }
        return List.of(Hazard.of(
                check.passed() ? HazardCode.BUSBAR_POSITION : HazardCode.BUSBAR_OVERLOAD,
                "panel",
                value("message", check.message())));
    }
}
