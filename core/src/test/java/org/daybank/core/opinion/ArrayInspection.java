package org.daybank.core.opinion;

import static java.lang.Math.max;
import static java.lang.Math.min;

import java.util.List;

/** Looks over modules in strings on charge controllers: voltages cold and hot, currents, clipping, sharing, yield. */
final class ArrayInspection {
    /** Core gathers irradiances in classes of 50 W/m² before it finds what is clipped; a share of a class may slip. */
    private static final double CLASSES = 1e-3;

    private final Ask ask;
    private final Goods.Module module;
    private final Goods.Controller controller;
    private final int series;
    private final List<Integer> stringsOnEach;
    private final Faults faults;

    ArrayInspection(
            Ask ask,
            Goods.Module module,
            Goods.Controller controller,
            int series,
            List<Integer> stringsOnEach,
            Faults faults) {
        this.ask = ask;
        this.module = module;
        this.controller = controller;
        this.series = series;
        this.stringsOnEach = stringsOnEach;
        this.faults = faults;
    }

    private boolean passesOn() {
        return controller.kind().equals("pwm") || controller.kind().equals("shunt");
    }

    void voltages(double busVolts, double trueNominal, double chargingWhenHot) {
        double cold = series * YieldOpinion.coldestOpenCircuit(ask, module);
        double hot = series * YieldOpinion.hottestMaximumPower(ask, module);
        faults.atMost("coldest open circuit", cold, controller.maximumVolts() * (1 - ask.openCircuitReserve));
        faults.atMost("insulation of the modules", cold, module.systemVoltage());
        if (controller.kind().equals("stepUpMppt")) {
            faults.atMost("open circuit under the bank", cold, trueNominal);
        } else {
            faults.atLeast("hottest at its best", hot, chargingWhenHot + controller.headroom());
        }
        if (passesOn()) {
            faults.equal("module group", series * module.nominalGroup(), busVolts);
        }
        faults.that("controller's bank voltage", controller.busVolts().contains(busVolts));
        faults.that("controller's functions", controller.functions().containsAll(ask.controllerFunctions));
    }

    /** What flows into the bank in full sun. */
    double currents(double trueNominal, Sunshine sun) {
        int fullest = 0;
        int emptiest = Integer.MAX_VALUE;
        double amps = 0;
        double heat = max(0, ask.recordHigh - controller.fullOutputUpTo());
        double output = controller.outputAmps() * max(0, 1 + controller.derating() * heat);
        double onBack = (1 + module.bifacialGain()) * ask.soiling * ask.mismatch * ask.arrayWiring;
        double each = passesOn()
                ? module.imp() * onBack
                : series * module.power() * onBack * controller.efficiency() / trueNominal;
        for (int strings : stringsOnEach) {
            fullest = max(fullest, strings);
            emptiest = min(emptiest, strings);
            amps += min(output, strings * each);
        }
        faults.that("whole strings on every controller", emptiest >= 1);
        faults.atMost("controllers in parallel", stringsOnEach.size(), controller.mostInParallel());
        faults.atMost(
                "short-circuit current",
                fullest * module.isc() * (1 + module.bifacialGain()) * ask.shortCircuitFactor,
                passesOn() ? min(controller.inputAmps(), output) : controller.inputAmps());
        if (!passesOn()) {
            faults.atMost("clipping", sun.above(1000 * output / (fullest * each)), ask.clippingLimit + CLASSES);
        }
        return amps;
    }

    /** One faulty string fed by the others on its controller. */
    void fuses(boolean fused) {
        int fullest = stringsOnEach.stream().mapToInt(Integer::intValue).max().orElseThrow();
        double fed = (fullest - 1) * 1.25 * module.isc() * (1 + module.bifacialGain());
        faults.that("string fuses", fused || fed <= module.seriesFuse());
    }

    /** Every month's need, times the ratio asked for, is brought; what an alternator brings is not asked of the array. */
    void brings(LoadOpinion.Month[] months, SunOpinion.Month[] sun, Goods.Cells cells, double trueNominal) {
        double[] each = passesOn() ? YieldOpinion.passedOn(ask, module, sun) : YieldOpinion.tracked(ask, module, sun);
        double factor = passesOn() ? trueNominal / series : controller.efficiency();
        double efficiency = passesOn() ? cells.chargeEfficiency() : cells.energyEfficiency();
        int modules =
                series * stringsOnEach.stream().mapToInt(Integer::intValue).sum();
        double brought = ask.alternatorAmps * ask.alternatorHours * trueNominal;
        for (int m = 0; m < 12; m++) {
            LoadOpinion.Month month = months[m];
            double left = max(0, month.daily - brought);
            double need = left * (1 - month.dark + month.dark / efficiency) * ask.arrayToLoadRatio;
            double most = each[m] + (passesOn() ? 0 : YieldOpinion.classError(module, sun[m]));
            faults.atLeast("yield of month " + (m + 1), modules * most * factor, need);
        }
    }
}
