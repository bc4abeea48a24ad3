package org.daybank.core.grid;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What the flows of some years cost, with the array and without.
 *
 * @param flows that were priced
 * @param tariff by which
 * @param price of the system; absent when it was not given
 * @param yearlyWithoutSystem bill of a mean year without the array
 * @param yearlyWithSystem bill of a mean year with it
 * @param yearlySaving the difference
 * @param payBack time in which the savings reach the price, without interest and at today's prices; absent without a price, or
 *     when nothing is saved
 * @param months one after the other
 */
public record GridBill(
        @NotRepeated GridFlows flows,
        @NotRepeated Tariff tariff,
        @NotRepeated @Nullable Money price,
        Money yearlyWithoutSystem,
        Money yearlyWithSystem,
        Money yearlySaving,
        @Nullable TimeSpan payBack,
        List<BillMonth> months) {
    /** Keeps a copy. */
    public GridBill {
        months = List.copyOf(months);
    }

    /** Prices flows. */
    public static GridBill of(GridFlows flows, Tariff tariff) {
        return of(flows, tariff, null);
    }

    /**
     * Prices flows and tells when a system of a price has paid for itself.
     *
     * @throws org.daybank.core.schema.InvalidInput when the price is below zero or in another currency than the tariff
     */
    public static GridBill of(GridFlows flows, Tariff tariff, @Nullable Money price) {
        checkPrice(price, tariff);
        List<BillMonth> months = new ArrayList<>();
        Energy credits = Energy.ZERO;
        for (FlowMonth month : flows.months()) {
            BillMonth bill = month(month, tariff, credits);
            months.add(bill);
            credits = bill.creditsLeft();
        }
        Money without = yearly(months, BillMonth::withoutSystem, flows.years());
        Money with = yearly(months, BillMonth::withSystem, flows.years());
        Money saving = without.minus(with);
        TimeSpan payBack = price == null || saving.minorUnits() <= 0
                ? null
                : TimeSpan.years(price.minorUnits() / (double) saving.minorUnits());
        return new GridBill(flows, tariff, price, without, with, saving, payBack, months);
    }

    private static void checkPrice(@Nullable Money price, Tariff tariff) {
        if (price != null) {
            new Validation()
                    .atLeast("price", price, Money.zero(price.currency()))
                    .that(
                            price.currency().equals(tariff.importPrice().currency()),
                            "price",
                            ProblemCode.CONFLICT,
                            () -> "price must be in the currency of the tariff, %s, but was %s."
                                    .formatted(tariff.importPrice().currency().getCurrencyCode(), price))
                    .done();
        }
    }

    private static BillMonth month(FlowMonth month, Tariff tariff, Energy creditsBefore) {
        EnergyFlows flows = month.flows();
        double fixed = tariff.resolved().monthlyCharge().minorUnits();
        double without = fixed + tariff.importPrice().minorUnits(flows.load());
        EnergyPrice sold = tariff.exportPrice();
        if (sold != null) {
            double with = fixed + tariff.importPrice().minorUnits(flows.imported()) - sold.minorUnits(flows.exported());
            return bill(month, tariff, Energy.ZERO, Energy.ZERO, Energy.ZERO, without, with);
        }
        Energy credits = creditsBefore.plus(flows.exported());
        Energy credited = credits.compareTo(flows.imported()) < 0 ? credits : flows.imported();
        Energy left = credits.minus(credited);
        boolean end = tariff.creditsEndWith(month.month());
        Energy expired = end ? left : Energy.ZERO;
        EnergyPrice paid = tariff.expiredCreditPrice();
        double with = fixed
                + tariff.resolved().unavoidablePrice().minorUnits(credited)
                + tariff.importPrice().minorUnits(flows.imported().minus(credited))
                - (paid == null ? 0 : paid.minorUnits(expired));
        return bill(month, tariff, credited, end ? Energy.ZERO : left, expired, without, with);
    }

    private static BillMonth bill(
            FlowMonth month,
            Tariff tariff,
            Energy credited,
            Energy left,
            Energy expired,
            double withoutMinorUnits,
            double withMinorUnits) {
        return new BillMonth(
                month.year(),
                month.month(),
                month.flows().imported(),
                month.flows().exported(),
                credited,
                left,
                expired,
                new Money(Math.round(withoutMinorUnits), tariff.importPrice().currency()),
                new Money(Math.round(withMinorUnits), tariff.importPrice().currency()));
    }

    private static Money yearly(List<BillMonth> months, Function<BillMonth, Money> part, int years) {
        Money sum = months.stream().map(part).reduce(Money::plus).orElseThrow();
        return new Money(
                BigDecimal.valueOf(sum.minorUnits())
                        .divide(BigDecimal.valueOf(years), 0, RoundingMode.HALF_EVEN)
                        .longValueExact(),
                sum.currency());
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        return BillWorking.of(this);
    }
}
