package org.daybank.core.simulation.kernel;

import java.util.List;

/** The storage from which nothing is ever lacking, by one pass over the hours. Safe for any number of threads. */
public final class SequentPeak {
    private final SharedFacts facts;
    private final List<SharedYear> years;
    private final boolean settle;

    /**
     * What one pass found.
     *
     * @param banks how many of the banks described
     * @param sustained whether they lack no more at the end than at the beginning
     */
    public record Storage(double banks, boolean sustained) {}

    /** Of these years, from a full bank; whether the first of them is run once before. */
    public SequentPeak(SharedFacts facts, List<SharedYear> years, boolean settle) {
        this.facts = facts;
        this.years = List.copyOf(years);
        this.settle = settle;
    }

    /** The storage beside so many modules. */
    public Storage of(double modules) {
        Pass pass = new Pass(modules);
        if (settle) {
            pass.through(years.get(0));
        }
        double before = pass.lacks;
        for (SharedYear year : years) {
            pass.through(year);
        }
        return new Storage(
                pass.wattHours / facts.capacityWattHours(),
                pass.lacks <= before + DesignBlock.ROUNDING * (pass.wattHours + before));
    }

    /** One array through the years. */
    private final class Pass {
        private final double modules;

        /** What the bank lacks of full. */
        private double lacks;

        /** What it must hold, by all hours until now. */
        private double wattHours;

        Pass(double modules) {
            this.modules = modules;
        }

        void through(SharedYear year) {
            for (int hour = 0; hour < year.hours(); hour++) {
                double over = modules * year.moduleWatts[hour] * facts.controllerEfficiency()
                        - facts.ownWatts()
                        - year.askedWatts[hour];
                if (over > 0) {
                    lacks -= Math.min(over * facts.chargeEfficiency(), facts.taperShare() * lacks);
                } else if (over < 0) {
                    lacks -= over;
                    double usable = 1 - year.floorShare[SharedYear.dayOf(hour)];
                    double limited = -over / facts.dischargeWatts() * facts.capacityWattHours();
                    wattHours = Math.max(wattHours, Math.max(limited, lacks / usable));
                }
            }
        }
    }
}
