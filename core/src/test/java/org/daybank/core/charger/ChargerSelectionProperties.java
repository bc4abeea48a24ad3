package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
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
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.working.Rejection;

/** Whatever is asked, of the sample catalogue. */
class ChargerSelectionProperties {
    private static final List<ChargeController> CONTROLLERS = Catalog.sample().controllers();
    private static final ChargerPolicy POLICY = ChargerPolicy.standard();

    /** One question. */
    record Question(
            double busVolts,
            Chemistry chemistry,
            PvModule module,
            double lowCelsius,
            double highCelsius,
            double modules,
            double bankAmperes) {
        ChargerNeed need() {
            return ChargerNeedBuilder.builder()
                    .nominalVoltage(Voltage.volts(busVolts))
                    .chemistry(chemistry)
                    .hottestAir(Temperature.celsius(highCelsius))
                    .maximumChargeCurrent(Current.amperes(bankAmperes))
                    .build();
        }

        ArrayOffer offer() {
            Site site = SiteBuilder.builder(ChargerSheets.SITE)
                    .recordLow(Temperature.celsius(lowCelsius))
                    .recordHigh(Temperature.celsius(highCelsius))
                    .build();
            return new ArrayOffer(
                    ModuleExtremes.of(module, site, ArrayPolicy.standard()),
                    Ratio.of(modules),
                    (int) Math.ceil(modules * 1.3),
                    ArrayPolicy.standard().whenNew(),
                    ChargerSheets.SUNSHINE,
                    Energy.kilowattHours(600),
                    Energy.kilowattHours(450));
        }

        ChargerSelection answer() {
            return ChargerSelection.of(need(), offer(), CONTROLLERS, POLICY);
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Combinators.combine(
                        Arbitraries.of(12.0, 24.0, 48.0),
                        Arbitraries.of(Chemistry.class),
                        Arbitraries.of(Catalog.sample().modules()),
                        Arbitraries.doubles().between(-45, 10),
                        Arbitraries.doubles().between(20, 52),
                        Arbitraries.doubles().between(0.2, 40),
                        Arbitraries.doubles().between(10, 400))
                .as(Question::new);
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void everyControllerIsRankedOrRejectedWithReasons(@ForAll("questions") Question question) {
        ChargerSelection answer = question.answer();

        assertThat(Stream.concat(
                        answer.ranked().stream().map(ChargerFit::product),
                        answer.rejected().stream().map(Rejection::product)))
                .containsExactlyInAnyOrderElementsOf(
                        CONTROLLERS.stream().map(ChargeController::model).toList());
        assertThat(answer.rejected())
                .allSatisfy(rejection ->
                        assertThat(rejection.failedChecks()).isNotEmpty().noneMatch(check -> check.passed()));
    }

    /** The rules once more, in bare numbers. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void whatIsRankedKeepsEveryRule(@ForAll("questions") Question question) {
        PvModule module = question.module();
        double beta = module.openCircuitVoltageCoefficient().perKelvin();
        double coldest = module.openCircuitVoltage().volts() * (1 + beta * (question.lowCelsius() - 25));
        double hotCell = question.highCelsius()
                + (module.nominalOperatingCellTemperature().celsius() - 20) / 800 * 1000;
        double gamma = module.powerCoefficient().perKelvin()
                - module.shortCircuitCurrentCoefficient().perKelvin();
        double hottest = module.maximumPowerVoltage().volts() * (1 + gamma * (hotCell - 25)) * 0.98;
        double amperes = module.shortCircuitCurrent().amperes()
                * (1 + module.bifacialGain().fraction())
                * 1.25;
        Chemistry.Traits traits = question.chemistry().traits();
        int cells = (int) Math.round(traits.cellsPer12V() * question.busVolts() / 12);
        double charging = traits.absorption().volts() * cells;
        double lowest = traits.disconnect().volts() * cells;

        for (ChargerFit fit : question.answer().ranked()) {
            ChargeController controller = fit.controller();
            boolean direct = controller.kind() == ControllerKind.PWM || controller.kind() == ControllerKind.SHUNT;
            int series = fit.array().series();
            int fullest = fit.array().stringsOnEach().get(0);
            double left = 1 - 0.02 * Math.max(0, question.highCelsius() - 45);
            double output = controller.outputCurrent().amperes() * left;

            assertThat(controller.busVoltages()).contains(Voltage.volts(question.busVolts()));
            assertThat(controller.chemistries()).contains(question.chemistry());
            assertThat(coldest * series)
                    .isLessThanOrEqualTo(controller.maximumInputVoltage().volts() * 0.98 + 1e-9)
                    .isLessThanOrEqualTo(module.systemVoltage().volts() + 1e-9);
            if (controller.kind() == ControllerKind.STEP_UP_MPPT) {
                assertThat(coldest * series).isLessThanOrEqualTo(lowest + 1e-9);
                assertThat(hottest * series)
                        .isGreaterThanOrEqualTo(controller.minimumInputVoltage().volts() - 1e-9);
            } else {
                assertThat(hottest * series)
                        .isGreaterThanOrEqualTo(charging + controller.headroom().volts() - 1e-9);
            }
            assertThat(amperes * fullest)
                    .isLessThanOrEqualTo(
                            controller.resolved().maximumInputCurrent().amperes() + 1e-9);
            if (controller.maximumInputPower() != null) {
                assertThat(module.power().watts() * series * fullest)
                        .isLessThanOrEqualTo(controller.maximumInputPower().watts() + 1e-9);
            }
            if (direct) {
                assertThat(amperes * fullest).isLessThanOrEqualTo(output + 1e-9);
                assertThat(Objects.requireNonNull(module.nominalGroup()).volts() * series)
                        .isEqualTo(question.busVolts());
            }
            assertThat(fit.chargingCurrent().amperes())
                    .isLessThanOrEqualTo(question.bankAmperes() + 1e-9)
                    .isLessThanOrEqualTo(output * fit.count() + 1e-9);
            assertThat(fit.count()).isLessThanOrEqualTo(controller.mostInParallel());
            assertThat(fit.array().stringsOnEach()).hasSize(fit.count());
            assertThat(fit.array().stringsOnEach().stream()
                            .mapToInt(strings -> strings)
                            .sum())
                    .isEqualTo(fit.array().strings());
            // no more than the rest of a string over what is needed
            double needed = direct
                    ? Math.ceil(question.modules() * 1.3)
                    : question.modules() / controller.efficiency().fraction();
            assertThat((double) fit.array().modules()).isBetween(needed - 1e-6, needed + series + 1e-6);
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void yearlyEnergiesCloseAndTheBestIsOne(@ForAll("questions") Question question) {
        List<ChargerFit> ranked = question.answer().ranked();

        for (ChargerFit fit : ranked) {
            ChargeController controller = fit.controller();
            double perModule = controller.kind() == ControllerKind.PWM || controller.kind() == ControllerKind.SHUNT
                    ? 450_000
                    : 600_000 * controller.efficiency().fraction();
            double offered = perModule * fit.array().modules();

            // what is offered goes to clipping, to the controllers or to the bank; rounding of sums of that size
            assertThat(fit.yearlyEnergy().wattHours()
                            + fit.clippedEnergy().wattHours()
                            + fit.selfConsumptionEnergy().wattHours())
                    .isCloseTo(offered, within(1e-9 * offered));
            assertThat(fit.clippedEnergy().wattHours())
                    .isBetween(0.0, offered * POLICY.clippingLimit().fraction() * (1 + 1e-9));
            assertThat(Objects.requireNonNull(fit.energyAgainstBest())).isLessThanOrEqualTo(Ratio.ONE);
        }
        assertThat(ranked.isEmpty() || ranked.stream().anyMatch(fit -> Ratio.ONE.equals(fit.energyAgainstBest())))
                .isTrue();
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aColderMorningNeverAllowsLongerStrings(
            @ForAll("questions") Question question, @ForAll @DoubleRange(min = 0, max = 15) double colder) {
        Question cold = new Question(
                question.busVolts(),
                question.chemistry(),
                question.module(),
                question.lowCelsius() - colder,
                question.highCelsius(),
                question.modules(),
                question.bankAmperes());
        Map<String, ChargerFit> before =
                question.answer().ranked().stream().collect(Collectors.toMap(ChargerFit::product, Function.identity()));

        for (ChargerFit fit : cold.answer().ranked()) {
            assertThat(before).containsKey(fit.product());
            ChargerFit warmer = before.get(fit.product());
            assertThat(fit.array().series()).isLessThanOrEqualTo(warmer.array().series());
            assertThat(fit.priceWithArray()).isGreaterThanOrEqualTo(warmer.priceWithArray());
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void unitsDoNotMatter(@ForAll("questions") Question question) {
        ChargerNeed need = ChargerNeedBuilder.builder(question.need())
                .nominalVoltage(Voltage.millivolts(question.busVolts() * 1000))
                .maximumChargeCurrent(Current.kiloamperes(question.bankAmperes() / 1000))
                .hottestAir(Temperature.kelvins(question.highCelsius() + 273.15))
                .build();
        ChargerSelection answer = ChargerSelection.of(need, question.offer(), CONTROLLERS, POLICY);

        ChargerSelection expected = question.answer();
        assertThat(answer.ranked())
                .extracting(ChargerFit::product)
                .containsExactlyElementsOf(
                        expected.ranked().stream().map(ChargerFit::product).toList());
        for (int i = 0; i < answer.ranked().size(); i++) {
            ChargerFit fit = answer.ranked().get(i);
            ChargerFit other = expected.ranked().get(i);
            assertThat(fit.array()).isEqualTo(other.array());
            assertThat(fit.chargingCurrent().amperes())
                    .isCloseTo(other.chargingCurrent().amperes(), within(1e-9));
        }
    }
}
