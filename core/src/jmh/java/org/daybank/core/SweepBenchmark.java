package org.daybank.core;

import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankDemandBuilder;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sweep.Axis;
import org.daybank.core.sweep.CompiledSweep;
import org.daybank.core.sweep.Distribution;
import org.daybank.core.sweep.RowFormat;
import org.daybank.core.sweep.Sampling;
import org.daybank.core.sweep.Sweep;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Rows a second of a sweep of the bank's capacity, from the choice of the case to CSV text. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SweepBenchmark {
    private static final int ROWS = 1_000_000;

    private static final BankDemand DEMAND = BankDemandBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .lowest(Temperature.celsius(10))
            .build();

    /** What a sweep varies. */
    public record BankCase(BankDemand demand, BankPolicy policy) {}

    /** Threads that calculate. */
    @Param({"1", "2"})
    public int threads;

    private final CompiledSweep grid = sweep().vary(
                    "policy.autonomy", Axis.range(TimeSpan.days(1), TimeSpan.days(10), 1000))
            .vary("demand.dailyEnergy", Axis.range(Energy.kilowattHours(1), Energy.kilowattHours(5), 1000))
            .compile();

    private final CompiledSweep sobol = sweep().vary(
                    "policy.autonomy", Axis.range(TimeSpan.days(1), TimeSpan.days(10), 2))
            .vary(
                    "demand.dailyEnergy",
                    Axis.drawn(Distribution.normal(Energy.kilowattHours(3), Energy.kilowattHours(0.3))))
            .sampled(Sampling.sobol(ROWS))
            .compile();

    /** A grid, whose slow axis changes seldom. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void gridToCsv() throws IOException {
        grid.write(RowFormat.CSV, OutputStream.nullOutputStream(), 0, ROWS, threads);
    }

    /** Drawn cases, in which facts and policy change with every row. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void sobolToCsv() throws IOException {
        sobol.write(RowFormat.CSV, OutputStream.nullOutputStream(), 0, ROWS, threads);
    }

    private static Sweep sweep() {
        return Sweep.of(
                        new BankCase(DEMAND, BankPolicy.standard()),
                        it -> BankCapacity.needed(it.demand(), it.policy()))
                .output("requiredCapacity");
    }
}
