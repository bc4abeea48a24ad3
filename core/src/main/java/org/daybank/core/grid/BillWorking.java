package org.daybank.core.grid;

import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Working;

/** How a year's bill comes about. */
final class BillWorking {
    private BillWorking() {}

    static Working of(GridBill bill) {
        Tariff tariff = bill.tariff();
        EnergyFlows yearly = bill.flows().yearly();
        Working.Builder steps = Working.builder()
                .step(
                        "bill without the array",
                        "12 · fixed + load · price",
                        "tariff; each month rounded",
                        bill.yearlyWithoutSystem(),
                        "12 · %s + %s · %s",
                        tariff.resolved().monthlyCharge(),
                        yearly.load(),
                        tariff.importPrice().text());
        EnergyPrice sold = tariff.exportPrice();
        if (sold == null) {
            credited(steps, bill, tariff, yearly);
        } else {
            steps.step(
                    "bill with the array",
                    "12 · fixed + import · price − export · price",
                    "tariff; each month rounded",
                    bill.yearlyWithSystem(),
                    "12 · %s + %s · %s − %s · %s",
                    tariff.resolved().monthlyCharge(),
                    yearly.imported(),
                    tariff.importPrice().text(),
                    yearly.exported(),
                    sold.text());
        }
        TimeSpan payBack = bill.payBack();
        if (payBack != null && bill.price() != null) {
            steps.step(
                    "pay-back",
                    "price / saving of a year",
                    "without interest and at today's prices",
                    Ratio.of(payBack.years()).significant(3) + " years",
                    "%s / %s",
                    bill.price(),
                    bill.yearlySaving());
        }
        return steps.build();
    }

    private static void credited(Working.Builder steps, GridBill bill, Tariff tariff, EnergyFlows yearly) {
        Energy credited = Energy.wattHours(bill.months().stream()
                        .mapToDouble(month -> month.credited().wattHours())
                        .sum()
                / bill.flows().years());
        Energy expired = Energy.wattHours(bill.months().stream()
                        .mapToDouble(month -> month.creditsExpired().wattHours())
                        .sum()
                / bill.flows().years());
        EnergyPrice paid = tariff.expiredCreditPrice();
        steps.step(
                "bill with the array",
                "12 · fixed + (import − credited) · price + credited · unavoidable − expired · price",
                "tariff; each month rounded",
                bill.yearlyWithSystem(),
                "12 · %s + (%s − %s) · %s + %s · %s − %s · %s",
                tariff.resolved().monthlyCharge(),
                yearly.imported(),
                credited,
                tariff.importPrice().text(),
                credited,
                tariff.resolved().unavoidablePrice().text(),
                expired,
                paid == null ? "0" : paid.text());
    }
}
