package org.daybank.core.design;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.ArrayYears;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.simulation.Simulator;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/** Simulates systems through the same years; the yield of a module in them is calculated once. */
final class DesignSimulation {
    private final DesignBrief brief;
    private final Catalog catalog;
    private final Plane plane;
    private final SunnyYears sun;
    private final Map<Key, ArrayYears> modules = new HashMap<>();

    /** What the hourly yield of a module depends on. */
    private record Key(PvModule module, ControllerKind kind, int series, Voltage nominal, Voltage absorption) {}

    DesignSimulation(DesignBrief brief, Catalog catalog, Plane plane) {
        this.brief = brief;
        this.catalog = catalog;
        this.plane = plane;
        this.sun = SystemSimulator.years(brief, plane, brief.policy().system().simulatedYears());
    }

    /** Whether a brief calls for it: it has a weather year, or its policy a number of synthetic years. */
    static boolean required(DesignBrief brief) {
        return brief.weather() != null || brief.policy().system().simulatedYears() > 0;
    }

    Simulation of(CandidateSystem candidate) {
        return of(candidate, null);
    }

    /** The same with a generator, or none. */
    Simulation of(CandidateSystem candidate, @Nullable EngineRule engine) {
        var system = candidate.parts(plane).installed(brief, catalog).withEngine(engine);
        Key key = new Key(
                system.array().module(),
                system.controller().kind(),
                system.array().series(),
                system.bank().trueNominal(),
                system.resolved().absorption());
        ArrayYears array = modules.computeIfAbsent(
                key,
                any -> ArrayYears.of(
                        ModuleOutput.of(any.module(), brief.policy().array().yieldModel()),
                        any.kind().path(),
                        any.series(),
                        any.nominal(),
                        any.absorption(),
                        sun));
        List<Ratio> snowLoss = brief.resolved().site().months().snowLoss();
        return Simulator.run(
                system, array, snowLoss, brief.policy().array(), brief.policy().simulation());
    }
}
