package org.daybank.core.opinion;

import static java.lang.Math.max;

import java.util.List;

/** What one module brings to the bank on the mean day of each month, in proportion to the sun; Ross's cells. */
final class YieldOpinion {
    /** Wh by month before the controller's efficiency; the second for a controller that only passes current, in Ah. */
    static double[] tracked(Ask ask, Goods.Module module, SunOpinion.Month[] sun) {
        return byMonth(ask, module, sun, module.power(), module.gamma());
    }

    static double[] passedOn(Ask ask, Goods.Module module, SunOpinion.Month[] sun) {
        return byMonth(ask, module, sun, module.imp(), 0);
    }

    private static double[] byMonth(
            Ask ask, Goods.Module module, SunOpinion.Month[] sun, double atStandard, double coefficient) {
        double[] yields = new double[12];
        double kept = ask.soiling * ask.mismatch * ask.arrayWiring * ask.ageing;
        for (int m = 0; m < 12; m++) {
            double sum = 0;
            for (double light : sun[m].light) {
                double cell = ask.meanAir[m] + ask.daytimeOverMeanAir + (module.noct() - 20) / 800 * light;
                double suns = light / 1000 * (1 + module.bifacialGain());
                sum += atStandard * suns * max(0, 1 + coefficient * (cell - 25));
            }
            yields[m] = sum * sun[m].sliceHours * kept * (1 - ask.snowLoss[m]);
        }
        return yields;
    }

    /**
     * By how much core may make more of a month, in Wh: it gathers irradiances in classes 50 W/m² wide before it warms the cells,
     * which takes the mean of a class for all of it and so leaves out {@code P·|γ|·(NOCT − 20)/800} times the variance in it, no
     * more than a quarter of its width squared.
     */
    static double classError(Goods.Module module, SunOpinion.Month sun) {
        double curve = Math.abs(module.gamma()) * (module.noct() - 20) / 800;
        double hours = sun.sunset * 24 / Math.PI;
        return curve * (50.0 * 50 / 4) * (module.power() / 1000) * (1 + module.bifacialGain()) * hours;
    }

    /** What must reach the bank: what passes through the battery costs its losses. */
    static double need(LoadOpinion.Month month, double batteryEfficiency) {
        return month.daily * (1 - month.dark + month.dark / batteryEfficiency);
    }

    /** Modules that would just do; infinite when there is no sun in a month of need. */
    static double modules(
            Ask ask, List<LoadOpinion.Month> months, double[] yields, double factor, double batteryEfficiency) {
        double most = 0;
        for (int m = 0; m < 12; m++) {
            double need = need(months.get(m), batteryEfficiency) * ask.arrayToLoadRatio;
            most = need == 0 ? most : max(most, need / (yields[m] * factor));
        }
        return most;
    }

    /** Hottest cell in full sun. */
    static double hottestCell(Ask ask, Goods.Module module) {
        return ask.recordHigh + (module.noct() - 20) / 800 * 1000;
    }

    static double coldestOpenCircuit(Ask ask, Goods.Module module) {
        return module.voc() * (1 + module.beta() * (ask.recordLow - 25));
    }

    static double hottestMaximumPower(Ask ask, Goods.Module module) {
        return module.vmp()
                * (1 + (module.gamma() - module.alpha()) * (hottestCell(ask, module) - 25))
                * ask.voltageAgeing;
    }

    private YieldOpinion() {}
}
