package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankDemand;
import org.daybank.core.bank.BankDemandBuilder;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.EnergyDemand;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.working.Solvable;
import org.junit.jupiter.api.Test;

class SweepTest {
    record BankCase(BankDemand demand, BankPolicy policy) {
        BankCapacity capacity() {
            return BankCapacity.needed(demand, policy);
        }
    }

    record LoadCase(EnergyDemand demand, LoadPolicy policy) {}

    /** A price with a comma and a name, to be written as text. */
    record Offer(String name, Money price, Optional<Integer> count) {}

    private static final BankDemand DEMAND = BankDemandBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .lowest(Temperature.celsius(10))
            .build();

    private static final Sweep BANK = Sweep.of(new BankCase(DEMAND, BankPolicy.standard()), BankCase::capacity)
            .output("requiredCapacity");

    @Test
    void aGridGoesThroughEveryCombinationTheLastAxisFastest() throws IOException {
        Sweep sweep = BANK.vary("policy.autonomy", Axis.of(TimeSpan.days(1), TimeSpan.days(3)))
                .vary(
                        "energy",
                        "demand.dailyEnergy",
                        Axis.range(Energy.kilowattHours(1.2), Energy.kilowattHours(2.4), 3))
                .output("governing");
        // by hand: 2400 · 3 / 25.6 = 281.25 Ah; / 0.8 = 351.5625; / 0.95 · 1.1 = 407.07236842105…; the rest in
        // proportion
        assertThat(sweep.rows().map(row -> row.number("requiredCapacity").orElseThrow()))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(
                        407.0723684210526 / 6,
                        407.0723684210526 / 4,
                        407.0723684210526 / 3,
                        407.0723684210526 / 2,
                        407.0723684210526 * 3 / 4,
                        407.0723684210526);
        assertThat(csv(sweep.compile(), 1).lines().toList())
                .startsWith("policy.autonomy_d,energy_Wh,requiredCapacity_Ah,governing,status,reason,message")
                .hasSize(7);
        assertThat(csv(sweep.compile(), 1).lines().toList().get(5))
                .startsWith("3,1800,305.30")
                .endsWith(",depth,ok,,");
    }

    @Test
    void whatWasLeftToItsDefaultFollowsWhatVaries() {
        // worst day and running current are those of the mean day: 2.4 kWh / 25.6 V / 24 h
        Sweep sweep = Sweep.of(DEMAND, demand -> demand)
                .vary("dailyEnergy", Axis.of(Energy.kilowattHours(4.8)))
                .output("worstDailyEnergy")
                .output("runningCurrent");
        Row row = sweep.rows().findFirst().orElseThrow();
        assertThat(row.number("worstDailyEnergy")).hasValue(4800);
        assertThat(row.number("runningCurrent").orElseThrow()).isEqualTo(4800 / 25.6 / 24, within(1e-12));
        Row given = Sweep.of(DEMAND.withWorstDailyEnergy(Energy.kilowattHours(3)), demand -> demand)
                .vary("dailyEnergy", Axis.of(Energy.kilowattHours(4.8)))
                .output("worstDailyEnergy")
                .rows()
                .findFirst()
                .orElseThrow();
        assertThat(given.number("worstDailyEnergy")).as("given").hasValue(3000);
    }

    @Test
    void anElementOfAListCanVaryAndNamesToo() {
        LoadCase base = new LoadCase(
                EnergyDemandBuilder.builder()
                        .loads(List.of(
                                LoadBuilder.builder()
                                        .name("radio")
                                        .supply(Supply.DC)
                                        .power(Power.watts(10))
                                        .hoursPerDay(24.0)
                                        .build(),
                                LoadBuilder.builder()
                                        .name("lamp")
                                        .supply(Supply.DC)
                                        .power(Power.watts(5))
                                        .hoursPerDay(4.0)
                                        .build()))
                        .build(),
                LoadPolicy.standard().withDcWiringEfficiency(Ratio.ONE));
        Sweep sweep = Sweep.of(base, it -> EnergyBudget.of(it.demand(), it.policy()))
                .vary("demand.loads[1].power", Axis.of(Power.watts(5), Power.watts(15)))
                .vary("demand.loads[0].supply", Axis.of(Supply.DC, Supply.AC))
                .output("january", "months[0].dailyEnergy");
        List<Row> rows = sweep.rows().toList();
        // 10 W · 24 h + 5 W · 4 h = 260 Wh; with 15 W, 300 Wh
        assertThat(rows.get(0).number("january").orElseThrow()).isEqualTo(260, within(1e-9));
        assertThat(rows.get(2).number("january").orElseThrow()).isEqualTo(300, within(1e-9));
        assertThat(rows.get(1).text("demand.loads[0].supply")).hasValue("ac");
        assertThat(rows.get(1).number("january").orElseThrow())
                .as("through an inverter")
                .isGreaterThan(270);
    }

    @Test
    void aCaseThatIsRefusedIsToldInItsRowAndTheOthersGoOn() throws IOException {
        Sweep sweep = BANK.vary("policy.autonomy", Axis.of(TimeSpan.days(1), TimeSpan.days(90), TimeSpan.days(3)));
        List<Row> rows = sweep.rows().toList();
        assertThat(rows.stream().map(Row::ok)).containsExactly(true, false, true);
        assertThat(rows.get(1).message()).hasValue("autonomy must be from 2.4 h to 60 d, but was 90 d.");
        assertThat(rows.get(1).failure()).containsInstanceOf(InvalidInput.class);
        assertThat(rows.get(1).number("policy.autonomy")).hasValue(90);
        assertThat(rows.get(1).number("requiredCapacity")).isEmpty();
        assertThat(csv(sweep.compile(), 2).lines().toList().get(2))
                .isEqualTo("90,,invalid,outOfRange,\"autonomy must be from 2.4 h to 60 d, but was 90 d.\"");
    }

    @Test
    void aDefectOfACalculatorEndsTheSweepAndIsNoRow() {
        Function<BankCase, BankCapacity> broken = it -> {
            if (it.policy().autonomy().days() > 1) {
                throw new NullPointerException("org.example.Secret");
            }
            return it.capacity();
        };
        Sweep sweep = Sweep.of(new BankCase(DEMAND, BankPolicy.standard().withAutonomy(TimeSpan.days(1))), broken)
                .vary("policy.autonomy", Axis.of(TimeSpan.days(1), TimeSpan.days(2)))
                .output("requiredCapacity");
        assertThatThrownBy(() -> sweep.rows().toList()).isInstanceOf(NullPointerException.class);
        ByteArrayOutputStream rows = new ByteArrayOutputStream();
        assertThatThrownBy(() -> sweep.compile().write(RowFormat.CSV, rows))
                .hasRootCauseInstanceOf(NullPointerException.class);
    }

    record Wish(double size) {}

    record Find(double size, Optional<Double> price) implements Solvable {
        @Override
        public Optional<String> unsolvedReason() {
            return price.isPresent() ? Optional.empty() : Optional.of("nothingFits");
        }

        @Override
        public String unsolvedStatus() {
            return "noDesign";
        }
    }

    private static Find find(Wish wish) {
        if (wish.size() > 20) {
            throw new ArithmeticException("too large");
        }
        return new Find(wish.size(), wish.size() > 10 ? Optional.empty() : Optional.of(2 * wish.size()));
    }

    @Test
    void aCaseWithoutASolutionIsNotOkAndSaysWhy() throws IOException {
        Sweep sweep = Sweep.of(new Wish(5), SweepTest::find)
                .vary("size", Axis.of(5.0, 15.0, 25.0))
                .output("found", "size")
                .output("price");
        List<Row> rows = sweep.rows().toList();
        assertThat(rows.stream().map(Row::ok)).containsExactly(true, false, false);
        assertThat(rows.stream().map(Row::status)).containsExactly("ok", "noDesign", "failed");
        assertThat(rows.get(0).reason()).isEmpty();
        assertThat(rows.get(1).reason()).hasValue("nothingFits");
        assertThat(rows.get(1).failure()).isEmpty();
        assertThat(rows.get(1).number("found"))
                .as("what is known without a solution")
                .hasValue(15);
        assertThat(rows.get(2).message()).hasValue("too large");
        assertThat(csv(sweep.compile(), 2)).isEqualTo("""
                        size,found,price,status,reason,message
                        5,5,10,ok,,
                        15,15,,noDesign,nothingFits,"the input is valid, but there is no solution: nothingFits"
                        25,,,failed,notCalculable,too large
                        """);
    }

    @Test
    void aSelectionInWhichNothingFitsHasNoSolution() {
        assertThat(new BankSelection(List.of(), List.of()).unsolvedReason()).hasValue("nothingFits");
        assertThat(new BankSelection(List.of(), List.of()).unsolvedStatus()).isEqualTo("noSolution");
    }

    @Test
    void textsAndMoneyAndWhatIsAbsent() throws IOException {
        Sweep sweep = Sweep.of(
                        new Offer("x", Money.of("12.50", "EUR"), Optional.of(3)),
                        offer -> offer.price().minorUnits() > 2000
                                ? new Offer(offer.name(), offer.price(), Optional.empty())
                                : offer)
                .vary("name", Axis.of("fuse, 10 A", "the \"big\" one"))
                .vary("price", Axis.range(Money.of("10", "EUR"), Money.of("30.50", "EUR"), 2))
                .output("paid", "price")
                .output("count");
        assertThat(csv(sweep.compile(), 1)).isEqualTo("""
                        name,price_EUR,paid_EUR,count,status,reason,message
                        "fuse, 10 A",10,10,3,ok,,
                        "fuse, 10 A",30.5,30.5,,ok,,
                        "the ""big"" one",10,10,3,ok,,
                        "the ""big"" one",30.5,30.5,,ok,,
                        """);
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        sweep.compile().write(RowFormat.NDJSON, lines, 2, 4, 1);
        assertThat(lines.toString(StandardCharsets.UTF_8)).isEqualTo("""
                        {"name":"the \\"big\\" one","price_EUR":10,"paid_EUR":10,"count":3,"status":"ok","reason":null,"message":null}
                        {"name":"the \\"big\\" one","price_EUR":30.5,"paid_EUR":30.5,"count":null,"status":"ok","reason":null,"message":null}
                        """);
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        Sweep sweep = BANK.vary("policy.autonomi", Axis.of(TimeSpan.days(1)))
                .vary("demand.dailyEnergy", Axis.of(Power.watts(3)))
                .vary("policy.depthOfDischarge", Axis.range(Ratio.of(0.5), Ratio.of(0.6), 3))
                .vary("policy..", Axis.of(TimeSpan.days(1)))
                .vary(
                        "demand.lowest",
                        Axis.drawn(Distribution.uniform(Temperature.celsius(0), Temperature.celsius(9))));
        assertThatThrownBy(sweep::compile)
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems().stream().map(Problem::path))
                                .containsExactly("/axes/0/path", "/axes/1", "/axes/2", "/axes/3/path", "/axes/4"))
                .hasMessageContaining("known are autonomy, depthOfDischarge")
                .hasMessageContaining("takes a value of Energy, but was given 3 W, a value of Power.")
                .hasMessageContaining("leadAcid, lithium")
                .hasMessageContaining("loads[3].power")
                .hasMessageContaining("no place on a grid");
    }

    @Test
    void onePlaceTakesOneAxis() {
        assertThatThrownBy(() -> BANK.vary("policy.depthOfDischarge.lithium", Axis.of(Ratio.of(0.5)))
                        .vary(
                                "whole",
                                "policy.depthOfDischarge",
                                Axis.of(BankPolicy.standard().surgeRate()))
                        .compile())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("two axes");
        assertThatThrownBy(() -> BANK.output("demand")
                        .vary("policy.autonomy", Axis.of(TimeSpan.days(1)))
                        .compile())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("demand is not one value");
        assertThatThrownBy(BANK::compile).isInstanceOf(InvalidInput.class).hasMessageContaining("nothing varies");
    }

    @Test
    void aStreamThatTakesNoMoreEndsTheWork() {
        Sweep sweep = BANK.vary("policy.autonomy", Axis.range(TimeSpan.days(1), TimeSpan.days(9), 1_000_000));
        OutputStream closed = new OutputStream() {
            private int left = 5;

            @Override
            public void write(int one) throws IOException {
                throw new IOException("closed");
            }

            @Override
            public void write(byte[] bytes, int offset, int length) throws IOException {
                if (left-- == 0) {
                    throw new IOException("closed");
                }
            }
        };
        assertThatThrownBy(() -> sweep.compile().write(RowFormat.CSV, closed)).hasMessage("closed");
    }

    @Test
    void logarithmicRangesMultiply() {
        assertThat(BANK.vary("demand.surgeCurrent", Axis.logRange(Current.amperes(1), Current.amperes(1000), 4))
                        .rows()
                        .mapToDouble(row -> row.number("demand.surgeCurrent").orElseThrow()))
                .usingElementComparator((a, b) -> Math.abs(a / b - 1) < 1e-12 ? 0 : 1)
                .containsExactly(1.0, 10.0, 100.0, 1000.0);
    }

    /** The first unit of the enum of each quantity is the one its values are held in. */
    @Test
    void everyQuantityIsShownInItsBaseUnit() {
        for (Class<?> type : Quantity.class.getPermittedSubclasses()) {
            NumberForm form = NumberForm.of(type, null, null).orElseThrow();
            Quantity one = (Quantity) form.value(0.5);
            assertThat(Quantity.units(type).get(0)).as(type.getSimpleName()).isEqualTo(one.baseUnit());
            assertThat(form.shown(NumberForm.number(one))).isEqualTo(0.5);
            assertThat(form.unit()).isNotEmpty().matches("\\p{ASCII}+");
        }
    }

    private static String csv(CompiledSweep sweep, int threads) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        sweep.write(RowFormat.CSV, out, 0, sweep.count(), threads);
        return out.toString(StandardCharsets.UTF_8);
    }
}
