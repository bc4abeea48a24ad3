package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LoadTest {
    private static final String ONE_WAY = "exactly one of hoursPerDay, hourlyFractions and windows must be given, but ";

    private static LoadBuilder everythingStated(double watts) {
        return Loads.dc(watts)
                .dutyCycle(Ratio.of(0.5))
                .powerFactor(Ratio.of(0.9))
                .startingMultiple(Ratio.of(2))
                .selfSwitching(true)
                .waveform(Waveform.SINE)
                .lowestSupply(Voltage.volts(11))
                .highestSupply(Voltage.volts(15));
    }

    private static final Load IN_FRACTIONS = everythingStated(60)
            .hourlyFractions(Collections.nCopies(24, Ratio.of(0.25)))
            .build();

    private static final Load IN_WINDOWS = everythingStated(20)
            .windows(List.of(TimeWindow.parse("18:00-23:00"), TimeWindow.parse("06:00-07:30")))
            .build();

    @Test
    void hoursByFractionsAndByWindows() {
        // 24 · 0.25 h; 5 h + 1.5 h
        assertThat(IN_FRACTIONS.onHours()).isCloseTo(6, within(1e-9));
        assertThat(IN_WINDOWS.onHours()).isCloseTo(6.5, within(1e-9));
    }

    @Test
    void whatIsLeftOutIsTypicalOfAnEverydayAcLoad() {
        Load load = LoadBuilder.builder()
                .name("lamp")
                .power(Power.watts(9))
                .hoursPerDay(4.0)
                .build();

        assertThat(load.kind()).isEqualTo(LoadKind.ELECTRONICS);
        assertThat(load.supply()).isEqualTo(Supply.AC);
        assertThat(load.count()).isEqualTo(1);
        assertThat(load.daysPerWeek()).isEqualTo(7);
        assertThat(load.monthsOfUse()).containsExactly(Month.values());
        assertThat(load.standby()).isEqualTo(Power.ZERO);
        assertThat(load.startPowerFactor()).isEqualTo(Ratio.of(0.4));
        assertThat(load.essential()).isFalse();
        assertThat(load.lowestSupply()).isNull();
        assertThat(load.highestSupply()).isNull();
    }

    /** Published ranges: motors start at 3–7 times, compressors 3–8, universal motors 2–3, soft starts 1–3, the others at 1. */
    @ParameterizedTest
    @CsvSource({
        "RESISTIVE, 1, 1, 1, 1, 1, 1, false, MODIFIED_SINE",
        "LIGHTING, 1, 1, 0.5, 0.65, 1, 1, false, MODIFIED_SINE",
        "ELECTRONICS, 1, 1, 0.55, 0.65, 1, 1, false, MODIFIED_SINE",
        "SENSITIVE_ELECTRONICS, 1, 1, 0.95, 1, 1, 1, false, SINE",
        "COMPRESSOR, 0.3, 0.6, 0.6, 0.8, 3, 8, true, SINE",
        "INDUCTION_MOTOR, 1, 1, 0.75, 0.9, 3, 7, true, SINE",
        "SOFT_START_MOTOR, 1, 1, 0.75, 1, 1, 3, true, SINE",
        "UNIVERSAL_MOTOR, 1, 1, 0.9, 1, 2, 3, false, MODIFIED_SINE"
    })
    void theKindFillsWhatIsLeftOutWithinPublishedRanges(
            LoadKind kind,
            double leastDuty,
            double mostDuty,
            double leastFactor,
            double mostFactor,
            double leastStart,
            double mostStart,
            boolean selfSwitching,
            Waveform waveform) {
        Load load = Loads.ac(100).kind(kind).hoursPerDay(1.0).build();

        assertThat(load.resolved().dutyCycle().fraction()).isBetween(leastDuty, mostDuty);
        assertThat(load.resolved().powerFactor().fraction()).isBetween(leastFactor, mostFactor);
        assertThat(load.resolved().startingMultiple().fraction()).isBetween(leastStart, mostStart);
        assertThat(load.resolved().selfSwitching()).isEqualTo(selfSwitching);
        assertThat(load.resolved().waveform()).isEqualTo(waveform);
    }

    @ParameterizedTest
    @EnumSource(LoadKind.class)
    void whatIsGivenWinsOverTheKind(LoadKind kind) {
        Load load = Loads.ac(100)
                .kind(kind)
                .hoursPerDay(1.0)
                .dutyCycle(Ratio.of(0.11))
                .powerFactor(Ratio.of(0.22))
                .startingMultiple(Ratio.of(3.3))
                .selfSwitching(!kind.traits().selfSwitching())
                .waveform(Waveform.MODIFIED_SINE)
                .build();

        assertThat(load.dutyCycle()).isEqualTo(Ratio.of(0.11));
        assertThat(load.powerFactor()).isEqualTo(Ratio.of(0.22));
        assertThat(load.startingMultiple()).isEqualTo(Ratio.of(3.3));
        assertThat(load.selfSwitching()).isNotEqualTo(kind.traits().selfSwitching());
        assertThat(load.waveform()).isEqualTo(Waveform.MODIFIED_SINE);
    }

    @Test
    void oneWayOfSayingWhenIsNeeded() {
        assertThatThrownBy(() -> Loads.ac(10).build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage(ONE_WAY + "0 are.");
    }

    @Test
    void twoWaysOfSayingWhenContradictEachOther() {
        assertThatThrownBy(() -> Loads.ac(10)
                        .hoursPerDay(4.0)
                        .windows(List.of(TimeWindow.parse("18:00-22:00")))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems().get(0).code()).isEqualTo(ProblemCode.CONFLICT))
                .hasMessage(ONE_WAY + "2 are.");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThatThrownBy(() -> LoadBuilder.builder()
                        .name(" ")
                        .power(Power.watts(-1))
                        .count(-2)
                        .hoursPerDay(25.0)
                        .dutyCycle(Ratio.of(1.1))
                        .daysPerWeek(8.0)
                        .monthsOfUse(List.of())
                        .standby(Power.watts(-3))
                        .powerFactor(Ratio.ZERO)
                        .startingMultiple(Ratio.of(0.5))
                        .startPowerFactor(Ratio.of(2))
                        .lowestSupply(Voltage.volts(30))
                        .highestSupply(Voltage.volts(20))
                        .build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/name MISSING",
                                        "/power OUT_OF_RANGE",
                                        "/count OUT_OF_RANGE",
                                        "/hoursPerDay OUT_OF_RANGE",
                                        "/dutyCycle OUT_OF_RANGE",
                                        "/daysPerWeek OUT_OF_RANGE",
                                        "/monthsOfUse MISSING",
                                        "/standby OUT_OF_RANGE",
                                        "/powerFactor OUT_OF_RANGE",
                                        "/startingMultiple OUT_OF_RANGE",
                                        "/startPowerFactor OUT_OF_RANGE",
                                        "/highestSupply INCONSISTENT"));
    }

    @Test
    void hourlyFractionsMustBeTwentyFourSharesFromNothingToOne() {
        assertThatThrownBy(() -> Loads.ac(10)
                        .hourlyFractions(List.of(Ratio.of(0.5), Ratio.of(1.5)))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("hourlyFractions must have at least 24 elements, but has 2.")
                .hasMessageContaining("hourlyFractions/1 must be from 0 to 1, but was 1.5.");
    }

    @Test
    void aShareThatIsMissingIsNamedLikeAnyOtherProblem() {
        List<Ratio> fractions = Arrays.asList(new Ratio[24]);
        Collections.fill(fractions, Ratio.ONE);
        fractions.set(7, null);

        assertThatThrownBy(() -> Loads.ac(10).hourlyFractions(fractions).build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("hourlyFractions/7 is required.");
    }

    @Test
    void aListOfNoWindowsDoesNotSayWhen() {
        assertThatThrownBy(() -> Loads.ac(10).windows(List.of()).build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("windows must not be empty.");
    }

    @Test
    void windowsThatOverlapCountOnce() {
        // 18:00 to 21:00 is three hours, however it is cut
        Load load = Loads.ac(10)
                .windows(List.of(TimeWindow.parse("18:00-20:00"), TimeWindow.parse("19:00-21:00")))
                .build();

        assertThat(load.onHours()).isCloseTo(3, within(1e-12));
    }

    @Test
    void aWindowMayBeginAndEndWithinAnHour() {
        Load load =
                Loads.ac(10).windows(List.of(TimeWindow.parse("23:45-00:15"))).build();

        assertThat(load.onShare(23)).isCloseTo(0.25, within(1e-12));
        assertThat(load.onShare(0)).isCloseTo(0.25, within(1e-12));
        assertThat(load.onHours()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void hoursFractionsAndWindowsAgreeWhereTheyOverlap() {
        Ratio[] shares = new Ratio[24];
        Arrays.fill(shares, Ratio.ZERO);
        shares[18] = Ratio.of(0.5);
        shares[19] = Ratio.ONE;
        shares[20] = Ratio.ONE;
        Load windows =
                Loads.ac(10).windows(List.of(TimeWindow.parse("18:30-21:00"))).build();
        Load fractions = Loads.ac(10).hourlyFractions(List.of(shares)).build();
        Load hours = Loads.ac(10).hoursPerDay(2.5).build();

        for (int hour = 0; hour < 24; hour++) {
            assertThat(windows.onShare(hour)).isCloseTo(fractions.onShare(hour), within(1e-12));
        }
        // the third way knows no time, but as many hours
        assertThat(windows.onHours()).isCloseTo(2.5, within(1e-12));
        assertThat(hours.onHours()).isCloseTo(2.5, within(1e-12));
        assertThat(hours.onShare(3)).isCloseTo(2.5 / 24, within(1e-12));
    }

    /** Days of use in the worst run of N days, over N: {@code (d·⌊N/7⌋ + min(d, N mod 7)) / N}. */
    @ParameterizedTest
    @CsvSource({
        // three days a week may fall on all three days of the run
        "3, 3, 1",
        // min(3, 5) of 5
        "3, 5, 0.6",
        // a whole week has no more than it has: 3 of 7
        "3, 7, 0.428571428571429",
        // one week and three days: 3 + 3 of 10
        "3, 10, 0.6",
        // two weeks and two days: 6 + 2 of 16
        "3, 16, 0.5",
        // half a day of use may fall on half a day's run
        "1, 0.5, 1",
        "0.5, 2, 0.25",
        "7, 4, 1",
        "7, 30, 1"
    })
    void theWorstRunOfDaysIsWorseThanTheMeanDay(double daysPerWeek, double run, double share) {
        Load load = Loads.ac(10).hoursPerDay(1.0).daysPerWeek(daysPerWeek).build();

        assertThat(load.worstDayShare(run)).isCloseTo(share, within(1e-12));
    }

    @Test
    void runningVoltAmperesAreWattsOverPowerFactor() {
        Load pumps = Loads.ac(730)
                .count(2)
                .hoursPerDay(0.5)
                .powerFactor(Ratio.of(0.8))
                .build();

        // 2 · 730 W = 1460 W; 1460 / 0.8 = 1825 VA
        assertThat(pumps.runningPower().watts()).isEqualTo(1460);
        assertThat(pumps.runningApparent().voltAmperes()).isCloseTo(1825, within(1e-9));
    }

    @Test
    void isUsedOnlyInItsMonths() {
        Load fan = Loads.ac(60)
                .hoursPerDay(8.0)
                .monthsOfUse(List.of(Month.JUNE, Month.JULY))
                .build();

        assertThat(fan.usedIn(Month.JUNE)).isTrue();
        assertThat(fan.usedIn(Month.DECEMBER)).isFalse();
    }

    @Test
    void aSineServesEveryLoadAndAModifiedSineOnlySome() {
        assertThat(Waveform.SINE.satisfies(Waveform.SINE)).isTrue();
        assertThat(Waveform.SINE.satisfies(Waveform.MODIFIED_SINE)).isTrue();
        assertThat(Waveform.MODIFIED_SINE.satisfies(Waveform.MODIFIED_SINE)).isTrue();
        assertThat(Waveform.MODIFIED_SINE.satisfies(Waveform.SINE)).isFalse();
    }

    @Test
    void aSupplyRangeHasTwoEnds() {
        assertThatThrownBy(() -> Loads.dc(10)
                        .hoursPerDay(1.0)
                        .lowestSupply(Voltage.volts(24))
                        .highestSupply(Voltage.volts(24))
                        .build())
                .hasMessage("highestSupply must be above lowestSupply 24 V, but was 24 V.");
    }

    @Test
    void aLoadTurnedIntoAMotorStartsAsOne() {
        Load lamp = Loads.ac(1000).kind(LoadKind.LIGHTING).hoursPerDay(1.0).build();
        Load anew =
                Loads.ac(1000).kind(LoadKind.INDUCTION_MOTOR).hoursPerDay(1.0).build();
        LoadKind.Traits motor = LoadKind.INDUCTION_MOTOR.traits();
        double multiple = motor.startingMultiple().fraction();

        Load turned = lamp.withKind(LoadKind.INDUCTION_MOTOR);

        assertThat(turned).isEqualTo(anew);
        assertThat(turned.resolved().startingMultiple()).isEqualTo(motor.startingMultiple());
        // P / cos φ · starting multiple
        assertThat(PeakLoad.of(List.of(turned), CoincidentStarts.ALL)
                        .surgeApparent()
                        .voltAmperes())
                .isCloseTo(1000 / motor.powerFactor().fraction() * multiple, within(1e-6));
    }

    @Test
    void missingElementsAreProblems() {
        assertThatThrownBy(() ->
                        Loads.ac(10).windows(Collections.singletonList(null)).build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("windows/0 is required.");
        assertThatThrownBy(() -> new EnergyDemand(Collections.singletonList(null), null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("loads/0 is required.");
    }

    @Test
    void loadsTogetherDrawNoMoreThanTenMegawatts() {
        Load furnace = Loads.ac(1_000_000).count(10).hoursPerDay(1.0).build();

        assertThat(new EnergyDemand(List.of(furnace), null, null).loads()).hasSize(1);
        assertThatThrownBy(() -> new EnergyDemand(List.of(furnace.withCount(11)), null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("loads must draw at most 10 MW together, but draw 11 MW.");
    }
}
