package org.daybank.core.opinion;

import static java.lang.Math.hypot;
import static java.lang.Math.max;
import static java.lang.Math.sqrt;

/** Looks over the inverters of a bank: power hot and high, surge, waveform, service, stacking, AC input, bank current. */
final class InverterInspection {
    private final Ask ask;
    private final Goods.Inverter inverter;
    private final int count;
    private final Faults faults;

    InverterInspection(Ask ask, Goods.Inverter inverter, int count, Faults faults) {
        this.ask = ask;
        this.inverter = inverter;
        this.count = count;
        this.faults = faults;
    }

    void against(double busVolts, double chargingWhenCold, double disconnect) {
        faults.equal("inverter's bank voltage", inverter.busVolts(), busVolts);
        faults.atMost("charging on the coldest day", chargingWhenCold, inverter.highestVolts());
        faults.atLeast("bank's cut-off over the inverter's", disconnect, inverter.lowestVolts());
        faults.atMost(
                "bank current at the rating",
                count * inverter.watts() / inverter.fullEfficiency() / inverter.lowestVolts(),
                ask.bankCurrent);
        service();
        int onLine = stacked();
        if (onLine > 0) {
            power(onLine);
        }
    }

    private void service() {
        boolean sine = ask.loads.stream().anyMatch(load -> load.ac() && load.needsSine());
        faults.that("waveform", inverter.sine() || !sine);
        faults.atMost(
                "output voltage",
                Math.abs(inverter.outputVolts() - ask.serviceVolts),
                ask.voltageTolerance * ask.serviceVolts);
        faults.that("frequency", inverter.hertz().contains(ask.serviceHertz));
        faults.that("functions", inverter.functions().containsAll(ask.inverterFunctions));
    }

    /** Units that feed the same line; zero where so many cannot make the service. */
    private int stacked() {
        boolean own = inverter.lines() == ask.lines;
        boolean stackable =
                own || (inverter.lines() == 1 && inverter.stackedLines().contains(ask.lines));
        boolean even = own || count % ask.lines == 0;
        int onLine = own ? count : count / ask.lines;
        faults.that("phases", stackable);
        faults.that("as many on every line", even);
        faults.atMost("units on a line", onLine, inverter.mostInParallel());
        faults.atMost("units in all", count, inverter.mostUnits());
        return stackable && even ? onLine : 0;
    }

    private void power(int onLine) {
        LineOpinion line = LineOpinion.of(ask);
        double ofUnit = inverter.lines() == ask.lines ? 1.0 / ask.lines : 1;
        double heat = max(0, ask.recordHigh - inverter.fullPowerUpTo());
        double height = max(0, ask.elevation - ask.altitudeWithoutDerating);
        double left = max(0, 1 + inverter.derating() * heat) * max(0, 1 - ask.altitudeDerating * height / 100);
        double units = onLine * ofUnit;
        double continuous = inverter.voltAmps() * left * units;
        faults.atMost("running power", line.watts * (1 + ask.inverterMargin), inverter.watts() * left * units);
        faults.atMost("running volt-amperes", line.voltAmps * (1 + ask.inverterMargin), continuous);
        var surge = inverter.surgeBySeconds().ceilingEntry(ask.startSeconds);
        double listed = surge == null ? 0 : surge.getValue() * units;
        faults.atMost("start", line.startVoltAmps, max(listed, continuous));
        if (ask.takesAc) {
            source(line, onLine, continuous);
        }
    }

    /** The AC input passes on what the fullest line draws; what the source lacks the inverter adds, if it can. */
    private void source(LineOpinion line, int onLine, double continuous) {
        faults.atMost("transfer", line.voltAmps / ask.serviceVolts, inverter.transferAmps() * onLine);
        double given = ask.sourceWatts / ask.lines;
        if (Double.isInfinite(given)) {
            return;
        }
        if (inverter.functions().contains("assist")) {
            double vars = sqrt(max(0, line.voltAmps * line.voltAmps - line.watts * line.watts));
            faults.atMost("beyond the source", hypot(max(0, line.watts - given), vars), continuous);
        } else {
            faults.atMost("source", line.voltAmps, given);
        }
    }
}
