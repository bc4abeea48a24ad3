package org.daybank.core.opinion;

import static java.lang.Math.ceil;
import static java.lang.Math.exp;
import static java.lang.Math.log;
import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.pow;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** A bank by the logic of IEEE 1013: temperature first, then capacity, then whole strings of one battery. */
final class BankOpinion {
    /** What the bank must do: Wh a day, W; the inverter's cut-off in V, zero without one; the cable's resistance in V of the bank's for each A. */
    record Need(
            double daily, double worst, double running, double continuous, double surge, double cutOff, double drop) {
        /** At the bank's terminals; the running power is that of the month with the worst run. */
        static Need of(
                Ask ask,
                LoadOpinion.Peak peak,
                Goods.Inverter inverter,
                int inverters,
                LoadOpinion.Curve curve,
                List<LoadOpinion.Month> months) {
            double daily = 0;
            double worst = 0;
            double running = 0;
            for (LoadOpinion.Month month : months) {
                daily = max(daily, month.daily);
                running = month.worst > worst ? month.running : running;
                worst = max(worst, month.worst);
            }
            return new Need(
                    daily,
                    worst,
                    running,
                    curve.draw(peak.watts) + peak.dcWatts,
                    (inverter == null ? 0 : peak.surgeWatts / inverter.fullEfficiency()) + peak.dcWatts,
                    inverter == null ? 0 : inverter.lowestVolts(),
                    inverter == null
                            ? 0
                            : ask.bankDrop
                                    / (inverters
                                            * inverter.watts()
                                            / inverter.fullEfficiency()
                                            / inverter.lowestVolts()));
        }
    }

    /** One battery laid out; Ah, V, A. */
    static final class Bank {
        Goods.Battery battery;
        double temperature;
        boolean heated;
        double trueNominal;
        double autonomyCharge;
        double byDepth;
        double byDailyDepth;
        double bySurge;
        double factor;
        double required;
        double hours;
        double exactStrings;
        int series;
        int parallel;

        int count() {
            return series * parallel;
        }

        /** Charging current that so many strings take. */
        double mostChargeAmps(Ask ask, int strings) {
            return battery.chargeAmps() * (1 + share(ask, battery) * (strings - 1));
        }

        double disconnect() {
            return battery.cells().disconnect() * trueNominal / battery.cells().nominal();
        }

        /** Charging voltage at a temperature of the bank, compensated. */
        double charging(Ask ask, double celsius) {
            double from = min(ask.warmestCompensated, max(ask.coldestCompensated, celsius));
            double compensation = battery.cells().compensated() * ask.leadAcidCompensation;
            return (battery.cells().absorption() + compensation * (from - 25))
                    * trueNominal
                    / battery.cells().nominal();
        }

        /** Charging voltage on the hottest day: indoors no hotter than the warmest month's mean. */
        double chargingWhenHot(Ask ask) {
            double warmest = ask.meanAir[0];
            for (double air : ask.meanAir) {
                warmest = max(warmest, air);
            }
            return charging(ask, max(lowest(ask), ask.indoors ? warmest : ask.recordHigh));
        }
    }

    /** Coldest mean of the surroundings for as long as the autonomy. */
    static double lowest(Ask ask) {
        double coldest = ask.meanAir[0];
        for (double air : ask.meanAir) {
            coldest = min(coldest, air);
        }
        return ask.indoors ? ask.indoorLowest : coldest + ask.coldSpell * (ask.recordLow - coldest);
    }

    /**
     * Steady draw of a heater in a month, W: {@code UA·(T_set − T_room)}. A room is no colder than it ever gets, nor than the
     * air outside; a cold spell is as much colder than any month's mean as it is than the coldest month's.
     */
    static double heaterWatts(Ask ask, Bank bank, int month, boolean spell) {
        double coldest = ask.meanAir[0];
        for (double air : ask.meanAir) {
            coldest = min(coldest, air);
        }
        double outside = ask.meanAir[month] - (spell ? ask.coldSpell * (coldest - ask.recordLow) : 0);
        double room = ask.indoors ? max(ask.indoorLowest, outside) : outside;
        return bank.heated ? max(0, ask.heatLoss * (ask.heaterSetPoint - room)) : 0;
    }

    /** Where the cells stand, before anything is sized; null when they cannot stand there. */
    static Bank placed(Ask ask, Goods.Battery battery, double busVolts) {
        Bank bank = new Bank();
        bank.battery = battery;
        bank.trueNominal = battery.cells().trueNominal(busVolts);
        // a heater keeps its set point whether or not the cells could stand the cold
        bank.heated = battery.heater() > 0 && lowest(ask) < ask.heaterSetPoint;
        bank.temperature = bank.heated ? ask.heaterSetPoint : lowest(ask);
        if (bank.temperature < battery.coldestCharge()) {
            return null;
        }
        bank.series = (int) Math.round(busVolts / battery.volts());
        boolean whole = bank.series * battery.volts() == busVolts;
        boolean known = bank.temperature >= battery.capacityByTemperature().firstKey();
        boolean liquid = battery.cells().lithium() || bank.temperature > freezing(ask.depthLeadAcid);
        return whole && bank.series <= battery.mostInSeries() && known && liquid ? bank : null;
    }

    /** Sizes a placed bank; false when no number of strings will do. */
    static boolean size(Ask ask, Bank bank, Need need) {
        Goods.Battery battery = bank.battery;
        boolean lithium = battery.cells().lithium();
        double depth = lithium ? ask.depthLithium : ask.depthLeadAcid;
        if (ask.wornBankCarriesAutonomy) {
            depth = min(depth, ask.endOfLifeFraction);
        }
        bank.autonomyCharge = need.worst * ask.autonomyDays / bank.trueNominal;
        bank.byDepth = bank.autonomyCharge / depth;
        bank.byDailyDepth = need.daily / bank.trueNominal / (lithium ? ask.dailyDepthLithium : ask.dailyDepthLeadAcid);
        bank.bySurge = need.surge / bank.trueNominal / (lithium ? ask.surgeRateLithium : ask.surgeRateLeadAcid);
        bank.factor = between(battery.capacityByTemperature(), bank.temperature);
        bank.required = max(bank.byDepth, max(bank.byDailyDepth, bank.bySurge)) / bank.factor * (1 + ask.designMargin);
        bank.hours = need.running == 0 ? 0 : bank.required / (need.running / bank.trueNominal);
        double each =
                need.running == 0 ? battery.ampHoursByHours().lastEntry().getValue() : capacity(battery, bank.hours);
        bank.exactStrings = bank.required / each;
        double strings = max(1, ceil(bank.exactStrings));
        strings = max(strings, carrying(ask, battery, need.continuous / bank.disconnect() / battery.dischargeAmps()));
        strings = max(strings, carrying(ask, battery, need.surge / bank.disconnect() / battery.peakAmps()));
        if (bank.heated) {
            double watts = ask.heatLoss * (ask.heaterSetPoint - lowest(ask));
            strings = max(strings, ceil(watts / battery.heater() / bank.series));
        }
        if (need.cutOff > 0) {
            // U₀ − I·(R_b·series/strings·f + R_c) ≥ U_cut
            double amps = need.surge / need.cutOff;
            double spare = bank.trueNominal - need.cutOff - amps * min(1, need.drop * bank.trueNominal);
            if (spare <= 0) {
                return false;
            }
            strings = max(strings, ceil(amps * battery.ohms() * bank.series * ask.resistanceFactor / spare));
        }
        bank.parallel = (int) strings;
        return strings <= battery.mostInParallel();
    }

    /** Share of its own current that a string adds to the first. */
    private static double share(Ask ask, Goods.Battery battery) {
        return battery.cells().lithium() ? ask.parallelLithium : ask.parallelLeadAcid;
    }

    /** Strings that carry so many times the current of one. */
    private static double carrying(Ask ask, Goods.Battery battery, double times) {
        return 1 + ceil((times - 1) / share(ask, battery));
    }

    /** Ah at a discharge time: log-log between the points, never more than the slowest, Peukert below the fastest. */
    static double capacity(Goods.Battery battery, double hours) {
        NavigableMap<Double, Double> points = battery.ampHoursByHours();
        if (hours >= points.lastKey()) {
            return points.lastEntry().getValue();
        }
        if (hours < points.firstKey()) {
            double k = battery.cells().peukert();
            return points.firstEntry().getValue() * pow(hours / points.firstKey(), (k - 1) / k);
        }
        Map.Entry<Double, Double> low = points.floorEntry(hours);
        Map.Entry<Double, Double> high = points.higherEntry(hours);
        double share = log(hours / low.getKey()) / log(high.getKey() / low.getKey());
        return exp(log(low.getValue()) + share * log(high.getValue() / low.getValue()));
    }

    private static double between(NavigableMap<Double, Double> points, double x) {
        if (x >= points.lastKey()) {
            return points.lastEntry().getValue();
        }
        Map.Entry<Double, Double> low = points.floorEntry(x);
        Map.Entry<Double, Double> high = points.higherEntry(x);
        return low.getValue()
                + (high.getValue() - low.getValue()) * (x - low.getKey()) / (high.getKey() - low.getKey());
    }

    /** Freezing point at a depth of discharge: gravity from 1.27 when full to 1.10 when empty. */
    private static double freezing(double depth) {
        NavigableMap<Double, Double> points = new TreeMap<>(Map.of(1.10, -7.0, 1.15, -15.0, 1.20, -27.0, 1.27, -65.0));
        return between(points, max(1.10, 1.27 - 0.17 * depth));
    }

    private BankOpinion() {}
}
