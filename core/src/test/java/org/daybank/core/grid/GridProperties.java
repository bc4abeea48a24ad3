package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.HourlySeries;
import org.jspecify.annotations.Nullable;

/** Whatever the sun, the loads, the limits and the tariff. */
class GridProperties {
    /** Share of a year's energy lost in sums of thousands of hours. */
    private static final double ROUNDING = 1e-9;

    /** Days that wax and wane with the seasons, drawn by the hour. */
    @Provide
    Arbitrary<GridHours> years() {
        Arbitrary<Double> watts = Arbitraries.doubles().between(0, 6000);
        return Combinators.combine(
                        watts.list().ofSize(24),
                        watts.list().ofSize(24),
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.doubles().between(-1, 1))
                .as((array, load, sunSwing, loadSwing) ->
                        new GridHours(seasonal(array, sunSwing), seasonal(load, loadSwing), Days.CALENDAR));
    }

    private static HourlySeries seasonal(List<Double> day, double swing) {
        return HourlySeries.watts(IntStream.range(0, Days.CALENDAR.hours())
                .mapToDouble(hour ->
                        day.get(hour % 24) * (1 - swing * Math.cos(2 * Math.PI * hour / Days.CALENDAR.hours())) / 2)
                .toArray());
    }

    @Provide
    Arbitrary<Power> limits() {
        return Arbitraries.doubles().between(0.1, 8000).map(Power::watts).injectNull(0.3);
    }

    @Provide
    Arbitrary<Tariff> tariffs() {
        Arbitrary<Integer> cents = Arbitraries.integers().between(0, 60);
        return Combinators.combine(
                        cents,
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.integers().between(0, 3000),
                        Arbitraries.of(CreditPeriod.values()),
                        Arbitraries.of(Month.values()),
                        cents.injectNull(0.6),
                        cents.injectNull(0.5))
                .as((price, unavoidable, monthly, period, end, sold, expired) -> TariffBuilder.builder()
                        .importPrice(price(price))
                        .unavoidablePrice(price((int) (price * unavoidable)))
                        .monthlyCharge(euroCents(monthly))
                        .creditPeriod(period)
                        .yearOfAccountEnds(end)
                        .exportPrice(sold == null ? null : price(sold))
                        .expiredCreditPrice(expired == null ? null : price(expired))
                        .build());
    }

    private static Money euroCents(int cents) {
        return Money.of("0.01", "EUR").times(cents);
    }

    private static EnergyPrice price(int cents) {
        return new EnergyPrice(euroCents(cents), Energy.kilowattHours(1));
    }

    @Property(tries = 200)
    void energyIsNeitherMadeNorLost(
            @ForAll("years") GridHours year,
            @ForAll("limits") @Nullable Power inverter,
            @ForAll("limits") @Nullable Power export) {
        GridFlows flows = GridFlows.of(year, inverter, export);

        assertThat(flows.yearly().load().wattHours())
                .isCloseTo(
                        year.load().sum(0, 8760),
                        within(ROUNDING * (1 + year.load().sum(0, 8760))));
        for (FlowMonth month : flows.months()) {
            EnergyFlows of = month.flows();
            double room = ROUNDING * (1 + of.load().wattHours() + of.array().wattHours());
            assertThat(of.selfUse().plus(of.imported()).wattHours())
                    .isCloseTo(of.load().wattHours(), within(room));
            assertThat(of.selfUse().plus(of.exported()).plus(of.clipped()).wattHours())
                    .isCloseTo(of.array().wattHours(), within(room));
            assertThat(List.of(of.selfUse(), of.imported(), of.exported(), of.clipped()))
                    .allMatch(energy -> energy.wattHours() >= 0);
        }
    }

    @Property(tries = 100)
    void moreArrayNeverMeansMoreImport(
            @ForAll("years") GridHours year,
            @ForAll("limits") @Nullable Power inverter,
            @ForAll @DoubleRange(min = 1, max = 4) double factor) {
        double[] more = year.array().values();
        for (int hour = 0; hour < more.length; hour++) {
            more[hour] *= factor;
        }
        EnergyFlows before = GridFlows.of(year, inverter, null).yearly();
        EnergyFlows after = GridFlows.of(
                        new GridHours(HourlySeries.watts(more), year.load(), year.calendar()), inverter, null)
                .yearly();
        double room = ROUNDING * (1 + before.load().wattHours());

        assertThat(after.imported().wattHours())
                .isLessThanOrEqualTo(before.imported().wattHours() + room);
        assertThat(after.exported().wattHours())
                .isGreaterThanOrEqualTo(before.exported().wattHours() - room);
    }

    @Property(tries = 200)
    void noMonthCostsMoreThanWithoutTheArray(@ForAll("years") GridHours year, @ForAll("tariffs") Tariff tariff) {
        GridBill bill = GridBill.of(GridFlows.of(year, null, null), tariff);

        assertThat(bill.months()).allMatch(month -> month.withSystem().compareTo(month.withoutSystem()) <= 0);
        assertThat(bill.yearlySaving()).isEqualTo(bill.yearlyWithoutSystem().minus(bill.yearlyWithSystem()));
    }

    /** Credits are what was exported, less what paid for imports and what expired. */
    @Property(tries = 200)
    void noCreditIsMadeOrLost(@ForAll("years") GridHours year, @ForAll("tariffs") Tariff tariff) {
        GridBill bill = GridBill.of(GridFlows.of(List.of(year, year), null, null), tariff.withExportPrice(null));
        double account = 0;
        for (BillMonth month : bill.months()) {
            account += month.exported().wattHours()
                    - month.credited().wattHours()
                    - month.creditsExpired().wattHours();
            assertThat(month.creditsLeft().wattHours()).isCloseTo(account, within(1e-3));
            assertThat(month.credited()).isLessThanOrEqualTo(month.imported());
        }
    }

    /** The longer credits last, the less is due; nothing is paid for those that expire. */
    @Property(tries = 200)
    void creditsThatLastLongerSaveMore(@ForAll("years") GridHours year, @ForAll("tariffs") Tariff any) {
        Tariff tariff = any.withExportPrice(null).withExpiredCreditPrice(null);
        GridFlows flows = GridFlows.of(List.of(year, year), null, null);
        long month = due(flows, tariff.withCreditPeriod(CreditPeriod.MONTH));
        long ofYear = due(flows, tariff.withCreditPeriod(CreditPeriod.YEAR));
        long unlimited = due(flows, tariff.withCreditPeriod(CreditPeriod.UNLIMITED));

        // each of 12 months of the mean year is rounded to a cent
        assertThat(ofYear).isLessThanOrEqualTo(month + 12);
        assertThat(unlimited).isLessThanOrEqualTo(ofYear + 12);
    }

    private static long due(GridFlows flows, Tariff tariff) {
        return GridBill.of(flows, tariff).yearlyWithSystem().minorUnits();
    }

    /** Energy bought and sold at one price: only the difference of load and array is paid. */
    @Property(tries = 100)
    void sellingAtTheImportPriceIsNettingTheYear(
            @ForAll("years") GridHours year, @ForAll @DoubleRange(min = 1, max = 60) double price) {
        EnergyPrice cents = price((int) price);
        GridFlows flows = GridFlows.of(year, null, null);
        Tariff sold =
                TariffBuilder.builder().importPrice(cents).exportPrice(cents).build();

        double net =
                (flows.yearly().load().kilowattHours() - flows.yearly().array().kilowattHours()) * (int) price;
        // 12 months rounded to a cent
        assertThat((double) due(flows, sold)).isCloseTo(net, within(6.0 + 1e-6 * Math.abs(net)));
    }

    @Property(tries = 20)
    void sunAndALargerBankNeverShortenABackup(
            @ForAll("years") GridHours year,
            @ForAll @DoubleRange(min = 100, max = 50_000) double wattHours,
            @ForAll @DoubleRange(min = 1, max = 3) double factor) {
        BackupHours small = backup(year, wattHours, false);
        BackupHours large = backup(year, wattHours * factor, false);
        BackupHours sunny = backup(year, wattHours, true);

        assertThat(large.shortest()).isGreaterThanOrEqualTo(small.shortest());
        assertThat(sunny.shortest()).isGreaterThanOrEqualTo(small.shortest());
        assertThat(sunny.mean().hours()).isGreaterThanOrEqualTo(small.mean().hours() - 1e-9);
        assertThat(small.shortest().hours())
                .isGreaterThanOrEqualTo(small.atWorstHour().hours() - 1e-9);
        assertThat(small.mean()).isGreaterThanOrEqualTo(small.shortest());
    }

    private static BackupHours backup(GridHours year, double wattHours, boolean sun) {
        return BackupHours.of(
                new BackupNeed(Energy.wattHours(wattHours), Ratio.of(0.9), sun, Ratio.of(0.9), TimeSpan.days(3)), year);
    }
}
