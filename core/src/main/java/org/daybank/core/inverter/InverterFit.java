package org.daybank.core.inverter;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Finding;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.ToldElsewhere;

/**
 * One inverter held against a need: how many it takes, and every rule with its margin.
 *
 * @param product model of the inverter
 * @param inverter its data sheet
 * @param count how many of it
 * @param rating continuous power of all units at 25 °C
 * @param idle draw of all units when on without load
 * @param currentAtRating current from the bank at its lowest voltage when all units give their continuous power
 * @param price of all units
 * @param limits every rule, kept or broken
 */
public record InverterFit(
        String product,
        @ToldElsewhere Inverter inverter,
        int count,
        Power rating,
        Power idle,
        Current currentAtRating,
        Money price,
        List<Finding> limits) {
    /** Keeps a copy. */
    public InverterFit {
        limits = List.copyOf(limits);
    }

    /** Whether every rule is kept. */
    public boolean fits() {
        return limits.stream().allMatch(Finding::met);
    }

    /** Why it does not fit. */
    public Rejection rejection() {
        return Rejection.of(inverter.model(), limits);
    }

    /** What all units together draw from the bank for what they give, sharing the load equally. */
    public InverterCurve curve() {
        InverterCurve one = inverter.curve();
        return new InverterCurve(one.rating().times(count), one.k0(), one.k1(), one.k2());
    }

    /** Holds an inverter against the need. */
    public static InverterFit of(InverterNeed need, Inverter inverter, InverterPolicy policy) {
        PeakLoad peak = need.peak();
        Ratio left = inverter.heatFactor(need.hottestAir()).times(policy.altitudeFactor(need.elevation()));
        Power power = inverter.power().times(left);
        ApparentPower apparent = inverter.apparentPower().times(left);
        ApparentPower surge = larger(inverter.surge().over(need.startDuration()), apparent);
        Power askedPower = peak.running().times(policy.margin().onePlus());
        ApparentPower askedApparent =
                peak.runningApparent().times(policy.margin().onePlus());
        int count = count(
                inverter,
                units(askedPower.watts(), power.watts()),
                units(askedApparent.voltAmperes(), apparent.voltAmperes()),
                units(peak.surgeApparent().voltAmperes(), surge.voltAmperes()));

        List<Finding> limits = new ArrayList<>();
        limits.add(Finding.that(
                "nominalVoltage",
                inverter.nominalVoltage().equals(need.nominalVoltage()),
                "The bank's nominal voltage is %s; this inverter is made for %s.",
                need.nominalVoltage(),
                inverter.nominalVoltage()));
        limits.add(Finding.atMost(
                "highestBankVoltage",
                need.highestBankVoltage(),
                inverter.highestInput(),
                "Charged on the coldest day the bank reaches %s; this inverter withstands %s.",
                need.highestBankVoltage(),
                inverter.highestInput()));
        limits.add(Finding.atMost(
                "continuousPower",
                askedPower,
                power.times(count),
                "The loads ask %s with a margin of %s; %s × this inverter gives %s in the hottest air.",
                askedPower,
                policy.margin(),
                count,
                power.times(count)));
        limits.add(Finding.atMost(
                "continuousApparentPower",
                askedApparent,
                apparent.times(count),
                "The loads ask %s with a margin of %s; %s × this inverter gives %s in the hottest air.",
                askedApparent,
                policy.margin(),
                count,
                apparent.times(count)));
        limits.add(Finding.atMost(
                "surge",
                peak.surgeApparent(),
                surge.times(count),
                "The start asks %s for %s; %s × this inverter gives %s for that time.",
                peak.surgeApparent(),
                need.startDuration(),
                count,
                surge.times(count)));
        Power rating = inverter.power().times(count);
        Current currentAtRating =
                rating.dividedBy(inverter.fullLoadEfficiency().fraction()).dividedBy(inverter.lowestInput());
        limits.add(Finding.atMost(
                "bankCurrent",
                currentAtRating,
                need.bankCurrentLimit(),
                "At their rating %s × this inverter draw %s from the bank at its lowest voltage, %s; cable, fuse and disconnect are planned for %s.",
                count,
                currentAtRating,
                inverter.lowestInput(),
                need.bankCurrentLimit()));
        judgeService(need, inverter, policy, limits);
        return new InverterFit(
                inverter.model(),
                inverter,
                count,
                rating,
                inverter.idle().times(count),
                currentAtRating,
                inverter.price().times(count),
                limits);
    }

    /** What it gives for good it also gives for a start, however long the start and short the list of surges. */
    private static ApparentPower larger(ApparentPower listed, ApparentPower continuous) {
        return listed.compareTo(continuous) >= 0 ? listed : continuous;
    }

    private static int units(double asked, double one) {
        return one <= 0 ? Integer.MAX_VALUE : (int) Math.min(1000, Math.ceil(asked / one - 1e-9));
    }

    /** As many units as the hardest of the three asks, within what may be connected. */
    private static int count(Inverter inverter, int byPower, int byApparent, int bySurge) {
        int asked = Math.max(1, Math.max(byPower, Math.max(byApparent, bySurge)));
        return Math.min(asked, inverter.mostInParallel());
    }

    private static void judgeService(
            InverterNeed need, Inverter inverter, InverterPolicy policy, List<Finding> limits) {
        boolean sine = need.sineLoads().isEmpty() || inverter.waveform().satisfies(Waveform.SINE);
        limits.add(Finding.that(
                "waveform",
                sine,
                sine ? "Every load runs on its waveform, %s." : "It makes a %s; these loads need a sine: %s.",
                inverter.waveform(),
                need.sineLoads()));
        Voltage service = need.service().voltage();
        double off = Math.abs(inverter.outputVoltage().dividedBy(service) - 1);
        limits.add(Finding.that(
                "outputVoltage",
                off <= policy.voltageTolerance().fraction(),
                "The service has %s; this inverter makes %s.",
                service,
                inverter.outputVoltage()));
        limits.add(Finding.that(
                "frequency",
                inverter.frequencies().contains(need.service().frequency()),
                "The service has %s; this inverter makes %s.",
                need.service().frequency(),
                inverter.frequencies()));
        limits.add(Finding.that(
                "phases",
                need.service().phases() == Phases.SINGLE,
                "The service is %s phase; one unit, or several in parallel, make a single phase.",
                need.service().phases()));
        for (InverterFunction function : need.functions()) {
            limits.add(Finding.that(
                    "function",
                    inverter.functions().contains(function),
                    "Asked for: %s; this inverter has: %s.",
                    function,
                    inverter.functions().isEmpty() ? "nothing besides AC" : inverter.functions()));
        }
    }
}
