package org.daybank.core.opinion;

import static java.lang.Math.ceil;
import static java.lang.Math.max;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
            int bankStrings,
            Goods.Module module,
            Goods.Controller controller,
            StringOpinion.Array array,
            long price) {}

    private final Ask ask;
    private final Offer offer;
    final SunOpinion.Month[] sun;
    final LoadOpinion.Peak peak;
    private final Sunshine sunshine;
    private final double[][] tracked;
    private final double[][] passedOn;

    SecondOpinion(Ask ask, Offer offer) {
        this.ask = ask;
        this.offer = offer;
        sun = SunOpinion.months(ask);
        peak = LoadOpinion.peak(ask);
        sunshine = new Sunshine(sun);
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
        double listed = surge == null ? 0 : surge.getValue();
        count = max(count, ceil(peak.surgeVoltAmps / max(listed, inverter.voltAmps() * left)));
        boolean sine = ask.loads.stream().anyMatch(load -> load.ac() && load.needsSine());
        double current = count * inverter.watts() / inverter.fullEfficiency() / inverter.lowestVolts();
        boolean does = inverter.busVolts() == volts
                && ask.singlePhase
                && count <= inverter.mostInParallel()
                && (inverter.sine() || !sine)
                && Math.abs(inverter.outputVolts() - ask.serviceVolts) <= ask.voltageTolerance * ask.serviceVolts
                && inverter.hertz().contains(ask.serviceHertz)
                && inverter.functions().containsAll(ask.inverterFunctions)
                && current <= ask.bankCurrent;
        return does ? (int) count : 0;
    }

    private Whole bestBehind(double volts, Goods.Inverter inverter, int inverters, Whole soFar) {
        Whole best = soFar;
        Behind behind = new Behind(inverter, inverters);
        for (Goods.Battery battery : offer.batteries) {
            BankOpinion.Bank placed = BankOpinion.placed(ask, battery, volts);
            boolean stands = placed != null
                    && ask.chemistries.contains(battery.cells().chemistry())
                    && (inverter == null || placed.charging(ask, placed.temperature) <= inverter.highestVolts());
            for (Goods.Controller controller : stands ? offer.controllers : List.<Goods.Controller>of()) {
                for (int i = 0; i < tracked.length; i++) {
                    for (int strings = 1; strings <= battery.mostInParallel(); strings++) {
                        long bound = best == null ? Long.MAX_VALUE : best.price;
                        if ((long) strings * placed.series * battery.price() >= bound) {
                            break;
                        }
                        Whole whole = whole(volts, behind, battery, strings, i, controller, bound);
                        best = whole == null ? best : whole;
                    }
                }
            }
        }
        return best;
    }

    /** One combination; null when it breaks a rule or is too dear. The controllers' own draw is counted until it agrees. */
    private Whole whole(
            double volts,
            Behind behind,
            Goods.Battery battery,
            int strings,
            int module,
            Goods.Controller controller,
            long lessThan) {
        int counted = 0;
        for (int pass = 0; pass < 5; pass++) {
            Sized sized = behind.sized(battery, volts, counted * controller.selfWatts());
            if (sized.bank == null || sized.bank.parallel > strings) {
                return null;
            }
            BankOpinion.Bank bank = sized.bank;
            long others = (long) strings * bank.series * battery.price()
                    + (behind.inverter == null ? 0 : behind.inverters * behind.inverter.price());
            Goods.Cells cells = battery.cells();
            StringOpinion.Array array = StringOpinion.cheapest(
                    ask,
                    offer.modules.get(module),
                    controller,
                    sunshine,
                    new StringOpinion.Case(
                            volts,
                            bank,
                            YieldOpinion.modules(
                                    ask,
                                    sized.months,
                                    tracked[module],
                                    controller.efficiency(),
                                    cells.energyEfficiency()),
                            YieldOpinion.modules(
                                    ask, sized.months, passedOn[module], bank.trueNominal, cells.chargeEfficiency()),
                            bank.mostChargeAmps(ask, strings),
                            peak.dcWatts / bank.disconnect()),
                    lessThan - others);
            if (array == null) {
                return null;
            }
            if (array.controllers() <= counted) {
                return new Whole(
                        volts,
                        behind.inverter,
                        behind.inverters,
                        bank,
                        strings,
                        offer.modules.get(module),
                        controller,
                        array,
                        others + array.price());
            }
            counted = array.controllers();
        }
        return null;
    }

    /** A bank and the months it was sized for. */
    private record Sized(BankOpinion.Bank bank, List<LoadOpinion.Month> months) {}

    /** The loads behind one inverter, with what was reckoned for them already. */
    private final class Behind {
        final Goods.Inverter inverter;
        final int inverters;
        final LoadOpinion.Curve curve;
        final LoadOpinion.Month[] loads;
        private final Map<List<Object>, List<LoadOpinion.Month>> months = new HashMap<>();
        private final Map<List<Object>, Sized> banks = new HashMap<>();

        Behind(Goods.Inverter inverter, int inverters) {
            this.inverter = inverter;
            this.inverters = inverters;
            curve = inverter == null ? LoadOpinion.Curve.NONE : LoadOpinion.Curve.of(inverter, inverters);
            loads = LoadOpinion.months(ask, curve, sun);
        }

        Sized sized(Goods.Battery battery, double volts, double controllerWatts) {
            return banks.computeIfAbsent(List.of(battery.model(), controllerWatts), key -> {
                BankOpinion.Bank bank = BankOpinion.placed(ask, battery, volts);
                List<LoadOpinion.Month> all = months.computeIfAbsent(
                        List.of(bank.heated, controllerWatts),
                        any -> List.of(withOwnDraw(loads, bank, controllerWatts)));
                boolean fits =
                        BankOpinion.size(ask, bank, BankOpinion.Need.of(ask, peak, inverter, inverters, curve, all));
                return new Sized(fits ? bank : null, all);
            });
        }
    }

    LoadOpinion.Month[] withOwnDraw(LoadOpinion.Month[] loads, BankOpinion.Bank bank, double controllerWatts) {
        LoadOpinion.Month[] all = new LoadOpinion.Month[12];
        for (int m = 0; m < 12; m++) {
            all[m] = LoadOpinion.with(
                    loads[m],
                    controllerWatts + BankOpinion.heaterWatts(ask, bank, m, false),
                    controllerWatts + BankOpinion.heaterWatts(ask, bank, m, true),
                    sun[m]);
        }
        return all;
    }
}
