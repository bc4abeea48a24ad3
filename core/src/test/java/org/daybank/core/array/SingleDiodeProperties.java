package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.daybank.core.array.SheetArbitraries.Sheet;
import org.daybank.core.array.kernel.DiodeCurve;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;

/** What must hold of the curve of every sensible data sheet. */
class SingleDiodeProperties {
    private static final Irradiance FULL_SUN = Irradiance.wattsPerSquareMetre(1000);

    @Property(tries = 10_000, edgeCases = EdgeCasesMode.NONE)
    void theCurvePassesThroughTheSheetAndItsPowerGoesWithTemperatureAsStated(@ForAll("sheets") Sheet sheet) {
        PvModule module = sheet.module();
        SingleDiode diode = SingleDiode.of(module);
        IvCurve curve = diode.at(FULL_SUN, Temperature.celsius(25));

        // the three points, to 0.1 %
        assertThat(curve.shortCircuitCurrent().amperes())
                .isCloseTo(module.shortCircuitCurrent().amperes(), withinPercentage(0.1));
        assertThat(curve.openCircuitVoltage().volts())
                .isCloseTo(module.openCircuitVoltage().volts(), withinPercentage(0.1));
        assertThat(curve.maximumPowerVoltage().volts())
                .isCloseTo(module.maximumPowerVoltage().volts(), withinPercentage(0.1));
        assertThat(curve.maximumPowerCurrent().amperes())
                .isCloseTo(module.maximumPowerCurrent().amperes(), withinPercentage(0.1));
        // the coefficients around 25 °C, that of the power to 5 %; what standards call coefficient is a slope over some
        // kelvins
        IvCurve cool = diode.at(FULL_SUN, Temperature.celsius(15));
        IvCurve warm = diode.at(FULL_SUN, Temperature.celsius(35));
        double power = (warm.maximumPower().watts() - cool.maximumPower().watts())
                / 20
                / curve.maximumPower().watts();
        assertThat(power * 100).isCloseTo(sheet.powerPercent(), withinPercentage(5));
        double open =
                (warm.openCircuitVoltage().volts() - cool.openCircuitVoltage().volts())
                        / 20
                        / curve.openCircuitVoltage().volts();
        assertThat(open * 100).isCloseTo(sheet.voltagePercent(), withinPercentage(0.1));
        assertThat(diode.seriesResistance().ohms()).isPositive();
        assertThat(diode.saturationCurrent().amperes()).isPositive();
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void theCurrentFallsWithTheVoltageAndNoVoltageGivesMoreThanTheMaximum(
            @ForAll("sheets") Sheet sheet, @ForAll("suns") double sun, @ForAll("celsius") double celsius) {
        IvCurve curve =
                SingleDiode.of(sheet.module()).at(Irradiance.wattsPerSquareMetre(sun), Temperature.celsius(celsius));
        double most = curve.maximumPower().watts();

        double before = Double.POSITIVE_INFINITY;
        for (IvCurve.Point point : curve.points(50)) {
            assertThat(point.current().amperes()).isBetween(0.0, before);
            // a billionth for the last step of the iterations
            assertThat(point.power().watts()).isLessThanOrEqualTo(most * (1 + 1e-9));
            before = point.current().amperes();
        }
        // a point a thousandth of a volt to either side is no better: it is a maximum, not just a point
        for (double shift : new double[] {-0.001, 0.001}) {
            Voltage beside =
                    curve.maximumPowerVoltage().plus(curve.openCircuitVoltage().times(shift));
            assertThat(curve.current(beside).times(beside).watts()).isLessThanOrEqualTo(most);
        }
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void theCurrentAtAVoltageSolvesTheEquationOfTheCircuit(
            @ForAll("sheets") Sheet sheet,
            @ForAll("suns") double sun,
            @ForAll("celsius") double celsius,
            @ForAll("shares") double share) {
        DiodeCurve curve = SingleDiode.of(sheet.module()).kernel().at(sun, celsius);
        double volts = share * curve.openCircuitVolts();

        // halving the interval of currents: slow, and independent of slopes
        double low = 0;
        double high = curve.lightAmperes();
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            double junction = volts + middle * curve.seriesOhms();
            if (curve.junctionAmperes(junction) > middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(curve.amperes(volts)).isCloseTo(low, within(1e-9 * curve.lightAmperes()));
    }

    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
    void everySheetIsEitherFittedOrRefusedWithAReason(
            @ForAll("accepted") Sheet sheet, @ForAll("anySuns") double sun, @ForAll("anyCelsius") double celsius) {
        PvModule module = sheet.module();
        SingleDiode diode;
        try {
            diode = SingleDiode.of(module);
        } catch (InvalidInput refused) {
            assertThat(refused.problems())
                    .singleElement()
                    .extracting(Problem::code)
                    .isEqualTo(ProblemCode.INCONSISTENT);
            return;
        }
        assertThat(diode.at(FULL_SUN, Temperature.celsius(25)).maximumPower().watts())
                .isCloseTo(module.power().watts(), withinPercentage(0.1));
        // and at the ends of what may be asked, the numbers stay numbers and in order
        IvCurve curve = diode.at(Irradiance.wattsPerSquareMetre(sun), Temperature.celsius(celsius));
        assertThat(curve.maximumPowerVoltage()).isBetween(Voltage.ZERO, curve.openCircuitVoltage());
        assertThat(curve.maximumPowerCurrent()).isBetween(Current.ZERO, curve.shortCircuitCurrent());
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void moreSunGivesMorePowerAndMoreHeatLess(
            @ForAll("sheets") Sheet sheet, @ForAll("suns") double sun, @ForAll("celsius") double celsius) {
        SingleDiode diode = SingleDiode.of(sheet.module());
        double watts = diode.kernel().maximumPowerWatts(sun, celsius);

        assertThat(diode.kernel().maximumPowerWatts(sun * 1.01, celsius)).isGreaterThan(watts);
        assertThat(diode.kernel().maximumPowerWatts(sun, celsius + 1)).isLessThan(watts);
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void theKernelGivesWhatTheTypedCurveGives(
            @ForAll("sheets") Sheet sheet, @ForAll("suns") double sun, @ForAll("celsius") double celsius) {
        SingleDiode diode = SingleDiode.of(sheet.module());
        IvCurve curve = diode.at(Irradiance.wattsPerSquareMetre(sun), Temperature.celsius(celsius));

        assertThat(diode.kernel().maximumPowerWatts(sun, celsius))
                .isCloseTo(curve.maximumPower().watts(), withinPercentage(1e-9));
    }

    @Provide
    Arbitrary<Sheet> sheets() {
        return SheetArbitraries.sheets();
    }

    @Provide
    Arbitrary<Sheet> accepted() {
        return SheetArbitraries.accepted();
    }

    @Provide
    Arbitrary<Double> anySuns() {
        return SheetArbitraries.between(0, 3000);
    }

    @Provide
    Arbitrary<Double> anyCelsius() {
        return SheetArbitraries.between(-100, 150);
    }

    @Provide
    Arbitrary<Double> suns() {
        return SheetArbitraries.between(1, 1300);
    }

    @Provide
    Arbitrary<Double> celsius() {
        return SheetArbitraries.between(-40, 85);
    }

    @Provide
    Arbitrary<Double> shares() {
        return SheetArbitraries.between(0, 0.9999);
    }
}
