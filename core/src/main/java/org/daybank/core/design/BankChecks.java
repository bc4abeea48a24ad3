package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.array.ArraySize;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.search.AvailabilitySearch;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.load.Load;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** Rules across the parts of a system on a bank, which a design need not pass. */
final class BankChecks {
    private BankChecks() {}

    static List<Check> of(
            DesignBrief brief,
            CandidateSystem chosen,
            ChargerFit charger,
            ChargeSettings settings,
            AvailabilitySearch.@Nullable Result result) {
        List<Check> checks = new ArrayList<>();
        brief.loads().stream()
                .filter(load -> load.supply() == Supply.DC)
                .forEach(load -> checkSupply(load, settings, checks));
        Current least = chosen.layout().minimumChargeCurrent();
        if (least.amperes() > 0) {
            checks.add(Check.atLeast(DesignRule.MINIMUM_CHARGE_CURRENT, charger.chargingCurrent(), least));
        }
        coldCharge(chosen, charger, checks);
        Ratio worn = wornDepth(brief, chosen);
        checks.add(Check.that(
                DesignRule.WORN_DEPTH,
                worn.compareTo(Ratio.ONE) <= 0,
                value("endOfLifeFraction", brief.policy().bank().endOfLifeFraction()),
                value("worn", worn)));
        Optional<TimeSpan> recovery = recovery(chosen);
        TimeSpan longest = brief.policy().system().longestRecovery();
        checks.add(
                recovery.isEmpty()
                        ? Check.that(DesignRule.RECOVERY, false).variant("never")
                        : Check.atMost(DesignRule.RECOVERY, recovery.get(), longest));
        if (result != null) {
            checks.addAll(result.simulation().checks());
            Ratio required = brief.wishes().availability();
            if (required != null) {
                checks.add(reached(required, result));
            }
        }
        return checks;
    }

    private static Check reached(Ratio required, AvailabilitySearch.Result result) {
        Ratio availability = result.simulation().reliability().availability();
        return Check.that(
                DesignRule.AVAILABILITY,
                result.reached(),
                value("availability", availability),
                value("required", required),
                value("simulated", result.simulated()));
    }

    /** Cool cells accept less current; only where the lowest temperature makes a difference. */
    private static void coldCharge(CandidateSystem chosen, ChargerFit charger, List<Check> checks) {
        Current cold = chosen.bank().coldChargeCurrent();
        if (cold != null && cold.compareTo(chosen.layout().maximumChargeCurrent()) < 0) {
            checks.add(Check.atMost(
                    DesignRule.COLD_CHARGE_CURRENT,
                    charger.chargingCurrent(),
                    cold,
                    value("temperature", chosen.bank().temperature())));
        }
    }

    /** Whether a DC load runs on the bank's own voltage, from the disconnect to charging on the coldest day. */
    private static void checkSupply(Load load, ChargeSettings settings, List<Check> checks) {
        Voltage highest = load.highestSupply();
        if (highest != null) {
            checks.add(Check.atMost(
                    DesignRule.HIGHEST_SUPPLY, settings.absorptionWhenCold(), highest, value("name", load.name())));
        }
        Voltage lowest = load.lowestSupply();
        if (lowest != null) {
            checks.add(
                    Check.atLeast(DesignRule.LOWEST_SUPPLY, settings.disconnect(), lowest, value("name", load.name())));
        }
    }
    /** What the autonomy takes of the bank that is laid out, once it is worn and as cold as it gets. */
    private static Ratio wornDepth(DesignBrief brief, CandidateSystem chosen) {
        BankCapacity capacity = Objects.requireNonNull(chosen.bank().capacity());
        double left = chosen.layout()
                        .capacityAt(capacity.demand().resolved().runningCurrent())
                        .ampereHours()
                * capacity.temperatureFactor().fraction()
                * brief.policy().bank().endOfLifeFraction().fraction();
        return Ratio.of(capacity.autonomyCharge().ampereHours() / left);
    }
    /** Time to refill the deepest discharge from the surplus of the design month. */
    static Optional<TimeSpan> recovery(CandidateSystem chosen) {
        ArraySize.MonthlyYield month = chosen.size().inDesignMonth();
        double surplus = month.yield().wattHours() - month.need().wattHours();
        if (surplus <= 0) {
            return Optional.empty();
        }
        Chemistry chemistry = chosen.layout().battery().chemistry();
        double emptied = Objects.requireNonNull(chosen.bank().capacity())
                        .autonomyCharge()
                        .times(chemistry.trueNominal(chosen.nominalVoltage()))
                        .wattHours()
                / chemistry.traits().energyEfficiency().fraction();
        return Optional.of(TimeSpan.days(emptied / surplus));
    }
}
