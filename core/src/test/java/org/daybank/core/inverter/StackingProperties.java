package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;

/** Whatever the service and the loads, of the sample catalogue. */
class StackingProperties {
    private static final List<Inverter> INVERTERS = Catalog.sample().inverters();
    private static final InverterPolicy POLICY = InverterPolicy.standard();

    /** One question. */
    record Question(double busVolts, Phases phases, double volts, double watts, double powerFactor, double multiple) {
        InverterNeed need() {
            return InverterNeedBuilder.builder()
                    .peak(peak(watts))
                    .service(new Service(Voltage.volts(volts), Frequency.hertz(60), phases))
                    .nominalVoltage(Voltage.volts(busVolts))
                    .hottestAir(Temperature.celsius(25))
                    .build();
        }

        PeakLoad peak(double running) {
            double apparent = running / powerFactor;
            return InverterSheets.peak(running, apparent, running * multiple, apparent * multiple);
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Combinators.combine(
                        Arbitraries.of(24.0, 48.0),
                        Arbitraries.of(Phases.values()),
                        Arbitraries.of(120.0, 230.0),
                        Arbitraries.doubles().between(100, 20_000),
                        Arbitraries.doubles().between(0.6, 1),
                        Arbitraries.doubles().between(1, 3))
                .as(Question::new);
    }

    /** The rules once more, in bare numbers. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void whatIsRankedCarriesEveryLine(@ForAll("questions") Question question) {
        int lines = question.phases().lines();
        for (InverterFit fit :
                InverterSelection.of(question.need(), INVERTERS, POLICY).ranked()) {
            Inverter inverter = fit.inverter();
            boolean itself = inverter.phases() == question.phases();
            int expected = itself ? fit.unitsOnLine() : fit.unitsOnLine() * lines;
            double share = itself ? 1.0 / lines : 1;

            assertThat(fit.count()).isEqualTo(expected).isLessThanOrEqualTo(inverter.mostUnits());
            assertThat(fit.unitsOnLine()).isLessThanOrEqualTo(inverter.mostInParallel());
            assertThat(itself || inverter.stackedServices().contains(question.phases()))
                    .isTrue();
            // balanced running loads
            assertThat(fit.unitsOnLine() * inverter.power().watts() * share)
                    .isGreaterThanOrEqualTo(question.watts() / lines * 1.25 - 1e-6);
            // what starts is on one line
            double start = question.watts() / question.powerFactor() * (question.multiple() - 1 + 1.0 / lines);
            assertThat(fit.unitsOnLine()
                            * inverter.surge()
                                    .over(question.need().startDuration())
                                    .voltAmperes()
                            * share)
                    .isGreaterThanOrEqualTo(start - 1e-6);
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aLineCarriesBetweenItsShareAndEverything(
            @ForAll("questions") Question question, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        PeakLoad total = question.peak(question.watts());
        PeakLoad line = FullestLine.of(
                total,
                question.peak(question.watts() * share),
                question.phases().lines());

        double least = 1.0 / question.phases().lines();
        assertThat(line.running().watts() / total.running().watts()).isBetween(least - 1e-9, 1 + 1e-9);
        assertThat(line.runningApparent().voltAmperes()
                        / total.runningApparent().voltAmperes())
                .isBetween(least - 1e-9, 1 + 1e-9);
        assertThat(line.surgeApparent().voltAmperes() / total.surgeApparent().voltAmperes())
                .isBetween(least - 1e-9, 1 + 1e-9);
        // of one power factor all is in proportion: the share itself on one line and an even part of the rest
        double expected = question.phases() == Phases.SINGLE ? 1 : share + (1 - share) * least;
        assertThat(line.runningApparent().voltAmperes()
                        / total.runningApparent().voltAmperes())
                .isCloseTo(expected, within(1e-9));
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aLargerLoadOnOneLineNeverTakesFewerUnits(
            @ForAll("questions") Question question,
            @ForAll @DoubleRange(min = 0, max = 0.5) double share,
            @ForAll @DoubleRange(min = 0, max = 0.5) double more) {
        InverterNeed need = question.need().withLargestLoad(question.peak(question.watts() * share));
        InverterNeed harder = need.withLargestLoad(question.peak(question.watts() * (share + more)));
        for (Inverter inverter : INVERTERS) {
            assertThat(InverterFit.of(harder, inverter, POLICY).count())
                    .isGreaterThanOrEqualTo(
                            InverterFit.of(need, inverter, POLICY).count());
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void sleepSavesNoMoreThanTheFollowersDraw(
            @ForAll("questions") Question question, @ForAll @DoubleRange(min = 0, max = 1) double low) {
        InverterNeed need =
                question.need().withHourlyPeaks(Collections.nCopies(24, Power.watts(question.watts() * low)));
        for (Inverter inverter : INVERTERS) {
            InverterFit fit = InverterFit.of(need, inverter, POLICY);
            int followers = fit.count() - fit.count() / fit.unitsOnLine();
            assertThat(fit.idleSavedDaily().wattHours())
                    .isBetween(0.0, 24 * followers * inverter.idle().watts() + 1e-9);
        }
    }
}
