package org.daybank.core.array.kernel;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * One module on bare numbers: what its curve is at any irradiance and cell temperature.
 *
 * @param lightAmperes light current at 1000 W/m² and 25 °C
 * @param lightAmperesPerKelvin how it goes with temperature
 * @param openCircuitVolts open-circuit voltage at 1000 W/m² and 25 °C
 * @param openCircuitVoltsPerKelvin how it goes with temperature
 * @param idealityVolts modified ideality a at 25 °C
 * @param idealityExponent power of the absolute temperature with which it goes
 * @param seriesOhms from the junction to the terminals
 * @param shuntSiemens across the junction at 1000 W/m²
 */
@RecordBuilder
public record DiodeKernel(
        double lightAmperes,
        double lightAmperesPerKelvin,
        double openCircuitVolts,
        double openCircuitVoltsPerKelvin,
        double idealityVolts,
        double idealityExponent,
        double seriesOhms,
        double shuntSiemens) {
    /** Standard test conditions: 25 °C. */
    public static final double REFERENCE_CELSIUS = 25;

    /** Standard test conditions: 1000 W/m². */
    public static final double REFERENCE_WATTS_PER_SQUARE_METRE = 1000;

    /** 0 °C in K. */
    public static final double CELSIUS_ZERO_KELVINS = 273.15;

    private static final double REFERENCE_KELVINS = CELSIUS_ZERO_KELVINS + REFERENCE_CELSIUS;

    /** The curve under an irradiance above zero, cells at a temperature. */
    public DiodeCurve at(double wattsPerSquareMetre, double cellCelsius) {
        double sun = wattsPerSquareMetre / REFERENCE_WATTS_PER_SQUARE_METRE;
        double rise = cellCelsius - REFERENCE_CELSIUS;
        double light = lightAmperes + lightAmperesPerKelvin * rise;
        double open = openCircuitVolts + openCircuitVoltsPerKelvin * rise;
        double ideality =
                idealityVolts * Math.pow((CELSIUS_ZERO_KELVINS + cellCelsius) / REFERENCE_KELVINS, idealityExponent);
        double reverse = Math.exp(-open / ideality);
        double openDiode = (light - shuntSiemens * open) / (1 - reverse);
        return new DiodeCurve(
                sun * light, openDiode * reverse, openDiode, open, ideality, seriesOhms, sun * shuntSiemens);
    }

    /** Largest power in W; 0 in the dark. */
    public double maximumPowerWatts(double wattsPerSquareMetre, double cellCelsius) {
        return wattsPerSquareMetre > 0 ? at(wattsPerSquareMetre, cellCelsius).maximumPowerWatts() : 0;
    }

    /** Current in A at a voltage not below zero; 0 in the dark and beyond the open-circuit voltage. */
    public double amperes(double volts, double wattsPerSquareMetre, double cellCelsius) {
        return wattsPerSquareMetre > 0 ? at(wattsPerSquareMetre, cellCelsius).amperes(volts) : 0;
    }
}
