package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.grid.BackupHours;
import org.daybank.core.grid.BackupNeed;
import org.daybank.core.grid.GridHours;
import org.daybank.core.grid.LoadHours;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/**
 * The design of a house on the grid whose bank supplies the essential loads during an outage: inverter, bank and array are
 * sized as for a stand-alone panel of the essential loads, the inverter besides for its AC input. The hours are not simulated,
 * since the length of outages is unknown.
 */
final class BackupDesigner {
    private static final Current ANY_CURRENT = Current.amperes(2000);

    private static final int ANY_COMMON_YEAR = 2025;
    private static final TimeSpan LONGEST_OUTAGE = TimeSpan.days(14);

    private BackupDesigner() {}

    static DesignOutcome design(DesignBrief brief, Catalog catalog) {
        List<Load> essentials = brief.loads().stream().filter(Load::essential).toList();
        DesignBrief unsimulated = brief.withWeather(null)
                .withPolicy(brief.policy().withSystem(brief.policy().system().withSimulatedYears(0)));
        return BankDesigner.design(unsimulated.withLoads(essentials), catalog)
                .fold(
                        panel -> {
                            // the system for the whole house is a comparison: no cable is laid for it, so that its
                            // current has no limit
                            Optional<CandidateSystem> whole = BankDesigner.cheapest(
                                    unsimulated.withPolicy(unsimulated
                                            .policy()
                                            .withSystem(unsimulated
                                                    .policy()
                                                    .system()
                                                    .withBankCurrent(ANY_CURRENT))),
                                    catalog);
                            return new BackupDesign(
                                    brief,
                                    compare(essentials, panel.system(), whole, backup(brief, panel.system())),
                                    panel.system(),
                                    panel.energy(),
                                    panel.evidence(),
                                    panel.alternatives(),
                                    panel.rejected());
                        },
                        backup -> backup,
                        grid -> grid,
                        none -> new NoDesign(brief, none.failedChecks(), none.energy(), none.rejected()));
    }

    private static EssentialPanel compare(
            List<Load> essentials, BatterySystem panel, Optional<CandidateSystem> whole, BackupHours backup) {
        Energy bank = panel.bankLayout().ratedEnergy();
        Power array = panel.array().power();
        return new EssentialPanel(
                essentials.stream().map(Load::name).toList(),
                bank,
                array,
                panel.billOfMaterials().total(),
                whole.map(house -> {
                    Energy wholeBank = house.layout().ratedEnergy();
                    Power wholeArray = house.charger().array().power();
                    return new EssentialPanel.WholeHouse(
                            wholeBank,
                            wholeArray,
                            house.price(),
                            Ratio.of(1 - bank.dividedBy(wholeBank)),
                            Ratio.of(1 - array.dividedBy(wholeArray)));
                }),
                backup);
    }

    /** How long the full bank supplies the panel in an outage without sun, from any hour of the year. */
    private static BackupHours backup(DesignBrief brief, BatterySystem panel) {
        BankLayout bank = panel.bankLayout();
        LoadProfile loads = brief.profile();
        HourCalendar calendar = new HourCalendar(ANY_COMMON_YEAR, HourCalendar.COMMON);
        return BackupHours.of(
                new BackupNeed(
                        bank.ratedEnergy()
                                .times(brief.policy()
                                        .bank()
                                        .depthOfDischarge()
                                        .of(bank.battery().chemistry().family())),
                        Ratio.ONE,
                        false,
                        bank.battery().chemistry().traits().energyEfficiency(),
                        LONGEST_OUTAGE),
                new GridHours(
                        HourlySeries.watts(new double[calendar.hours()]),
                        LoadHours.atBank(
                                loads.essentials(
                                        panel.inverter().map(InverterFit::curve).orElse(loads.stated())),
                                calendar),
                        calendar));
    }
}
