package org.daybank.core.opinion;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.sqrt;

import java.util.ArrayList;
import java.util.List;

/**
 * What leaves the bank: {@code E = n · (P·h·duty + P_standby·(24 − h)) · d/7}; AC through
 * {@code P_dc = P_ac + P_r·(k0 + k1·p + k2·p²)} with loads that are on or off, each for itself; DC through its wiring.
 */
final class LoadOpinion {
    /** An inverter's losses; {@code rating} zero when there is none. */
    record Curve(double rating, double k0, double k1, double k2) {
        static final Curve NONE = new Curve(0, 0, 0, 0);

        /**
         * Through idle draw, full-load efficiency and best efficiency: the loss {@code k0/p + k1 + k2·p} is least at
         * {@code p = √(k0/k2)}, where it is {@code k1 + 2√(k0·k2)}, so that
         * {@code √k2 = √k0 + √(1/η_full − 1/η_peak)}.
         */
        static Curve of(Goods.Inverter inverter, int count) {
            double k0 = inverter.idle() / inverter.watts();
            double root = sqrt(k0) + sqrt(1 / inverter.fullEfficiency() - 1 / inverter.peakEfficiency());
            double k2 = root * root;
            return new Curve(inverter.watts() * count, k0, 1 / inverter.fullEfficiency() - 1 - k0 - k2, k2);
        }

        /** While no inverter is chosen. */
        static Curve stated(Ask ask, Peak peak) {
            double rating = max(1, peak.watts * (1 + ask.statedMargin));
            return new Curve(rating, ask.statedIdle, 1 / ask.statedEfficiency - 1, 0);
        }

        double draw(double acWatts) {
            return rating == 0 ? 0 : drawOf(acWatts, acWatts * acWatts) + rating * k0;
        }

        /** Without idle: of a mean and a mean square. */
        double drawOf(double mean, double square) {
            return rating == 0 ? 0 : mean * (1 + k1) + k2 / rating * square;
        }
    }

    /** Mean and worst day of one month, Wh; {@code hourly} is what leaves the bank on the mean day. */
    static final class Month {
        double ac;
        double dc;
        double inverterLoss;
        double wiringLoss;
        double daily;
        double worst;
        double dark;
        double running;
        final double[] hourly = new double[24];

        /** Expected square of the power in an hour over the square of its mean, in W²: what on and off adds. */
        final double[] unrest = new double[24];
    }

    /** The most at one moment. */
    static final class Peak {
        double watts;
        double voltAmps;
        double surgeWatts;
        double surgeVoltAmps;
        double dcWatts;
    }

    /** Without anything the system itself draws. */
    static Month[] months(Ask ask, Curve curve, SunOpinion.Month[] sun) {
        Month[] all = new Month[12];
        for (int m = 0; m < 12; m++) {
            all[m] = new Month();
            day(ask, curve, m, all[m]);
            settle(all[m], sun[m]);
        }
        return all;
    }

    /** The same month with a steady draw added. */
    static Month with(Month month, double watts, double wattsInWorstRun, SunOpinion.Month sun) {
        Month more = new Month();
        more.ac = month.ac;
        more.dc = month.dc;
        more.inverterLoss = month.inverterLoss;
        more.wiringLoss = month.wiringLoss;
        more.daily = month.daily + 24 * watts;
        more.worst = month.worst + 24 * wattsInWorstRun;
        for (int h = 0; h < 24; h++) {
            more.hourly[h] = month.hourly[h] + watts;
            more.unrest[h] = month.unrest[h];
        }
        settle(more, sun);
        return more;
    }

    private static void settle(Month month, SunOpinion.Month sun) {
        double dark = 0;
        double squares = 0;
        for (int h = 0; h < 24; h++) {
            dark += month.hourly[h] * sun.dark(h);
            squares += month.hourly[h] * month.hourly[h] + month.unrest[h];
        }
        month.dark = month.daily == 0 ? 0 : dark / month.daily;
        month.running = month.daily == 0 ? 0 : squares / month.daily;
    }

    private static void day(Ask ask, Curve curve, int m, Month month) {
        for (int h = 0; h < 24; h++) {
            double[] mean = hour(ask, curve, m, h, false);
            double[] worst = hour(ask, curve, m, h, true);
            month.ac += mean[0];
            month.dc += mean[2];
            month.inverterLoss += mean[1] - mean[0];
            month.wiringLoss += mean[3] - mean[2];
            month.hourly[h] = mean[1] + mean[3];
            month.unrest[h] = mean[4];
            month.daily += mean[1] + mean[3];
            month.worst += worst[1] + worst[3];
        }
    }

    /**
     * AC at the loads and at the bank, DC at the loads and at the bank, and the variance of what leaves the bank: that of the
     * loads, carried through the slope of the inverter's curve and through the DC wiring.
     */
    private static double[] hour(Ask ask, Curve curve, int m, int h, boolean worst) {
        double ac = 0;
        double spread = 0;
        double dc = 0;
        double dcSpread = 0;
        boolean idles = false;
        for (Ask.Load load : ask.loads) {
            if (!load.months().contains(m)) {
                continue;
            }
            double used = worst ? share(load.daysPerWeek(), ask.autonomyDays) : load.daysPerWeek() / 7;
            double on = load.on(h);
            double runs = used * on * load.duty();
            double waits = used * (1 - on);
            double watts = load.count() * load.watts();
            double standby = load.count() * load.standby();
            double mean = runs * watts + waits * standby;
            double square = runs * watts * watts + waits * standby * standby - mean * mean;
            if (load.ac()) {
                ac += mean;
                spread += square;
                // always on: in every month in which any AC load is used
                idles |= ask.inverterAlwaysOn || on > 0 || standby > 0;
            } else {
                dc += mean;
                dcSpread += square;
            }
        }
        double drawn = curve.drawOf(ac, spread + ac * ac) + (idles ? curve.k0 * curve.rating : 0);
        double wiring = ask.dcWiringEfficiency;
        double slope = curve.rating == 0 ? 0 : 1 + curve.k1 + 2 * curve.k2 * ac / curve.rating;
        double unrest = slope * slope * spread + dcSpread / wiring / wiring;
        return new double[] {ac, drawn, dc, dc / wiring, unrest};
    }

    /** Days of use among the worst run of consecutive days, over its length; the same days in each week. */
    static double share(double daysPerWeek, double runDays) {
        double weeks = Math.floor(runDays / 7);
        return (weeks * daysPerWeek + min(runDays - 7 * weeks, daysPerWeek)) / runDays;
    }

    /** The peaks, over all hours and months. */
    static Peak peak(Ask ask) {
        Peak peak = new Peak();
        for (int m = 0; m < 12; m++) {
            for (int h = 0; h < 24; h++) {
                moment(ask, m, h, peak);
            }
        }
        for (Ask.Load load : ask.loads) {
            peak.dcWatts += load.ac() ? 0 : load.count() * load.watts() / ask.dcWiringEfficiency;
        }
        return peak;
    }

    /** Every set of starts that policy lets coincide is tried. */
    private static void moment(Ask ask, int m, int h, Peak peak) {
        double p = 0;
        double q = 0;
        List<double[]> joining = new ArrayList<>();
        List<double[]> alone = new ArrayList<>();
        for (Ask.Load load : ask.loads) {
            if (runs(load, m, h)) {
                p += load.count() * load.watts();
                q += load.count() * vars(load);
                boolean joins = ask.coincidentStarts.equals("all")
                        || (ask.coincidentStarts.equals("selfSwitching") && load.selfSwitching());
                // of several that are switched by hand, one starts
                (joins ? joining : alone).add(start(load, joins ? load.count() : min(1, load.count())));
            }
        }
        alone.add(new double[2]);
        peak.watts = max(peak.watts, p);
        peak.voltAmps = max(peak.voltAmps, Math.hypot(p, q));
        for (int set = 0; set < 1 << joining.size(); set++) {
            double setP = p;
            double setQ = q;
            for (int i = 0; i < joining.size(); i++) {
                setP += ((set >> i) & 1) * joining.get(i)[0];
                setQ += ((set >> i) & 1) * joining.get(i)[1];
            }
            for (double[] one : alone) {
                peak.surgeWatts = max(peak.surgeWatts, setP + one[0]);
                peak.surgeVoltAmps = max(peak.surgeVoltAmps, Math.hypot(setP + one[0], setQ + one[1]));
            }
        }
    }

    private static boolean runs(Ask.Load load, int m, int h) {
        return load.ac() && load.months().contains(m) && load.on(h) > 0;
    }

    private static double vars(Ask.Load load) {
        return load.watts() * Math.tan(Math.acos(load.powerFactor()));
    }

    /**
     * What a start adds in W and var: the multiple of the running volt-amperes at the start's own power factor, in place of
     * what runs. A load that takes no more when it starts than when it runs has no start to speak of.
     */
    private static double[] start(Ask.Load load, int units) {
        if (load.startingMultiple() <= 1) {
            return new double[2];
        }
        double voltAmps = load.startingMultiple() * load.watts() / load.powerFactor();
        double sine = sqrt(1 - load.startPowerFactor() * load.startPowerFactor());
        return new double[] {
            units * (voltAmps * load.startPowerFactor() - load.watts()), units * (voltAmps * sine - vars(load))
        };
    }

    private LoadOpinion() {}
}
