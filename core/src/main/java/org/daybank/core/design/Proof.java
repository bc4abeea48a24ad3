package org.daybank.core.design;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.ArrayYears;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.simulation.Simulator;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/** Runs candidates through the same years; what a module brings in them is found once. */
final class Proof {
    private final DesignBrief brief;
    private final Catalog catalog;
    private final Plane plane;
    private final SunnyYears sun;
    private final Map<Key, ArrayYears> modules = new HashMap<>();

    /** What the hours of a module depend on. */
    private record Key(PvModule module, ControllerKind kind, int series, Voltage nominal, Voltage absorption) {}

    Proof(DesignBrief brief, Catalog catalog, Plane plane) {
        this.brief = brief;
        this.catalog = catalog;
        this.plane = plane;
        this.sun = SystemSimulator.years(brief, plane, brief.policy().system().simulatedYears());
    }

    /** Whether a brief asks for it: it has a weather year, or counts on some that are made up. */
    static boolean wanted(DesignBrief brief) {
        return brief.weather() != null || brief.policy().system().simulatedYears() > 0;
    }

    Simulation of(Candidate candidate) {
        return of(candidate, null);
    }

    /** The same with an engine that stands by, or none. */
    Simulation of(Candidate candidate, @Nullable EngineRule engine) {
        var system = SystemParts.of(candidate, plane).installed(brief, catalog).withEngine(engine);
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
