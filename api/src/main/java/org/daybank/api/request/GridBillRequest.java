package org.daybank.api.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.api.wire.Inline;
import org.daybank.core.grid.BackupHours;
import org.daybank.core.grid.BackupNeed;
import org.daybank.core.grid.BillPolicy;
import org.daybank.core.grid.Busbar;
import org.daybank.core.grid.BusbarCheck;
import org.daybank.core.grid.Coupling;
import org.daybank.core.grid.CouplingCheck;
import org.daybank.core.grid.FeedingArray;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.grid.GridHours;
import org.daybank.core.grid.Tariff;
import org.daybank.core.load.EnergyDemand;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.Plane;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What does an array that feeds the grid make of the bill?
 *
 * @param site where
 * @param weather hours of a year there; absent when only monthly means are known
 * @param loads everything that runs
 * @param plane how the array lies
 * @param array modules and inverters
 * @param tariff what the grid operator charges and pays
 * @param price of the system; absent when no pay-back is asked
 * @param backup what a bank holds for outages; absent when there is none
 * @param busbar of the panel that the inverters feed; absent when it is not to be checked
 * @param coupling grid inverters behind a multimode inverter; absent when there is none
 * @param policy what is assumed
 */
public record GridBillRequest(
        Site site,
        @Nullable WeatherYear weather,

        @Bounds(minimumItems = 1, maximumItems = EnergyDemand.MOST_LOADS)
        List<Load> loads,

        Plane plane,
        @Inline FeedingArray array,
        Tariff tariff,

        @Bounds(minimum = "0", maximum = "10000000000") @Nullable
        Money price,

        @Nullable BackupNeed backup,
        @Nullable Busbar busbar,
        @Nullable Coupling coupling,
        BillPolicy policy) {
    /** Refuses what is missing or out of range. */
    public GridBillRequest {
        Validation.of(
                        GridBillRequest.class,
                        site,
                        weather,
                        loads,
                        plane,
                        array,
                        tariff,
                        price,
                        backup,
                        busbar,
                        coupling,
                        policy)
                .done();
        loads = List.copyOf(loads);
    }

    /**
     * What was found.
     *
     * @param flows of energy
     * @param bill what they cost
     * @param backup how long the essential loads run without the grid; absent when that was not asked
     * @param busbar absent when that was not asked
     * @param coupling absent when that was not asked
     */
    public record Answer(
            GridFlows flows,
            GridBill bill,
            Optional<BackupHours> backup,
            Optional<BusbarCheck> busbar,
            Optional<CouplingCheck> coupling) {
        /** What to warn of. */
        public List<Hazard> hazards() {
            List<Hazard> hazards = new ArrayList<>(flows.hazards());
            busbar.ifPresent(check -> hazards.addAll(check.hazards()));
            coupling.ifPresent(check -> hazards.addAll(check.hazards()));
            return hazards;
        }

        /** The steps of flows, bill and backup. */
        public Working working() {
            Working.Builder steps = Working.builder().all(flows.working()).all(bill.working());
            backup.ifPresent(hours -> steps.all(hours.working()));
            return steps.build();
        }
    }

    /** Asks the library. */
    public Answer answer() {
        LoadProfile profile = LoadProfile.of(
                EnergyDemandBuilder.builder()
                        .loads(loads)
                        .latitude(site.latitude())
                        .build(),
                policy.load());
        List<GridHours> years = array.beside(profile, years(), site.months().snowLoss(), policy.array());
        GridFlows flows = GridFlows.of(years, array.inverterPower(), tariff.exportLimit());
        return new Answer(
                flows,
                GridBill.of(flows, tariff, price),
                Optional.ofNullable(backup)
                        .map(need -> BackupHours.of(need, years.get(0).ofEssentials(profile, array.inverterPower()))),
                Optional.ofNullable(busbar).map(panel -> BusbarCheck.of(panel, policy.busbar())),
                Optional.ofNullable(coupling).map(CouplingCheck::of));
    }

    private SunnyYears years() {
        return weather == null
                ? SunnyYears.synthetic(site, plane, policy.seed(), policy.years(), policy.sun(), policy.synthetic())
                : SunnyYears.of(List.of(weather), SunnyYears.exposure(site, plane), policy.sun());
    }
}
