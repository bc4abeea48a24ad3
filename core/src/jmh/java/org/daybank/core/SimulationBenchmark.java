package org.daybank.core;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.ArrayYears;
import org.daybank.core.simulation.SimulatedSystem;
import org.daybank.core.simulation.SimulatedSystemBuilder;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.simulation.SimulationPolicy;
import org.daybank.core.simulation.Simulator;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What one design through one year of hours costs, and the parts that designs under one sky share. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SimulationBenchmark {
    private static final int HOURS = 8760;
    private static final List<Ratio> NO_SNOW = Collections.nCopies(12, Ratio.ZERO);

    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(46))
            .recordLow(Temperature.celsius(-20))
            .months(MonthlyClimateBuilder.builder()
                    .dailyIrradiation(Collections.nCopies(12, Irradiation.kilowattHoursPerSquareMetre(1.2)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(8)))
                    .build())
            .build();
    private static final Plane PLANE = new Plane(Angle.degrees(50), Angle.degrees(180));
    private final SimulatedSystem system = system(true);
    private final SunnyYears sun = sun(0);
    private final ArrayYears array = ArrayYears.of(system, sun, ArrayPolicy.standard());
    private final SimulationPolicy policy = SimulationPolicy.standard().withSettle(false);
    private final double[] bare = new Random(1).doubles(HOURS).toArray();

    static SunnyYears sun(int seed) {
        return SunnyYears.synthetic(SITE, PLANE, seed, 1, SunPolicy.standard(), SyntheticPolicy.standard());
    }

    static List<Load> loads(boolean essential) {
        return List.of(
                                LoadBuilder.builder()
                                        .name("freezer")
                                        .kind(LoadKind.COMPRESSOR)
                                        .supply(Supply.AC)
                                        .power(Power.watts(110))
                                        .hoursPerDay(24.0)
                                        .essential(essential)
                                        .build(),
                                LoadBuilder.builder()
                                        .name("light")
                                        .kind(LoadKind.LIGHTING)
                                        .supply(Supply.DC)
                                        .power(Power.watts(40))
                                        .hoursPerDay(6.0)
                                        .build());
    }

    static SimulatedSystem system(boolean essential) {
        LoadProfile loads = LoadProfile.of(
                EnergyDemandBuilder.builder()
                        .loads(loads(essential))
                        .latitude(Latitude.degrees(46))
                        .autonomy(TimeSpan.days(3))
                        .build(),
                LoadPolicy.standard());
        Catalog catalog = Catalog.sample();
        Battery battery = catalog.batteries().get(catalog.batteries().size() - 1);
        return SimulatedSystemBuilder.builder()
                .loads(loads)
                .array(ArrayLayout.shared(catalog.modules().get(7), 3, 2, 1))
                .controller(catalog.controllers().get(9))
                .bank(BankLayout.of(battery, Voltage.volts(48), 1, 1))
                .depthOfDischarge(Ratio.of(0.8))
                .build();
    }

    /** Ten sines an hour, to set the others beside. */
    @Benchmark
    public double baseline() {
        double sum = 0;
        for (double value : bare) {
            for (int i = 0; i < 10; i++) {
                sum += Math.sin(value + i);
            }
        }
        return sum;
    }

    /** A made-up year and its light on the plane. */
    @Benchmark
    public SunnyYears madeUpYear() {
        return sun(1);
    }

    /** What a module makes of it. */
    @Benchmark
    public ArrayYears moduleYear() {
        return ArrayYears.of(system, sun, ArrayPolicy.standard());
    }

    /** The steps of one design through the year. */
    @Benchmark
    public Simulation designYear() {
        return Simulator.run(system, array, NO_SNOW, ArrayPolicy.standard(), policy);
    }

    /** The module's hours and the steps. */
    @Benchmark
    public Simulation designYearWithItsModule() {
        return Simulator.run(system, sun, NO_SNOW, ArrayPolicy.standard(), policy);
    }
}
