package org.daybank.core.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.daybank.core.Refused;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;

class CatalogTest {
    static final StockLine ON_ORDER = new StockLine("AB-12", 3, TimeSpan.days(5));

    private static final Catalog SAMPLE = Catalog.sample();

    @Test
    void sampleHasSomethingForEveryTaste() {
        int products = SAMPLE.modules().size()
                + SAMPLE.batteries().size()
                + SAMPLE.controllers().size()
                + SAMPLE.inverters().size();
        assertThat(products).isBetween(55, 75);
        assertThat(SAMPLE.batteries()).extracting(Battery::chemistry).contains(Chemistry.values());
        assertThat(SAMPLE.controllers().stream()
                        .flatMap(controller -> controller.chemistries().stream())
                        .distinct())
                .as("what some controller can be set up for")
                .contains(Chemistry.values());
        assertThat(SAMPLE.controllers()).extracting(ChargeController::kind).contains(ControllerKind.values());
        assertThat(SAMPLE.inverters()).extracting(Inverter::waveform).contains(Waveform.values());
        for (double volts : new double[] {12, 24, 48}) {
            assertThat(SAMPLE.inverters())
                    .anyMatch(inverter -> inverter.nominalVoltage().volts() == volts);
        }
        assertThat(SAMPLE.inverters()).extracting(Inverter::phases).contains(Phases.values());
        assertThat(SAMPLE.inverters()).flatExtracting(Inverter::stackedServices).contains(Phases.SPLIT, Phases.THREE);
        assertThat(SAMPLE.stringInverters()).hasSizeBetween(6, 10);
        assertThat(SAMPLE.stringInverters()).extracting(StringInverter::phases).contains(Phases.values());
        assertThat(SAMPLE.microinverters()).hasSizeBetween(4, 8);
        assertThat(SAMPLE.microinverters()).extracting(Microinverter::phases).contains(Phases.values());
        assertThat(SAMPLE.batteries()).anyMatch(battery -> battery.heater() != null);
        assertThat(SAMPLE.modules()).anyMatch(module -> module.nominalGroup() != null);
    }

    @Test
    void sampleHasAStringThatOnlyTheColdBreaks() {
        // Three PL-375 on an HN-T40: 3 · 41.2 V = 123.6 V at 25 °C, under 140 V · 0.98 = 137.2 V; at −29 °C
        // 123.6 · (1 + 0.0028 · 54) = 142.3 V, over even the 140 V that destroy it
        PvModule module = named(SAMPLE.modules(), PvModule::model, "PL-375");
        ChargeController controller = named(SAMPLE.controllers(), ChargeController::model, "HN-T40");
        double warm = 3 * module.openCircuitVoltage().volts();
        double cold = warm * (1 + module.openCircuitVoltageCoefficient().perKelvin() * (-29 - 25));

        assertThat(warm).isLessThan(controller.maximumInputVoltage().volts() * 0.98);
        assertThat(cold).isGreaterThan(controller.maximumInputVoltage().volts());
    }

    @Test
    void sampleIsThoughtOutToTheCent() {
        assertThat(SAMPLE.modules())
                .allSatisfy(module -> assertThat(module.price().minorUnits()).isPositive());
        // a module with the group of a 12 V bank has 36 cells, with that of 24 V 72
        assertThat(SAMPLE.modules()).allSatisfy(module -> {
            if (module.nominalGroup() != null) {
                assertThat(module.cellsInSeries() * 12.0)
                        .isEqualTo(36 * module.nominalGroup().volts());
            }
        });
    }

    @Test
    void aModelCodeOccursOnceInItsList() {
        PvModule first = SAMPLE.modules().get(0);
        Battery second = SAMPLE.batteries().get(1);
        InvalidInput refused =
                refused(List.of(first, SAMPLE.modules().get(1), first), List.of(second, second), List.of(), List.of());

        assertThat(refused.problems())
                .extracting(Problem::path)
                .containsExactly("/modules/2/model", "/batteries/1/model");
        assertThat(refused.problems()).extracting(Problem::code).containsOnly(ProblemCode.CONFLICT);
        assertThat(refused).hasMessageContaining(first.model()).hasMessageContaining(second.model());
    }

    @Test
    void theSameCodeInTwoListsIsNoMatter() {
        Inverter inverter = SAMPLE.inverters().get(0).withModel("X");
        ChargeController controller = SAMPLE.controllers().get(0).withModel("X");
        Catalog catalog = new Catalog(List.of(), List.of(), List.of(controller), List.of(inverter));
        assertThat(catalog.inverters().get(0).model())
                .isEqualTo(catalog.controllers().get(0).model());
    }

    @Test
    void productsForTheGridAreCheckedLikeTheOthers() {
        StringInverter string = SAMPLE.stringInverters().get(0);
        Microinverter micro = SAMPLE.microinverters().get(0);
        InvalidInput refused = catchThrowableOfType(
                InvalidInput.class,
                () -> new Catalog(
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(string, string),
                        List.of(micro, micro.withPrice(Money.of("9", "USD"))),
                        List.of()));

        assertThat(refused.problems())
                .extracting(Problem::path)
                .containsExactly("/stringInverters/1/model", "/microinverters/1/model", "");
    }

    @Test
    void pricesAreInOneCurrency() {
        PvModule module = SAMPLE.modules().get(0);
        InvalidInput refused = refused(
                List.of(module, module.withModel("dollar").withPrice(Money.of("9", "USD"))),
                List.of(),
                List.of(),
                List.of());

        assertThat(refused.problems()).extracting(Problem::code).containsExactly(ProblemCode.INCONSISTENT);
        assertThat(refused).hasMessageContaining("EUR").hasMessageContaining("USD");
    }

    @Test
    @SuppressWarnings("NullAway") // what a reader of requests hands over for a list that is not there
    void everyMissingListIsNamed() {
        InvalidInput refused = catchThrowableOfType(InvalidInput.class, () -> new Catalog(null, null, List.of(), null));

        assertThat(refused.problems())
                .extracting(Problem::path)
                .containsExactly("/modules", "/batteries", "/inverters");
        assertThat(refused.problems()).extracting(Problem::code).containsOnly(ProblemCode.MISSING);
    }

    @Test
    void aGapInAListIsNamed() {
        List<PvModule> gap = Arrays.asList(SAMPLE.modules().get(0), null);
        InvalidInput refused = refused(gap, List.of(), List.of(), List.of());

        assertThat(refused.problems()).extracting(Problem::path).containsExactly("/modules/1");
        assertThat(refused.problems()).extracting(Problem::code).containsExactly(ProblemCode.MISSING);
    }

    @Test
    void aStockLineCountsFromNoneToAMillion() {
        assertThat(Refused.places(() -> new StockLine("AB-12", -1, TimeSpan.ZERO)))
                .containsExactly("/inStock");
        assertThat(Refused.places(() -> new StockLine(" ", 1_000_001, TimeSpan.days(731))))
                .containsExactly("/model", "/inStock", "/leadTime");
        assertThat(Refused.places(() -> new StockLine("AB-12", 1_000_000, TimeSpan.days(730))))
                .isEmpty();
    }

    private static InvalidInput refused(
            List<PvModule> modules,
            List<Battery> batteries,
            List<ChargeController> controllers,
            List<Inverter> inverters) {
        return catchThrowableOfType(InvalidInput.class, () -> new Catalog(modules, batteries, controllers, inverters));
    }

    private static <T> T named(List<T> products, Function<T, String> model, String name) {
        return products.stream()
                .filter(product -> model.apply(product).equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void controllersAndInvertersAreCheckedLikeTheOthers() {
        ChargeController controller = SAMPLE.controllers().get(0);
        Inverter inverter = SAMPLE.inverters().get(0);
        InvalidInput refused =
                refused(List.of(), List.of(), List.of(controller, controller), List.of(inverter, inverter));

        assertThat(refused.problems())
                .extracting(Problem::path)
                .containsExactly("/controllers/1/model", "/inverters/1/model");
    }
}
