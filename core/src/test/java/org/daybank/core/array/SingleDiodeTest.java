package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class SingleDiodeTest {
    private static final Irradiance FULL_SUN = Irradiance.wattsPerSquareMetre(1000);
    private static final Temperature REFERENCE = Temperature.celsius(25);
    private static final SingleDiode FELL_405 = SingleDiode.of(PvModuleTest.FELL_405);

    /** A 36-cell panel of the 12 V group: 18.2 V · 5.5 A = 100.1 W. */
    private static final PvModule PATCH_100 = PvModuleBuilder.builder()
            .model("Patch 100")
            .power(Power.watts(100))
            .openCircuitVoltage(Voltage.volts(22.3))
            .shortCircuitCurrent(Current.amperes(5.85))
            .maximumPowerVoltage(Voltage.volts(18.2))
            .maximumPowerCurrent(Current.amperes(5.5))
            .cellsInSeries(36)
            .systemVoltage(Voltage.volts(600))
            .seriesFuse(Current.amperes(10))
            .nominalGroup(Voltage.volts(12))
            .price(Money.of("79.00", "EUR"))
            .build();

    @Test
    void theParametersAreThoseOfSilicon() {
        // one cell of silicon: ideality 1 to 1.3 in theory, less where the sheet's knee is sharp; a = n · 54 · 25.69 mV
        assertThat(FELL_405.idealityFactor()).isBetween(0.8, 1.3);
        assertThat(FELL_405.modifiedIdeality().volts())
                .isCloseTo(FELL_405.idealityFactor() * 54 * 0.025693, withinPercentage(0.01));
        assertThat(FELL_405.lightCurrent()).isBetween(Current.amperes(13.87), Current.amperes(13.95));
        // less than what is lost between the knee and a square corner: (37.2 − 31.2) V / 12.98 A = 0.462 Ω
        assertThat(FELL_405.seriesResistance().ohms()).isBetween(0.0, 0.462);
        // the current falls by 0.89 A over 31.2 V: 35 Ω were the shunt alone to blame
        assertThat(FELL_405.shuntResistance().ohms()).isGreaterThan(35);
    }

    @Test
    void theEquationOfTheCircuitHoldsAtThePointsOfTheSheet() {
        for (IvCurve.Point point : List.of(
                new IvCurve.Point(Voltage.ZERO, Current.amperes(13.87)),
                new IvCurve.Point(Voltage.volts(31.2), Current.amperes(12.98)),
                new IvCurve.Point(Voltage.volts(37.2), Current.ZERO))) {
            assertThat(circuit(FELL_405, point)).isCloseTo(point.current().amperes(), within(1e-6));
        }
    }

    /** I = I_L − I_0·(e^((V + I·R_s)/a) − 1) − (V + I·R_s)/R_sh, written out with the parameters as they are answered. */
    private static double circuit(SingleDiode diode, IvCurve.Point point) {
        double junction = point.voltage().volts()
                + point.current().amperes() * diode.seriesResistance().ohms();
        return diode.lightCurrent().amperes()
                - diode.saturationCurrent().amperes()
                        * Math.expm1(junction / diode.modifiedIdeality().volts())
                - junction / diode.shuntResistance().ohms();
    }

    @Test
    void theCurveIsTheSheetAtStandardTestConditions() {
        IvCurve curve = FELL_405.at(FULL_SUN, REFERENCE);

        assertThat(curve.shortCircuitCurrent().amperes()).isCloseTo(13.87, withinPercentage(0.1));
        assertThat(curve.openCircuitVoltage().volts()).isCloseTo(37.2, withinPercentage(0.1));
        assertThat(curve.maximumPowerVoltage().volts()).isCloseTo(31.2, withinPercentage(0.1));
        assertThat(curve.maximumPowerCurrent().amperes()).isCloseTo(12.98, withinPercentage(0.1));
        assertThat(curve.maximumPower().watts()).isCloseTo(404.976, withinPercentage(0.1));
        assertThat(curve.current(Voltage.volts(31.2)).amperes()).isCloseTo(12.98, withinPercentage(0.1));
    }

    @Test
    void heatTakesVoltageAndPowerAsTheSheetSays() {
        IvCurve hot = FELL_405.at(FULL_SUN, Temperature.celsius(65));

        // 37.2 V · (1 − 0.27 % · 40) = 33.1824 V; 13.87 A · (1 + 0.048 % · 40) = 14.1363 A
        assertThat(hot.openCircuitVoltage().volts()).isCloseTo(33.1824, withinPercentage(0.1));
        assertThat(hot.shortCircuitCurrent().amperes()).isCloseTo(14.1363, withinPercentage(0.1));
        // 404.976 W · (1 − 0.35 % · 40) = 348.28 W; the coefficient is met to 5 % of the 56.7 W lost: 2.8 W, 0.8 %
        assertThat(hot.maximumPower().watts()).isCloseTo(348.28, withinPercentage(0.8));
        // −25 °C: 37.2 V · (1 + 0.27 % · 50) = 42.222 V
        assertThat(FELL_405.at(FULL_SUN, Temperature.celsius(-25))
                        .openCircuitVoltage()
                        .volts())
                .isCloseTo(42.222, withinPercentage(0.1));
    }

    @Test
    void theCurrentGoesWithTheSunAndTheVoltageWithItsLogarithm() {
        IvCurve weak = FELL_405.at(Irradiance.wattsPerSquareMetre(200), REFERENCE);

        // but for what the shunt takes at the voltage inside: I_sc · R_s / R_sh, a thousandth in full sun and less in
        // weak
        assertThat(weak.shortCircuitCurrent().amperes()).isCloseTo(0.2 * 13.87, withinPercentage(0.14));
        // the shunt goes with the sun, so that it cancels: 37.2 V + a · ln 0.2
        assertThat(weak.openCircuitVoltage().volts())
                .isCloseTo(37.2 + FELL_405.modifiedIdeality().volts() * Math.log(0.2), withinPercentage(0.1));
        // sheets of crystalline silicon state 94 to 99 % of the efficiency at 200 W/m²
        assertThat(weak.maximumPower().watts() / (0.2 * 404.976)).isBetween(0.94, 0.99);
    }

    @Test
    void aModuleOfTheBanksGroupGivesNearlyItsShortCircuitCurrentAtBankVoltage() {
        IvCurve curve = SingleDiode.of(PATCH_100).at(FULL_SUN, Temperature.celsius(45));

        // at 13 V far below the knee: the current lies between that at the knee and at short circuit
        Current atBank = curve.current(Voltage.volts(13));
        assertThat(atBank).isBetween(curve.maximumPowerCurrent(), curve.shortCircuitCurrent());
        // so held to 13 V it gives less than tracked: some 75 W of some 92 W
        assertThat(atBank.times(Voltage.volts(13)).watts()
                        / curve.maximumPower().watts())
                .isBetween(0.75, 0.87);
    }

    @Test
    void nothingFlowsInTheDarkOrBeyondOpenCircuit() {
        IvCurve night = FELL_405.at(Irradiance.ZERO, Temperature.celsius(-10));

        assertThat(night.maximumPower()).isEqualTo(Power.ZERO);
        assertThat(night.openCircuitVoltage()).isEqualTo(Voltage.ZERO);
        assertThat(night.current(Voltage.volts(24))).isEqualTo(Current.ZERO);
        assertThat(FELL_405.at(FULL_SUN, REFERENCE).current(Voltage.volts(37.3)))
                .isEqualTo(Current.ZERO);
        assertThat(FELL_405.at(FULL_SUN, REFERENCE).current(Voltage.volts(1e6))).isEqualTo(Current.ZERO);
    }

    @Test
    void pointsRunFromShortToOpenCircuit() {
        IvCurve curve = FELL_405.at(FULL_SUN, REFERENCE);
        List<IvCurve.Point> points = curve.points(32);

        assertThat(points).hasSize(32);
        assertThat(points.get(0)).isEqualTo(new IvCurve.Point(Voltage.ZERO, curve.shortCircuitCurrent()));
        assertThat(points.get(31).voltage()).isEqualTo(curve.openCircuitVoltage());
        assertThat(points.get(31).current().amperes()).isCloseTo(0, within(1e-9));
        assertThat(points).isSortedAccordingTo((a, b) -> b.current().compareTo(a.current()));
        assertThat(points).allMatch(point -> point.power().watts() <= 404.976 * (1 + 1e-9));
        assertThatThrownBy(() -> curve.points(1)).hasMessage("count must be at least 2, but was 1.");
    }

    @Test
    void impossibleConditionsAreRefused() {
        assertThatThrownBy(() -> FELL_405.at(Irradiance.wattsPerSquareMetre(10_000), Temperature.celsius(200)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "irradiance must be at most 3 kW/m², but was 10 kW/m². cell must be from -100 °C to 150 °C, but was 200 °C.");
        assertThatThrownBy(() -> FELL_405.at(FULL_SUN, REFERENCE).current(Voltage.volts(-1)))
                .hasMessage("voltage must be at least 0 V, but was -1 V.");
    }

    @Test
    void aSheetWithAKneeThatNoCellHasIsRefusedWithItsFigures() {
        // 36.9 V of 37.2 V and 13.8 A of 13.87 A: a corner nearly square
        PvModule square = PvModuleBuilder.builder(PvModuleTest.FELL_405)
                .power(Power.watts(509))
                .maximumPowerVoltage(Voltage.volts(36.9))
                .maximumPowerCurrent(Current.amperes(13.8))
                .build();

        assertThatThrownBy(() -> SingleDiode.of(square))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Fell 405")
                .hasMessageContaining("36.9 V and 13.8 A")
                .hasMessageContaining("37.2 V and 13.87 A");
    }

    @Test
    void coefficientsThatDoNotGoTogetherAreRefusedWithWhatWouldDo() {
        PvModule module = PvModuleTest.FELL_405.withPowerCoefficient(TemperatureCoefficient.percentPerKelvin(-0.8));

        assertThatThrownBy(() -> SingleDiode.of(module))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path() + " " + problem.code())
                                .containsExactly("/powerCoefficient INCONSISTENT"))
                .hasMessageContaining(
                        "powerCoefficient -0.8 %/K does not go with openCircuitVoltageCoefficient -0.27 %/K")
                .hasMessageContaining("it can be from");
    }

    @Test
    void workingPutsTheParametersIntoTheEquation() {
        List<Step> steps = FELL_405.working().steps();

        assertThat(steps)
                .extracting(Step::name)
                .containsExactly("ideality factor", "light current", "short-circuit current", "maximum power current");
        assertThat(steps.get(3).result()).isEqualTo("12.98 A");
        assertThat(steps).allSatisfy(step -> assertThat(step.source()).contains("De Soto"));
    }
}
