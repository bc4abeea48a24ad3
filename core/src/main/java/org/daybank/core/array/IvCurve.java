package org.daybank.core.array;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.kernel.DiodeCurve;
import org.daybank.core.array.kernel.DiodeKernel;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Validation;

/**
 * Current against voltage of one module, under one irradiance and at one cell temperature.
 *
 * @param diode the module's circuit
 * @param irradiance on the module
 * @param cell temperature of the cells
 * @param shortCircuitCurrent where the voltage is zero
 * @param openCircuitVoltage where the current is zero; zero in the dark
 * @param maximumPowerVoltage where the power is largest
 * @param maximumPowerCurrent where the power is largest
 * @param maximumPower the largest power
 */
public record IvCurve(
        SingleDiode diode,
        Irradiance irradiance,
        Temperature cell,
        Current shortCircuitCurrent,
        Voltage openCircuitVoltage,
        Voltage maximumPowerVoltage,
        Current maximumPowerCurrent,
        Power maximumPower) {

    /**
     * One point of the curve.
     *
     * @param voltage at the terminals
     * @param current through them
     */
    public record Point(Voltage voltage, Current current) {
        /** Voltage times current. */
        public Power power() {
            return voltage.times(current);
        }
    }

    static IvCurve of(SingleDiode diode, Irradiance irradiance, Temperature cell) {
        if (irradiance.compareTo(Irradiance.ZERO) == 0) {
            return new IvCurve(
                    diode, irradiance, cell, Current.ZERO, Voltage.ZERO, Voltage.ZERO, Current.ZERO, Power.ZERO);
        }
        DiodeCurve curve = diode.kernel().at(irradiance.wattsPerSquareMetre(), cell.celsius());
        double junctionVolts = curve.maximumPowerJunctionVolts();
        double amperes = curve.junctionAmperes(junctionVolts);
        Voltage voltage = Voltage.volts(junctionVolts - amperes * curve.seriesOhms());
        Current current = Current.amperes(amperes);
        return new IvCurve(
                diode,
                irradiance,
                cell,
                Current.amperes(curve.amperes(0)),
                Voltage.volts(curve.openCircuitVolts()),
                voltage,
                current,
                voltage.times(current));
    }

    /**
     * The current at a voltage: what a controller without tracking draws when the bank holds the array there. Zero beyond
     * the open-circuit voltage, where controllers let nothing flow back.
     *
     * @param voltage of the module's terminals, from zero
     * @throws org.daybank.core.schema.InvalidInput when the voltage is negative
     */
    public Current current(Voltage voltage) {
        new Validation().atLeast("voltage", voltage, Voltage.ZERO).done();
        DiodeKernel kernel = diode.kernel();
        return Current.amperes(kernel.amperes(voltage.volts(), irradiance.wattsPerSquareMetre(), cell.celsius()));
    }

    /**
     * The curve as points from short to open circuit at equal steps of voltage.
     *
     * @param count how many, at least 2
     * @throws org.daybank.core.schema.InvalidInput when fewer are asked for
     */
    public List<Point> points(int count) {
        new Validation().atLeast("count", count, 2).done();
        return IntStream.range(0, count)
                .mapToObj(i -> openCircuitVoltage.times((double) i / (count - 1)))
                .map(voltage -> new Point(voltage, current(voltage)))
                .toList();
    }
}
