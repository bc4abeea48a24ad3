package org.daybank.core;

import java.util.concurrent.TimeUnit;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignBriefBuilder;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.SystemDesigner;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole job for one brief over the bundled catalogue, search included. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SearchBenchmark {
    private final Catalog catalog = Catalog.sample();
    private final DesignBrief brief = DesignBriefBuilder.builder()
            .site(SimulationBenchmark.SITE)
            .loads(SimulationBenchmark.loads(true))
            .build();

    @Benchmark
    public DesignOutcome wholeJob() {
        return SystemDesigner.design(brief, catalog);
    }
}
