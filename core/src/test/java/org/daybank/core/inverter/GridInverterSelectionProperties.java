package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Rejection;

/** Whatever is asked, of the sample catalogue. */
class GridInverterSelectionProperties {
    private static final Catalog SAMPLE = Catalog.sample();
    private static final GridPolicy POLICY = GridPolicy.standard();

    /** One question. */
    record Question(PvModule module, int modules, double coldest, double hottest, Phases phases, double volts) {
        GridArray array() {
            double beta = module.openCircuitVoltageCoefficient().perKelvin();
            ModuleExtremes extremes = new ModuleExtremes(
                    module,
                    Temperature.celsius(coldest),
                    Temperature.celsius(hottest),
                    module.openCircuitVoltage().times(1 + beta * (coldest - 25)),
                    module.maximumPowerVoltage().times(0.85));
            return new GridArray(extremes, modules, Ratio.of(0.9), GridSheets.SUNSHINE);
        }

        GridService grid() {
            return new GridService(
                    new Service(Voltage.volts(volts), Frequency.hertz(phases == Phases.SPLIT ? 60 : 50), phases),
                    Temperature.celsius(40));
        }

        GridInverterSelection answer() {
            return GridInverterSelection.of(grid(), array(), SAMPLE.stringInverters(), SAMPLE.microinverters(), POLICY);
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Combinators.combine(
                        Arbitraries.of(SAMPLE.modules()),
                        Arbitraries.integers().between(1, 200),
                        Arbitraries.doubles().between(-40, 15),
                        Arbitraries.doubles().between(50, 80),
                        Arbitraries.of(Phases.values()))
                .as((module, modules, coldest, hottest, phases) ->
                        new Question(module, modules, coldest, hottest, phases, phases == Phases.SPLIT ? 120 : 230));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void everyInverterIsRankedOrRejectedWithReasons(@ForAll("questions") Question question) {
        GridInverterSelection answer = question.answer();

        assertThat(Stream.concat(
                        answer.stringInverters().ranked().stream().map(StringInverterFit::product),
                        answer.stringInverters().rejected().stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(SAMPLE.stringInverters().stream()
                        .map(StringInverter::model)
                        .toList());
        assertThat(Stream.concat(
                        answer.microinverters().ranked().stream().map(MicroinverterFit::product),
                        answer.microinverters().rejected().stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(SAMPLE.microinverters().stream()
                        .map(Microinverter::model)
                        .toList());
        assertThat(answer.stringInverters().ranked())
                .isSortedAccordingTo((a, b) -> a.price().compareTo(b.price()));
        assertThat(answer.microinverters().ranked())
                .isSortedAccordingTo((a, b) -> a.price().compareTo(b.price()));
    }

    /** All modules are connected, whether the inverter fits or not. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void everyModuleIsOnAString(@ForAll("questions") Question question) {
        for (StringInverter inverter : SAMPLE.stringInverters()) {
            StringInverterFit fit = StringInverterFit.of(question.grid(), question.array(), inverter, POLICY);
            int modules = 0;
            int units = 0;
            for (UnitStrings unit : fit.units()) {
                int onOne = unit.trackers().stream()
                        .mapToInt(on -> on.trackers() * on.strings() * on.series())
                        .sum();
                assertThat(onOne).isEqualTo(unit.modules());
                modules += unit.units() * unit.modules();
                units += unit.units();
            }
            assertThat(modules).isEqualTo(question.modules());
            assertThat(units).isEqualTo(fit.count());
        }
    }

    /** The rules once more, in bare numbers. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void whatIsRankedKeepsEveryRule(@ForAll("questions") Question question) {
        PvModule module = question.module();
        double coldOpen = module.openCircuitVoltage().volts()
                * (1 + module.openCircuitVoltageCoefficient().perKelvin() * (question.coldest() - 25));
        double hotBest = module.maximumPowerVoltage().volts() * 0.85;
        double operating = module.maximumPowerCurrent().amperes()
                * (1 + module.bifacialGain().fraction());
        double shorted = module.shortCircuitCurrent().amperes()
                * (1 + module.bifacialGain().fraction())
                * 1.25;
        for (StringInverterFit fit : question.answer().stringInverters().ranked()) {
            StringInverter inverter = fit.inverter();
            double ratio = question.modules()
                    * module.power().watts()
                    / (fit.count() * inverter.power().watts());
            assertThat(ratio).isBetween(1 - 1e-12, 1.4 + 1e-12);
            for (UnitStrings unit : fit.units()) {
                int trackers = 0;
                for (TrackerStrings on : unit.trackers()) {
                    trackers += on.trackers();
                    assertThat(on.series() * coldOpen)
                            .isLessThanOrEqualTo(inverter.maximumInputVoltage().volts() * 0.98 + 1e-9)
                            .isLessThanOrEqualTo(module.systemVoltage().volts() + 1e-9);
                    assertThat(on.series() * hotBest)
                            .isGreaterThanOrEqualTo(inverter.trackingLowest().volts() - 1e-9);
                    assertThat(on.strings() * operating)
                            .isLessThanOrEqualTo(inverter.maximumInputCurrent().amperes() + 1e-9);
                    assertThat(on.strings() * shorted)
                            .isLessThanOrEqualTo(inverter.resolved()
                                            .maximumShortCircuitCurrent()
                                            .amperes()
                                    + 1e-9);
                }
                assertThat(trackers).isLessThanOrEqualTo(inverter.trackers());
            }
            assertThat(fit.clipping().fraction()).isLessThanOrEqualTo(0.02);
        }
        for (MicroinverterFit fit : question.answer().microinverters().ranked()) {
            assertThat(fit.count() * fit.inverter().modulesOnEach()).isGreaterThanOrEqualTo(question.modules());
            assertThat(fit.branches() * fit.mostOnBranch()).isGreaterThanOrEqualTo(fit.count());
            assertThat(fit.branchCurrent().amperes()).isLessThanOrEqualTo(16 + 1e-9);
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aColderMorningNeverTakesLongerStrings(@ForAll("questions") Question question) {
        Question colder = new Question(
                question.module(),
                question.modules(),
                question.coldest() - 10,
                question.hottest(),
                question.phases(),
                question.volts());
        for (StringInverter inverter : SAMPLE.stringInverters()) {
            StringPlan before = StringPlan.of(question.array(), inverter, POLICY);
            StringPlan after = StringPlan.of(colder.array(), inverter, POLICY);
            assertThat(after.mostInSeries()).isLessThanOrEqualTo(before.mostInSeries());
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void theOrderOfTheCatalogueDoesNotMatter(@ForAll("questions") Question question) {
        List<StringInverter> reversed = new ArrayList<>(SAMPLE.stringInverters());
        Collections.reverse(reversed);
        assertThat(StringInverterSelection.of(question.grid(), question.array(), reversed, POLICY)
                        .ranked())
                .isEqualTo(question.answer().stringInverters().ranked());
    }
}
