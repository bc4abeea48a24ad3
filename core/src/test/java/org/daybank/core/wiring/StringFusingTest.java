package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Current;
import org.junit.jupiter.api.Test;

/** Strings of 13.9 A whose modules allow fuses of 25 A. */
class StringFusingTest {
    private static final WiringPolicy IEC = WiringPolicy.standard();

    private static StringFusing fusing(Circuit string) {
        return CircuitSizing.of(string, IEC).fusing().orElseThrow();
    }

    @Test
    void oneStringHasNoOtherToFearAndTwoFeedLessThanModulesStand() {
        assertThat(fusing(Circuits.string(1)).needed()).isFalse();
        // (2 − 1) · 1.25 · 13.9 A = 17.375 A < 25 A
        StringFusing two = fusing(Circuits.string(2));
        assertThat(two.reverseCurrent().amperes()).isCloseTo(17.375, within(1e-9));
        assertThat(two.needed()).isFalse();
        assertThat(CircuitSizing.of(Circuits.string(2), IEC).device()).isEmpty();
        // as much as they stand is not more than they stand
        assertThat(fusing(Circuits.string(2).withStrings(new ParallelStrings(2, Current.amperes(17.375), Current.ZERO)))
                        .needed())
                .isFalse();
    }

    @Test
    void fromThreeStringsUpEachHasAFuse() {
        // (3 − 1) · 1.25 · 13.9 A = 34.75 A > 25 A; 1.5 · 13.9 A = 20.85 A: 25 A, which is within 2.4 · 13.9 A = 33.36
        // A
        CircuitSizing three = CircuitSizing.of(Circuits.string(3), IEC);
        assertThat(three.fusing().orElseThrow().needed()).isTrue();
        assertThat(three.device().orElseThrow().rating()).isEqualTo(Current.amperes(25));
        assertThat(three.fits()).isTrue();
        assertThat(three.checks())
                .filteredOn(check -> check.rule().code().equals("largestDevice"))
                .singleElement()
                .satisfies(check -> assertThat(check.message())
                        .hasToString(
                                "Fuse rating 25 A is within the 33.4 A at which the fault current still operates it."));
        assertThat(three.working().steps())
                .filteredOn(step -> step.name().equals("string: reverse current"))
                .singleElement()
                .satisfies(step -> {
                    assertThat(step.substituted()).isEqualTo("(3 − 1) · 1.25 · 13.9 A + 0 A");
                    assertThat(step.result()).isEqualTo("34.75 A");
                });
        // behind a fuse the conductor carries its own string's current alone
        assertThat(three.working().steps())
                .filteredOn(step -> step.name().equals("string: ampacity under conditions of use"))
                .singleElement()
                .satisfies(step -> assertThat(step.substituted()).isEqualTo("1.25 · 13.9 A"));
        // NFPA 70: 1.5625 · 13.9 A = 21.7 A: 25 A
        assertThat(CircuitSizing.of(Circuits.string(3), IEC.withRuleSet(RuleSet.NFPA))
                        .device()
                        .orElseThrow()
                        .rating())
                .isEqualTo(Current.amperes(25));
    }

    @Test
    void whatTheBankFeedsBackCounts() {
        Circuit fed = Circuits.string(2).withStrings(new ParallelStrings(2, Current.amperes(25), Current.amperes(10)));
        // 17.375 A + 10 A = 27.375 A > 25 A
        assertThat(fusing(fed).needed()).isTrue();
    }

    @Test
    void aFuseLargerThanTheModuleAllowsIsTold() {
        Circuit weak = Circuits.string(3).withStrings(new ParallelStrings(3, Current.amperes(20), Current.ZERO));
        CircuitSizing sized = CircuitSizing.of(weak, IEC);
        assertThat(sized.fits()).isFalse();
        assertThat(sized.checks())
                .filteredOn(check -> !check.passed())
                .extracting(check -> check.rule().code())
                .containsExactly("moduleSeriesFuse");
    }

    @Test
    void withoutAFuseTheConductorStandsWhatTheOthersFeed() {
        // three strings whose modules stand 40 A: no fuse, and the conductor carries 34.75 A instead of 17.375 A
        Circuit stout = Circuits.string(3).withStrings(new ParallelStrings(3, Current.amperes(40), Current.ZERO));
        CircuitSizing sized = CircuitSizing.of(stout, IEC);
        assertThat(sized.device()).isEmpty();
        assertThat(sized.need().conditions().amperes()).isCloseTo(34.75, within(1e-9));
        assertThat(sized.working().steps())
                .filteredOn(step -> step.name().equals("string: ampacity under conditions of use"))
                .singleElement()
                .satisfies(step -> {
                    assertThat(step.substituted()).isEqualTo("max(1.25 · 13.9 A, 34.75 A)");
                    assertThat(step.result()).isEqualTo("34.75 A");
                });
        assertThat(CircuitSizing.of(Circuits.string(2), IEC).need().conditions().amperes())
                .isCloseTo(17.375, within(1e-9));
    }
}
