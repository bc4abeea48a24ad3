package org.daybank.core.bank;

import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.working.Working;

/**
 * The rated capacity that a demand calls for, by the logic of IEEE 1013: the largest of what autonomy, the ordinary day and
 * the surge ask, divided by what the cold leaves, plus the design margin.
 *
 * @param demand what was asked
 * @param policy what was assumed
 * @param trueNominal the bank's true nominal voltage
 * @param autonomyCharge charge drawn over the autonomy
 * @param byDepth autonomy charge over the depth of discharge
 * @param byDailyDepth mean daily charge over the daily depth of discharge
 * @param bySurge surge current over the surge rate
 * @param temperatureFactor share of the capacity that the cold leaves
 * @param requiredCapacity rated capacity needed, at the rate of {@code dischargeTime}
 * @param governing which of the three asks the most
 * @param wornDepth depth of discharge that the autonomy means once the bank is worn
 * @param dischargeTime required capacity over the running current: the hour rate at which the capacity must be rated; zero
 *     when no current runs
 */
public record BankCapacity(
        @NotRepeated BankDemand demand,
        @NotRepeated BankPolicy policy,
        Voltage trueNominal,
        Charge autonomyCharge,
        Charge byDepth,
        Charge byDailyDepth,
        Charge bySurge,
        Ratio temperatureFactor,
        Charge requiredCapacity,
        Governing governing,
        Ratio wornDepth,
        TimeSpan dischargeTime) {
    private static final String SOURCE = "IEEE 1013";

    /** What decides the capacity. */
    public enum Governing {
        /** The autonomy at the depth of discharge. */
        DEPTH,
        /** The ordinary day at the daily depth of discharge. */
        DAILY_DEPTH,
        /** The surge at the surge rate. */
        SURGE
    }

    /** Finds the capacity that a demand calls for. */
    public static BankCapacity needed(BankDemand demand, BankPolicy policy) {
        BatteryFamily family = demand.chemistry().family();
        Voltage trueNominal = demand.trueNominal();
        BankDemand.Resolved resolved = demand.resolved();
        Charge dailyCharge = demand.dailyEnergy().dividedBy(trueNominal);
        Charge autonomyCharge = resolved.worstDailyEnergy()
                .dividedBy(trueNominal)
                .times(policy.autonomy().days());
        Ratio depth = usableDepth(policy, family);
        Charge byDepth = autonomyCharge.dividedBy(depth.fraction());
        Charge byDailyDepth =
                dailyCharge.dividedBy(policy.dailyDepthOfDischarge().of(family).fraction());
        Charge bySurge = demand.surgeCurrent()
                .times(TimeSpan.hours(1))
                .dividedBy(policy.surgeRate().of(family).fraction());
        Governing governing = governing(byDepth, byDailyDepth, bySurge);
        Charge largest = switch (governing) {
            case DEPTH -> byDepth;
            case DAILY_DEPTH -> byDailyDepth;
            case SURGE -> bySurge;
        };
        Charge required = largest.dividedBy(resolved.temperatureFactor().fraction())
                .times(policy.designMargin().onePlus());
        boolean still = resolved.runningCurrent().amperes() == 0;
        return new BankCapacity(
                demand,
                policy,
                trueNominal,
                autonomyCharge,
                byDepth,
                byDailyDepth,
                bySurge,
                resolved.temperatureFactor(),
                required,
                governing,
                Ratio.of(depth.fraction() / policy.endOfLifeFraction().fraction()),
                still ? TimeSpan.ZERO : required.dividedBy(resolved.runningCurrent()));
    }

    /** The depth that autonomy may reach: when a worn bank must still carry it, no more than what is left by then. */
    private static Ratio usableDepth(BankPolicy policy, BatteryFamily family) {
        Ratio depth = policy.depthOfDischarge().of(family);
        return policy.wornBankCarriesAutonomy() && depth.compareTo(policy.endOfLifeFraction()) > 0
                ? policy.endOfLifeFraction()
                : depth;
    }

    private static Governing governing(Charge byDepth, Charge byDailyDepth, Charge bySurge) {
        if (byDepth.compareTo(byDailyDepth) >= 0 && byDepth.compareTo(bySurge) >= 0) {
            return Governing.DEPTH;
        }
        return byDailyDepth.compareTo(bySurge) >= 0 ? Governing.DAILY_DEPTH : Governing.SURGE;
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        BatteryFamily family = demand.chemistry().family();
        return Working.builder()
                .step(
                        "autonomy charge",
                        "Q = E · d / U",
                        SOURCE,
                        autonomyCharge,
                        "%s · %s / %s",
                        demand.resolved().worstDailyEnergy(),
                        policy.autonomy().days(),
                        trueNominal)
                .step(
                        "capacity by depth",
                        "C₁ = Q / depth of discharge",
                        SOURCE,
                        byDepth,
                        "%s / %s",
                        autonomyCharge,
                        usableDepth(policy, family))
                .step(
                        "capacity by daily depth",
                        "C₂ = E_day / U / daily depth",
                        SOURCE,
                        byDailyDepth,
                        "%s / %s / %s",
                        demand.dailyEnergy(),
                        trueNominal,
                        policy.dailyDepthOfDischarge().of(family))
                .step(
                        "capacity by surge",
                        "C₃ = I_surge · 1 h / surge rate",
                        SOURCE,
                        bySurge,
                        "%s · 1 h / %s",
                        demand.surgeCurrent(),
                        policy.surgeRate().of(family))
                .step(
                        "required capacity",
                        "C = max(C₁, C₂, C₃) / temperature factor · (1 + margin)",
                        SOURCE,
                        requiredCapacity,
                        "max(%s, %s, %s) / %s · (1 + %s)",
                        byDepth,
                        byDailyDepth,
                        bySurge,
                        temperatureFactor,
                        policy.designMargin())
                .build();
    }
}
