package org.daybank.core.opinion;

import org.daybank.core.design.DesignBrief;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.GridPolicy;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Power;

/** Turns what concerns the grid into bare numbers. */
final class PlainGrid {
    static void wishes(Ask ask, DesignBrief brief) {
        Integer modules = brief.grid().modules();
        Power power = brief.grid().power();
        ask.gridModules = modules == null ? 0 : modules;
        ask.gridWatts = power == null ? 0 : power.watts();
        ask.gridCoverage = brief.grid().coverage().fraction();
        GridPolicy policy = brief.policy().grid();
        ask.leastDcAc = policy.leastDcAcRatio().fraction();
        ask.mostDcAc = policy.mostDcAcRatio().fraction();
        ask.gridOpenCircuitReserve = policy.openCircuitReserve().fraction();
        ask.gridShortCircuitFactor = policy.shortCircuitFactor().fraction();
        ask.gridClippingLimit = policy.clippingLimit().fraction();
        ask.gridVoltageTolerance = policy.voltageTolerance().fraction();
        ask.phaseImbalance = policy.phaseImbalance().voltAmperes();
        ask.branchDevice = policy.branchDevice().amperes();
        ask.continuousFactor = policy.continuousFactor().fraction();
    }

    static Goods.GridInverter inverter(StringInverter inverter) {
        Power most = inverter.maximumArrayPower();
        return inverter(
                inverter,
                inverter.maximumInputCurrent(),
                inverter.resolved().maximumShortCircuitCurrent(),
                inverter.trackers(),
                most == null ? Double.POSITIVE_INFINITY : most.watts(),
                0,
                0,
                0);
    }

    static Goods.GridInverter inverter(Microinverter inverter) {
        return inverter(
                inverter,
                inverter.maximumInputCurrent(),
                inverter.resolved().maximumShortCircuitCurrent(),
                0,
                0,
                inverter.modulesOnEach(),
                inverter.maximumModulePower().watts(),
                inverter.mostOnBranch());
    }

    private static Goods.GridInverter inverter(
            GridInverter inverter,
            Current input,
            Current shortCircuit,
            int trackers,
            double mostArrayWatts,
            int modulesOnEach,
            double mostModuleWatts,
            int mostOnBranch) {
        return new Goods.GridInverter(
                inverter.model(),
                inverter.power().watts(),
                inverter.phases().lines(),
                inverter.outputVoltage().volts(),
                inverter.frequencies().stream().map(Frequency::hertz).toList(),
                inverter.maximumInputVoltage().volts(),
                inverter.trackingLowest().volts(),
                inverter.trackingHighest().volts(),
                input.amperes(),
                shortCircuit.amperes(),
                inverter.efficiency().fraction(),
                inverter.fullPowerUpTo().celsius(),
                inverter.derating().perKelvin(),
                inverter.price().minorUnits(),
                trackers,
                mostArrayWatts,
                modulesOnEach,
                mostModuleWatts,
                mostOnBranch);
    }
}
