package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.sun.SyntheticWeather;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;

class AvailabilityTest {
    private static SystemDesign design(DesignBrief brief) {
        return SystemDesigner.design(brief, Catalog.sample());
    }

    private static DesignBrief asking(double availability) {
        return LarkspurRidge.BRIEF.withWishes(Wishes.none().withAvailability(Ratio.of(availability)));
    }

    private static DesignBrief with(SystemPolicy policy) {
        return LarkspurRidge.BRIEF.withPolicy(DesignPolicy.standard().withSystem(policy));
    }

    private static Reliability availability(SystemDesign design) {
        return Objects.requireNonNull(design.availability());
    }

    private static long price(SystemDesign design) {
        return SystemDesign.part(design.billOfMaterials()).total().minorUnits();
    }

    private static Check check(SystemDesign design, String rule) {
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
        SystemDesign design = design(LarkspurRidge.BRIEF);

        Simulation again = SystemSimulator.run(
                new SimulationBrief(LarkspurRidge.BRIEF, Objects.requireNonNull(design.parts()), null, null),
                Catalog.sample());

        assertThat(again.reliability()).isEqualTo(design.availability());
        assertThat(again.byYear())
                .hasSize(5)
                .allSatisfy(
                        year -> assertThat(Math.abs(year.ledger().imbalance())).isLessThan(1e-9));
    }

    @Test
    void anAvailabilityThatIsAskedForSteersTheDesign() {
        SystemDesign plain = design(LarkspurRidge.BRIEF);
        double before = availability(plain).availability().fraction();
        double asked = 1 - (1 - before) / 4;

        SystemDesign steered = design(asking(asked));

        assertThat(availability(steered).availability().fraction()).isGreaterThanOrEqualTo(asked);
        assertThat(check(steered, "availability").passed()).isTrue();
        assertThat(price(steered)).isGreaterThan(price(plain));
        List<FrontierPoint> frontier = steered.frontier();
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
        SystemDesign modest = design(asking(0.5));

        assertThat(price(modest)).isEqualTo(price(design(LarkspurRidge.BRIEF)));
        assertThat(check(modest, "availability").message().toString()).endsWith("Designs simulated: 1.");
    }

    @Test
    void theLimitOfSimulatedDesignsIsReportedWhenItIsReached() {
        SystemDesign capped = design(with(SystemPolicy.standard().withMostSimulated(2))
                .withWishes(Wishes.none().withAvailability(Ratio.ONE)));

        assertThat(capped.complete()).isTrue();
        assertThat(check(capped, "availability").passed()).isFalse();
        assertThat(check(capped, "availability").message().toString())
                .contains("not reached. Designs simulated: 2; a higher limit (policy mostSimulated)");
    }

    @Test
    void withoutYearsNothingIsSimulated() {
        SystemDesign unproved = design(with(SystemPolicy.standard().withSimulatedYears(0)));

        assertThat(unproved.availability()).isNull();
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

        SystemDesign design = design(LarkspurRidge.BRIEF.withWeather(weather.withPlace(weather.place())));

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
        SystemParts parts = Objects.requireNonNull(design(LarkspurRidge.BRIEF).parts())
                .withModule("PL-1")
                .withBattery("BK-9");

        assertThatThrownBy(() -> SystemSimulator.run(
                        new SimulationBrief(LarkspurRidge.BRIEF, parts, null, null), Catalog.sample()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("PL-1 is no module of the catalogue")
                .hasMessageContaining("BK-9 is no battery of the catalogue");
    }

    @Test
    void controllersTakeWholeStrings() {
        SystemParts parts = Objects.requireNonNull(design(LarkspurRidge.BRIEF).parts());

        assertThatThrownBy(() -> parts.withControllers(3))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("3 controllers cannot share 2 strings");
    }
}
