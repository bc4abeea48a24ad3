package org.daybank.core;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.simulation.ArrayYears;
import org.daybank.core.simulation.DesignGrid;
import org.daybank.core.simulation.ManyDesigns;
import org.daybank.core.simulation.SimulatedSystem;
import org.daybank.core.simulation.SimulationPolicy;
import org.daybank.core.simulation.SizingContour;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.simulation.ZeroLossBank;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What many sizes of one system cost, on all processors; {@link SimulationBenchmark} tells what one costs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ManyDesignsBenchmark {
    private static final List<Ratio> ASKED = IntStream.rangeClosed(0, 9)
            .mapToObj(i -> Ratio.of(i == 0 ? 0 : 0.001 * Math.pow(2, i - 1)))
            .toList();

    /** What the controller draws itself: nothing, or something, which takes more loops. */
    @Param({"0", "2"})
    private double ownWatts;

    private ManyDesigns many;

    /** The system under a made-up sky. */
    @Setup
    public void system() {
        many = many(ownWatts);
    }

    private static ManyDesigns many(double ownWatts) {
        SimulatedSystem drawing = SimulationBenchmark.system(false)
                .withHousing(new BankHousing(BankLocation.INDOORS, Temperature.celsius(15), null, null));
        SimulatedSystem system =
                drawing.withController(drawing.controller().withSelfConsumption(Power.watts(ownWatts)));
        SunnyYears sun = SimulationBenchmark.sun(0);
        return ManyDesigns.of(
                system,
                ArrayYears.of(system, sun, ArrayPolicy.standard()),
                Collections.nCopies(12, Ratio.ZERO),
                ArrayPolicy.standard(),
                SimulationPolicy.standard().withReconnectRise(Ratio.ZERO).withSettle(false));
    }

    private static List<Power> arrays(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> Power.watts(6000.0 * i / count))
                .toList();
    }

    private static List<Energy> banks(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> Energy.wattHours(30_000.0 * i / count))
                .toList();
    }

    /** A hundred designs. */
    @Benchmark
    public DesignGrid tenByTen() {
        return many.run(arrays(10), banks(10));
    }

    /** Ten thousand designs. */
    @Benchmark
    public DesignGrid hundredByHundred() {
        return many.run(arrays(100), banks(100));
    }

    /** Ten contours over a thousand arrays and a thousand banks. */
    @Benchmark
    public List<SizingContour> tenContoursOverAMillion() {
        return many.leastBanks(arrays(1000), banks(1000), ASKED);
    }

    /** Storage without loss for a thousand arrays. */
    @Benchmark
    public List<ZeroLossBank> thousandBanksWithoutLoss() {
        return many.zeroLossBanks(arrays(1000));
    }
}
