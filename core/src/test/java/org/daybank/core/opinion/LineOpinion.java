package org.daybank.core.opinion;

import static java.lang.Math.hypot;
import static java.lang.Math.max;

import java.util.ArrayList;
import java.util.List;

/**
 * What the fullest line of a service carries: whichever single unit of a load is on one line alone, running or starting, the
 * rest spread evenly over all lines. Every hour, every set of starts and every load is tried.
 */
final class LineOpinion {
    double watts;
    double voltAmps;
    double startVoltAmps;

    static LineOpinion of(Ask ask) {
        LineOpinion line = new LineOpinion();
        for (int m = 0; m < 12; m++) {
            for (int h = 0; h < 24; h++) {
                List<Ask.Load> running = new ArrayList<>();
                for (Ask.Load load : ask.loads) {
                    if (load.ac() && load.months().contains(m) && load.on(h) > 0) {
                        running.add(load);
                    }
                }
                line.moment(ask, running);
            }
        }
        return line;
    }

    private void moment(Ask ask, List<Ask.Load> running) {
        int all = running.size();
        double p = 0;
        double q = 0;
        for (Ask.Load load : running) {
            p += load.count() * load.watts();
            q += load.count() * vars(load);
        }
        for (Ask.Load load : running) {
            watts = max(watts, alone(p, load.watts(), ask.lines));
            voltAmps = max(voltAmps, hypot(alone(p, load.watts(), ask.lines), alone(q, vars(load), ask.lines)));
        }
        int free = 0;
        for (int i = 0; i < all; i++) {
            free |= joins(ask, running.get(i)) ? 1 << i : 0;
        }
        // those that start by themselves in any set, and besides none or one of the others
        for (int set = free; ; set = (set - 1) & free) {
            for (int hand = -1; hand < all; hand++) {
                if (hand < 0 || (free >> hand & 1) == 0) {
                    start(ask, running, p, q, set, hand);
                }
            }
            if (set == 0) {
                break;
            }
        }
    }

    private void start(Ask ask, List<Ask.Load> running, double p, double q, int set, int hand) {
        double setP = p;
        double setQ = q;
        for (int i = 0; i < running.size(); i++) {
            Ask.Load load = running.get(i);
            double units = (set >> i & 1) == 1 ? load.count() : i == hand ? Math.min(1, load.count()) : 0;
            setP += units * moreWatts(load);
            setQ += units * moreVars(load);
        }
        for (int i = 0; i < running.size(); i++) {
            Ask.Load load = running.get(i);
            boolean starts = (set >> i & 1) == 1 || i == hand;
            double ownP = load.watts() + (starts ? moreWatts(load) : 0);
            double ownQ = vars(load) + (starts ? moreVars(load) : 0);
            startVoltAmps = max(startVoltAmps, hypot(alone(setP, ownP, ask.lines), alone(setQ, ownQ, ask.lines)));
        }
    }

    private static boolean joins(Ask ask, Ask.Load load) {
        return ask.coincidentStarts.equals("all")
                || (ask.coincidentStarts.equals("selfSwitching") && load.selfSwitching());
    }

    private static double alone(double all, double own, int lines) {
        return (all - own) / lines + own;
    }

    private static double vars(Ask.Load load) {
        return load.watts() * Math.tan(Math.acos(load.powerFactor()));
    }

    private static double moreWatts(Ask.Load load) {
        return load.startingMultiple() <= 1
                ? 0
                : load.startingMultiple() * load.watts() / load.powerFactor() * load.startPowerFactor() - load.watts();
    }

    private static double moreVars(Ask.Load load) {
        double sine = Math.sqrt(1 - load.startPowerFactor() * load.startPowerFactor());
        return load.startingMultiple() <= 1
                ? 0
                : load.startingMultiple() * load.watts() / load.powerFactor() * sine - vars(load);
    }

    private LineOpinion() {}
}
