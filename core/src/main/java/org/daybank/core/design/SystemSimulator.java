package org.daybank.core.design;

import java.util.List;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.simulation.ArrayYears;
import org.daybank.core.simulation.ManyDesigns;
import org.daybank.core.simulation.SimulatedSystem;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.simulation.Simulator;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.Plane;

/**
 * Runs a system that someone chose through the weather year of its brief, or through as many made-up years as the policy says.
 * Deterministic; safe for any number of threads.
 */
public final class SystemSimulator {
    private SystemSimulator() {}

    /**
     * What comes of the years.
     *
     * @throws org.daybank.core.schema.InvalidInput when a model is not in the catalogue, the parts do not go together, or the
     *     bank begins below the depth at which its loads are cut off
     */
    public static Simulation run(SimulationBrief chosen, Catalog catalog) {
        DesignBrief brief = chosen.brief();
        return Simulator.run(
                installed(chosen, catalog),
                years(chosen),
                brief.resolved().site().months().snowLoss(),
                brief.policy().array(),
                brief.policy().simulation());
    }

    /**
     * The same system with its array and bank in whatever sizes, under the same sky.
     *
     * @throws org.daybank.core.schema.InvalidInput when a model is not in the catalogue, the parts do not go together, or the
     *     system is none that can be run in many sizes; see {@link ManyDesigns}
     */
    public static ManyDesigns many(SimulationBrief chosen, Catalog catalog) {
        DesignBrief brief = chosen.brief();
        SimulatedSystem system = installed(chosen, catalog);
        return ManyDesigns.of(
                system,
                ArrayYears.of(system, years(chosen), brief.policy().array()),
                brief.resolved().site().months().snowLoss(),
                brief.policy().array(),
                brief.policy().simulation());
    }

    private static SimulatedSystem installed(SimulationBrief chosen, Catalog catalog) {
        return chosen.parts()
                .installed(chosen.brief(), catalog)
                .withEngine(chosen.engine())
                .withWells(chosen.wells());
    }

    private static SunnyYears years(SimulationBrief chosen) {
        DesignBrief brief = chosen.brief();
        return years(
                brief,
                chosen.parts().plane(),
                Math.max(1, brief.policy().system().simulatedYears()));
    }

    /** The weather year of a brief, or made-up ones. */
    static SunnyYears years(DesignBrief brief, Plane plane, int count) {
        WeatherYear weather = brief.weather();
        return weather != null
                ? SunnyYears.of(
                        List.of(weather),
                        SunnyYears.exposure(brief.resolved().site(), plane),
                        brief.policy().sun())
                : SunnyYears.synthetic(
                        brief.resolved().site(),
                        plane,
                        brief.policy().system().seed(),
                        count,
                        brief.policy().sun(),
                        brief.policy().synthetic());
    }
}
