package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.inverter.GridSheets.STRING;
import static org.daybank.core.inverter.GridSheets.array;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Voltage;
import org.junit.jupiter.api.Test;

/** Modules shared among strings and trackers by hand; a tracker's entry reads trackers, strings on each, modules in series. */
class StringPlanTest {
    private static final GridPolicy POLICY = GridPolicy.standard();

    @Test
    void theSheetsSayHowLongAndHowManyStringsMayBe() {
        // 160 V / 32 V = 5; 980 V / 56 V = 17.5 and 800 V / 47.2 V = 16.9; 22 A / 10 A = 2.2 and 30 A / 13 A = 2.3
        assertThat(StringPlan.of(array(30), STRING, POLICY)).isEqualTo(new StringPlan(5, 16, 2, 2));
        // 15 · 47.2 V = 708 V are still tracked; 2 · 10 A are still taken
        assertThat(StringPlan.of(
                        array(30),
                        STRING.withTrackingHighest(Voltage.volts(708)).withMaximumInputCurrent(Current.amperes(20)),
                        POLICY))
                .isEqualTo(new StringPlan(5, 15, 2, 2));
    }

    @Test
    void evenStringsAreSpreadOverAllTrackers() {
        // 45 in strings of at most 16 take three
        assertThat(new StringPlan(5, 16, 3, 2).share(45)).containsExactly(new TrackerStrings(3, 1, 15));
        // five strings on two trackers
        assertThat(new StringPlan(1, 10, 2, 3).share(50))
                .containsExactly(new TrackerStrings(1, 3, 10), new TrackerStrings(1, 2, 10));
    }

    @Test
    void unevenStringsLeaveTheFullestTrackerAsFewAsCanBe() {
        // 50 = 2 · 13 + 2 · 12: four trackers take one each
        assertThat(new StringPlan(5, 16, 4, 2).share(50))
                .containsExactly(new TrackerStrings(2, 1, 13), new TrackerStrings(2, 1, 12));
        // 75 = 5 · 11 + 2 · 10 on five trackers: with three for the long ones no tracker has more than two
        assertThat(new StringPlan(1, 11, 5, 3).share(75))
                .containsExactly(
                        new TrackerStrings(2, 2, 11), new TrackerStrings(1, 1, 11), new TrackerStrings(2, 1, 10));
        // 72 = 2 · 11 + 5 · 10: one for the long ones, four for the short ones
        assertThat(new StringPlan(1, 11, 5, 3).share(72))
                .containsExactly(
                        new TrackerStrings(1, 2, 11), new TrackerStrings(1, 2, 10), new TrackerStrings(3, 1, 10));
    }

    @Test
    void moreStringsAreTakenWhereFewerKeepNotEveryLimit() {
        // one tracker takes strings of one length: 28 in three would be 10, 9 and 9; in four they are 7 each
        assertThat(new StringPlan(1, 10, 1, 4).share(28)).containsExactly(new TrackerStrings(1, 4, 7));
        assertThat(new StringPlan(7, 10, 1, 4).share(28)).containsExactly(new TrackerStrings(1, 4, 7));
        // two trackers of three strings: 24 in five would be four of 5 on one and one of 4 on the other
        assertThat(new StringPlan(3, 5, 2, 3).share(24)).containsExactly(new TrackerStrings(2, 3, 4));
    }

    @Test
    void whereNoneKeepsEveryLimitTheVoltagesAreKept() {
        // strings of 7 are too short in the heat; three keep below 10, on two trackers where there is one
        assertThat(new StringPlan(8, 10, 1, 4).share(28))
                .containsExactly(new TrackerStrings(1, 1, 10), new TrackerStrings(1, 2, 9));
        // three of 10 where the current takes two
        assertThat(new StringPlan(5, 10, 1, 2).share(30)).containsExactly(new TrackerStrings(1, 3, 10));
        // a single module is too much in the cold: each by itself
        assertThat(new StringPlan(1, 0, 2, 2).share(5))
                .containsExactly(new TrackerStrings(1, 3, 1), new TrackerStrings(1, 2, 1));
    }

    @Property
    void allModulesAreConnectedInStringsThatDifferByOneAtTheMost(
            @ForAll @IntRange(min = 1, max = 12) int most,
            @ForAll @IntRange(min = 1, max = 6) int trackers,
            @ForAll @IntRange(min = 1, max = 4) int onTracker,
            @ForAll @IntRange(min = 1, max = 200) int modules) {
        var shared = new StringPlan(1, most, trackers, onTracker).share(modules);

        assertThat(shared.stream()
                        .mapToInt(on -> on.trackers() * on.strings() * on.series())
                        .sum())
                .isEqualTo(modules);
        assertThat(shared).allSatisfy(on -> assertThat(on.series()).isBetween(1, most));
        int longest = shared.stream().mapToInt(TrackerStrings::series).max().orElseThrow();
        assertThat(shared).allSatisfy(on -> assertThat(on.series()).isGreaterThanOrEqualTo(longest - 1));
    }
}
