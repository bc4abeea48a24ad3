package org.daybank.core.inverter;

import java.util.List;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Sentence;

/** The rules that string inverters and microinverters share: service, balance, size against the array, clipping. */
record GridRules(GridService grid, GridArray array, GridPolicy policy) {
    private static final double FULL_SUN = 1000;

    /** Whether a unit can feed the service, alone or spread over its lines. */
    void judgeService(GridInverter inverter, int count, List<Check> checks) {
        Service service = grid.service();
        Voltage voltage = service.voltage();
        double off = Math.abs(inverter.outputVoltage().dividedBy(voltage) - 1);
        checks.add(Check.that(
                "outputVoltage",
                off <= policy.voltageTolerance().fraction(),
                "The service has %s from line to neutral; this inverter is made for %s.",
                voltage,
                inverter.outputVoltage()));
        checks.add(Check.that(
                "frequency",
                inverter.frequencies().contains(service.frequency()),
                "The service has %s; this inverter follows %s.",
                service.frequency(),
                inverter.frequencies()));
        checks.add(Check.that(
                "phases",
                inverter.phases() == service.phases() || inverter.phases() == Phases.SINGLE,
                "The service is %s phase; this inverter feeds %s phase.",
                service.phases(),
                inverter.phases()));
        if (inverter.phases() == Phases.SINGLE && service.phases() != Phases.SINGLE) {
            boolean even = count % service.phases().lines() == 0;
            ApparentPower imbalance = even
                    ? ApparentPower.ZERO
                    : ApparentPower.voltAmperes(inverter.power().watts());
            checks.add(Check.atMost(
                    "phaseImbalance",
                    imbalance,
                    policy.phaseImbalance(),
                    "%s of them on %s lines feed one line %s more than another; %s are accepted.",
                    count,
                    service.phases().lines(),
                    imbalance,
                    policy.phaseImbalance()));
        }
    }

    /** Power of the modules over that of the inverters. */
    void judgeRatio(Ratio dcAcRatio, List<Check> checks) {
        double room = Math.min(
                dcAcRatio.fraction() - policy.leastDcAcRatio().fraction(),
                policy.mostDcAcRatio().fraction() - dcAcRatio.fraction());
        checks.add(new Check(
                "dcAcRatio",
                room >= 0,
                null,
                null,
                Ratio.of(room),
                Sentence.of(
                        "The modules' power is %s times the inverters'; %s to %s is accepted.",
                        dcAcRatio.significant(3),
                        policy.leastDcAcRatio().significant(3),
                        policy.mostDcAcRatio().significant(3))));
    }

    /**
     * Share of the year's energy of so much module power that is over what one inverter gives in the hottest air, light on the
     * back included as in the yield.
     */
    Ratio clipping(GridInverter inverter, Power modules) {
        Power fullSun = modules.times(array.module().bifacialGain().onePlus())
                .times(array.whenNew())
                .times(inverter.efficiency());
        double share = inverter.powerIn(grid.hottestAir()).dividedBy(fullSun);
        return array.sunshine().shareAbove(Irradiance.wattsPerSquareMetre(FULL_SUN * share));
    }

    void judgeClipping(Ratio clipping, List<Check> checks) {
        checks.add(Check.shareAtMost(
                "clipping",
                clipping,
                policy.clippingLimit(),
                "With its output full it loses %s of the year's energy; %s is accepted.",
                clipping,
                policy.clippingLimit()));
    }

    /** The string on the coldest morning and in the hottest sun against what an input stands and where it tracks. */
    void judgeVoltages(InputLimits input, int longest, int shortest, List<Check> checks) {
        Voltage coldest = array.extremes().coldestOpenCircuit(longest);
        checks.add(Check.atMost(
                "coldestOpenCircuitVoltage",
                coldest,
                input.maximum(),
                "On the coldest morning %s in series reach %s; this inverter withstands %s after a %s reserve.",
                longest,
                coldest,
                input.maximum(),
                policy.openCircuitReserve()));
        Voltage hottest = array.extremes().hottestMaximumPower(shortest);
        checks.add(Check.atLeast(
                "hottestMaximumPowerVoltage",
                hottest,
                input.trackingLowest(),
                "In the hottest sun %s in series fall to %s; this inverter tracks from %s.",
                shortest,
                hottest,
                input.trackingLowest()));
        Voltage tracked = array.coldestMaximumPower().times(longest);
        checks.add(Check.atMost(
                "coldestMaximumPowerVoltage",
                tracked,
                input.trackingHighest(),
                "On the coldest morning %s in series are at their best at %s; this inverter tracks up to %s.",
                longest,
                tracked,
                input.trackingHighest()));
    }
}
