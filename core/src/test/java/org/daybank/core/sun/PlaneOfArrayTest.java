package org.daybank.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.site.Horizon;
import org.daybank.core.site.Site;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class PlaneOfArrayTest {
    private static final SunPolicy POLICY = SunPolicy.standard();
    private static final Plane FLAT = new Plane(Angle.ZERO, Angle.degrees(180));

    private static Plane upright(double azimuth) {
        return new Plane(Angle.degrees(90), Angle.degrees(azimuth));
    }

    @Test
    void anOvercastMonthIsTheSameLightFromTheWholeSky() {
        // K = 0.1: all diffuse. A wall sees half the sky, and half of the ground, which throws back 0.2:
        // H_T = H · (0.5 + 0.2 · 0.5) = 0.6 H
        MonthlySun wall = PlaneOfArray.monthly(Sites.withClearness(50, 0.1), upright(180), POLICY);

        for (SunMonth month : wall.months()) {
            assertThat(month.diffuseFraction().fraction()).isEqualTo(1);
            assertThat(month.planeOfArray().dividedBy(month.horizontal())).isCloseTo(0.6, within(1e-12));
        }
    }

    @Test
    void onTheEquatorAtEquinoxAWestWallGetsTheBeamOfHalfTheDay() {
        // Isotropic, φ = 0, δ ≈ 0 (−2.4° in March): on a west wall the beam's factor is sin ω / cos ω after noon. With
        // the
        // beam of a slice proportional to (A + B · cos ω) · cos ω, A and B from global and diffuse shares, its sum over
        // the afternoon against the horizontal's over the day is
        // (A + B / 2) / (2 A + B · π / 2), the integrals being ∫ sin = 1, ∫ sin · cos = 1/2, ∫ cos = 1, ∫ cos² = π / 4.
        // K = 0.6, ω_s = 90°: a = 0.409 + 0.5016 · sin 30° = 0.6598, b = 0.6609 − 0.4767 · sin 30° = 0.42255,
        // normalised by 1 / (0.6598 + 0.42255 · π / 4) = 1.00840, diffuse f = 1.311 − 3.022 · 0.6 + 3.427 · 0.36 −
        // 1.821 · 0.216 = 0.338184: A = 0.665342 − 0.338184 = 0.327158, B = 0.426099,
        // ratio (0.327158 + 0.213050) / (0.654316 + 0.669315) = 0.408126
        Site site = Sites.withClearness(0, 0.6);
        SunPolicy isotropic = POLICY.withMonthlySkyModel(SkyModel.ISOTROPIC);
        SunMonth wall = PlaneOfArray.monthly(site, upright(270), isotropic).in(Month.MARCH);
        SunMonth flat = PlaneOfArray.monthly(site, FLAT, isotropic).in(Month.MARCH);

        // the declination of −2.4° and 48 slices move it by less than a per mille
        assertThat(wall.beam().dividedBy(flat.beam())).isCloseTo(0.408126, within(4e-4));
    }

    @Test
    void circumsolarLightFollowsTheBeam() {
        Site site = Sites.withClearness(45, 0.6);
        MonthlySun hayDavies = PlaneOfArray.monthly(site, upright(180), POLICY);
        MonthlySun isotropic = PlaneOfArray.monthly(site, upright(180), POLICY.withMonthlySkyModel(SkyModel.ISOTROPIC));

        // low winter sun stands before the wall, high summer sun above it
        assertThat(hayDavies.in(Month.DECEMBER).skyDiffuse())
                .isGreaterThan(isotropic.in(Month.DECEMBER).skyDiffuse());
        assertThat(hayDavies.in(Month.JUNE).skyDiffuse())
                .isLessThan(isotropic.in(Month.JUNE).skyDiffuse());
        assertThat(hayDavies.in(Month.JUNE).beam())
                .isEqualTo(isotropic.in(Month.JUNE).beam());
    }

    @Test
    void polarNightIsDarkAndNotUndefined() {
        SunMonth december = PlaneOfArray.monthly(Sites.withClearness(80, 0.6), upright(180), POLICY)
                .in(Month.DECEMBER);

        assertThat(december.dayLength().hours()).isZero();
        assertThat(december.planeOfArray()).isEqualTo(Irradiation.ZERO);
        assertThat(december.clearness()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void polarDayShinesOnThePoleFacingWallToo() {
        // at the pole the sun circles at one height: every wall has it in front for half the day
        SunMonth north = PlaneOfArray.monthly(Sites.withClearness(80, 0.6), upright(0), POLICY)
                .in(Month.JUNE);

        assertThat(north.dayLength().hours()).isEqualTo(24);
        assertThat(north.beam().dividedBy(north.horizontal())).isGreaterThan(0.3);
    }

    @Test
    void lightAtTheEdgeOfPolarNightCountsAsDiffuse() {
        // Tromsø's latitude: the mean day of January has no sunrise, but the sun comes back before the month is over
        List<Irradiation> months = Collections.nCopies(12, Irradiation.kilowattHoursPerSquareMetre(0.05));
        SunMonth january = PlaneOfArray.monthly(Sites.withIrradiation(69.65, months), upright(180), POLICY)
                .in(Month.JANUARY);

        assertThat(january.extraterrestrial()).isEqualTo(Irradiation.ZERO);
        // as above: 0.6 of the horizontal on a wall
        assertThat(january.planeOfArray().kilowattHoursPerSquareMetre()).isCloseTo(0.03, within(1e-12));
    }

    @Test
    void moreSunThanThereIsIsRefusedMonthByMonth() {
        Site site = Sites.withIrradiation(60, Collections.nCopies(12, Irradiation.kilowattHoursPerSquareMetre(5.4)));

        // H0 at 60° N: 0.98, 2.3, 4.9, 8.1, 10.6, 11.7, 11.1, 9.1, 5.7, 3.1, 1.3, 0.66 kWh/m² within some per cent
        assertThatThrownBy(() -> PlaneOfArray.monthly(site, FLAT, POLICY))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .containsExactly(
                                        "/site/months/dailyIrradiation/0",
                                        "/site/months/dailyIrradiation/1",
                                        "/site/months/dailyIrradiation/2",
                                        "/site/months/dailyIrradiation/9",
                                        "/site/months/dailyIrradiation/10",
                                        "/site/months/dailyIrradiation/11"))
                .hasMessageContaining("dailyIrradiation of january is 5.4 kWh/m²");
    }

    @Test
    void planesOutOfRangeAreRefused() {
        assertThatThrownBy(() -> new Plane(Angle.degrees(91), Angle.degrees(400)))
                .hasMessageContaining("tilt must be from 0 ° to 90 °, but was 91 °.")
                .hasMessageContaining("azimuth must be from -360 ° to 360 °, but was 400 °.");
        assertThat(new Plane(Angle.ZERO, Angle.degrees(-90)).azimuth()).isEqualTo(Angle.degrees(270));
    }

    @Test
    void workingShowsTheNumbersThatWereUsed() {
        MonthlySun sun = PlaneOfArray.monthly(Sites.withClearness(43, 0.5), upright(180), POLICY);

        assertThat(sun.working().steps())
                .hasSize(72)
                .allSatisfy(step -> assertThat(step.source()).isNotBlank());
        assertThat(sun.working().steps()).extracting(Step::name).contains("april: plane of array");
        Step clearness = sun.working().steps().get(3);
        assertThat(clearness.result()).isEqualTo("0.5");
        assertThat(clearness.substituted())
                .isEqualTo("%s / %s"
                        .formatted(
                                sun.in(Month.JANUARY).horizontal().rounded(),
                                sun.in(Month.JANUARY).extraterrestrial().rounded()));
    }

    @Test
    void aRidgeInTheSouthTakesTheWinterSun() {
        Site open = Sites.withClearness(47, 0.5);
        // noon sun at 47° N: 20° high in December, 66° in June
        Site shaded =
                open.withHorizon(Horizon.parse("100 deg: 0 deg; 110 deg: 25 deg; 250 deg: 25 deg; 260 deg: 0 deg"));
        MonthlySun before = PlaneOfArray.monthly(open, upright(180), POLICY);
        MonthlySun after = PlaneOfArray.monthly(shaded, upright(180), POLICY);

        assertThat(after.in(Month.DECEMBER).beam()).isEqualTo(Irradiation.ZERO);
        assertThat(after.in(Month.DECEMBER).skyDiffuse())
                .isLessThan(before.in(Month.DECEMBER).skyDiffuse());
        assertThat(after.in(Month.DECEMBER).ground())
                .isEqualTo(before.in(Month.DECEMBER).ground());
        assertThat(after.in(Month.JUNE).beam()).isEqualTo(before.in(Month.JUNE).beam());
    }

    @Test
    void wallsAllAroundLeaveTheLightOfTheGround() {
        Site pit = Sites.withClearness(47, 0.5).withHorizon(Horizon.parse("0 deg: 90 deg"));

        for (SunMonth month : PlaneOfArray.monthly(pit, upright(180), POLICY).months()) {
            assertThat(month.planeOfArray()).isEqualTo(month.ground());
        }
    }
}
