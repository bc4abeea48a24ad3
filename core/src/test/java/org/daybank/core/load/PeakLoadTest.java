package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

class PeakLoadTest {
    /** 800 W at 0.8: S = 1000 VA, Q = 600 var; started at 5 times: 5000 VA, at 0.4 2000 W and √(1 − 0.16) · 5000 = 4582.576 var. */
    private static final Load PUMP = motor("pump", 800, 0.8, 5, true);

    /** 300 W at 0.6: S = 500 VA, Q = 400 var; started at 4 times: 2000 VA, 800 W and 1833.030 var. */
    private static final Load FREEZER = motor("freezer", 300, 0.6, 4, true);

    /** 600 W at 1: S = 600 VA; started at 2.5 times: 1500 VA, 600 W and 1374.773 var. */
    private static final Load DRILL = motor("drill", 600, 1, 2.5, false);

    /** 700 W at 0.7: S = 1000 VA, Q = 714.143 var; started at 3 times: 3000 VA, 1200 W and 2749.545 var. */
    private static final Load SAW = motor("saw", 700, 0.7, 3, false);

    private static final List<Load> ALL = List.of(PUMP, FREEZER, DRILL, SAW);

    private static Load motor(String name, double watts, double powerFactor, double multiple, boolean selfSwitching) {
        return Loads.named(name, Supply.AC, watts)
                .hoursPerDay(1.0)
                .powerFactor(Ratio.of(powerFactor))
                .startingMultiple(Ratio.of(multiple))
                .selfSwitching(selfSwitching)
                .build();
    }

    @Test
    void wattsAddUpAndSoDoVars() {
        PeakLoad peak = PeakLoad.of(ALL, CoincidentStarts.LARGEST);

        // 800 + 300 + 600 + 700 = 2400 W; 600 + 400 + 0 + 714.143 = 1714.143 var; √(2400² + 1714.143²) = 2949.29 VA
        assertThat(peak.running().watts()).isCloseTo(2400, within(1e-9));
        assertThat(peak.runningApparent().voltAmperes()).isCloseTo(2949.29, within(0.01));
    }

    @Test
    void theLargestStartOnTopOfEverythingElse() {
        PeakLoad peak = PeakLoad.of(ALL, CoincidentStarts.LARGEST);

        // the pump's: 2400 − 800 + 2000 = 3600 W; 1714.143 − 600 + 4582.576 = 5696.719 var; 6738.89 VA
        assertThat(peak.surge().watts()).isCloseTo(3600, within(1e-9));
        assertThat(peak.surgeApparent().voltAmperes()).isCloseTo(6738.89, within(0.01));
    }

    @Test
    void whatSwitchesItselfStartsTogetherWithTheLargestStartByHand() {
        PeakLoad peak = PeakLoad.of(ALL, CoincidentStarts.SELF_SWITCHING);

        // pump 2000, freezer 800, saw 1200 and the drill running 600: 4600 W
        assertThat(peak.surge().watts()).isCloseTo(4600, within(1e-9));
        // 4582.576 + 1833.030 + 2749.545 + 0 = 9165.151 var; √(4600² + 9165.151²) = 10254.76 VA
        assertThat(peak.surgeApparent().voltAmperes()).isCloseTo(10254.76, within(0.01));
    }

    @Test
    void everythingStartsAtOnce() {
        PeakLoad peak = PeakLoad.of(ALL, CoincidentStarts.ALL);

        // 2000 + 800 + 600 + 1200 = 4600 W; 9165.151 + 1374.773 = 10539.924 var; √(4600² + 10539.924²) = 11500 VA: at
        // one
        // power factor volt-amperes add up, 5000 + 2000 + 1500 + 3000
        assertThat(peak.surge().watts()).isCloseTo(4600, within(1e-9));
        assertThat(peak.surgeApparent().voltAmperes()).isCloseTo(11_500, within(1e-6));
    }

    @Test
    void hourByHourTheMonthThatAsksTheMost() {
        Load lamp = Loads.named("lamp", Supply.AC, 40)
                .count(2)
                .windows(List.of(TimeWindow.parse("22:30-01:00")))
                .build();
        Load winter = Loads.named("fan of a stove", Supply.AC, 50)
                .windows(List.of(TimeWindow.parse("23:00-24:00")))
                .monthsOfUse(List.of(Month.JANUARY))
                .build();
        Load summer = Loads.named("fan", Supply.AC, 70)
                .windows(List.of(TimeWindow.parse("12:00-24:00")))
                .monthsOfUse(List.of(Month.JULY))
                .build();
        Load direct = Loads.dc(500).hoursPerDay(24.0).build();

        // at 23 h in January 80 + 50 W, in July 80 + 70 W; from 12 h the fan alone; after midnight the lamps; DC does
        // not count
        List<Double> hours = PeakLoad.hourly(List.of(lamp, winter, summer, direct)).stream()
                .map(Power::watts)
                .toList();
        assertThat(hours).hasSize(24);
        assertThat(hours.get(23)).isEqualTo(150);
        assertThat(hours.get(22)).isEqualTo(150);
        assertThat(hours.get(12)).isEqualTo(70);
        assertThat(hours.get(0)).isEqualTo(80);
        assertThat(hours.get(1)).isZero();
    }

    @Test
    void ofSeveralAlikeThatSwitchThemselvesAllStartAndOfThoseSwitchedByHandOne() {
        Load pumps = PUMP.withCount(3);
        Load saws = SAW.withCount(3);

        // 3 · 2000 W
        assertThat(PeakLoad.of(List.of(pumps), CoincidentStarts.SELF_SWITCHING)
                        .surge()
                        .watts())
                .isCloseTo(6000, within(1e-9));
        // one starts with 1200 W while two run: 2 · 700 + 1200 = 2600 W
        assertThat(PeakLoad.of(List.of(saws), CoincidentStarts.SELF_SWITCHING)
                        .surge()
                        .watts())
                .isCloseTo(2600, within(1e-9));
        assertThat(PeakLoad.of(List.of(saws), CoincidentStarts.ALL).surge().watts())
                .isCloseTo(3600, within(1e-9));
    }

    @Test
    void withoutAStartTheSurgeIsTheRunningPeak() {
        Load kettle = Loads.ac(2000).kind(LoadKind.RESISTIVE).hoursPerDay(0.2).build();
        PeakLoad peak = PeakLoad.of(List.of(kettle), CoincidentStarts.ALL);

        assertThat(peak.surge()).isEqualTo(peak.running());
        assertThat(peak.surgeApparent()).isEqualTo(peak.runningApparent());
        assertThat(peak.runningApparent().voltAmperes()).isCloseTo(2000, within(1e-9));
    }

    @Test
    void aStartAtALowPowerFactorAsksNoFewerWattsThanRunning() {
        // 1.5 · 1000 VA · 0.4 = 600 W, less than the 1000 W of running
        Load mixer = motor("mixer", 1000, 1, 1.5, false);

        assertThat(PeakLoad.of(List.of(mixer), CoincidentStarts.ALL).surge().watts())
                .isCloseTo(1000, within(1e-9));
    }

    @Test
    void aStartTakesItsMultipleOfTheRunningVoltAmperesAndNoMore() {
        // 900 W at 0.9 are 1000 VA; twice that while it starts softly: 800 W and 1833.03 var at 0.4
        Load soft = motor("soft", 900, 0.9, 2, true);

        assertThat(PeakLoad.of(List.of(soft), CoincidentStarts.ALL)
                        .surgeApparent()
                        .voltAmperes())
                .isCloseTo(2000, within(1e-9));
    }

    @Test
    void ofStartsThatMayCoincideThoseCountThatAskTheMostTogether() {
        // 1000 W at 1; starts with 1100 VA at 0.4: 440 W, 1008.167 var. Beside 5000 W that do not start, both figures
        // fall
        // when it starts: 5440² + 1008.167² < 6000². A compressor, 500 W at 1, starts with 3000 VA at 0.4: 1200 W,
        // 2749.545 var
        Load drops = motor("drops", 1000, 1, 1.1, true);
        Load heater = Loads.ac(5000)
                .name("heater")
                .kind(LoadKind.RESISTIVE)
                .hoursPerDay(1.0)
                .build();
        Load compressor = motor("compressor", 500, 1, 6, true);

        assertThat(PeakLoad.of(List.of(drops, heater), CoincidentStarts.ALL)
                        .surgeApparent()
                        .voltAmperes())
                .isCloseTo(6000, within(1e-9));
        // the compressor alone: 7200 W, 2749.545 var, 7707.14 VA; both: 6640 W, 3757.712 var, 7629.54 VA
        assertThat(PeakLoad.of(List.of(drops, heater, compressor), CoincidentStarts.ALL)
                        .surgeApparent()
                        .voltAmperes())
                .isCloseTo(7707.14, within(0.01));
    }

    @Test
    void wattsAndVoltAmperesEachCountTheStartThatAsksTheMostOfThem() {
        // 100 W at 1, six times at 1: 600 W and no vars; 100 W at 1, six times at 0.05: 30 W,
        // √(1 − 0.0025) · 600 = 599.250 var
        Load heavy = motor("heavy", 100, 1, 6, false).withStartPowerFactor(Ratio.ONE);
        Load wattless = motor("wattless", 100, 1, 6, false).withStartPowerFactor(Ratio.of(0.05));
        PeakLoad peak = PeakLoad.of(List.of(heavy, wattless), CoincidentStarts.LARGEST);

        // 100 + 600 W beat 200 W; in volt-amperes 700 beat √(130² + 599.25²) = 613.19
        assertThat(peak.surge().watts()).isCloseTo(700, within(1e-9));
        assertThat(peak.surgeApparent().voltAmperes()).isCloseTo(700, within(1e-9));
        // beside a load of 1000 var the wattless start asks more volt-amperes
        Load vars = motor("vars", 1000 / Math.sqrt(3), 0.5, 1, false);
        PeakLoad beside = PeakLoad.of(List.of(heavy, wattless, vars), CoincidentStarts.LARGEST);
        // 577.350 W at 0.5: 1000 var. Watts: 700 + 577.350; VA: √(707.350² + 1599.250²) = 1748.70 against
        // √(1277.350² + 1000²) = 1622.24
        assertThat(beside.surge().watts()).isCloseTo(1277.350, within(1e-3));
        assertThat(beside.surgeApparent().voltAmperes()).isCloseTo(1748.70, within(0.01));
    }

    @Test
    void schedulesThatNeverMeetDoNotAddUp() {
        Load morning = Loads.ac(500)
                .powerFactor(Ratio.ONE)
                .windows(List.of(TimeWindow.parse("06:00-08:00")))
                .build();
        Load evening = Loads.ac(300)
                .powerFactor(Ratio.ONE)
                .windows(List.of(TimeWindow.parse("18:00-20:00")))
                .build();
        Load anyTime = Loads.ac(100).powerFactor(Ratio.ONE).hoursPerDay(0.1).build();

        // the load without a known time meets either: 500 + 100 W
        assertThat(PeakLoad.of(List.of(morning, evening, anyTime), CoincidentStarts.ALL)
                        .running()
                        .watts())
                .isCloseTo(600, within(1e-9));
    }

    @Test
    void seasonsThatNeverMeetDoNotAddUp() {
        Load fan =
                Loads.ac(60).hoursPerDay(8.0).monthsOfUse(List.of(Month.JULY)).build();
        Load heater = Loads.ac(900)
                .hoursPerDay(8.0)
                .monthsOfUse(List.of(Month.JANUARY))
                .build();

        assertThat(PeakLoad.of(List.of(fan, heater), CoincidentStarts.ALL)
                        .running()
                        .watts())
                .isCloseTo(900, within(1e-9));
    }

    @Test
    void theLargestSingleLoad() {
        // each figure by itself: the pump's 800 W and its start of 2000 W and 5000 VA; its 1000 VA are the saw's as
        // well
        PeakLoad largest = PeakLoad.ofLargest(ALL);
        assertThat(largest.running().watts()).isCloseTo(800, within(1e-9));
        assertThat(largest.runningApparent().voltAmperes()).isCloseTo(1000, within(1e-9));
        assertThat(largest.surge().watts()).isCloseTo(2000, within(1e-9));
        assertThat(largest.surgeApparent().voltAmperes()).isCloseTo(5000, within(1e-6));
        // of three drills one: 600 W
        Load drills = LoadBuilder.builder(DRILL).count(3).build();
        assertThat(PeakLoad.ofLargest(List.of(drills)).running().watts()).isCloseTo(600, within(1e-9));
        assertThat(PeakLoad.ofLargest(List.of())).isEqualTo(PeakLoad.NONE);
    }

    @Test
    void directCurrentLoadsDoNotBurdenTheInverter() {
        Load pump =
                Loads.dc(200).kind(LoadKind.INDUCTION_MOTOR).hoursPerDay(1.0).build();

        assertThat(PeakLoad.of(List.of(pump), CoincidentStarts.ALL)).isEqualTo(PeakLoad.NONE);
        assertThat(PeakLoad.of(List.of(), CoincidentStarts.ALL)).isEqualTo(PeakLoad.NONE);
    }
}
