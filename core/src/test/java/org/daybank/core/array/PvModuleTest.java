package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.UnaryOperator;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PvModuleTest {
    /** 31.2 V · 12.98 A = 404.976 W; 37.2 V / 54 cells = 0.689 V each. */
    static final PvModule FELL_405 = PvModuleBuilder.builder()
            .model("Fell 405")
            .power(Power.watts(405))
            .openCircuitVoltage(Voltage.volts(37.2))
            .shortCircuitCurrent(Current.amperes(13.87))
            .maximumPowerVoltage(Voltage.volts(31.2))
            .maximumPowerCurrent(Current.amperes(12.98))
            .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(-0.27))
            .shortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(0.048))
            .powerCoefficient(TemperatureCoefficient.percentPerKelvin(-0.35))
            .nominalOperatingCellTemperature(Temperature.celsius(44))
            .cellsInSeries(54)
            .systemVoltage(Voltage.volts(1500))
            .seriesFuse(Current.amperes(25))
            .price(Money.of("118.00", "EUR"))
            .build();

    @Test
    void whatIsLeftOutIsTypicalOfCrystallineSilicon() {
        PvModule module = PvModuleBuilder.builder(FELL_405)
                .openCircuitVoltageCoefficient(null)
                .shortCircuitCurrentCoefficient(null)
                .powerCoefficient(null)
                .nominalOperatingCellTemperature(null)
                .bifacialGain(null)
                .build();

        assertThat(module.openCircuitVoltageCoefficient()).isEqualTo(TemperatureCoefficient.parse("-0.30 %/K"));
        assertThat(module.shortCircuitCurrentCoefficient()).isEqualTo(TemperatureCoefficient.parse("0.05 %/K"));
        assertThat(module.powerCoefficient()).isEqualTo(TemperatureCoefficient.parse("-0.40 %/K"));
        assertThat(module.nominalOperatingCellTemperature()).isEqualTo(Temperature.celsius(45));
        assertThat(module.bifacialGain()).isEqualTo(Ratio.ZERO);
        assertThat(module.nominalGroup()).isNull();
    }

    @Test
    void anEmptySheetIsRefusedWithEverythingThatIsMissing() {
        assertThatThrownBy(() -> PvModuleBuilder.builder().build())
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly(
                                        "/model MISSING",
                                        "/power MISSING",
                                        "/openCircuitVoltage MISSING",
                                        "/shortCircuitCurrent MISSING",
                                        "/maximumPowerVoltage MISSING",
                                        "/maximumPowerCurrent MISSING",
                                        "/cellsInSeries OUT_OF_RANGE",
                                        "/systemVoltage MISSING",
                                        "/seriesFuse MISSING",
                                        "/price MISSING"));
    }

    @Test
    void aSheetThatContradictsItselfIsToldEveryContradictionWithItsFigures() {
        assertThatThrownBy(() -> PvModuleBuilder.builder(FELL_405)
                        .maximumPowerVoltage(Voltage.volts(38))
                        .maximumPowerCurrent(Current.amperes(14))
                        .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(0.27))
                        .powerCoefficient(TemperatureCoefficient.perKelvin(-0.35))
                        .cellsInSeries(108)
                        .systemVoltage(Voltage.volts(30))
                        .seriesFuse(Current.amperes(10))
                        .nominalGroup(Voltage.volts(48))
                        .price(Money.of("-1", "EUR"))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage(String.join(
                        " ",
                        "openCircuitVoltageCoefficient must be from -0.6 %/K to -0.1 %/K, but was 0.27 %/K.",
                        "powerCoefficient must be from -0.8 %/K to -0.1 %/K, but was -35 %/K.",
                        "price must be from 0.00 EUR to 10000000000.00 EUR, but was -1.00 EUR.",
                        "maximumPowerVoltage must lie between half of openCircuitVoltage, which is 37.2 V, and the whole of it, but was 38 V.",
                        "maximumPowerCurrent must lie between half of shortCircuitCurrent, which is 13.87 A, and the whole of it, but was 14 A.",
                        // 38 V · 14 A = 532 W
                        "power must agree with maximumPowerVoltage · maximumPowerCurrent to 3 %: 38 V · 14 A = 532 W, but was 405 W.",
                        // 37.2 V / 108 = 0.344 V
                        "cellsInSeries must give each cell 0.45 V to 1 V of openCircuitVoltage but 108 cells of 37.2 V give 0.344 V each; of half cells in two parallel halves only one half counts.",
                        "systemVoltage must be at least openCircuitVoltage 37.2 V, but was 30 V.",
                        "seriesFuse must be at least shortCircuitCurrent 13.87 A, but was 10 A.",
                        "maximumPowerVoltage must be at least nominalGroup 48 V, but was 38 V."));
    }

    @ParameterizedTest
    @ValueSource(doubles = {393.2, 417.4})
    void thePowerMayDifferFromTheProductByWhatRoundingExplains(double watts) {
        // 404.976 W / 393.2 W = 1.02995; 404.976 W / 417.4 W = 0.97023
        assertThat(FELL_405.withPower(Power.watts(watts)).power().watts()).isEqualTo(watts);
    }

    @ParameterizedTest
    @ValueSource(doubles = {393.1, 417.6})
    void thePowerMayNotDifferByMore(double watts) {
        // 404.976 W / 393.1 W = 1.03021; 404.976 W / 417.6 W = 0.96977
        refuses(module -> module.withPower(Power.watts(watts)), "/power");
    }

    @Test
    void eachFigureHasARange() {
        refuses(module -> module.withModel(" "), "/model");
        refuses(module -> module.withPower(Power.ZERO), "/power");
        refuses(module -> module.withShortCircuitCurrent(Current.amperes(101)), "/shortCircuitCurrent");
        refuses(
                module -> module.withNominalOperatingCellTemperature(Temperature.celsius(20)),
                "/nominalOperatingCellTemperature");
        refuses(
                module -> module.withShortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(-0.05)),
                "/shortCircuitCurrentCoefficient");
        refuses(module -> module.withCellsInSeries(-54), "/cellsInSeries");
        refuses(module -> module.withSystemVoltage(Voltage.volts(15_000)), "/systemVoltage");
        refuses(module -> module.withSeriesFuse(Current.amperes(2500)), "/seriesFuse");
        refuses(module -> module.withNominalGroup(Voltage.ZERO), "/nominalGroup");
        refuses(module -> module.withBifacialGain(Ratio.percent(-1)), "/bifacialGain");
        refuses(module -> module.withBifacialGain(Ratio.percent(70)), "/bifacialGain");
    }

    private static void refuses(UnaryOperator<PvModule> change, String path) {
        assertThatThrownBy(() -> change.apply(FELL_405))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .contains(path));
    }
}
