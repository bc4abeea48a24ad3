package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.daybank.core.Refused;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class SiteTest {
    private static final List<Temperature> AIR = List.of(
            Temperature.celsius(-6),
            Temperature.celsius(-4),
            Temperature.celsius(0),
            Temperature.celsius(4),
            Temperature.celsius(9),
            Temperature.celsius(12),
            Temperature.celsius(16),
            Temperature.celsius(15),
            Temperature.celsius(11),
            Temperature.celsius(5),
            Temperature.celsius(-2),
            Temperature.celsius(-5));

    private static MonthlyClimateBuilder climate() {
        return MonthlyClimateBuilder.builder().clearness(List.of(Ratio.of(0.5))).meanAir(AIR);
    }

    @Test
    void whatIsLeftOutIsFilledIn() {
        Site site = SiteBuilder.builder()
                .latitude(Latitude.degrees(46.87))
                .recordLow(Temperature.celsius(-29))
                .months(climate().build())
                .build();

        assertThat(site.elevation()).isEqualTo(Length.ZERO);
        // warmest month 16 °C + 15 K
        assertThat(site.recordHigh()).isNull();
        assertThat(site.resolved().recordHigh()).isEqualTo(Temperature.celsius(31));
        assertThat(site.months().clearness()).isEqualTo(Collections.nCopies(12, Ratio.of(0.5)));
        assertThat(site.months().albedo()).isEqualTo(Collections.nCopies(12, Ratio.of(0.2)));
        assertThat(site.months().snowLoss()).isEqualTo(Collections.nCopies(12, Ratio.ZERO));
        assertThat(site.months().dailyIrradiation()).isNull();
    }

    @Test
    void theHottestAirFollowsTheMonths() {
        Site site = SiteBuilder.builder()
                .latitude(Latitude.degrees(46.87))
                .recordLow(Temperature.celsius(-29))
                .months(climate().build())
                .build();
        List<Temperature> warmer =
                AIR.stream().map(air -> Temperature.celsius(air.celsius() + 10)).toList();

        Site moved = site.withMonths(climate().meanAir(warmer).build());

        // warmest month 16 °C + 10 K + 15 K
        assertThat(moved.resolved().recordHigh()).isEqualTo(Temperature.celsius(41));
        assertThat(moved.withRecordHigh(Temperature.celsius(30)).resolved().recordHigh())
                .isEqualTo(Temperature.celsius(30));
        assertThat(moved.withRecordHigh(Temperature.celsius(30)).withRecordHigh(null))
                .isEqualTo(moved);
    }

    @Test
    void absurdSitesAreRefused() {
        SiteBuilder site = SiteBuilder.builder()
                .latitude(Latitude.degrees(46.87))
                .recordLow(Temperature.celsius(-29))
                .months(climate().build());

        assertThat(Refused.places(() -> site.elevation(Length.metres(1e308)).build()))
                .containsExactly("/elevation");
        assertThat(Refused.places(() -> site.elevation(Length.metres(-431)).build()))
                .containsExactly("/elevation");
        site.elevation(Length.metres(9000));
        assertThat(Refused.places(() -> site.recordLow(Temperature.celsius(-91)).build()))
                .containsExactly("/recordLow");
        site.recordLow(Temperature.celsius(-90));
        assertThat(Refused.places(() -> site.recordHigh(Temperature.celsius(66)).build()))
                .containsExactly("/recordHigh");
        assertThat(Refused.places(() -> site.recordHigh(Temperature.celsius(65)).build()))
                .isEmpty();
    }

    @Test
    void whatWasResolvedIsTakenBackUnchanged() {
        MonthlyClimate resolved = climate().build();

        assertThat(MonthlyClimateBuilder.builder(resolved).build()).isEqualTo(resolved);
    }

    @Test
    void extremesMustSpanTheMonths() {
        assertThatThrownBy(() -> SiteBuilder.builder()
                        .recordLow(Temperature.celsius(-5.5))
                        .recordHigh(Temperature.celsius(15.5))
                        .elevation(Length.metres(-2000))
                        .months(climate().build())
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/latitude MISSING",
                                        "/elevation OUT_OF_RANGE",
                                        "/recordLow INCONSISTENT",
                                        "/recordHigh INCONSISTENT"))
                .hasMessageContaining("recordLow must be at most the coldest month's mean -6 °C, but was -5.5 °C.");
    }

    @Test
    void irradiationOrClearnessIsGivenAndNotBoth() {
        assertThatThrownBy(() -> climate().clearness(null).build())
                .hasMessageContaining("dailyIrradiation is required: twelve daily means")
                .hasMessageContaining("clearness in its place");
        assertThatThrownBy(() -> climate()
                        .dailyIrradiation(Collections.nCopies(12, Irradiation.kilowattHoursPerSquareMetre(4)))
                        .build())
                .hasMessageContaining("dailyIrradiation and clearness are both given");
    }

    @Test
    void everythingWrongWithTheMonthsIsToldAtOnce() {
        List<Temperature> gap = new ArrayList<>(AIR);
        gap.set(3, null);
        assertThatThrownBy(() -> MonthlyClimateBuilder.builder()
                        .dailyIrradiation(Collections.nCopies(11, Irradiation.kilowattHoursPerSquareMetre(4)))
                        .meanAir(gap)
                        .albedo(Collections.nCopies(12, Ratio.of(1.2)).subList(0, 1))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/dailyIrradiation OUT_OF_RANGE",
                                        "/meanAir/3 MISSING",
                                        "/albedo OUT_OF_RANGE",
                                        "/albedo/0 OUT_OF_RANGE"));
        assertThatThrownBy(() -> climate()
                        .clearness(List.of(Ratio.of(0.5), Ratio.of(0.5)))
                        .build())
                .hasMessageContaining("clearness must have 1 element or 12, but has 2.");
        assertThatThrownBy(() -> climate().clearness(List.of(Ratio.of(5))).build())
                .hasMessageContaining("clearness/0 must be from 0 to 0.9, but was 5.");
    }

    @Test
    void aHorizonThatIsGivenStays() {
        Horizon hill = Horizon.parse("90 deg: 10 deg; 180 deg: 5 deg");
        Site site = SiteBuilder.builder()
                .latitude(Latitude.degrees(46.87))
                .recordLow(Temperature.celsius(-29))
                .months(climate().build())
                .horizon(hill)
                .build();

        assertThat(site.horizon()).isEqualTo(hill);
        assertThat(site.withHorizon(null).horizon()).isEqualTo(Horizon.OPEN);
    }

    @Test
    void aMeanYearHasAQuarterOfALeapDay() {
        double days = 0;
        for (Month month : Month.values()) {
            days += MonthlyClimate.daysIn(month);
        }
        assertThat(days).isEqualTo(365.25);
        assertThat(MonthlyClimate.daysIn(Month.FEBRUARY)).isEqualTo(28.25);
        assertThat(MonthlyClimate.daysIn(Month.JUNE)).isEqualTo(30);
    }
}
