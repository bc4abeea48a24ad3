package org.daybank.core.opinion;

import static java.lang.Math.ceil;
import static java.lang.Math.max;
import static java.lang.Math.min;

/** Modules in strings on charge controllers: every string length and number of controllers is tried. */
final class StringOpinion {
    /** Modules in a string, strings, controllers. */
    record Array(int series, int strings, int controllers, long price) {
        int modules() {
            return series * strings;
        }
    }

    /** What must be known of bank and need. */
    record Case(
            double busVolts, BankOpinion.Bank bank, double exactModules, double exactPassedOn, double mostChargeAmps) {}

    /** The cheapest array on this controller; null when it breaks a rule whatever the layout. */
    static Array cheapest(Ask ask, Goods.Module module, Goods.Controller controller, SunOpinion.Month[] sun, Case c) {
        boolean suits = controller.busVolts().contains(c.busVolts)
                && controller.chemistries().contains(c.bank.battery.cells().chemistry())
                && controller.functions().containsAll(ask.controllerFunctions)
                && !controller.kind().equals("shunt");
        Array best = null;
        for (int series = 1; suits && series <= 60; series++) {
            if (!stands(ask, module, controller, c, series)) {
                continue;
            }
            for (int count = 1; count <= controller.mostInParallel(); count++) {
                Array array = shared(ask, module, controller, sun, c, series, count);
                best = array != null && (best == null || array.price < best.price) ? array : best;
            }
        }
        return best;
    }

    /** Whether a string of this length keeps every voltage. */
    private static boolean stands(Ask ask, Goods.Module module, Goods.Controller controller, Case c, int series) {
        double cold = series * YieldOpinion.coldestOpenCircuit(ask, module);
        double hot = series * YieldOpinion.hottestMaximumPower(ask, module);
        boolean survives =
                cold <= controller.maximumVolts() * (1 - ask.openCircuitReserve) && cold <= module.systemVoltage();
        return survives
                && switch (controller.kind()) {
                    case "pwm" -> series * module.nominalGroup() == c.busVolts;
                    case "stepUpMppt" -> cold < c.bank.disconnect();
                    default -> hot >= c.bank.absorption() + controller.headroom();
                };
    }

    private static Array shared(
            Ask ask,
            Goods.Module module,
            Goods.Controller controller,
            SunOpinion.Month[] sun,
            Case c,
            int series,
            int count) {
        boolean passesOn = controller.kind().equals("pwm");
        double exact = passesOn ? c.exactPassedOn : c.exactModules;
        if (!(exact < 1e5)) {
            return null;
        }
        int strings = (int) max(count, ceil(max(1, ceil(exact)) / series));
        int fullest = (strings + count - 1) / count;
        double heat = max(0, ask.recordHigh - controller.fullOutputUpTo());
        double output = controller.outputAmps() * max(0, 1 + controller.derating() * heat);
        double input = fullest * module.isc() * (1 + module.bifacialGain()) * ask.shortCircuitFactor;
        double limit = passesOn ? min(controller.inputAmps(), output) : controller.inputAmps();
        boolean stands = input <= limit;
        double amps;
        if (passesOn) {
            amps = strings * module.isc() * (1 + module.bifacialGain());
        } else {
            double watts = fullest * series * module.power() * (1 + module.bifacialGain()) * controller.efficiency();
            amps = min(watts / c.bank.trueNominal, output) * count;
            double lost = YieldOpinion.above(sun, 1000 * output * c.bank.trueNominal / watts);
            stands &= lost <= ask.clippingLimit;
        }
        stands &= amps <= c.mostChargeAmps;
        long price = strings * (long) series * module.price() + count * controller.price();
        return stands ? new Array(series, strings, count, price) : null;
    }

    private StringOpinion() {}
}
