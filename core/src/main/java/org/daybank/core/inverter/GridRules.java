package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Message;

/** The rules that string inverters and microinverters share: service, balance, size against the array, clipping. */
record GridRules(GridService grid, GridArray array, GridPolicy policy) {
    private static final double FULL_SUN = 1000;

    /** Whether a unit can feed the service, alone or spread over its lines. */
    void judgeService(GridInverter inverter, int count, List<Check> checks) {
        Service service = grid.service();
        Voltage voltage = service.voltage();
        double off = Math.abs(inverter.outputVoltage().dividedBy(voltage) - 1);
        checks.add(Check.that(
                GridInverterRule.OUTPUT_VOLTAGE,
                off <= policy.voltageTolerance().fraction(),
                value("voltage", voltage),
                value("outputVoltage", inverter.outputVoltage())));
        checks.add(Check.that(
                GridInverterRule.FREQUENCY,
                inverter.frequencies().contains(service.frequency()),
                value("frequency", service.frequency()),
                value("frequencies", inverter.frequencies())));
        checks.add(Check.that(
                GridInverterRule.PHASES,
                inverter.phases() == service.phases() || inverter.phases() == Phases.SINGLE,
                value("phases", service.phases()),
                value("phases2", inverter.phases())));
        if (inverter.phases() == Phases.SINGLE && service.phases() != Phases.SINGLE) {
            boolean even = count % service.phases().lines() == 0;
            ApparentPower imbalance = even
                    ? ApparentPower.ZERO
                    : ApparentPower.voltAmperes(inverter.power().watts());
            checks.add(Check.atMost(
                    GridInverterRule.PHASE_IMBALANCE,
                    imbalance,
                    policy.phaseImbalance(),
                    value("count", count),
                    value("lines", service.phases().lines())));
        }
    }

    /** Power of the modules over that of the inverters. */
    void judgeRatio(Ratio dcAcRatio, List<Check> checks) {
        double room = Math.min(
                dcAcRatio.fraction() - policy.leastDcAcRatio().fraction(),
                policy.mostDcAcRatio().fraction() - dcAcRatio.fraction());
        checks.add(new Check(
                GridInverterRule.DC_AC_RATIO,
                room >= 0,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Ratio.of(room)),
                Message.of(
                        "check.gridInverter.dcAcRatio." + (room >= 0 ? "passed" : "failed"),
                        value("ratio", dcAcRatio.significant(3)),
                        value("minimum", policy.leastDcAcRatio().significant(3)),
                        value("maximum", policy.mostDcAcRatio().significant(3)))));
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
        checks.add(Check.shareAtMost(GridInverterRule.CLIPPING, clipping, policy.clippingLimit()));
    }

    /** The string on the coldest morning and in the hottest sun against what an input stands and where it tracks. */
    void judgeVoltages(InputLimits input, int longest, int shortest, List<Check> checks) {
        Voltage coldest = array.extremes().coldestOpenCircuit(longest);
        checks.add(Check.atMost(
                GridInverterRule.COLDEST_OPEN_CIRCUIT_VOLTAGE,
                coldest,
                input.maximum(),
                value("longest", longest),
                value("openCircuitReserve", policy.openCircuitReserve())));
        Voltage hottest = array.extremes().hottestMaximumPower(shortest);
        checks.add(Check.atLeast(
                GridInverterRule.HOTTEST_MAXIMUM_POWER_VOLTAGE,
                hottest,
                input.trackingLowest(),
                value("shortest", shortest)));
        Voltage tracked = array.coldestMaximumPower().times(longest);
        checks.add(Check.atMost(
                GridInverterRule.COLDEST_MAXIMUM_POWER_VOLTAGE,
                tracked,
                input.trackingHighest(),
                value("longest", longest)));
    }
}
