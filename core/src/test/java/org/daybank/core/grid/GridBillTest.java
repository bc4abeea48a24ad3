package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

/** Bills by hand: 30 ct a kilowatt-hour, 10 ct of it beyond the reach of credits, 5 EUR a month. */
class GridBillTest {
    private static final EnergyPrice IMPORT = price("0.30");
    private static final Tariff NET_METERING = TariffBuilder.builder()
            .importPrice(IMPORT)
            .unavoidablePrice(price("0.10"))
            .monthlyCharge(euros("5"))
            .build();

    private static Money euros(String amount) {
        return Money.of(amount, "EUR");
    }

    private static EnergyPrice price(String amount) {
        return new EnergyPrice(euros(amount), null);
    }

    /** A year whose months import and export so many kilowatt-hours; 50 kWh of each month's load are used at once. */
    private static GridFlows year(double[] imported, double[] exported) {
        List<FlowMonth> months = new ArrayList<>();
        EnergyFlows sum = EnergyFlows.NONE;
        for (int i = 0; i < 12; i++) {
            EnergyFlows flows = new EnergyFlows(
                    Energy.kilowattHours(imported[i] + 50),
                    Energy.kilowattHours(exported[i] + 50),
                    Energy.kilowattHours(50),
                    Energy.kilowattHours(imported[i]),
                    Energy.kilowattHours(exported[i]),
                    Energy.ZERO);
            months.add(new FlowMonth(0, Month.of(i + 1), flows));
            sum = sum.plus(flows);
        }
        return new GridFlows(1, sum, sum.selfUseShare(), sum.loadCovered(), months);
    }

    /** Sun in spring, need in summer and winter. */
    private static final GridFlows YEAR = year(
            new double[] {100, 100, 100, 100, 100, 300, 100, 100, 100, 100, 100, 100},
            new double[] {0, 0, 0, 200, 250, 0, 100, 100, 100, 0, 0, 0});

    private static BillMonth month(GridBill bill, Month month) {
        return bill.months().get(month.getValue() - 1);
    }

    @Test
    void creditsPayAllButWhatTheyCannot() {
        GridBill bill = GridBill.of(YEAR, NET_METERING);

        // January: 5 + 150 · 0.30 = 50 EUR without, 5 + 100 · 0.30 = 35 EUR with
        assertThat(month(bill, Month.JANUARY).withoutSystem()).isEqualTo(euros("50"));
        assertThat(month(bill, Month.JANUARY).withSystem()).isEqualTo(euros("35"));
        // April: 100 kWh credited, 100 left; 5 + 100 · 0.10
        assertThat(month(bill, Month.APRIL).credited()).isEqualTo(Energy.kilowattHours(100));
        assertThat(month(bill, Month.APRIL).creditsLeft()).isEqualTo(Energy.kilowattHours(100));
        assertThat(month(bill, Month.APRIL).withSystem()).isEqualTo(euros("15"));
        // May leaves 100 + 150 = 250; June takes them all: 5 + 250 · 0.10 + 50 · 0.30 = 45
        assertThat(month(bill, Month.MAY).creditsLeft()).isEqualTo(Energy.kilowattHours(250));
        assertThat(month(bill, Month.JUNE).credited()).isEqualTo(Energy.kilowattHours(250));
        assertThat(month(bill, Month.JUNE).withSystem()).isEqualTo(euros("45"));
        // 35 · 3 + 15 + 15 + 45 + 15 · 3 + 35 · 3 = 330; without 50 · 11 + 5 + 350 · 0.30 = 660
        assertThat(bill.yearlyWithSystem()).isEqualTo(euros("330"));
        assertThat(bill.yearlyWithoutSystem()).isEqualTo(euros("660"));
        assertThat(bill.yearlySaving()).isEqualTo(euros("330"));
        assertThat(bill.payBack()).isNull();
    }

    @Test
    void creditsOfAMonthEndWithIt() {
        GridBill bill = GridBill.of(
                YEAR,
                NET_METERING.with(
                        tariff -> tariff.creditPeriod(CreditPeriod.MONTH).expiredCreditPrice(price("0.04"))));

        // April: 100 credited, 100 expire at 4 ct: 5 + 10 − 4 = 11; June has no credits: 5 + 300 · 0.30 = 95
        assertThat(month(bill, Month.APRIL).creditsExpired()).isEqualTo(Energy.kilowattHours(100));
        assertThat(month(bill, Month.APRIL).creditsLeft()).isEqualTo(Energy.ZERO);
        assertThat(month(bill, Month.APRIL).withSystem()).isEqualTo(euros("11"));
        assertThat(month(bill, Month.JUNE).withSystem()).isEqualTo(euros("95"));
    }

    @Test
    void creditsOfAYearEndWithTheYearOfAccount() {
        GridBill bill = GridBill.of(YEAR, NET_METERING.withYearOfAccountEnds(Month.MAY));

        assertThat(month(bill, Month.MAY).creditsExpired()).isEqualTo(Energy.kilowattHours(250));
        assertThat(month(bill, Month.JUNE).credited()).isEqualTo(Energy.ZERO);
        GridBill unlimited = GridBill.of(
                YEAR, NET_METERING.withYearOfAccountEnds(Month.MAY).withCreditPeriod(CreditPeriod.UNLIMITED));
        assertThat(month(unlimited, Month.JUNE).credited()).isEqualTo(Energy.kilowattHours(250));
    }

    @Test
    void soldEnergyBringsItsPrice() {
        GridBill bill = GridBill.of(YEAR, NET_METERING.withExportPrice(price("0.08")));

        // April: 5 + 100 · 0.30 − 200 · 0.08 = 19; nothing is credited
        assertThat(month(bill, Month.APRIL).withSystem()).isEqualTo(euros("19"));
        assertThat(month(bill, Month.APRIL).credited()).isEqualTo(Energy.ZERO);
        // 12 · 5 + 1400 · 0.30 − 750 · 0.08 = 60 + 420 − 60
        assertThat(bill.yearlyWithSystem()).isEqualTo(euros("420"));
    }

    @Test
    void paysBackAtItsSavings() {
        GridBill bill = GridBill.of(YEAR, NET_METERING, euros("3300"));

        // 3300 / 330 a year
        assertThat(bill.payBack()).isNotNull();
        assertThat(bill.payBack().years()).isCloseTo(10, within(1e-12));
        assertThat(bill.working().steps()).extracting(Step::name, Step::result).contains(tuple("pay-back", "10 years"));
    }

    @Test
    void pricesFinerThanACentAreToldForMore() {
        EnergyPrice fine = new EnergyPrice(euros("28.71"), Energy.kilowattHours(100));
        GridBill bill =
                GridBill.of(YEAR, TariffBuilder.builder().importPrice(fine).build());

        // 100 kWh · 0.2871 EUR
        assertThat(month(bill, Month.JANUARY).withSystem()).isEqualTo(euros("28.71"));
    }

    @Test
    void theMonthsOfHourlyFlowsArePriced() {
        GridFlows flows = GridFlows.of(
                Days.year(hour -> hour >= 10 && hour < 14 ? 3000 : 0, hour -> 500),
                Power.kilowatts(2),
                Power.watts(1200));
        GridBill bill = GridBill.of(flows, NET_METERING);

        // January imports 310 kWh and exports 4.8 kWh · 31 = 148.8 kWh: 5 + 161.2 · 0.30 + 148.8 · 0.10 = 68.24 EUR
        assertThat(month(bill, Month.JANUARY).withSystem()).isEqualTo(euros("68.24"));
        // 5 + 372 · 0.30
        assertThat(month(bill, Month.JANUARY).withoutSystem()).isEqualTo(euros("116.60"));
    }

    @Test
    void refusesATariffThatContradictsItself() {
        assertThatThrownBy(() -> TariffBuilder.builder()
                        .importPrice(IMPORT)
                        .unavoidablePrice(new EnergyPrice(euros("31"), Energy.kilowattHours(100)))
                        .monthlyCharge(euros("-1"))
                        .exportPrice(new EnergyPrice(Money.of("0.05", "USD"), null))
                        .exportLimit(Power.watts(-1))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/monthlyCharge", "/exportLimit", "/exportPrice", "/unavoidablePrice"))
                .hasMessageContaining(
                        "unavoidablePrice must be at most importPrice 0.30 EUR / 1 kWh, of which it is a part, but was 31.00 EUR / 100 kWh.");
        EnergyPrice dollars = new EnergyPrice(Money.of("0.05", "USD"), null);
        assertThatThrownBy(() -> TariffBuilder.builder()
                        .importPrice(IMPORT)
                        .unavoidablePrice(dollars)
                        .monthlyCharge(Money.of("5", "USD"))
                        .expiredCreditPrice(dollars)
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("unavoidablePrice must be in the currency of importPrice, EUR, but was in USD. "
                        + "monthlyCharge must be in the currency of importPrice, EUR, but was in USD. "
                        + "expiredCreditPrice must be in the currency of importPrice, EUR, but was in USD.");
        assertThatThrownBy(() -> TariffBuilder.builder().build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("importPrice is required.");
        assertThatThrownBy(() -> new EnergyPrice(euros("1"), Energy.ZERO))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("per must be from 1 Wh to 1000 MWh, but was 0 Wh.");
        assertThatThrownBy(() -> price("-0.01")).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> GridBill.of(YEAR, NET_METERING, Money.of("1", "USD")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("EUR");
    }

    @Test
    void theWorkingShowsWhatIsCreditedInAMeanYear() {
        assertThat(NET_METERING.netMetering()).isTrue();
        // credited 100 + 100 + 250 + 100 + 100 + 100 kWh; two such years, one after the other, are the same in the mean
        List<FlowMonth> months = new ArrayList<>(YEAR.months());
        YEAR.months().forEach(month -> months.add(new FlowMonth(1, month.month(), month.flows())));
        GridFlows two = new GridFlows(2, YEAR.yearly(), YEAR.selfUseShare(), YEAR.loadCovered(), months);
        for (GridFlows flows : List.of(YEAR, two)) {
            assertThat(GridBill.of(flows, NET_METERING).working().steps())
                    .extracting(Step::name, Step::substituted, Step::result)
                    .contains(tuple(
                            "bill with the array",
                            "12 · 5.00 EUR + (1.4 MWh − 750 kWh) · 0.30 EUR / 1 kWh + 750 kWh · 0.10 EUR / 1 kWh − 0 Wh · 0",
                            "330.00 EUR"));
            // month by month 100 kWh in five months; 100 kWh and 150 kWh expire
            assertThat(GridBill.of(
                                    flows,
                                    NET_METERING.with(tariff -> tariff.creditPeriod(CreditPeriod.MONTH)
                                            .expiredCreditPrice(price("0.04"))))
                            .working()
                            .steps())
                    .extracting(Step::substituted)
                    .contains(
                            "12 · 5.00 EUR + (1.4 MWh − 500 kWh) · 0.30 EUR / 1 kWh + 500 kWh · 0.10 EUR / 1 kWh − 250 kWh · 0.04 EUR / 1 kWh");
        }
        Tariff sold = NET_METERING.withExportPrice(price("0.08"));
        assertThat(sold.netMetering()).isFalse();
        assertThat(GridBill.of(YEAR, sold).working().steps())
                .extracting(Step::substituted)
                .contains("12 · 5.00 EUR + 1.4 MWh · 0.30 EUR / 1 kWh − 750 kWh · 0.08 EUR / 1 kWh");
    }

    @Test
    void whatSavesNothingNeverPaysBackAndWhatCostsNothingAtOnce() {
        EnergyFlows bought = new EnergyFlows(
                Energy.kilowattHours(100),
                Energy.ZERO,
                Energy.ZERO,
                Energy.kilowattHours(100),
                Energy.ZERO,
                Energy.ZERO);
        GridFlows none =
                new GridFlows(1, bought, Ratio.ZERO, Ratio.ZERO, List.of(new FlowMonth(0, Month.JANUARY, bought)));

        assertThat(GridBill.of(none, NET_METERING, euros("3300")).yearlySaving())
                .isEqualTo(euros("0"));
        assertThat(GridBill.of(none, NET_METERING, euros("3300")).payBack()).isNull();
        assertThat(GridBill.of(YEAR, NET_METERING, euros("0")).payBack()).isEqualTo(TimeSpan.ZERO);
        assertThatThrownBy(() -> GridBill.of(YEAR, NET_METERING, euros("-1")))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("price must be at least 0.00 EUR, but was -1.00 EUR.");
    }
}
