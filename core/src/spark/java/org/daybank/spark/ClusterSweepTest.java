package org.daybank.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankDemandBuilder;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sweep.Axis;
import org.daybank.core.sweep.Distribution;
import org.daybank.core.sweep.RowFormat;
import org.daybank.core.sweep.Sampling;
import org.daybank.core.sweep.Sweep;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rows of a cluster are those of one machine. */
class ClusterSweepTest {
    private static final int ROWS = 100_003;
    private static final int ROWS_PER_TASK = 9_000;

    private static JavaSparkContext spark;

    record BankCase(BankDemand demand, BankPolicy policy) {}

    @BeforeAll
    static void start() {
        spark = new JavaSparkContext(new SparkConf()
                .setMaster("local[2]")
                .setAppName("sweep")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.bindAddress", "127.0.0.1")
                .set("spark.driver.host", "127.0.0.1"));
    }

    @AfterAll
    static void stop() {
        spark.stop();
    }

    @Test
    void theRowsOfTheClusterAreThoseOfOneMachine() throws IOException {
        for (Sampling.Method method :
                List.of(Sampling.Method.RANDOM, Sampling.Method.LATIN_HYPERCUBE, Sampling.Method.SOBOL)) {
            List<String> ofTheCluster =
                    ClusterSweep.lines(spark, () -> bank(method), ROWS_PER_TASK).collect();
            assertThat(ofTheCluster).isEqualTo(ofThisMachine(bank(method)));
        }
    }

    @Test
    void theFilesOfTheClusterMakeTheTable(@TempDir Path folder) throws IOException {
        Path table = folder.resolve("rows");
        ClusterSweep.lines(spark, () -> bank(Sampling.Method.SOBOL), ROWS_PER_TASK)
                .saveAsTextFile(table.toUri().toString());
        try (Stream<Path> files = Files.list(table)) {
            List<Path> parts = files.filter(file -> file.getFileName().toString().startsWith("part-"))
                    .sorted()
                    .toList();
            assertThat(parts).hasSize(12);
            StringBuilder text = new StringBuilder();
            for (Path part : parts) {
                text.append(Files.readString(part));
            }
            assertThat(text.toString().lines().toList()).isEqualTo(ofThisMachine(bank(Sampling.Method.SOBOL)));
        }
    }

    private static List<String> ofThisMachine(Sweep sweep) throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        sweep.compile().write(RowFormat.CSV, text);
        return text.toString(StandardCharsets.UTF_8).lines().skip(1).toList();
    }

    private static Sweep bank(Sampling.Method method) {
        BankDemand demand = BankDemandBuilder.builder()
                .dailyEnergy(Energy.kilowattHours(2.4))
                .nominalVoltage(Voltage.volts(24))
                .chemistry(Chemistry.AGM)
                .lowest(Temperature.celsius(5))
                .build();
        return Sweep.of(new BankCase(demand, BankPolicy.standard()), it -> BankCapacity.needed(it.demand(), it.policy()))
                .vary("demand.dailyEnergy", Axis.drawn(Distribution.logNormal(Energy.kilowattHours(2.4), 1.3)))
                .vary("policy.autonomy", Axis.range(TimeSpan.days(2), TimeSpan.days(65), 2))
                .vary("policy.depthOfDischarge.leadAcid", Axis.range(Ratio.of(0.4), Ratio.of(0.8), 2))
                .output("requiredCapacity")
                .output("governing")
                .sampled(new Sampling(method, ROWS, 11));
    }
}
