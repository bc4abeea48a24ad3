package org.daybank.core.design.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
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
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rule;

/**
 * The batteries of one chemistry for one system nominal voltage, in the order of their minimum price per ampere hour (at the
 * slowest discharge, at the lowest temperature). A battery is evaluated only while the required capacity may cost less than a
 * limit.
 */
final class BatteryCandidates {
    /** Rules that another string may meet; a battery that fails any other rule fails it whatever the requirement. */
    private static final Set<Rule> MET_BY_MORE_STRINGS =
            Set.of(BankRule.HEATER_POWER, BankRule.DISCHARGE_CURRENT, BankRule.SURGE_CURRENT, BankRule.SURGE_SAG);

    /** Bounds are lowered by this share, for rounding. */
    private static final double TOLERANCE = 1e-7;

    /** Price in minor units above that of any bank, and far from the overflow of sums of prices. */
    private static final double PRICE_CEILING = 2e18;

    private final BankPolicy policy;
    private final Evaluator evaluator;
    private final List<Option> options;
    private final double maximumChargeAmperes;

    /** Evaluates a battery against a requirement. */
    interface Evaluator {
        /** Every rule for a bank of at least a number of strings. */
        BankFit fit(BankNeed need, Battery battery, int minimumStrings);
    }

    /** A battery with the price and the maximum capacity of one string. */
    private record Option(Battery battery, long stringPrice, double stringAmpereHours) {
        double pricePerAmpereHour() {
            return stringPrice / stringAmpereHours;
        }

        /** Minimum price of a capacity in whole strings. */
        long minimumPrice(double ampereHours) {
            double strings = Math.max(1, Math.ceil(ampereHours / stringAmpereHours * (1 - TOLERANCE) - TOLERANCE));
            return (long) Math.min(PRICE_CEILING, strings * stringPrice);
        }
    }

    /**
     * Evaluates batteries against the minimum requirement and sorts those that may fit.
     *
     * @param minimum what every system requires of its bank; a battery that it rules out is never evaluated again
     */
    BatteryCandidates(BankNeed minimum, List<Battery> batteries, BankPolicy policy, Evaluator evaluator) {
        this.policy = policy;
        this.evaluator = evaluator;
        List<Option> found = new ArrayList<>();
        double amperes = 0;
        for (Battery battery : batteries) {
            BankFit fit = evaluator.fit(minimum, battery, 1);
            BankLayout layout = fit.layout();
            if (layout != null && fit.checks().stream().allMatch(BatteryCandidates::mayPass)) {
                double factor = battery.temperatureFactor(fit.temperature())
                        .map(Ratio::fraction)
                        .orElse(1.0);
                found.add(new Option(
                        battery,
                        battery.price().minorUnits() * layout.series(),
                        battery.capacity().slowest().ampereHours() * factor));
                amperes = Math.max(
                        amperes, battery.resolved().maximumChargeCurrent().amperes() * battery.mostInParallel());
            }
        }
        found.sort(Comparator.comparingDouble(Option::pricePerAmpereHour));
        this.options = found;
        this.maximumChargeAmperes = amperes;
    }

    private static boolean mayPass(Check check) {
        return check.passed() || MET_BY_MORE_STRINGS.contains(check.rule());
    }

    boolean isEmpty() {
        return options.isEmpty();
    }

    /** The highest maximum charging current of any bank of these batteries. */
    Current maximumChargeCurrent() {
        return Current.amperes(maximumChargeAmperes);
    }

    /** The banks of these batteries that meet a requirement. */
    Banks banks(BankNeed need) {
        return new Banks(need);
    }

    static long price(BankFit fit) {
        return Objects.requireNonNull(fit.layout()).price().minorUnits();
    }

    /** The capacity required where the temperature takes none of it, at the slowest discharge. */
    private double requiredAmpereHours(BankNeed need) {
        if (options.isEmpty()) {
            return 0;
        }
        Chemistry chemistry = options.get(0).battery().chemistry();
        Voltage bankNominalVoltage = chemistry.trueNominal(need.nominalVoltage());
        return BankCapacity.needed(
                        BankDemandBuilder.builder()
                                .dailyEnergy(need.dailyEnergy())
                                .worstDailyEnergy(need.worstDailyEnergy())
                                .nominalVoltage(need.nominalVoltage())
                                .chemistry(chemistry)
                                .lowest(need.lowest())
                                .temperatureFactor(Ratio.ONE)
                                .runningCurrent(Power.ZERO.dividedBy(bankNominalVoltage))
                                .surgeCurrent(need.resolved().surgePower().dividedBy(bankNominalVoltage))
                                .build(),
                        policy)
                .requiredCapacity()
                .ampereHours();
    }

    /** The banks that meet one requirement; each battery is evaluated at most once. */
    final class Banks {
        private final BankNeed need;
        private final double ampereHours;
        private final IdentityHashMap<Battery, BankFit> evaluated = new IdentityHashMap<>();

        private Banks(BankNeed need) {
            this.need = need;
            this.ampereHours = requiredAmpereHours(need);
        }

        /** The minimum price of a bank, in minor units; empty without any battery. */
        Optional<Long> minimumPrice() {
            long minimum = Long.MAX_VALUE;
            for (Option option : options) {
                if (option.pricePerAmpereHour() * ampereHours * (1 - TOLERANCE) >= minimum) {
                    break;
                }
                minimum = Math.min(minimum, option.minimumPrice(ampereHours));
            }
            return options.isEmpty() ? Optional.empty() : Optional.of(minimum);
        }

        /** The banks that pass every rule and cost less than a limit in minor units, cheapest first. */
        List<BankFit> cheaperThan(long limit) {
            List<BankFit> found = new ArrayList<>();
            for (Option option : options) {
                if (option.pricePerAmpereHour() * ampereHours * (1 - TOLERANCE) >= limit) {
                    break;
                }
                if (option.minimumPrice(ampereHours) < limit) {
                    BankFit fit = evaluated.computeIfAbsent(option.battery(), any -> evaluator.fit(need, any, 1));
                    if (fit.fits() && price(fit) < limit) {
                        found.add(fit);
                    }
                }
            }
            found.sort(Comparator.comparingLong(BatteryCandidates::price)
                    .thenComparing(fit -> fit.battery().model()));
            return found;
        }

        /** The same battery with one string more. */
        BankFit withOneStringMore(BankFit fit) {
            return evaluator.fit(
                    need, fit.battery(), Objects.requireNonNull(fit.layout()).parallel() + 1);
        }
    }
}
