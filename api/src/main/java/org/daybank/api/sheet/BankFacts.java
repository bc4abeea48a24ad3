package org.daybank.api.sheet;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.design.BatterySystem;
import org.daybank.core.quantity.CrossSection;

/** What who builds the bank has to know of it. */
final class BankFacts {
    private BankFacts() {}

    static Html of(BatterySystem system) {
        BankFit fit = system.bank();
        BankLayout bank = system.bankLayout();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "Battery", bank.product() + ", " + Words.of(bank.battery().chemistry())));
        rows.add(List.of("Rated", Words.of(bank.ratedCapacity()) + ", " + Words.of(bank.ratedEnergy())));
        if (fit.capacity() != null) {
            rows.add(List.of(
                    "Needed",
                    "%s, governed by %s"
                            .formatted(
                                    Words.of(fit.capacity().requiredCapacity()),
                                    Words.of(fit.capacity().governing()))));
        }
        rows.add(List.of("Charging current", charging(bank)));
        rows.add(List.of("Discharge current, at most", Words.of(bank.maximumDischargeCurrent())));
        rows.add(List.of("Into a short circuit", Words.of(bank.shortCircuitCurrent())));
        rows.add(List.of(
                "Coldest mean temperature",
                Words.of(fit.temperature()) + (fit.heated() ? ", kept by its heater" : "")));
        system.ventilation().ifPresent(air -> {
            rows.add(List.of("Fresh air", Words.of(air.flow())));
            rows.add(List.of("Openings, below and above", area(air.openings()) + " each"));
        });
        rows.add(List.of("Mass", Words.of(bank.mass())));
        return new Html().table("The bank", List.of("What", "How much"), rows);
    }

    private static String charging(BankLayout bank) {
        String most = Words.of(bank.maximumChargeCurrent());
        return bank.minimumChargeCurrent().amperes() == 0
                ? "up to " + most
                : Words.of(bank.minimumChargeCurrent()) + " to " + most;
    }

    private static String area(CrossSection openings) {
        return Words.number(openings.squareCentimetres()) + " cm²";
    }
}
