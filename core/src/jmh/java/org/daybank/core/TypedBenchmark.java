package org.daybank.core;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.daybank.core.quantity.Charge;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The arithmetic of a bank and its current, on quantities and on bare numbers. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TypedBenchmark {
    private static final int COUNT = 1024;
    private static final double MOST = 125;

    private final double[] watts = new Random(1).doubles(COUNT, 10, 2000).toArray();
    private final double[] hours = new Random(2).doubles(COUNT, 0, 24).toArray();

    /** Energy of a load, charge of three days of it at a depth, with a margin, and the current it draws if that is allowed. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double quantities() {
        Voltage bank = Voltage.volts(25.6);
        Ratio depth = Ratio.of(0.8);
        Ratio margin = Ratio.of(0.1);
        Current most = Current.amperes(MOST);
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            Power power = Power.watts(watts[i]);
            Energy daily = power.times(TimeSpan.hours(hours[i]));
            Charge needed = daily.times(3)
                    .dividedBy(bank)
                    .dividedBy(depth.fraction())
                    .times(margin.onePlus());
            Current drawn = power.dividedBy(bank);
            sum += needed.ampereHours() + (drawn.compareTo(most) <= 0 ? drawn.amperes() : 0);
        }
        return sum;
    }

    /** The same on bare numbers. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double bareNumbers() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            double daily = watts[i] * hours[i];
            double needed = daily * 3 / 25.6 / 0.8 * (1 + 0.1);
            double drawn = watts[i] / 25.6;
            sum += needed + (drawn <= MOST ? drawn : 0);
        }
        return sum;
    }

    /** The same with what every quantity promises: no number that is not finite, no negative zero. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double checkedNumbers() {
        double bank = checked(25.6);
        double depth = checked(0.8);
        double margin = checked(0.1);
        double most = checked(MOST);
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            double power = checked(watts[i]);
            double daily = checked(power * checked(hours[i]));
            double needed = checked(checked(checked(checked(daily * 3) / bank) / depth) * (1 + margin));
            double drawn = checked(power / bank);
            sum += needed + (Double.compare(drawn, most) <= 0 ? drawn : 0);
        }
        return sum;
    }

    private static double checked(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A number must be finite but is " + number);
        }
        return number + 0.0;
    }
}
