package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.inverter.InverterSheets.NEED;
import static org.daybank.core.inverter.InverterSheets.STACKABLE;
import static org.daybank.core.inverter.InverterSheets.broken;
import static org.daybank.core.inverter.InverterSheets.margin;
import static org.daybank.core.inverter.InverterSheets.peak;
import static org.daybank.core.inverter.InverterSheets.service;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** One unit that gives the service, or several stacked: counts and margins by hand. */
class StackingTest {
    private static final InverterPolicy POLICY = InverterPolicy.standard();
    private static final Service SPLIT = service(230, Phases.SPLIT);
    private static final Service THREE = service(230, Phases.THREE);

    @Test
    void oneUnitOrSeveralOnOneLine() {
        assertThat(fit(NEED, STACKABLE).stacking()).isEqualTo(Stacking.ONE_UNIT);

        // 3000 W · 1.25 = 3750 W take two of 2000 W
        InverterFit two = fit(NEED.withPeak(peak(3000, 3000, 3000, 3000)), STACKABLE);
        assertThat(two.stacking()).isEqualTo(Stacking.PARALLEL);
        assertThat(two.unitsOnLine()).isEqualTo(2);
        assertThat(two.count()).isEqualTo(2);
    }

    @Test
    void twoInSeriesForASplitPhase() {
        // 1200 W balanced are 600 W on each line; the start takes all on one: 600 W + (2400 − 1200) W = 1800 W
        // reactive: √(1500² − 1200²) = 900, √(4000² − 2400²) = 3200; 450 + (3200 − 900) = 2750: √(1800² + 2750²) =
        // 3286.7 VA
        InverterFit fit = fit(NEED.withService(SPLIT), STACKABLE);

        assertThat(broken(fit.checks())).isEmpty();
        assertThat(fit.stacking()).isEqualTo(Stacking.SERIES);
        assertThat(fit.count()).isEqualTo(2);
        assertThat(fit.unitsOnLine()).isEqualTo(1);
        assertThat(fit.price()).isEqualTo(Money.of("2000", "EUR"));
        assertThat(fit.linePeak().running()).isEqualTo(Power.watts(600));
        assertThat(fit.linePeak().runningApparent().voltAmperes()).isCloseTo(750, within(1e-9));
        assertThat(fit.linePeak().surge().watts()).isCloseTo(1800, within(1e-9));
        assertThat(fit.linePeak().surgeApparent().voltAmperes())
                .isCloseTo(Math.sqrt(1800.0 * 1800 + 2750.0 * 2750), within(1e-9));
        // 600 W · 1.25 = 750 W of 2000 W
        assertThat(margin(fit.checks(), "continuousPower")).isCloseTo(1 - 0.375, within(1e-12));
    }

    @Test
    void threeForAThreePhaseServiceAndMoreForMoreCurrent() {
        InverterNeed need = NEED.withService(THREE);
        assertThat(fit(need, STACKABLE).count()).isEqualTo(3);
        assertThat(fit(need, STACKABLE).stacking()).isEqualTo(Stacking.THREE_PHASE);

        // 9000 W on three lines are 3000 W each, · 1.25 = 3750 W: two on each line, six in all
        InverterFit six = fit(need.withPeak(peak(9000, 9000, 9000, 9000)), STACKABLE);
        assertThat(broken(six.checks())).isEmpty();
        assertThat(six.count()).isEqualTo(6);
        assertThat(six.unitsOnLine()).isEqualTo(2);
        assertThat(six.rating()).isEqualTo(Power.watts(12_000));

        // 24 kW on three lines take 5 on each; nine in all are three on each: 6000 W of 10 000 W
        InverterFit most = fit(need.withPeak(peak(24_000, 24_000, 24_000, 24_000)), STACKABLE);
        assertThat(most.count()).isEqualTo(9);
        assertThat(broken(most.checks())).contains("continuousPower");
        assertThat(margin(most.checks(), "continuousPower")).isCloseTo((6000 - 10_000) / 6000.0, within(1e-12));
    }

    @Test
    void theLargestLoadIsOnOneLine() {
        // of 6000 W one load takes 3600 W: (6000 − 3600) / 3 + 3600 = 4400 W, · 1.25 = 5500 W: three on each line
        InverterNeed need = NEED.withService(THREE).withPeak(peak(6000, 6000, 6000, 6000));
        InverterFit balanced = fit(need, STACKABLE);
        InverterFit onOneLine = fit(need.withLargestLoad(peak(3600, 3600, 3600, 3600)), STACKABLE);

        // balanced: 2000 W · 1.25 = 2500 W take two
        assertThat(balanced.unitsOnLine()).isEqualTo(2);
        assertThat(onOneLine.linePeak().running().watts()).isCloseTo(4400, within(1e-9));
        assertThat(onOneLine.unitsOnLine()).isEqualTo(3);
        assertThat(sentence(onOneLine, "continuousPower"))
                .isEqualTo("Loads on the fullest of 3 lines, with the largest load on it and the rest balanced: "
                        + "power 5.5 kW including a margin of 25 % is within the 6 kW continuous rating "
                        + "of 3 inverters on one line in the hottest air.");
        assertThat(sentence(balanced, "surge"))
                .startsWith("Start on the fullest of 3 lines, with every start on it and the rest balanced: surge");
        // on one line there is none to choose from
        assertThat(sentence(fit(NEED, STACKABLE), "continuousPower"))
                .startsWith("Loads: power 1.5 kW including a margin of 25 %");
        // 10 A · 230 V come from a source that helps with the peaks
        AcSource source = AcSourceBuilder.builder()
                .current(Current.amperes(10))
                .coversPeaks(true)
                .build();
        InverterFit helped = fit(NEED.withPeak(peak(3000, 3000, 3000, 3000)).withAcSource(source), STACKABLE);
        assertThat(sentence(helped, "continuousPower"))
                .startsWith("Loads, beyond 2.3 kW from the AC source: power 1.45 kW including a margin of 25 %");
        assertThat(sentence(helped, "surge")).startsWith("Start, beyond 2.3 kW from the AC source: surge 700 VA");
        InverterFit helpedOnThree =
                fit(need.withLargestLoad(peak(3600, 3600, 3600, 3600)).withAcSource(source), STACKABLE);
        assertThat(sentence(helpedOnThree, "continuousPower"))
                .startsWith(
                        "Loads on the fullest of 3 lines, with the largest load on it and the rest balanced, beyond 2.3 kW");
        assertThat(sentence(helpedOnThree, "surge"))
                .startsWith(
                        "Start on the fullest of 3 lines, with the largest load on it and the rest balanced, beyond 2.3 kW");
    }

    @Test
    void oneUnitThatGivesTheServiceByItself() {
        Inverter three = InverterBuilder.builder(STACKABLE)
                .phases(Phases.THREE)
                .stackedServices(List.of())
                .build();
        // 1200 W / 3 · 1.25 = 500 W of 2000 W / 3
        InverterFit fit = fit(NEED.withService(THREE).withPeak(peak(1200, 1200, 1200, 1200)), three);

        assertThat(broken(fit.checks())).isEmpty();
        assertThat(fit.stacking()).isEqualTo(Stacking.ONE_UNIT);
        assertThat(margin(fit.checks(), "continuousPower")).isCloseTo(1 - 500 / (2000 / 3.0), within(1e-12));
        // 3600 W / 3 · 1.25 = 1500 W take three of 667 W in parallel
        InverterFit parallel = fit(NEED.withService(THREE).withPeak(peak(3600, 3600, 3600, 3600)), three);
        assertThat(parallel.count()).isEqualTo(3);
        assertThat(parallel.stacking()).isEqualTo(Stacking.PARALLEL);
        // it does not give a single phase
        assertThat(broken(fit(NEED, three).checks())).containsExactly("phases");
    }

    @Test
    void whatCannotBeStacked() {
        Inverter series = InverterBuilder.builder(STACKABLE)
                .stackedServices(List.of(Phases.SPLIT))
                .build();
        assertThat(broken(fit(NEED.withService(SPLIT), series).checks())).isEmpty();
        assertThat(broken(fit(NEED.withService(THREE), series).checks())).containsExactly("phases");
        // three lines take three units, two may be joined
        Inverter two = STACKABLE.withMostUnits(2);
        InverterFit tooFew = fit(NEED.withService(THREE), two);
        assertThat(broken(tooFew.checks())).containsExactly("phases");
        assertThat(sentence(tooFew, "phases"))
                .isEqualTo("One unit gives single phase, and stacked units do not give the three phase service.");
        // three are just enough
        InverterFit three = fit(NEED.withService(THREE), STACKABLE.withMostUnits(3));
        assertThat(broken(three.checks())).isEmpty();
        assertThat(sentence(three, "phases"))
                .isEqualTo("Units of single phase give the three phase service when stacked, up to 3 units.");
        assertThat(sentence(fit(NEED, STACKABLE), "phases"))
                .isEqualTo("One unit gives single phase, which suits the single phase service.");
    }

    private static String sentence(InverterFit fit, String rule) {
        return Objects.requireNonNull(InverterSheets.check(fit.checks(), rule))
                .message()
                .toString();
    }

    @Test
    void followersSleepWhileTheyAreNotNeeded() {
        // 3000 W in two hours of the evening, 1000 W otherwise; one unit carries 2000 W / 1.25 = 1600 W: of two units
        // one
        // sleeps for 22 h: 10 W · 22 h = 220 Wh
        InverterNeed need = NEED.withPeak(peak(3000, 3000, 3000, 3000))
                .withHourlyPeaks(IntStream.range(0, 24)
                        .mapToObj(hour -> Power.watts(hour == 18 || hour == 19 ? 3000 : 1000))
                        .toList());
        InverterFit fit = fit(need, STACKABLE);

        assertThat(fit.count()).isEqualTo(2);
        assertThat(fit.idle()).isEqualTo(Power.watts(20));
        assertThat(fit.idleSavedDaily()).isEqualTo(Energy.wattHours(220));
        assertThat(fit(need, STACKABLE.withFollowerSleep(false)).idleSavedDaily())
                .isEqualTo(Energy.ZERO);
        assertThat(fit(need.withHourlyPeaks(null), STACKABLE).idleSavedDaily()).isEqualTo(Energy.ZERO);
        // on three lines the first of each stays awake: 1000 W are 333 W a line, 9000 W take two: three sleep for 22 h
        InverterFit three = fit(
                need.withService(THREE)
                        .withPeak(peak(9000, 9000, 9000, 9000))
                        .withHourlyPeaks(IntStream.range(0, 24)
                                .mapToObj(hour -> Power.watts(hour == 18 || hour == 19 ? 9000 : 1000))
                                .toList()),
                STACKABLE);
        assertThat(three.idleSavedDaily()).isEqualTo(Energy.wattHours(660));
    }

    @Test
    void sheetsThatContradictThemselves() {
        assertThatThrownBy(() -> STACKABLE.withPhases(Phases.THREE))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("stackedServices");
        assertThatThrownBy(() -> STACKABLE.withStackedServices(List.of(Phases.SINGLE)))
                .hasMessageContaining("mostInParallel");
        assertThatThrownBy(() -> NEED.withHourlyPeaks(List.of(Power.ZERO))).hasMessageContaining("24");
    }

    private static InverterFit fit(InverterNeed need, Inverter inverter) {
        return InverterFit.of(need, inverter, POLICY);
    }
}
