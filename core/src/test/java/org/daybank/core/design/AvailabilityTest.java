package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.daybank.core.design.Designs.alternatives;
import static org.daybank.core.design.Designs.evidence;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.system;

import java.util.List;
import org.daybank.core.Refused;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.sun.SyntheticWeather;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;

class AvailabilityTest {
    private static DesignOutcome design(DesignBrief brief) {
        return SystemDesigner.design(brief, Catalog.sample());
    }

    private static DesignBrief asking(double availability) {
        return LarkspurRidge.BRIEF.withWishes(Wishes.none().withAvailability(Ratio.of(availability)));
    }

    private static DesignBrief with(SystemPolicy policy) {
        return LarkspurRidge.BRIEF.withPolicy(DesignPolicy.standard().withSystem(policy));
    }

    private static Reliability availability(DesignOutcome design) {
        return evidence(design).availability().orElseThrow();
    }

    private static long price(DesignOutcome design) {
        return design.billOfMaterials().orElseThrow().total().minorUnits();
    }

    private static Check check(DesignOutcome design, String rule) {
        return design.checks().stream()
                .filter(check -> check.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyDesignIsRunThroughMadeUpYears() {
        Reliability reliability = availability(design(LarkspurRidge.BRIEF));

        assertThat(reliability.years()).isEqualTo(5);
        assertThat(reliability.availability().fraction())
                .isEqualTo(1 - reliability.lossOfLoadProbability().mean().fraction());
        assertThat(reliability.months()).hasSize(12);
        // winter is its worst season
        assertThat(reliability.months().get(5).lossOfLoad().hours()).isZero();
    }

    @Test
    void thePartsOfADesignCanBeRunAgain() {
        DesignOutcome design = design(LarkspurRidge.BRIEF);

        Simulation again = SystemSimulator.run(
                new SimulationBrief(LarkspurRidge.BRIEF, system(design).parts(), null, null), Catalog.sample());

        assertThat(again.reliability()).isEqualTo(availability(design));
        assertThat(again.byYear())
                .hasSize(5)
                .allSatisfy(
                        year -> assertThat(Math.abs(year.ledger().imbalance())).isLessThan(1e-9));
    }

    @Test
    void anAvailabilityThatIsAskedForSteersTheDesign() {
        DesignOutcome plain = design(LarkspurRidge.BRIEF);
        double before = availability(plain).availability().fraction();
        double asked = 1 - (1 - before) / 4;

        DesignOutcome steered = design(asking(asked));

        assertThat(availability(steered).availability().fraction()).isGreaterThanOrEqualTo(asked);
        assertThat(check(steered, "availability").passed()).isTrue();
        assertThat(price(steered)).isGreaterThan(price(plain));
        List<FrontierPoint> frontier = alternatives(steered).availabilityFrontier();
        assertThat(frontier.get(0).price().minorUnits()).isEqualTo(price(plain));
        assertThat(frontier.get(frontier.size() - 1).price().minorUnits()).isEqualTo(price(steered));
        for (int i = 1; i < frontier.size(); i++) {
            assertThat(frontier.get(i).price())
                    .isGreaterThan(frontier.get(i - 1).price());
            assertThat(frontier.get(i).availability())
                    .isGreaterThan(frontier.get(i - 1).availability());
        }
    }

    @Test
    void whatTheRulesGiveIsEnoughForAModestWish() {
        DesignOutcome modest = design(asking(0.5));

        assertThat(price(modest)).isEqualTo(price(design(LarkspurRidge.BRIEF)));
        assertThat(check(modest, "availability").message().toString()).endsWith("Designs simulated: 1.");
    }

    @Test
    void theLimitOfSimulatedDesignsIsReportedWhenItIsReached() {
        DesignOutcome capped = design(with(SystemPolicy.standard().withMostSimulated(2))
                .withWishes(Wishes.none().withAvailability(Ratio.ONE)));

        assertThat(isDesign(capped)).isTrue();
        assertThat(check(capped, "availability").passed()).isFalse();
        assertThat(check(capped, "availability").message().toString())
                .contains("Designs simulated: 2; a higher limit (policy mostSimulated)");
    }

    @Test
    void partsAndBriefMayNotContradictEachOther() {
        SystemParts parts = system(design(LarkspurRidge.BRIEF)).parts();
        SystemParts other = parts.withTilt(parts.tilt().plus(Angle.degrees(1))).withAzimuth(Angle.degrees(170));
        DesignBrief fixed = LarkspurRidge.BRIEF.withArray(new ArrayWish(parts.tilt(), parts.azimuth(), null));

        assertThat(Refused.problems(() -> new SimulationBrief(fixed, other, null, null)))
                .extracting(Problem::path, Problem::message)
                .containsExactly(
                        tuple(
                                "/parts/tilt",
                                "parts.tilt must equal array.tilt %s, but was %s."
                                        .formatted(parts.tilt(), other.tilt())),
                        tuple(
                                "/parts/azimuth",
                                "parts.azimuth must equal array.azimuth %s, but was %s."
                                        .formatted(parts.azimuth(), other.azimuth())));
        assertThat(new SimulationBrief(fixed, parts, null, null).parts()).isEqualTo(parts);
    }

    @Test
    void withoutYearsNothingIsSimulated() {
        DesignOutcome unproved = design(with(SystemPolicy.standard().withSimulatedYears(0)));

        assertThat(evidence(unproved).availability()).isEmpty();
        assertThat(price(unproved)).isEqualTo(price(design(LarkspurRidge.BRIEF)));
    }

    @Test
    void aWishForAvailabilityNeedsYears() {
        assertThatThrownBy(() -> with(SystemPolicy.standard().withSimulatedYears(0))
                        .withWishes(Wishes.none().withAvailability(Ratio.of(0.99))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("simulatedYears must be at least 1 where an availability is asked for");
    }

    @Test
    void aWeatherYearIsRunInPlaceOfMadeUpOnes() {
        WeatherYear weather = SyntheticWeather.year(
                LarkspurRidge.BRIEF.site(), 9, 0, SunPolicy.standard(), SyntheticPolicy.standard());

        DesignOutcome design = design(LarkspurRidge.BRIEF.withWeather(weather.withPlace(weather.place())));

        assertThat(availability(design).years()).isEqualTo(1);
        assertThat(availability(design).lossOfLoadProbability().low()).isNull();
    }

    @Test
    void otherSeedsGiveOtherYears() {
        Reliability one = availability(design(with(SystemPolicy.standard().withSeed(1))));
        Reliability other = availability(design(with(SystemPolicy.standard().withSeed(2))));

        assertThat(other).isNotEqualTo(one);
    }

    @Test
    void partsThatAreNotOnOfferAreRefusedAllAtOnce() {
        SystemParts parts =
                system(design(LarkspurRidge.BRIEF)).parts().withModule("PL-1").withBattery("BK-9");

        assertThatThrownBy(() -> SystemSimulator.run(
                        new SimulationBrief(LarkspurRidge.BRIEF, parts, null, null), Catalog.sample()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("PL-1 is no module of the catalogue")
                .hasMessageContaining("BK-9 is no battery of the catalogue");
    }

    @Test
    void controllersTakeWholeStrings() {
        SystemParts parts = system(design(LarkspurRidge.BRIEF)).parts();

        assertThatThrownBy(() -> parts.withControllers(3))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("3 controllers cannot share 2 strings");
    }
}
