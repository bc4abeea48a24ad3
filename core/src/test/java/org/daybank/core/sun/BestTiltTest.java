package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Energy;
import org.daybank.core.site.Site;
import org.junit.jupiter.api.Test;

class BestTiltTest {
    private static final SunPolicy POLICY = SunPolicy.standard();
    private static final Angle SOUTH = Angle.degrees(180);
    private static final List<Energy> EVEN_NEED = Collections.nCopies(12, Energy.kilowattHours(2));

    private static double yearAt(Site site, double tilt, double azimuth) {
        return PlaneOfArray.monthly(site, new Plane(Angle.degrees(tilt), Angle.degrees(azimuth)), POLICY)
                .yearly()
                .kilowattHoursPerSquareMetre();
    }

    private static double hardestAt(Site site, double tilt) {
        return PlaneOfArray.monthly(site, new Plane(Angle.degrees(tilt), SOUTH), POLICY).months().stream()
                .mapToDouble(month -> month.planeOfArray().kilowattHoursPerSquareMetre())
                .min()
                .orElseThrow();
    }

    @Test
    void noOtherTiltGathersMoreInTheYear() {
        Site site = Sites.withClearness(47, 0.5);
        MonthlySun best = BestTilt.forYear(site, SOUTH, POLICY);

        for (int tilt = 0; tilt <= 90; tilt++) {
            assertThat(yearAt(site, tilt, 180))
                    .isLessThanOrEqualTo(best.yearly().kilowattHoursPerSquareMetre() + 1e-6);
        }
        // customary: some degrees flatter than the latitude
        assertThat(best.plane().tilt().degrees()).isBetween(30.0, 47.0);
    }

    @Test
    void noOtherTiltMakesTheHardestMonthEasier() {
        Site site = Sites.withClearness(47, 0.5);
        MonthlySun best = BestTilt.forNeed(site, SOUTH, POLICY, EVEN_NEED);
        double bestHardest = hardestAt(site, best.plane().tilt().degrees());

        for (int tilt = 0; tilt <= 90; tilt++) {
            assertThat(hardestAt(site, tilt)).isLessThanOrEqualTo(bestHardest + 1e-6);
        }
        // customary for winter: some 15° steeper than the latitude
        assertThat(best.plane().tilt().degrees()).isBetween(55.0, 75.0);
    }

    @Test
    void aSummerNeedIsMetFlatter() {
        List<Energy> summer = new ArrayList<>(Collections.nCopies(12, Energy.ZERO));
        summer.set(Month.JUNE.getValue() - 1, Energy.kilowattHours(1));

        MonthlySun best = BestTilt.forNeed(Sites.withClearness(47, 0.5), SOUTH, POLICY, summer);

        // noon sun of June stands 47° − 23° = 24° from the zenith; diffuse light draws the plane flatter still
        assertThat(best.plane().tilt().degrees()).isBetween(0.0, 24.0);
    }

    @Test
    void awayFromTheEquatorFlatIsBest() {
        MonthlySun best = BestTilt.forYear(Sites.withClearness(47, 0.5), Angle.ZERO, POLICY);

        assertThat(best.plane().tilt().degrees()).isCloseTo(0, within(0.01));
    }

    @Test
    void monthsWithoutAnySunDoNotHideTheOthers() {
        MonthlySun best = BestTilt.forNeed(Sites.withClearness(75, 0.5), SOUTH, POLICY, EVEN_NEED);

        // February and October decide, with a very low sun
        assertThat(best.plane().tilt().degrees()).isGreaterThan(75);
    }

    @Test
    void twelveNeedsAreAskedFor() {
        assertThatThrownBy(() -> BestTilt.forNeed(Sites.withClearness(47, 0.5), SOUTH, POLICY, EVEN_NEED.subList(0, 3)))
                .hasMessageContaining("dailyNeed must have 12 values, but has 3.");
    }

    @Test
    void twoTiltsGatherMoreThanOne() {
        Site site = Sites.withClearness(47, 0.5);
        SeasonalTilt twice = BestTilt.forYearTwice(site, SOUTH, POLICY);

        assertThat(twice.yearly())
                .isGreaterThan(BestTilt.forYear(site, SOUTH, POLICY).yearly());
        // customary: latitude less some 20° in summer, plus some 10° in winter
        assertThat(twice.aprilToSeptember().plane().tilt().degrees()).isBetween(15.0, 32.0);
        assertThat(twice.octoberToMarch().plane().tilt().degrees()).isBetween(50.0, 65.0);
        assertThat(twice.months().get(2)).isEqualTo(twice.octoberToMarch().in(Month.MARCH));
        assertThat(twice.months().get(3)).isEqualTo(twice.aprilToSeptember().in(Month.APRIL));
    }

    @Test
    void twoTiltsEaseTheHardestMonthOfEachHalfYear() {
        Site site = Sites.withClearness(47, 0.5);
        MonthlySun once = BestTilt.forNeed(site, SOUTH, POLICY, EVEN_NEED);
        SeasonalTilt twice = BestTilt.forNeedTwice(site, SOUTH, POLICY, EVEN_NEED);

        // one tilt has to weigh December's low sun against June's high one; two need not
        assertThat(twice.octoberToMarch().in(Month.DECEMBER).planeOfArray())
                .isGreaterThan(once.in(Month.DECEMBER).planeOfArray());
        assertThat(twice.aprilToSeptember().in(Month.JUNE).planeOfArray())
                .isGreaterThan(once.in(Month.JUNE).planeOfArray());
        assertThat(twice.octoberToMarch().plane().tilt())
                .isGreaterThan(twice.aprilToSeptember().plane().tilt());
    }
}
