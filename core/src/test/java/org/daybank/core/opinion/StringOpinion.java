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

    /** What must be known of bank and need; what is passed on is of single modules at the bank's whole voltage. */
    record Case(
            double busVolts,
            BankOpinion.Bank bank,
            double exactModules,
            double exactPassedOn,
            double mostChargeAmps,
            double dcLoadAmps) {}

    /** The cheapest array on this controller; null when whatever the layout it breaks a rule or is too dear. */
    static Array cheapest(
            Ask ask, Goods.Module module, Goods.Controller controller, Sunshine sun, Case c, long lessThan) {
        boolean suits = controller.busVolts().contains(c.busVolts)
                && controller.chemistries().contains(c.bank.battery.cells().chemistry())
                && controller.functions().containsAll(ask.controllerFunctions)
                && !(ask.controllerFunctions.contains("loadOutput") && c.dcLoadAmps > controller.loadAmps())
                && !controller.kind().equals("shunt");
        Array best = null;
        long bound = lessThan;
        for (int series = 1; suits && series <= 60; series++) {
            if (!stands(ask, module, controller, c, series)) {
                continue;
            }
            for (int count = 1; count <= controller.mostInParallel(); count++) {
                Array array = shared(ask, module, controller, sun, c, series, count, bound);
                if (array != null) {
                    best = array;
                    bound = array.price;
                }
            }
        }
        return best;
    }

    /** Whether a string of this length keeps every voltage. */
    private static boolean stands(Ask ask, Goods.Module module, Goods.Controller controller, Case c, int series) {
        double cold = series * YieldOpinion.coldestOpenCircuit(ask, module);
        double hot = series * YieldOpinion.hottestMaximumPower(ask, module);
        boolean works = hot >= c.bank.chargingWhenHot(ask) + controller.headroom();
        boolean wakes = hot >= controller.minimumVolts();
        boolean survives =
                cold <= controller.maximumVolts() * (1 - ask.openCircuitReserve) && cold <= module.systemVoltage();
        return survives
                && wakes
                && switch (controller.kind()) {
                    case "pwm" -> series * module.nominalGroup() == c.busVolts && works;
                    case "stepUpMppt" -> cold <= c.bank.disconnect();
                    default -> works;
                };
    }

    private static Array shared(
            Ask ask,
            Goods.Module module,
            Goods.Controller controller,
            Sunshine sun,
            Case c,
            int series,
            int count,
            long lessThan) {
        boolean passesOn = controller.kind().equals("pwm");
        double exact = passesOn ? c.exactPassedOn * series : c.exactModules;
        if (!(exact < 1e5)) {
            return null;
        }
        int strings = (int) max(count, ceil(max(1, ceil(exact)) / series));
        long price = strings * (long) series * module.price() + count * controller.price();
        if (price >= lessThan) {
            return null;
        }
        int fullest = (strings + count - 1) / count;
        double heat = max(0, ask.recordHigh - controller.fullOutputUpTo());
        double output = controller.outputAmps() * max(0, 1 + controller.derating() * heat);
        double input = fullest * module.isc() * (1 + module.bifacialGain()) * ask.shortCircuitFactor;
        double limit = passesOn ? min(controller.inputAmps(), output) : controller.inputAmps();
        boolean stands = input <= limit && fullest * series * module.power() <= controller.inputWatts();
        if (ask.controllerFunctions.contains("diversionControl")) {
            stands &= fullest * series * module.power() * ask.diversionFactor / c.bank.chargingWhenHot(ask) <= output;
        }
        double whenNew = ask.soiling * ask.mismatch * ask.arrayWiring;
        double amps;
        if (passesOn) {
            double each = module.imp() * (1 + module.bifacialGain()) * whenNew;
            amps = 0;
            for (int i = 0; i < count; i++) {
                amps += min(output, on(strings, count, i) * each);
            }
        } else {
            double each = series * module.power() * (1 + module.bifacialGain()) * controller.efficiency() * whenNew;
            amps = 0;
            for (int i = 0; i < count; i++) {
                amps += min(output, on(strings, count, i) * each / c.bank.trueNominal);
            }
            double lost = sun.above(1000 * output * c.bank.trueNominal / (fullest * each));
            stands &= lost <= ask.clippingLimit;
        }
        stands &= amps <= c.mostChargeAmps;
        return stands ? new Array(series, strings, count, price) : null;
    }

    /** Strings on one of so many controllers, shared as evenly as they can be. */
    private static int on(int strings, int count, int which) {
        return strings / count + (which < strings % count ? 1 : 0);
    }

    private StringOpinion() {}
}
