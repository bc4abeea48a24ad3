package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankDemandBuilder;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;

class SweepProperties {
    record BankCase(BankDemand demand, BankPolicy policy) {}

    private static final BankDemand DEMAND = BankDemandBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.AGM)
            .lowest(Temperature.celsius(10))
            .build();

    private static final List<Sampling.Method> DRAWN =
            List.of(Sampling.Method.values()).subList(1, 4);

    @Property(tries = 60)
    void rowsDependOnTheirNumberAndTheSeedAlone(
            @ForAll @IntRange(min = 1, max = 3000) int count,
            @ForAll @IntRange(min = 0) int seed,
            @ForAll @IntRange(min = 1, max = 4) int threads,
            @ForAll @IntRange(max = 2) int method,
            @ForAll @IntRange(max = 1000) int from,
            @ForAll @IntRange(max = 1000) int length)
            throws IOException {
        CompiledSweep sweep = sweep(new Sampling(DRAWN.get(method), count, seed));
        List<String> all = lines(sweep, 0, count, 1);
        assertThat(lines(sweep, 0, count, threads)).isEqualTo(all);
        int first = Math.min(from, count);
        int end = Math.min(first + length, count);
        assertThat(lines(sweep, first, end, threads)).isEqualTo(all.subList(first, end));
        assertThat(sweep.rows(first, end).toList())
                .isEqualTo(
                        sweep.rows().parallel().skip(first).limit(end - first).toList());
    }

    @Property(tries = 20)
    void anotherSeedGivesOtherRows(
            @ForAll @IntRange(min = 1, max = 1 << 30) int seed, @ForAll @IntRange(max = 2) int method)
            throws IOException {
        assertThat(lines(sweep(new Sampling(DRAWN.get(method), 10, seed)), 0, 10, 1))
                .isNotEqualTo(lines(sweep(new Sampling(DRAWN.get(method), 10, seed + 1)), 0, 10, 1));
    }

    /** A case of a sweep is what the calculator says of the same record made by hand. */
    @Property(tries = 100)
    void aRowIsWhatTheCalculatorSays(
            @ForAll @IntRange(min = 0, max = 4) int autonomy, @ForAll @IntRange(min = 0, max = 6) int energy) {
        List<Row> rows = Sweep.of(
                        new BankCase(DEMAND, BankPolicy.standard()),
                        it -> BankCapacity.needed(it.demand(), it.policy()))
                .vary("policy.autonomy", Axis.range(TimeSpan.days(1), TimeSpan.days(5), 5))
                .vary("demand.dailyEnergy", Axis.range(Energy.kilowattHours(1), Energy.kilowattHours(4), 7))
                .output("requiredCapacity")
                .output("dischargeTime")
                .rows()
                .toList();
        BankCapacity byHand = BankCapacity.needed(
                BankDemandBuilder.builder()
                        .dailyEnergy(Energy.wattHours(1000 + 500 * energy))
                        .nominalVoltage(Voltage.volts(24))
                        .chemistry(Chemistry.AGM)
                        .lowest(Temperature.celsius(10))
                        .build(),
                BankPolicy.standard().withAutonomy(TimeSpan.days(1 + autonomy)));
        Row row = rows.get(7 * autonomy + energy);
        assertThat(row.number("requiredCapacity"))
                .hasValue(byHand.requiredCapacity().ampereHours());
        assertThat(row.number("dischargeTime")).hasValue(byHand.dischargeTime().hours());
    }

    private static CompiledSweep sweep(Sampling sampling) {
        return Sweep.of(
                        new BankCase(DEMAND, BankPolicy.standard()),
                        it -> BankCapacity.needed(it.demand(), it.policy()))
                .vary("policy.autonomy", Axis.range(TimeSpan.days(1), TimeSpan.days(70), 2))
                .vary("demand.dailyEnergy", Axis.drawn(Distribution.logNormal(Energy.kilowattHours(2), 1.4)))
                .vary(
                        "demand.lowest",
                        Axis.drawn(Distribution.normal(Temperature.celsius(5), TemperatureDifference.kelvins(9))))
                .vary(
                        "policy.depthOfDischarge.leadAcid",
                        Axis.drawn(Distribution.triangular(Ratio.of(0.3), Ratio.of(0.5), Ratio.of(0.8))))
                .vary("demand.chemistry", Axis.of(Chemistry.AGM, Chemistry.GEL, Chemistry.VENTED_LEAD_ACID))
                .output("requiredCapacity")
                .output("governing")
                .sampled(sampling)
                .compile();
    }

    private static List<String> lines(CompiledSweep sweep, long from, long to, int threads) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        sweep.write(RowFormat.CSV, out, from, to, threads);
        return out.toString(StandardCharsets.UTF_8).lines().skip(1).toList();
    }
}
