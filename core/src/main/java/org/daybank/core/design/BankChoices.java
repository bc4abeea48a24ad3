package org.daybank.core.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemandBuilder;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.BankRule;
import org.daybank.core.bank.Battery;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rule;

/**
 * The batteries of one chemistry for one bus, in the order of what an ampere hour costs at the least: at the slowest discharge,
 * in the cold. A battery is judged only while the capacity asked for may cost less, in it, than a limit.
 */
final class BankChoices {
    /** Rules that a string more may meet; a battery that breaks another breaks it however much is asked. */
    private static final Set<Rule> OUTGROWN =
            Set.of(BankRule.HEATER_POWER, BankRule.DISCHARGE_CURRENT, BankRule.SURGE_CURRENT, BankRule.SURGE_SAG);

    /** A bound is this much lower than reckoned, for rounding. */
    private static final double CLOSE = 1e-7;

    /** In minor units; far from where sums of such prices leave a long. */
    private static final double DEARER_THAN_ANY = 2e18;

    private final BankPolicy policy;
    private final Judge judge;
    private final List<Choice> choices;
    private final double mostChargeAmperes;

    /** How a battery is held against a need, in that many strings at least. */
    interface Judge {
        /** Every rule. */
        BankFit fit(BankNeed need, Battery battery, int leastStrings);
    }

    /** A battery, what a string of it costs and holds at the most. */
    private record Choice(Battery battery, long stringPrice, double stringAmpereHours) {
        double priceOfAmpereHour() {
            return stringPrice / stringAmpereHours;
        }

        /** What so much costs in whole strings, at the least. */
        long atLeast(double ampereHours) {
            double strings = Math.max(1, Math.ceil(ampereHours / stringAmpereHours * (1 - CLOSE) - CLOSE));
            return (long) Math.min(DEARER_THAN_ANY, strings * stringPrice);
        }
    }

    /**
     * Sorts batteries.
     *
     * @param least what every system asks at the least; batteries that it rules out are left aside for good
     */
    BankChoices(BankNeed least, List<Battery> batteries, BankPolicy policy, Judge judge) {
        this.policy = policy;
        this.judge = judge;
        List<Choice> found = new ArrayList<>();
        double amperes = 0;
        for (Battery battery : batteries) {
            BankFit fit = judge.fit(least, battery, 1);
            BankLayout layout = fit.layout();
            if (layout != null && fit.checks().stream().allMatch(BankChoices::metOrOutgrown)) {
                double factor = battery.temperatureFactor(fit.temperature())
                        .map(Ratio::fraction)
                        .orElse(1.0);
                found.add(new Choice(
                        battery,
                        battery.price().minorUnits() * layout.series(),
                        battery.capacity().slowest().ampereHours() * factor));
                amperes = Math.max(
                        amperes, battery.resolved().maximumChargeCurrent().amperes() * battery.mostInParallel());
            }
        }
        found.sort(Comparator.comparingDouble(Choice::priceOfAmpereHour));
        this.choices = found;
        this.mostChargeAmperes = amperes;
    }

    private static boolean metOrOutgrown(Check check) {
        return check.passed() || OUTGROWN.contains(check.rule());
    }

    /** Most that any bank of these may be charged with. */
    Current mostChargeCurrent() {
        return Current.amperes(mostChargeAmperes);
    }

    /** What a bank costs at the least, in minor units; nothing when there is none. */
    Optional<Long> least(BankNeed need) {
        double ampereHours = ampereHours(need);
        long least = Long.MAX_VALUE;
        for (Choice choice : choices) {
            if (choice.priceOfAmpereHour() * ampereHours * (1 - CLOSE) >= least) {
                break;
            }
            least = Math.min(least, choice.atLeast(ampereHours));
        }
        return choices.isEmpty() ? Optional.empty() : Optional.of(least);
    }

    /** The banks that keep every rule and cost less than a limit in minor units, cheapest first. */
    List<BankFit> under(BankNeed need, long limit) {
        double ampereHours = ampereHours(need);
        List<BankFit> found = new ArrayList<>();
        for (Choice choice : choices) {
            if (choice.priceOfAmpereHour() * ampereHours * (1 - CLOSE) >= limit) {
                break;
            }
            if (choice.atLeast(ampereHours) < limit) {
                BankFit fit = judge.fit(need, choice.battery(), 1);
                if (fit.fits() && price(fit) < limit) {
                    found.add(fit);
                }
            }
        }
        found.sort(Comparator.comparingLong(BankChoices::price)
                .thenComparing(fit -> fit.battery().model()));
        return found;
    }

    /** The same battery in one string more. */
    BankFit larger(BankNeed need, BankFit fit) {
        return judge.fit(
                need, fit.battery(), Objects.requireNonNull(fit.layout()).parallel() + 1);
    }

    static long price(BankFit fit) {
        return Objects.requireNonNull(fit.layout()).price().minorUnits();
    }

    /** The capacity asked for where the cold takes none, at the slowest discharge. */
    private double ampereHours(BankNeed need) {
        if (choices.isEmpty()) {
            return 0;
        }
        Battery any = choices.get(0).battery();
        Voltage trueNominal = any.chemistry().trueNominal(need.nominalVoltage());
        return BankCapacity.needed(
                        BankDemandBuilder.builder()
                                .dailyEnergy(need.dailyEnergy())
                                .worstDailyEnergy(need.worstDailyEnergy())
                                .nominalVoltage(need.nominalVoltage())
                                .chemistry(any.chemistry())
                                .lowest(need.lowest())
                                .temperatureFactor(Ratio.ONE)
                                .runningCurrent(Power.ZERO.dividedBy(trueNominal))
                                .surgeCurrent(need.resolved().surgePower().dividedBy(trueNominal))
                                .build(),
                        policy)
                .requiredCapacity()
                .ampereHours();
    }
}
