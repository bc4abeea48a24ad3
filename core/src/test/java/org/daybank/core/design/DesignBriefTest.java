package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.daybank.core.Refused;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.load.EnergyDemand;
import org.daybank.core.load.Load;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.Site;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.sun.SyntheticWeather;
import org.daybank.core.sweep.Axis;
import org.daybank.core.sweep.Row;
import org.daybank.core.sweep.Sweep;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a brief and its wishes may say, and what is refused before anything is calculated. */
class DesignBriefTest {
    private static final DesignBrief RIDGE = LarkspurRidge.BRIEF;

    @Test
    void aBriefNeedsASiteAndLoads() {
        assertThat(Refused.places(() -> DesignBriefBuilder.builder().build()))
                .containsExactlyInAnyOrder("/site", "/loads");
        assertThat(Refused.places(() -> RIDGE.withLoads(List.of()))).containsExactly("/loads");
        Load lamp = RIDGE.loads().get(0);
        assertThat(RIDGE.withLoads(Collections.nCopies(EnergyDemand.MOST_LOADS, lamp))
                        .loads())
                .hasSize(500);
        assertThatThrownBy(() -> RIDGE.withLoads(Collections.nCopies(EnergyDemand.MOST_LOADS + 1, lamp)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("loads must have at most 500 elements, but has 501.");
    }

    @Test
    void whatBelongsToAVehicleIsForMobileSystems() {
        ShorePower shore = new ShorePower(Power.kilowatts(2), null, null);
        Alternator alternator = new Alternator(Current.amperes(30), null);
        assertThat(Refused.places(() -> RIDGE.withShore(shore))).containsExactly("/shore");
        assertThat(Refused.places(() -> RIDGE.withAlternator(alternator))).containsExactly("/alternator");
        assertThatCode(() -> RIDGE.withKind(SystemKind.MOBILE).withShore(shore).withAlternator(alternator))
                .doesNotThrowAnyException();
    }

    @Test
    void anAvailabilityIsForSystemsWithoutAGrid() {
        Wishes steady = Wishes.none().withAvailability(Ratio.percent(99));
        assertThatCode(() -> RIDGE.withWishes(steady).withKind(SystemKind.MOBILE))
                .doesNotThrowAnyException();
        assertThat(Refused.places(() -> RIDGE.withWishes(steady).withKind(SystemKind.GRID_INTERACTIVE)))
                .containsExactly("/wishes/availability");
        assertThat(Refused.places(() -> RIDGE.withKind(SystemKind.GRID_BACKUP).withWishes(steady)))
                .containsExactly("/wishes/availability");
    }

    @Test
    void aBackupIsForEssentialLoads() {
        List<Load> spare =
                RIDGE.loads().stream().map(load -> load.withEssential(false)).toList();
        assertThatCode(() -> RIDGE.withLoads(spare)).doesNotThrowAnyException();
        assertThat(Refused.places(() -> RIDGE.withKind(SystemKind.GRID_BACKUP).withLoads(spare)))
                .containsExactly("/loads");
    }

    /** A weather year may come from two degrees of latitude away, and stands in for the site where there is none. */
    @Test
    void aWeatherYearIsThatOfTheSite() {
        WeatherYear weather =
                SyntheticWeather.year(RIDGE.resolved().site(), 3, 0, SunPolicy.standard(), SyntheticPolicy.standard());
        DesignBrief withoutSite = DesignBriefBuilder.builder()
                .loads(RIDGE.loads())
                .weather(weather)
                .build();
        assertThat(withoutSite.site()).isNull();
        assertThat(withoutSite.resolved().site()).isEqualTo(weather.site());
        assertThat(withoutSite.resolved().site().latitude())
                .isEqualTo(RIDGE.resolved().site().latitude());
        assertThat(Refused.places(() -> withoutSite.withWeather(null))).containsExactly("/site");
        DesignBrief here = RIDGE.withWeather(weather);
        double latitude = RIDGE.resolved().site().latitude().degrees();
        assertThatCode(() -> here.withSite(RIDGE.resolved().site().withLatitude(Latitude.degrees(latitude + 1.99))))
                .doesNotThrowAnyException();
        assertThat(Refused.places(
                        () -> here.withSite(RIDGE.resolved().site().withLatitude(Latitude.degrees(latitude - 2.01)))))
                .containsExactly("/weather/place/latitude");
        assertThat(Refused.places(() -> here.withWeather(weather.withAir(null))))
                .containsExactly("/weather/air");
        SystemPolicy none = SystemPolicy.standard().withSimulatedYears(0);
        assertThatCode(() -> here.withPolicy(RIDGE.policy().withSystem(none))
                        .withWishes(Wishes.none().withAvailability(Ratio.percent(99))))
                .as("its hours show an availability")
                .doesNotThrowAnyException();
    }

    @Test
    void wishesAreWithinWhatThereIs() {
        assertThat(Refused.places(
                        () -> new Wishes(Voltage.volts(36), List.of(), null, null, Ratio.of(1.01), TimeSpan.days(731))))
                .containsExactlyInAnyOrder("/nominalVoltage", "/availability", "/deliveredWithin", "/chemistries");
        assertThatCode(() -> new Wishes(
                        Voltage.volts(48), List.of(Chemistry.GEL), null, null, Ratio.ONE, TimeSpan.days(730)))
                .doesNotThrowAnyException();
    }

    @Test
    void anArrayStandsSomewhere() {
        assertThat(Refused.places(() -> new ArrayWish(Angle.degrees(91), Angle.degrees(361), Length.metres(5001))))
                .containsExactly("/tilt", "/azimuth", "/cableLength");
        assertThatCode(() -> new ArrayWish(Angle.degrees(90), Angle.degrees(-360), Length.ZERO))
                .doesNotThrowAnyException();
    }

    @Test
    void anArrayOnTheGridHasASize() {
        assertThat(Refused.places(() -> new GridWish(0, Power.kilowatts(10_001), null, null)))
                .containsExactly("/modules", "/power");
        assertThat(Refused.places(() -> new GridWish(1, null, Ratio.of(-0.1), null)))
                .containsExactly("/coverage");
        assertThatCode(() -> new GridWish(10_000, Power.watts(1), null, null)).doesNotThrowAnyException();
    }

    @Test
    void partsAndPoliciesAreWhole() {
        assertThat(Refused.places(() -> new SimulationBrief(null, null, null, null)))
                .containsExactly("/brief", "/parts");
        assertThat(Refused.places(() -> DesignPolicy.standard().withSystem(null)))
                .containsExactly("/system");
    }

    /** A brief without a site moves with its weather year. */
    @Test
    void theSiteFollowsTheWeatherYear() {
        Site ridge = RIDGE.resolved().site();
        WeatherYear here = SyntheticWeather.year(ridge, 3, 0, SunPolicy.standard(), SyntheticPolicy.standard());
        WeatherYear there = here.withPlace(here.place().withElevation(Length.metres(123)));
        DesignBrief brief =
                DesignBriefBuilder.builder().loads(RIDGE.loads()).weather(here).build();
        DesignBrief moved = brief.withWeather(there);
        assertThat(moved.resolved().site().elevation()).isEqualTo(Length.metres(123));
        assertThat(moved)
                .isEqualTo(DesignBriefBuilder.builder()
                        .loads(RIDGE.loads())
                        .weather(there)
                        .build());
        assertThat(moved.demand().latitude()).isEqualTo(ridge.latitude());
        assertThat(Refused.places(() -> brief.withWeather(here.withDirect(here.global())
                        .withDiffuse(here.global())
                        .withGlobal(null))))
                .containsExactly("/weather/global");
    }

    /** Where the brief leaves the site to its weather year, a sweep varies parts of that site. */
    @Test
    void partsOfTheSiteThatTheWeatherShowsVary() {
        WeatherYear weather =
                SyntheticWeather.year(RIDGE.resolved().site(), 3, 0, SunPolicy.standard(), SyntheticPolicy.standard());
        DesignBrief brief = DesignBriefBuilder.builder()
                .loads(RIDGE.loads())
                .weather(weather)
                .build();
        List<Row> rows = Sweep.of(
                        brief,
                        one -> new Case(
                                one.resolved().site().elevation(), one.array().tilt()))
                .vary("site.elevation", Axis.of(Length.metres(100), Length.metres(200)))
                .vary("array.tilt", Axis.of(Angle.degrees(20), Angle.degrees(30)))
                .output("elevation")
                .output("tilt")
                .rows()
                .toList();
        assertThat(rows)
                .extracting(row -> row.number("elevation").orElseThrow())
                .containsExactly(100.0, 100.0, 200.0, 200.0);
        assertThat(rows).extracting(row -> row.number("tilt").orElseThrow()).containsExactly(20.0, 30.0, 20.0, 30.0);
    }

    /** What the sweep of this test shows of a brief. */
    public record Case(Length elevation, @Nullable Angle tilt) {}

    @Test
    void listsOfABriefHaveNoGaps() {
        assertThat(Refused.places(() -> RIDGE.withLoads(Collections.singletonList(null))))
                .containsExactly("/loads/0");
        assertThat(Refused.places(() -> new Wishes(null, Collections.singletonList(null), null, null, null, null)))
                .containsExactly("/chemistries/0");
        assertThat(Refused.problems(() -> new Wishes(Voltage.volts(1e12), null, null, null, null, null)))
                .extracting(Problem::message)
                .containsExactly("nominalVoltage must be from 12 V to 48 V, but was 1000000000 kV.");
    }
}
