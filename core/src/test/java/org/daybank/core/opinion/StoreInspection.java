package org.daybank.core.opinion;

/** Looks over a bank: place, cold, capacity at the rate it runs at, depth, currents, heater, strings. */
final class StoreInspection {
    private final Ask ask;
    private final BankOpinion.Bank bank;
    private final int strings;
    private final Faults faults;

    StoreInspection(Ask ask, BankOpinion.Bank bank, int strings, Faults faults) {
        this.ask = ask;
        this.bank = bank;
        this.strings = strings;
        this.faults = faults;
    }

    void against(BankOpinion.Need need) {
        Goods.Battery battery = bank.battery;
        faults.that("chemistry", ask.chemistries.contains(battery.cells().chemistry()));
        faults.atMost("strings in parallel", strings, battery.mostInParallel());
        BankOpinion.size(ask, bank, need);
        double each = need.running() == 0
                ? battery.ampHoursByHours().lastEntry().getValue()
                : BankOpinion.capacity(battery, bank.hours);
        faults.atLeast("capacity", strings * each, bank.required);
        double deepest = battery.cells().lithium() ? ask.depthLithium : ask.depthLeadAcid;
        faults.atMost("depth over the autonomy", bank.autonomyCharge, strings * each * bank.factor * deepest);
        faults.atMost("discharge for hours", need.continuous() / bank.disconnect(), strings * battery.dischargeAmps());
        faults.atMost("discharge for a start", need.surge() / bank.disconnect(), strings * battery.peakAmps());
        if (bank.heated) {
            double lost = ask.heatLoss * (ask.heaterSetPoint - BankOpinion.lowest(ask));
            faults.atMost("heaters", lost, strings * bank.series * battery.heater());
        }
    }

    void charged(double amps) {
        faults.atMost("charging current", amps, strings * bank.battery.chargeAmps());
    }
}
