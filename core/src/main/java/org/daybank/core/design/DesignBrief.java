package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.EnergyDemand;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Angle;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.Place;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What a customer brings: where, what must run, and what is wanted besides.
 *
 * @param name of the project
 * @param kind what the system hangs on
 * @param site where it stands; left out, what the weather year shows of it
 * @param weather hours of a year there, which yields are then reckoned with; absent when only monthly means are known
 * @param loads what must run
 * @param service AC service that the loads are made for
 * @param array where the array may stand
 * @param cables how long they are
 * @param bank where the bank stands
 * @param shore power at the berth or the camp of a mobile system, which counts in no size but in its hours; absent when there is none
 * @param alternator of a mobile system, which spares modules but no bank; absent when there is none
 * @param grid how much a grid-interactive array is to feed
 * @param wishes what is wanted besides
 * @param policy every assumption
 */
@RecordBuilder
public record DesignBrief(
        @Assumed(value = "unnamed", source = "no name stated")
        String name,

        @Assumed(value = "standAlone", source = "no grid or shore stated")
        SystemKind kind,

        @Assumed(source = "what the weather year shows: its months, its coldest and hottest hour")
        Site site,

        @Nullable WeatherYear weather,
        List<Load> loads,

        @Assumed(source = "IEC 60038: 230 V, 50 Hz, one phase")
        Service service,

        @Assumed(source = "as is best, ten metres from the bank")
        ArrayWish array,

        @Assumed(source = "all in one building") CableRuns cables,

        @Assumed(source = "the safe guess: an unheated shed")
        BankHousing bank,

        @Nullable ShorePower shore,
        @Nullable Alternator alternator,

        @Assumed(source = "as much in a year as the loads use")
        GridWish grid,

        @Assumed(source = "none stated") Wishes wishes,
        DesignPolicy policy)
        implements DesignBriefBuilder.With {
    /** How far north or south a weather year may have been taken. */
    private static final Angle FARTHEST = Angle.degrees(2);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or can never be right
     */
    public DesignBrief {
        name = Policies.otherwise(name, DesignBrief.class, "name");
        kind = Policies.otherwise(kind, DesignBrief.class, "kind");
        service = Objects.requireNonNullElseGet(service, Service::standard);
        array = Objects.requireNonNullElseGet(array, ArrayWish::free);
        cables = Objects.requireNonNullElseGet(cables, CableRuns::standard);
        bank = Objects.requireNonNullElseGet(bank, BankHousing::standard);
        grid = Objects.requireNonNullElseGet(grid, GridWish::standard);
        wishes = Objects.requireNonNullElseGet(wishes, Wishes::none);
        policy = Objects.requireNonNullElseGet(policy, DesignPolicy::standard);
        site = site == null && weather != null ? weather.site() : site;
        new Validation()
                .required("site", site)
                .that(
                        site == null || weather == null || near(site, weather.place()),
                        "weather/place/latitude",
                        "inconsistent",
                        "the weather year is from latitude %s, more than %s away from the site's %s"
                                .formatted(
                                        weather == null ? "" : weather.place().latitude(),
                                        FARTHEST,
                                        site == null ? "" : site.latitude()))
                .that(
                        weather == null || weather.air() != null,
                        "weather/air",
                        "missing",
                        "the weather year has no air temperature, without which no yield is known")
                .that(
                        wishes.availability() == null
                                || weather != null
                                || policy.system().simulatedYears() > 0,
                        "policy/system/simulatedYears",
                        "inconsistent",
                        "simulatedYears must be at least 1 where an availability is asked for and there is no weather year")
                .that(
                        shore == null || kind == SystemKind.MOBILE,
                        "shore",
                        "inconsistent",
                        "shore power belongs to a mobile system: kind must be mobile")
                .that(
                        alternator == null || kind == SystemKind.MOBILE,
                        "alternator",
                        "inconsistent",
                        "an alternator belongs to a mobile system: kind must be mobile")
                .that(
                        wishes.availability() == null || kind == SystemKind.STAND_ALONE || kind == SystemKind.MOBILE,
                        "wishes/availability",
                        "inconsistent",
                        "an availability can be asked for where there is no grid: kind must be standAlone or mobile")
                .notEmpty("loads", loads)
                .that(
                        kind != SystemKind.GRID_BACKUP
                                || loads == null
                                || loads.stream().anyMatch(Load::essential),
                        "loads",
                        "inconsistent",
                        "no load is essential: a system that backs up the grid is sized for those that are")
                .that(
                        loads == null || loads.size() <= EnergyDemand.MOST_LOADS,
                        "loads",
                        "outOfRange",
                        "loads must be at most %s but are %s"
                                .formatted(EnergyDemand.MOST_LOADS, loads == null ? 0 : loads.size()))
                .done();
        loads = List.copyOf(loads);
    }

    private static boolean near(Site site, Place place) {
        return Math.abs(site.latitude().degrees() - place.latitude().degrees()) <= FARTHEST.degrees();
    }

    /** The loads spread over the hours. */
    LoadProfile profile() {
        return LoadProfile.of(demand(), policy.load());
    }

    /** The facts of the energy budget. */
    EnergyDemand demand() {
        return EnergyDemandBuilder.builder()
                .loads(loads)
                .latitude(site.latitude())
                .autonomy(policy.bank().autonomy())
                .build();
    }
}
