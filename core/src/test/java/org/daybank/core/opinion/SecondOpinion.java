package org.daybank.core.opinion;

import static java.lang.Math.ceil;
import static java.lang.Math.max;

import java.util.List;

/**
 * The whole stand-alone job once more, from the methods and their sources alone, in bare numbers: every combination of
 * inverter, battery, module and controller at 12, 24 and 48 V; the lowest voltage at which anything is complete; there
 * the cheapest.
 */
final class SecondOpinion {
    /** What is on offer. */
    record Offer(
            List<Goods.Module> modules,
            List<Goods.Battery> batteries,
            List<Goods.Controller> controllers,
            List<Goods.Inverter> inverters) {}

    /** A complete system. */
    record Whole(
            double volts,
            Goods.Inverter inverter,
            int inverters,
            BankOpinion.Bank bank,
            Goods.Module module,
            Goods.Controller controller,
            StringOpinion.Array array,
            long price) {}

    private final Ask ask;
    private final Offer offer;
    final SunOpinion.Month[] sun;
    final LoadOpinion.Peak peak;
    private final double[][] tracked;
    private final double[][] passedOn;

    SecondOpinion(Ask ask, Offer offer) {
        this.ask = ask;
        this.offer = offer;
        sun = SunOpinion.months(ask);
        peak = LoadOpinion.peak(ask);
        tracked = new double[offer.modules.size()][];
        passedOn = new double[offer.modules.size()][];
        for (int i = 0; i < tracked.length; i++) {
            tracked[i] = YieldOpinion.tracked(ask, offer.modules.get(i), sun);
            passedOn[i] = YieldOpinion.passedOn(ask, offer.modules.get(i), sun);
        }
    }

    /** The cheapest at the lowest voltage that does; null when none does. */
    Whole best() {
        for (double volts : List.of(12.0, 24.0, 48.0)) {
            if (ask.wishedVolts == 0 || ask.wishedVolts == volts) {
                Whole best = bestAt(volts);
                if (best != null) {
                    return best;
                }
            }
        }
        return null;
    }

    Whole bestAt(double volts) {
        Whole best = null;
        if (ask.loads.stream().noneMatch(Ask.Load::ac)) {
            return bestBehind(volts, null, 0, null);
        }
        for (Goods.Inverter inverter : offer.inverters) {
            int count = inverters(inverter, volts);
            if (count > 0) {
                best = bestBehind(volts, inverter, count, best);
            }
        }
        return best;
    }

    /** How many of an inverter carry the loads; zero when no number does. */
    int inverters(Goods.Inverter inverter, double volts) {
        double heat = max(0, ask.recordHigh - inverter.fullPowerUpTo());
        double height = max(0, ask.elevation - ask.altitudeWithoutDerating);
        double left = (1 + inverter.derating() * heat) * max(0, 1 - ask.altitudeDerating * height / 100);
        var surge = inverter.surgeBySeconds().ceilingEntry(ask.startSeconds);
        double count = 1;
        count = max(count, ceil(peak.watts * (1 + ask.inverterMargin) / (inverter.watts() * left)));
        count = max(count, ceil(peak.voltAmps * (1 + ask.inverterMargin) / (inverter.voltAmps() * left)));
        count = max(count, ceil(peak.surgeVoltAmps / (surge == null ? inverter.voltAmps() : surge.getValue())));
        boolean sine = ask.loads.stream().anyMatch(load -> load.ac() && load.needsSine());
        double current = count * inverter.watts() / inverter.fullEfficiency() / inverter.lowestVolts();
        boolean does = inverter.busVolts() == volts
                && ask.singlePhase
                && count <= inverter.mostInParallel()
                && (inverter.sine() || !sine)
                && Math.abs(inverter.outputVolts() - ask.serviceVolts) <= ask.voltageTolerance * ask.serviceVolts
                && inverter.hertz().contains(ask.serviceHertz)
                && inverter.functions().containsAll(ask.inverterFunctions)
                && (ask.wishedVolts != 0 || current <= ask.bankCurrent);
        return does ? (int) count : 0;
    }

    private Whole bestBehind(double volts, Goods.Inverter inverter, int inverters, Whole soFar) {
        LoadOpinion.Curve curve = inverter == null ? LoadOpinion.Curve.NONE : LoadOpinion.Curve.of(inverter, inverters);
        LoadOpinion.Month[] loads = LoadOpinion.months(ask, curve, sun);
        Whole best = soFar;
        for (Goods.Battery battery : offer.batteries) {
            if (!ask.chemistries.contains(battery.cells().chemistry())) {
                continue;
            }
            for (int i = 0; i < tracked.length; i++) {
                for (Goods.Controller controller : offer.controllers) {
                    Whole whole = whole(volts, inverter, inverters, curve, loads, battery, i, controller);
                    best = whole != null && (best == null || whole.price < best.price) ? whole : best;
                }
            }
        }
        return best;
    }

    /** One combination; null when it breaks a rule. The controllers' own draw is counted until it agrees. */
    private Whole whole(
            double volts,
            Goods.Inverter inverter,
            int inverters,
            LoadOpinion.Curve curve,
            LoadOpinion.Month[] loads,
            Goods.Battery battery,
            int module,
            Goods.Controller controller) {
        BankOpinion.Bank bank = BankOpinion.placed(ask, battery, volts);
        if (bank == null || (inverter != null && coldCharging(bank) > inverter.highestVolts())) {
            return null;
        }
        int counted = 0;
        for (int pass = 0; pass < 3; pass++) {
            LoadOpinion.Month[] all = withOwnDraw(loads, bank, counted * controller.selfWatts());
            if (!BankOpinion.size(ask, bank, need(curve, all))) {
                return null;
            }
            Goods.Cells cells = battery.cells();
            StringOpinion.Array array = StringOpinion.cheapest(
                    ask,
                    offer.modules.get(module),
                    controller,
                    sun,
                    new StringOpinion.Case(
                            volts,
                            bank,
                            YieldOpinion.modules(
                                    ask, all, tracked[module], controller.efficiency(), cells.energyEfficiency()),
                            YieldOpinion.modules(
                                    ask, all, passedOn[module], bank.trueNominal, cells.chargeEfficiency()),
                            bank.mostChargeAmps()));
            if (array == null) {
                return null;
            }
            if (array.controllers() <= counted) {
                long price = array.price()
                        + bank.count() * battery.price()
                        + (inverter == null ? 0 : inverters * inverter.price());
                return new Whole(volts, inverter, inverters, bank, offer.modules.get(module), controller, array, price);
            }
            counted = array.controllers();
        }
        return null;
    }

    /** Charging voltage on the coldest day. */
    double coldCharging(BankOpinion.Bank bank) {
        Goods.Cells cells = bank.battery.cells();
        double from = Math.min(ask.warmestCompensated, max(ask.coldestCompensated, bank.temperature));
        double cell = cells.absorption() + cells.compensated() * ask.leadAcidCompensation * (from - 25);
        return cell * bank.trueNominal / cells.nominal();
    }

    LoadOpinion.Month[] withOwnDraw(LoadOpinion.Month[] loads, BankOpinion.Bank bank, double controllerWatts) {
        LoadOpinion.Month[] all = new LoadOpinion.Month[12];
        for (int m = 0; m < 12; m++) {
            double watts = controllerWatts + BankOpinion.heaterWatts(ask, bank, m);
            all[m] = LoadOpinion.with(loads[m], watts, sun[m]);
        }
        return all;
    }

    BankOpinion.Need need(LoadOpinion.Curve curve, LoadOpinion.Month[] months) {
        double daily = 0;
        double worst = 0;
        double running = 0;
        for (LoadOpinion.Month month : months) {
            daily = max(daily, month.daily);
            worst = max(worst, month.worst);
            running = max(running, month.running);
        }
        return new BankOpinion.Need(
                daily,
                worst,
                running,
                curve.draw(peak.watts) + peak.dcWatts,
                curve.draw(peak.surgeWatts) + peak.dcWatts);
    }
}
