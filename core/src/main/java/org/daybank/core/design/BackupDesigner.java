package org.daybank.core.design;

import java.util.List;
import java.util.Objects;
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
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/**
 * The job for a house on the grid whose essential loads a bank carries while the grid is away: inverter, bank and array are sized
 * as if the panel of the essential loads stood alone, the inverter besides for taking the grid in. The hours are not run: how
 * long the grid stays away is not known.
 */
final class BackupDesigner {
    private static final Current ANY_CURRENT = Current.amperes(2000);

    private static final int ANY_COMMON_YEAR = 2025;
    private static final TimeSpan LONGEST_OUTAGE = TimeSpan.days(14);

    private BackupDesigner() {}

    static SystemDesign design(DesignBrief brief, Catalog catalog) {
        List<Load> essentials = brief.loads().stream().filter(Load::essential).toList();
        DesignBrief unproved = brief.withPolicy(
                brief.policy().withSystem(brief.policy().system().withSimulatedYears(0)));
        SystemDesign panel = BankDesigner.design(unproved.withLoads(essentials).withWeather(null), catalog);
        if (!panel.complete()) {
            return panel.withBrief(brief);
        }
        // the whole house is there for comparison: no cable is laid for it, so that its current has no limit
        Optional<CandidateSystem> whole = BankDesigner.cheapest(
                unproved.withWeather(null)
                        .withPolicy(unproved.policy()
                                .withSystem(unproved.policy().system().withBankCurrent(ANY_CURRENT))),
                catalog);
        return panel.withBrief(brief).withEssentialPanel(compare(essentials, panel, whole, backup(brief, panel)));
    }

    private static EssentialPanel compare(
            List<Load> essentials, SystemDesign panel, Optional<CandidateSystem> whole, BackupHours backup) {
        List<String> names = essentials.stream().map(Load::name).toList();
        Energy bank = bank(panel).ratedEnergy();
        Power array = SystemDesign.part(panel.array()).power();
        Money price = SystemDesign.part(panel.billOfMaterials()).total();
        if (whole.isEmpty()) {
            return new EssentialPanel(names, bank, array, price, null, null, null, null, null, backup);
        }
        CandidateSystem house = whole.get();
        Energy wholeBank = house.layout().ratedEnergy();
        Power wholeArray = house.charger().array().power();
        return new EssentialPanel(
                names,
                bank,
                array,
                price,
                wholeBank,
                wholeArray,
                house.price(),
                Ratio.of(1 - bank.dividedBy(wholeBank)),
                Ratio.of(1 - array.dividedBy(wholeArray)),
                backup);
    }

    /** How long the full bank carries the panel in an outage without any sun, whenever it begins. */
    private static BackupHours backup(DesignBrief brief, SystemDesign panel) {
        BankLayout bank = bank(panel);
        InverterFit inverter = panel.inverter();
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
                                loads.essentials(inverter == null ? loads.stated() : inverter.curve()), calendar),
                        calendar));
    }

    private static BankLayout bank(SystemDesign design) {
        return Objects.requireNonNull(SystemDesign.part(design.bank()).layout());
    }
}
