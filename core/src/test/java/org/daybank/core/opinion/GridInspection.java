package org.daybank.core.opinion;

import static java.lang.Math.abs;
import static java.lang.Math.ceil;
import static java.lang.Math.floor;
import static java.lang.Math.max;
import static java.lang.Math.min;

import java.util.List;

/** Looks over an array that feeds the grid: the service, every string and tracker, sizes, branch circuits, and what it brings. */
final class GridInspection {
    /** Core gathers irradiances in classes of 50 W/m² before it finds what is clipped; a share of a class may slip. */
    private static final double CLASSES = 1e-3;

    /** So many trackers with so many strings of so many modules, on each of so many units. */
    record Strings(int units, int trackers, int strings, int series) {}

    private final Ask ask;
    private final Goods.Module module;
    private final int modules;
    private final Goods.GridInverter inverter;
    private final int count;
    private final Faults faults;
    private final SunOpinion.Month[] sun;
    private double clipped;

    GridInspection(Ask ask, Goods.Module module, int modules, Goods.GridInverter inverter, int count, Faults faults) {
        this.ask = ask;
        this.module = module;
        this.modules = modules;
        this.inverter = inverter;
        this.count = count;
        this.faults = faults;
        this.sun = SunOpinion.months(ask);
    }

    private void service() {
        faults.atMost(
                "output voltage",
                abs(inverter.outputVolts() - ask.serviceVolts),
                ask.gridVoltageTolerance * ask.serviceVolts);
        faults.that("frequency", inverter.hertz().contains(ask.serviceHertz));
        faults.that("phases", inverter.lines() == ask.lines || inverter.lines() == 1);
        if (inverter.lines() < ask.lines && count % ask.lines != 0) {
            faults.atMost("imbalance of the lines", inverter.watts(), ask.phaseImbalance);
        }
    }

    private void voltages(int series) {
        double coldMaximumPower =
                series * module.vmp() * (1 + (module.gamma() - module.alpha()) * (ask.recordLow - 25));
        double cold = series * YieldOpinion.coldestOpenCircuit(ask, module);
        double hot = series * YieldOpinion.hottestMaximumPower(ask, module);
        faults.atMost("coldest open circuit", cold, inverter.maximumVolts() * (1 - ask.gridOpenCircuitReserve));
        faults.atMost("insulation of the modules", cold, module.systemVoltage());
        faults.atMost("coldest at its best", coldMaximumPower, inverter.trackingHighest());
        faults.atLeast("hottest at its best", hot, inverter.trackingLowest());
    }

    private void currents(int strings) {
        double onBack = 1 + module.bifacialGain();
        faults.atMost("operating current", strings * module.imp() * onBack, inverter.inputAmps());
        faults.atMost(
                "short-circuit current",
                strings * module.isc() * onBack * ask.gridShortCircuitFactor,
                inverter.shortCircuitAmps());
    }

    private void sizes(double wattsOnFullest, double ratio) {
        faults.atLeast("DC/AC ratio", ratio, ask.leastDcAc);
        faults.atMost("DC/AC ratio", ratio, ask.mostDcAc);
        double heat = max(0, ask.recordHigh - inverter.fullPowerUpTo());
        double gives = inverter.watts() * max(0, 1 + inverter.derating() * heat);
        double fullSun = wattsOnFullest
                * (1 + module.bifacialGain())
                * ask.soiling
                * ask.mismatch
                * ask.arrayWiring
                * inverter.efficiency();
        clipped = new Sunshine(sun).above(1000 * gives / fullSun);
        faults.atMost("clipping", clipped, ask.gridClippingLimit + CLASSES);
    }

    /** What is on the trackers of each unit, units that are connected alike taken together. */
    void strings(List<List<Strings>> all) {
        service();
        int connected = 0;
        double fullest = 0;
        int units = 0;
        for (List<Strings> alike : all) {
            int onUnit = 0;
            int trackers = 0;
            for (Strings on : alike) {
                onUnit += on.trackers * on.strings * on.series;
                trackers += on.trackers;
                voltages(on.series);
                currents(on.strings);
            }
            units += alike.get(0).units;
            connected += alike.get(0).units * onUnit;
            fullest = max(fullest, onUnit * module.power());
            faults.atMost("trackers", trackers, inverter.trackers());
            faults.atMost("modules on a unit", onUnit * module.power(), inverter.mostArrayWatts());
        }
        faults.equal("units with strings", units, count);
        faults.equal("modules in strings", connected, modules);
        sizes(fullest, modules * module.power() / (count * inverter.watts()));
    }

    void units(int branches, double branchAmps) {
        service();
        int onEach = min(modules, inverter.modulesOnEach());
        faults.equal("units", count, ceil((double) modules / onEach));
        faults.atMost("module on an input", module.power(), inverter.mostModuleWatts());
        voltages(1);
        currents(1);
        sizes(onEach * module.power(), onEach * module.power() / inverter.watts());
        double amps = inverter.watts() / (ask.serviceVolts * inverter.lines());
        double carries = ask.branchDevice / ask.continuousFactor;
        int most = (int) min(inverter.mostOnBranch(), floor(carries / amps + 1e-9));
        int circuits = 0;
        int lines = inverter.lines() == 1 ? ask.lines : 1;
        for (int line = 0; line < lines && most > 0; line++) {
            int units = count / lines + (line < count % lines ? 1 : 0);
            circuits += (units + most - 1) / most;
        }
        faults.equal("branch circuits", branches, circuits);
        faults.atMost("branch current", branchAmps, carries);
        faults.atMost("units on a branch", branchAmps / amps, most);
    }

    /** What is wished, and the year as it is told. */
    void brings(double toldYear, double toldUse) {
        double use = 0;
        double least = 0;
        double most = 0;
        LoadOpinion.Month[] loads = LoadOpinion.months(ask, LoadOpinion.Curve.NONE, sun);
        double[] each = YieldOpinion.tracked(ask, module, sun);
        for (int m = 0; m < 12; m++) {
            use += (loads[m].ac + loads[m].dc) * sun[m].daysOfYear;
            least += modules * each[m] * inverter.efficiency() * sun[m].daysOfYear;
            most += modules
                    * (each[m] + YieldOpinion.classError(module, sun[m]))
                    * inverter.efficiency()
                    * sun[m].daysOfYear;
        }
        faults.equal("yearly use", toldUse, use);
        faults.atLeast("yearly yield", toldYear, least * (1 - clipped - CLASSES));
        faults.atMost("yearly yield", toldYear, most * (1 - max(0, clipped - CLASSES)));
        if (ask.gridModules > 0) {
            faults.equal("modules asked for", modules, ask.gridModules);
        } else if (ask.gridWatts > 0) {
            faults.atLeast("power asked for", modules * module.power(), ask.gridWatts);
            faults.atMost("no module too many", (modules - 1) * module.power(), ask.gridWatts);
        } else {
            faults.atLeast("coverage asked for", toldYear, use * ask.gridCoverage);
        }
    }
}
