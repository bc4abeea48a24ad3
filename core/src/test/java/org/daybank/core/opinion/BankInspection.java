package org.daybank.core.opinion;

import java.util.List;

/** Looks over a finished system on a bank, part by part. */
final class BankInspection {
    /** The parts as they are laid out; no inverter where every load is DC. */
    record Parts(
            double busVolts,
            Goods.Inverter inverter,
            int inverters,
            Goods.Battery battery,
            int bankStrings,
            Goods.Module module,
            int series,
            Goods.Controller controller,
            List<Integer> stringsOnEach,
            boolean stringFuses) {}

    static void of(Ask ask, Parts parts, Faults faults) {
        boolean ac = ask.loads.stream().anyMatch(Ask.Load::ac);
        faults.that("an inverter where there are AC loads, none where there are not", ac == (parts.inverter != null));
        faults.that("bus voltage asked for", ask.wishedVolts == 0 || ask.wishedVolts == parts.busVolts);
        BankOpinion.Bank bank = BankOpinion.placed(ask, parts.battery, parts.busVolts);
        faults.that("a place for the bank", bank != null);
        if (bank == null) {
            return;
        }
        LoadOpinion.Curve curve = LoadOpinion.Curve.NONE;
        if (parts.inverter != null) {
            curve = LoadOpinion.Curve.of(parts.inverter, parts.inverters);
            new InverterInspection(ask, parts.inverter, parts.inverters, faults)
                    .against(parts.busVolts, bank.charging(ask, bank.temperature), bank.disconnect());
        }
        SunOpinion.Month[] sun = SunOpinion.months(ask);
        double ownDraw = parts.controller.selfWatts() * parts.stringsOnEach.size();
        LoadOpinion.Month[] months = LoadOpinion.months(ask, curve, sun);
        for (int m = 0; m < 12; m++) {
            months[m] = LoadOpinion.with(
                    months[m],
                    ownDraw + BankOpinion.heaterWatts(ask, bank, m, false),
                    ownDraw + BankOpinion.heaterWatts(ask, bank, m, true),
                    sun[m]);
        }
        StoreInspection store = new StoreInspection(ask, bank, parts.bankStrings, faults);
        store.against(BankOpinion.Need.of(
                ask, LoadOpinion.peak(ask), parts.inverter, parts.inverters, curve, List.of(months)));
        Goods.Cells cells = parts.battery.cells();
        faults.that("controller's chemistry", parts.controller.chemistries().contains(cells.chemistry()));
        ArrayInspection array =
                new ArrayInspection(ask, parts.module, parts.controller, parts.series, parts.stringsOnEach, faults);
        array.voltages(parts.busVolts, bank.trueNominal, bank.chargingWhenHot(ask));
        store.charged(array.currents(bank.trueNominal, new Sunshine(sun)));
        array.fuses(parts.stringFuses);
        array.brings(months, sun, cells, bank.trueNominal);
    }

    private BankInspection() {}
}
