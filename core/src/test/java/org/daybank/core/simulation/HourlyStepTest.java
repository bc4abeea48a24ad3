package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

/** Single hours of a bank of 1000 Wh, by hand. */
class HourlyStepTest {
    private static final double EXACT = 1e-9;

    /** Stores 0.8 of what goes in; others down to half, essentials down to a fifth; no more than 400 W out. */
    private static final StepFacts FACTS = StepFactsBuilder.builder()
            .capacity(1000)
            .otherDepth(0.5)
            .essentialDepth(0.8)
            .rise(100)
            .chargeEfficiency(0.8)
            .dischargeEfficiency(1)
            .dischargeLimit(400)
            .taperShare(0.5)
            .leakShare(0)
            .engineWatts(0)
            .build();

    private final BankStore store = new BankStore(1000, null);

    private HourlyStep step(StepFacts facts) {
        HourlyStep step = new HourlyStep(facts, store, null);
        step.day(1, 300);
        return step;
    }

    @Test
    void theArrayCarriesWhatRunsAndChargesWithTheRest() {
        store.fill(0.6);
        HourlyStep step = step(FACTS);

        step.step(500, 10, 100, 200, 0);

        // 500 − 310 = 190 are left; the bank takes up to 0.5 · (1000 − 600) / 0.8 = 250: all 190, of which 152 stay
        assertThat(store.level()).isCloseTo(752, within(EXACT));
        assertThat(step.intoBank).isCloseTo(190, within(EXACT));
        assertThat(step.spilled).isZero();
        assertThat(step.servedEssential + step.servedOther + step.servedOwn).isCloseTo(310, within(EXACT));
    }

    @Test
    void aFullBankTakesLessAndLessAndTheRestIsSpilled() {
        store.fill(0.96);
        HourlyStep step = step(FACTS);

        step.step(500, 0, 0, 0, 0);

        // half of the 40 that it lacks is stored: 20, for which 25 go in
        assertThat(store.level()).isCloseTo(980, within(EXACT));
        assertThat(step.intoBank).isCloseTo(25, within(EXACT));
        assertThat(step.spilled).isCloseTo(475, within(EXACT));
    }

    @Test
    void noMoreGoesInThanTheDayAllows() {
        store.fill(0.1);
        HourlyStep step = step(FACTS.withRise(0));

        step.step(900, 0, 0, 0, 0);

        // 0.5 · 900 / 0.8 = 562.5 would go in, the day allows 300
        assertThat(step.intoBank).isCloseTo(300, within(EXACT));
        assertThat(store.level()).isCloseTo(100 + 240, within(EXACT));
    }

    @Test
    void otherLoadsEndAtTheirFloorAndEssentialsGoOn() {
        store.fill(0.6);
        HourlyStep step = step(FACTS);

        step.step(0, 10, 60, 200, 0);

        // down to 500 there are 100: 10 for the system's own parts, 60 for essentials, 30 of 200 for others
        assertThat(step.servedEssential).isCloseTo(60, within(EXACT));
        assertThat(step.servedOther).isCloseTo(30, within(EXACT));
        assertThat(store.level()).isCloseTo(500, within(EXACT));

        step.step(0, 10, 60, 200, 0);

        assertThat(step.servedOther).isZero();
        assertThat(step.servedEssential).isCloseTo(60, within(EXACT));
        assertThat(store.level()).isCloseTo(430, within(EXACT));
    }

    @Test
    void loadsCutOffComeBackOnceTheBankHasRisen() {
        store.fill(0.5);
        HourlyStep step = step(FACTS);

        step.step(100, 0, 0, 80, 0);
        // cut off at 500: all 100 go into the bank, 80 stay
        assertThat(step.servedOther).isZero();
        assertThat(store.level()).isCloseTo(580, within(EXACT));

        step.step(100, 0, 0, 80, 0);
        // 580 is below 500 + 100: still off
        assertThat(step.servedOther).isZero();
        assertThat(store.level()).isCloseTo(660, within(EXACT));

        step.step(100, 0, 0, 80, 0);
        // 660 is above: back, and 20 are left, of which 16 stay
        assertThat(step.servedOther).isCloseTo(80, within(EXACT));
        assertThat(store.level()).isCloseTo(676, within(EXACT));
    }

    @Test
    void withoutARiseLoadsTakeWhatThereIs() {
        store.fill(0.5);
        HourlyStep step = step(FACTS.withRise(0));

        step.step(50, 0, 0, 80, 0);

        assertThat(step.servedOther).isCloseTo(50, within(EXACT));
        assertThat(store.level()).isCloseTo(500, within(EXACT));
    }

    @Test
    void theBankGivesNoMoreThanItsLimitToEssentialsFirst() {
        store.fill(1);
        HourlyStep step = step(FACTS);

        step.step(0, 0, 350, 200, 0);

        assertThat(step.outOfBank).isCloseTo(400, within(EXACT));
        assertThat(step.servedEssential).isCloseTo(350, within(EXACT));
        assertThat(step.servedOther).isCloseTo(50, within(EXACT));
    }

    @Test
    void lossesOnTheWayOutEmptyTheBankFaster() {
        store.fill(0.6);
        HourlyStep step = step(FACTS.withDischargeEfficiency(0.5));

        step.step(0, 0, 0, 200, 0);

        // 100 above the floor give 50
        assertThat(step.servedOther).isCloseTo(50, within(EXACT));
        assertThat(store.level()).isCloseTo(500, within(EXACT));
    }

    @Test
    void aBankAtRestLeaks() {
        store.fill(0.9);
        HourlyStep step = step(FACTS.withLeakShare(0.01));

        step.step(0, 0, 0, 0, 0);

        assertThat(step.leaked).isCloseTo(9, within(EXACT));
        assertThat(store.level()).isCloseTo(891, within(EXACT));
    }

    @Test
    void inTheColdLessComesOut() {
        store.fill(0.75);
        HourlyStep step = step(FACTS);
        step.day(0.6, 300);

        step.step(0, 0, 0, 200, 0);

        // of the capacity 0.6 can be drawn: half of that is 300, the floor stands at 700
        assertThat(step.servedOther).isCloseTo(50, within(EXACT));
        assertThat(store.level()).isCloseTo(700, within(EXACT));
    }

    @Test
    void shoreCarriesWhatTheArrayDoesNotAndCharges() {
        store.fill(0.5);
        HourlyStep step = step(FACTS.withRise(0));

        step.step(50, 0, 100, 100, 500);

        // 150 of shore carry loads; the bank takes 300: 240 stay
        assertThat(step.fromShore).isCloseTo(450, within(EXACT));
        assertThat(step.intoBank).isCloseTo(300, within(EXACT));
        assertThat(store.level()).isCloseTo(740, within(EXACT));
    }

    @Test
    void theEngineRunsFromItsStartToItsStop() {
        store.fill(0.55);
        EngineRule rule = EngineRuleBuilder.builder()
                .power(Power.watts(500))
                .startBelow(Ratio.of(0.6))
                .stopAbove(Ratio.of(0.8))
                .chargerEfficiency(Ratio.of(0.9))
                .litresPerKilowattHour(0.25)
                .litresPerHourPerKilowatt(0.08)
                .build();
        HourlyStep step = new HourlyStep(FACTS.withEngineWatts(450), store, rule);
        step.day(1, 300);

        step.step(0, 0, 200, 0, 0);
        // 450 less 200 for the loads: 250, of which 0.5 · 450 / 0.8 = 281 would be taken; 200 stay
        assertThat(step.engineOn).isTrue();
        assertThat(step.fromEngine).isCloseTo(450, within(EXACT));
        assertThat(store.level()).isCloseTo(750, within(EXACT));

        step.step(0, 0, 200, 0, 0);
        // between start and stop it goes on: 0.5 · 250 = 125 stay
        assertThat(step.engineOn).isTrue();
        assertThat(store.level()).isCloseTo(875, within(EXACT));

        step.step(0, 0, 200, 0, 0);
        assertThat(step.engineOn).isFalse();
        assertThat(store.level()).isCloseTo(675, within(EXACT));
    }
}
