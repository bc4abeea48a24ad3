package org.daybank.core;

import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.SingleDiode;
import org.daybank.core.array.kernel.DiodeKernel;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.site.Place;
import org.daybank.core.site.UtcOffset;
import org.daybank.core.site.WeatherCsvReader;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.site.WeatherYearBuilder;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a year of 8760 hours costs, beside bare arithmetic over as many hours. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class YearBenchmark {
    private static final int HOURS = 8760;

    private final WeatherYear weather = weather();
    private final HourlySky sky = HourlySky.of(weather, SunPolicy.standard());
    private final PvModule module = Catalog.sample().modules().get(0);
    private final DiodeKernel diode = SingleDiode.of(module).kernel();
    private final HourlySun sun = onPlane(sky);
    private final String csv = csv();

    private static WeatherYear weather() {
        Random dice = new Random(1);
        double[] global = new double[HOURS];
        double[] air = new double[HOURS];
        for (int hour = 0; hour < HOURS; hour++) {
            double noon = Math.cos(Math.PI * (hour % 24 - 11.5) / 12);
            global[hour] = Math.max(0, 500 * noon * (0.3 + 0.7 * dice.nextDouble()));
            air[hour] = 10 + 5 * noon;
        }
        return WeatherYearBuilder.builder()
                .place(new Place(
                        Latitude.degrees(20), Longitude.degrees(0), UtcOffset.hours(0), Length.metres(100)))
                .year(2025)
                .global(HourlySeries.wattsPerSquareMetre(global))
                .air(HourlySeries.celsius(air))
                .build();
    }

    private String csv() {
        StringBuilder text = new StringBuilder("global_W/m2,air_Cel\n");
        for (int hour = 0; hour < HOURS; hour++) {
            text.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.1f%n",
                    weather.global().at(hour),
                    weather.air().at(hour)));
        }
        return text.toString();
    }

    private static HourlySun onPlane(HourlySky sky) {
        return sky.on(ExposureBuilder.builder()
                .plane(new Plane(Angle.degrees(35), Angle.degrees(180)))
                .build());
    }

    /** Ten sines an hour: about what the trigonometry alone must cost. */
    @Benchmark
    public double baselineTenSinesAnHour() {
        double sum = 0;
        for (int i = 0; i < 10 * HOURS; i++) {
            sum += Math.sin(i * 0.001);
        }
        return sum;
    }

    @Benchmark
    public HourlySun positionsSplitAndPerezOnOnePlane() {
        return onPlane(HourlySky.of(weather, SunPolicy.standard()));
    }

    @Benchmark
    public HourlySun perezOnAnotherPlane() {
        return onPlane(sky);
    }

    @Benchmark
    public double maximumPowerOfEveryHour() {
        double wattHours = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            wattHours += diode.maximumPowerWatts(
                    sun.planeOfArray().at(hour), weather.air().at(hour));
        }
        return wattHours;
    }

    @Benchmark
    public WeatherYear csvToWeatherYear() {
        return WeatherCsvReader.read(csv, weather.place(), weather.year());
    }
}
