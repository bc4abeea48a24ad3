package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Rejection;

/** Whatever is asked, of the sample catalogue. */
class InverterSelectionProperties {
    private static final List<Inverter> INVERTERS = Catalog.sample().inverters();
    private static final InverterPolicy POLICY = InverterPolicy.standard();

    /** One question. */
    record Question(
            double busVolts,
            double watts,
            double powerFactor,
            double surgeMultiple,
            double seconds,
            double celsius,
            double metres,
            boolean sine) {
        InverterNeed need() {
            return InverterNeedBuilder.builder()
                    .peak(peak())
                    .startDuration(TimeSpan.seconds(seconds))
                    .sineLoads(sine ? List.of("pump") : List.of())
                    .nominalVoltage(Voltage.volts(busVolts))
                    .bankCurrentLimit(Current.amperes(200))
                    .hottestAir(Temperature.celsius(celsius))
                    .elevation(Length.metres(metres))
                    .build();
        }

        PeakLoad peak() {
            return new PeakLoad(
                    Power.watts(watts),
                    ApparentPower.voltAmperes(watts / powerFactor),
                    Power.watts(watts * surgeMultiple),
                    ApparentPower.voltAmperes(surgeVoltAmperes()));
        }

        double surgeVoltAmperes() {
            return watts / powerFactor * surgeMultiple;
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Combinators.combine(
                        Arbitraries.of(12.0, 24.0, 48.0),
                        Arbitraries.doubles().between(50, 9000),
                        Arbitraries.doubles().between(0.6, 1),
                        Arbitraries.doubles().between(1, 5),
                        Arbitraries.doubles().between(0.5, 70),
                        Arbitraries.doubles().between(15, 50),
                        Arbitraries.doubles().between(0, 5000),
                        Arbitraries.of(true, false))
                .as(Question::new);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void everyInverterIsRankedOrRejectedWithReasons(@ForAll("questions") Question question) {
        InverterSelection answer = InverterSelection.of(question.need(), INVERTERS, POLICY);

        assertThat(Stream.concat(
                        answer.ranked().stream().map(InverterFit::product),
                        answer.rejected().stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(
                        INVERTERS.stream().map(Inverter::model).toList());
        assertThat(answer.rejected())
                .allSatisfy(rejection ->
                        assertThat(rejection.failedChecks()).isNotEmpty().noneMatch(check -> check.passed()));
        assertThat(answer.ranked()).isSortedAccordingTo((a, b) -> a.price().compareTo(b.price()));
    }

    /** The rules once more, in bare numbers. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void whatIsRankedKeepsEveryRule(@ForAll("questions") Question question) {
        for (InverterFit fit :
                InverterSelection.of(question.need(), INVERTERS, POLICY).ranked()) {
            Inverter inverter = fit.inverter();
            double left = (1 - 0.008 * Math.max(0, question.celsius() - 25))
                    * (1 - 0.01 * Math.max(0, question.metres() - 2000) / 100);
            double listed = inverter.surge().points().stream()
                    .filter(point -> point.duration().seconds() >= question.seconds())
                    .mapToDouble(point -> point.power().voltAmperes())
                    .max()
                    .orElse(0);
            // what it gives for good it also gives for a start
            double surge = Math.max(listed, inverter.resolved().apparentPower().voltAmperes() * left);

            assertThat(inverter.nominalVoltage().volts()).isEqualTo(question.busVolts());
            assertThat(question.busVolts() * 1.25)
                    .isLessThanOrEqualTo(inverter.highestInput().volts());
            assertThat(question.watts() * 1.25)
                    .isLessThanOrEqualTo(fit.count() * inverter.power().watts() * left + 1e-6);
            assertThat(question.watts() / question.powerFactor() * 1.25)
                    .isLessThanOrEqualTo(
                            fit.count() * inverter.resolved().apparentPower().voltAmperes() * left + 1e-6);
            assertThat(question.surgeVoltAmperes()).isLessThanOrEqualTo(fit.count() * surge + 1e-6);
            assertThat(fit.count()
                            * inverter.power().watts()
                            / inverter.fullLoadEfficiency().fraction()
                            / inverter.lowestInput().volts())
                    .isLessThanOrEqualTo(200 + 1e-9);
            assertThat(fit.count()).isLessThanOrEqualTo(inverter.mostInParallel());
            assertThat(inverter.outputVoltage().volts()).isBetween(230 * 0.95, 230 * 1.05);
            assertThat(question.sine() && inverter.waveform() != Waveform.SINE).isFalse();
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void hotterOrHigherNeverTakesFewer(
            @ForAll("questions") Question question,
            @ForAll @DoubleRange(min = 0, max = 10) double hotter,
            @ForAll @DoubleRange(min = 0, max = 1000) double higher) {
        InverterNeed need = question.need();
        Map<String, InverterFit> before = InverterSelection.of(need, INVERTERS, POLICY).ranked().stream()
                .collect(Collectors.toMap(InverterFit::product, Function.identity()));
        InverterNeed harder = need.withHottestAir(Temperature.celsius(question.celsius() + hotter))
                .withElevation(Length.metres(question.metres() + higher));

        for (InverterFit fit : InverterSelection.of(harder, INVERTERS, POLICY).ranked()) {
            assertThat(before).containsKey(fit.product());
            assertThat(fit.count())
                    .isGreaterThanOrEqualTo(before.get(fit.product()).count());
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void unitsDoNotMatter(@ForAll("questions") Question question) {
        InverterNeed need = question.need();
        InverterNeed same = InverterNeedBuilder.builder(need)
                .nominalVoltage(Voltage.millivolts(question.busVolts() * 1000))
                .startDuration(TimeSpan.minutes(question.seconds() / 60))
                .elevation(Length.millimetres(question.metres() * 1000))
                .bankCurrentLimit(Current.milliamperes(200_000))
                .build();

        assertThat(InverterSelection.of(same, INVERTERS, POLICY).ranked())
                .extracting(InverterFit::product, InverterFit::count)
                .isEqualTo(InverterSelection.of(need, INVERTERS, POLICY).ranked().stream()
                        .map(fit -> tuple(fit.product(), fit.count()))
                        .toList());
    }
}
