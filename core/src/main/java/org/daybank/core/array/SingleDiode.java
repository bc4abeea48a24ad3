package org.daybank.core.array;

import org.daybank.core.array.kernel.DiodeKernel;
import org.daybank.core.array.kernel.DiodeKernelBuilder;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Working;

/**
 * A module as an electric circuit: a source of current, a diode, a resistance across it and one in line, whose five parameters
 * are found from the data sheet alone (De Soto, Klein and Beckman 2006, Solar Energy 80:78–88). The curve passes through the
 * three points of the sheet, its power is largest at the middle one, and its open-circuit voltage and largest power go with
 * temperature as the sheet says.
 *
 * @param module the data sheet
 * @param lightCurrent I<sub>L</sub>, current that the light drives
 * @param saturationCurrent I<sub>0</sub>, current of the diode in the dark
 * @param modifiedIdeality a = n · N<sub>s</sub> · k · T / q: the voltage over which the current of the diode grows e-fold
 * @param seriesResistance R<sub>s</sub>
 * @param shuntResistance R<sub>sh</sub>
 * @param idealityExponent power of the absolute temperature with which the modified ideality goes: 1 in theory, here what
 *     meets the power coefficient of the sheet
 */
public record SingleDiode(
        PvModule module,
        Current lightCurrent,
        Current saturationCurrent,
        Voltage modifiedIdeality,
        Resistance seriesResistance,
        Resistance shuntResistance,
        double idealityExponent) {
    private static final String SOURCE = "De Soto, Klein and Beckman 2006";

    private static final Temperature REFERENCE = Temperature.celsius(DiodeKernel.REFERENCE_CELSIUS);
    private static final Temperature COLDEST = Temperature.celsius(-100);
    private static final Temperature HOTTEST = Temperature.celsius(150);
    private static final Irradiance BRIGHTEST = Irradiance.wattsPerSquareMetre(3000);

    /**
     * Fits the circuit to a data sheet.
     *
     * @throws org.daybank.core.schema.InvalidInput when the sheet cannot be fitted; the message says which figures do not go
     *     together
     */
    public static SingleDiode of(PvModule module) {
        DiodeKernel fitted = DiodeFit.of(module);
        return new SingleDiode(
                module,
                Current.amperes(fitted.lightAmperes()),
                Current.amperes((fitted.lightAmperes() - fitted.shuntSiemens() * fitted.openCircuitVolts())
                        / Math.expm1(fitted.openCircuitVolts() / fitted.idealityVolts())),
                Voltage.volts(fitted.idealityVolts()),
                Resistance.ohms(fitted.seriesOhms()),
                Resistance.ohms(1 / fitted.shuntSiemens()),
                fitted.idealityExponent());
    }

    /**
     * The curve under an irradiance, cells at a temperature: the light current goes with the irradiance, the shunt resistance
     * against it (De Soto et al. 2006), the saturation current follows from the open-circuit voltage at that temperature
     * (Villalva, Gazoli and Ruppert 2009, eq. 7).
     *
     * @param irradiance on the front, or on both sides together; up to 3000 W/m²
     * @param cell from −100 °C to 150 °C
     * @throws org.daybank.core.schema.InvalidInput when either is out of range
     */
    public IvCurve at(Irradiance irradiance, Temperature cell) {
        new Validation()
                .atMost("irradiance", irradiance, BRIGHTEST)
                .within("cell", cell, COLDEST, HOTTEST)
                .done();
        return IvCurve.of(this, irradiance, cell);
    }

    /** The same on bare numbers, for loops. */
    public DiodeKernel kernel() {
        double open = module.openCircuitVoltage().volts();
        return DiodeKernelBuilder.builder()
                .lightAmperes(lightCurrent.amperes())
                .lightAmperesPerKelvin(module.shortCircuitCurrent().amperes()
                        * module.shortCircuitCurrentCoefficient().perKelvin())
                .openCircuitVolts(open)
                .openCircuitVoltsPerKelvin(
                        open * module.openCircuitVoltageCoefficient().perKelvin())
                .idealityVolts(modifiedIdeality.volts())
                .idealityExponent(idealityExponent)
                .seriesOhms(seriesResistance.ohms())
                .shuntSiemens(1 / shuntResistance.ohms())
                .build();
    }

    /** Ideality factor of one cell at 25 °C: about 1 for crystalline silicon. */
    public double idealityFactor() {
        return modifiedIdeality.volts() / (module.cellsInSeries() * DiodeFit.BOLTZMANN * REFERENCE.kelvins());
    }

    /** The five parameters put into the equation of the circuit at the three points of the sheet. */
    public Working working() {
        return Working.builder()
                .step(
                        "ideality factor",
                        "n = a / (N_s · k · T / q)",
                        SOURCE,
                        idealityFactor(),
                        "%s / (%s · 25.69 mV)",
                        modifiedIdeality,
                        module.cellsInSeries())
                .step(
                        "light current",
                        "I_L = I_0 · (e^(V_oc / a) − 1) + V_oc / R_sh",
                        SOURCE,
                        lightCurrent,
                        "%s · (e^(%s / %s) − 1) + %s / %s",
                        saturationCurrent,
                        module.openCircuitVoltage(),
                        modifiedIdeality,
                        module.openCircuitVoltage(),
                        shuntResistance)
                .step(
                        "short-circuit current",
                        "I_sc = I_L − I_0 · (e^(I_sc · R_s / a) − 1) − I_sc · R_s / R_sh",
                        SOURCE,
                        module.shortCircuitCurrent(),
                        "%s − %s · (e^(%s · %s / %s) − 1) − %s · %s / %s",
                        lightCurrent,
                        saturationCurrent,
                        module.shortCircuitCurrent(),
                        seriesResistance,
                        modifiedIdeality,
                        module.shortCircuitCurrent(),
                        seriesResistance,
                        shuntResistance)
                .step(
                        "maximum power current",
                        "I_mp = I_L − I_0 · (e^((V_mp + I_mp · R_s) / a) − 1) − (V_mp + I_mp · R_s) / R_sh",
                        SOURCE,
                        module.maximumPowerCurrent(),
                        "%s − %s · (e^((%s + %s · %s) / %s) − 1) − (%s + %s · %s) / %s",
                        lightCurrent,
                        saturationCurrent,
                        module.maximumPowerVoltage(),
                        module.maximumPowerCurrent(),
                        seriesResistance,
                        modifiedIdeality,
                        module.maximumPowerVoltage(),
                        module.maximumPowerCurrent(),
                        seriesResistance,
                        shuntResistance)
                .build();
    }
}
