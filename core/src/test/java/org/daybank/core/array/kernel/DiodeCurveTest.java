package org.daybank.core.array.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against closed forms of the curve where resistances vanish. */
class DiodeCurveTest {
    private static final double LIGHT = 10;

    /** Without resistances, with the open-circuit voltage so many times the modified ideality of 1 V. */
    private static DiodeCurve ideal(double volts) {
        double saturation = LIGHT / Math.expm1(volts);
        return new DiodeCurve(LIGHT, saturation, LIGHT + saturation, volts, 1, 0, 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 20, 25, 40})
    void theIdealDiodeHasTheFillFactorOfGreen(double volts) {
        // Green 1982: FF = (v − ln(v + 0.72)) / (v + 1), said to be good to a unit of the fourth digit
        double green = (volts - Math.log(volts + 0.72)) / (volts + 1);
        assertThat(ideal(volts).maximumPowerWatts() / (volts * LIGHT)).isCloseTo(green, withinPercentage(0.015));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5, 20, 100, 500})
    void theIdealDiodeMeetsItsConditionOfMaximumPower(double volts) {
        // d(V·I)/dV = 0 with I = I_L − I_0·(e^v − 1): (1 + v)·e^v = 1 + I_L / I_0 = e^v_oc, so v + ln(1 + v) = v_oc
        double best = ideal(volts).maximumPowerJunctionVolts();
        assertThat(best + Math.log1p(best)).isCloseTo(volts, withinPercentage(1e-9));
    }

    @Test
    void theIdealDiodeEndsWhereItWasMadeTo() {
        assertThat(ideal(25).openCircuitVolts()).isCloseTo(25, within(1e-12));
        // a tenth of the light: v = ln(1 + 1/I_0)
        DiodeCurve full = ideal(25);
        DiodeCurve tenth = new DiodeCurve(1, full.saturationAmperes(), full.diodeAmperes(), 25, 1, 0, 0);
        assertThat(tenth.openCircuitVolts()).isCloseTo(Math.log1p(1 / full.saturationAmperes()), within(1e-12));
    }

    @Test
    void seriesResistanceShiftsTheCurveByItsVoltage() {
        DiodeCurve ideal = ideal(25);
        DiodeCurve resisted = new DiodeCurve(LIGHT, ideal.saturationAmperes(), ideal.diodeAmperes(), 25, 1, 0.3, 0);
        for (double volts = 0; volts < 25; volts += 0.5) {
            double amperes = ideal.amperes(volts);
            double shifted = volts - 0.3 * amperes;
            if (shifted >= 0) {
                assertThat(resisted.amperes(shifted)).isCloseTo(amperes, within(1e-9));
            }
        }
        assertThat(resisted.openCircuitVolts()).isCloseTo(25, within(1e-12));
        // below −dV/dI = R_s of a square corner: at most the 10 A · 10 A · 0.3 Ω = 30 W that the resistance can take is
        // lost
        assertThat(resisted.maximumPowerWatts()).isBetween(ideal.maximumPowerWatts() - 30, ideal.maximumPowerWatts());
    }

    @Test
    void aShuntAloneIsAStraightLine() {
        // a diode that does not conduct below 100 V beside 5 S: I = 10 A − 5 S · V, most power at half of 2 V: 1 V · 5
        // A
        DiodeCurve shunt = new DiodeCurve(LIGHT, 0, LIGHT, 100, 0.1, 0, 5);
        assertThat(shunt.openCircuitVolts()).isCloseTo(2, within(1e-9));
        assertThat(shunt.maximumPowerJunctionVolts()).isCloseTo(1, within(1e-9));
        assertThat(shunt.maximumPowerWatts()).isCloseTo(5, within(1e-9));
        assertThat(shunt.amperes(0.5)).isCloseTo(7.5, within(1e-9));
    }

    @Test
    void theVoltageAtACurrentInvertsTheIdealDiode() {
        // V = ln(1 + (I_L − I) / I_0), whatever the current up to that of the light
        DiodeCurve ideal = ideal(25);
        for (double amperes = 0; amperes < LIGHT; amperes += 0.7) {
            assertThat(ideal.volts(amperes))
                    .isCloseTo(Math.log1p((LIGHT - amperes) / ideal.saturationAmperes()), within(1e-9));
        }
    }

    @Test
    void theVoltageAtACurrentInvertsTheCurveWithResistances() {
        DiodeCurve ideal = ideal(25);
        DiodeCurve curve = new DiodeCurve(LIGHT, ideal.saturationAmperes(), ideal.diodeAmperes(), 25, 1, 0.3, 0.002);
        for (double volts = -0.5; volts < 24; volts += 0.5) {
            assertThat(curve.volts(curve.amperes(volts))).isCloseTo(volts, within(1e-6));
        }
    }

    @Test
    void moreThanTheLightDrivesTakesANegativeVoltage() {
        // I = 10 A − 5 S · V: 11 A at −0.2 V
        DiodeCurve shunt = new DiodeCurve(LIGHT, 0, LIGHT, 100, 0.1, 0, 5);
        assertThat(shunt.volts(11)).isCloseTo(-0.2, within(1e-9));
        assertThat(shunt.volts(7.5)).isCloseTo(0.5, within(1e-9));
    }
}
