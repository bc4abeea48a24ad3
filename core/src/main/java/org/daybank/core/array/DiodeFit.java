package org.daybank.core.array;

import java.util.List;
import java.util.function.DoublePredicate;
import org.daybank.core.array.kernel.DiodeKernel;
import org.daybank.core.array.kernel.DiodeKernelBuilder;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;

/**
 * Finds the single-diode curve of a data sheet.
 *
 * <p>For a given ideality the three points of the sheet are three linear equations in light current, saturation current and
 * shunt conductance; the series resistance follows from the fourth condition, that the power is flat at its maximum. The
 * ideality itself comes from the coefficient of the open-circuit voltage and the band gap of silicon (De Soto et al. 2006),
 * unless the knee of the sheet is sharper than that: then the softest knee is taken that leaves both resistances positive.
 */
final class DiodeFit {
    /** Boltzmann's constant over the elementary charge in V/K (SI of 2019). */
    static final double BOLTZMANN = 8.617333262e-5;

    /** Band gap of silicon at 25 °C in eV (De Soto et al. 2006). */
    private static final double BAND_GAP = 1.121;

    /** Relative change of the band gap for each kelvin (De Soto et al. 2006). */
    private static final double BAND_GAP_PER_KELVIN = -0.0002677;

    /** The power coefficient is met between 0 °C and 50 °C, this far to both sides of 25 °C. */
    private static final double RISE = 25;

    /** Ideality factor of one cell below which no knee is believed. */
    private static final double LEAST_IDEALITY_FACTOR = 0.3;

    /** Bounds on the power of the absolute temperature with which the ideality goes: 1 in theory. */
    private static final double LEAST_EXPONENT = -4;

    private static final double MOST_EXPONENT = 9;

    /** Shunt conductance that no measurement tells from none, as a share of I_sc / V_oc. */
    private static final double NO_SHUNT = 1e-5;

    /** Share of the light current that the shunt may take at open circuit: beyond it heat and cold change what no diode does. */
    private static final double MOST_SHUNT = 0.4;

    /** Halvings of an interval until it cannot be told from a point. */
    private static final int HALVINGS = 50;

    private final PvModule module;
    private final double voc;
    private final double isc;
    private final double vmp;
    private final double imp;

    private DiodeFit(PvModule module) {
        this.module = module;
        this.voc = module.openCircuitVoltage().volts();
        this.isc = module.shortCircuitCurrent().amperes();
        this.vmp = module.maximumPowerVoltage().volts();
        this.imp = module.maximumPowerCurrent().amperes();
    }

    /**
     * The fitted module.
     *
     * @throws InvalidInput when no curve runs through the three points, or the coefficients do not go together
     */
    static DiodeKernel of(PvModule module) {
        DiodeFit fit = new DiodeFit(module);
        return fit.meetPowerCoefficient(fit.meetPoints());
    }

    /**
     * A curve through the three points.
     *
     * @param openDiode current of the diode at V_oc, in A
     * @param slopeExcess how much more steeply than power-flat the current falls at the maximum power point, relative
     */
    private record Trial(
            double idealityVolts, double seriesOhms, double openDiode, double shuntSiemens, double slopeExcess) {}

    private Trial meetPoints() {
        double theory = theoreticalIdeality();
        Trial trial = flatAtMaximumPower(theory);
        double shuntAmperes = trial.shuntSiemens() * voc;
        if (shuntAmperes > MOST_SHUNT * (trial.openDiode() + shuntAmperes)) {
            throw refuse(
                    "maximumPowerVoltage",
                    ("the data sheet of %s is of no cell but nearly of a resistor: %s and %s are %s of openCircuitVoltage ·"
                                    + " shortCircuitCurrent, where cells reach 50 %% to 86 %%; check maximumPowerVoltage and"
                                    + " maximumPowerCurrent")
                            .formatted(
                                    module.model(),
                                    module.maximumPowerVoltage(),
                                    module.maximumPowerCurrent(),
                                    Ratio.of(vmp * imp / (voc * isc)).rounded()));
        }
        if (isSound(trial)) {
            return trial;
        }
        double least = LEAST_IDEALITY_FACTOR * module.cellsInSeries() * BOLTZMANN * kelvins(0);
        if (!isSound(flatAtMaximumPower(least))) {
            throw refuse(
                    "maximumPowerVoltage",
                    ("no curve of a cell runs through the data sheet of %s: from %s and %s it"
                                    + " would have to bend more sharply than any does to meet %s and %s; check maximumPowerVoltage"
                                    + " and maximumPowerCurrent")
                            .formatted(
                                    module.model(),
                                    module.maximumPowerVoltage(),
                                    module.maximumPowerCurrent(),
                                    module.openCircuitVoltage(),
                                    module.shortCircuitCurrent()));
        }
        return flatAtMaximumPower(last(least, theory, ideality -> isSound(flatAtMaximumPower(ideality))));
    }

    /** From Voc = a·ln(IL/I0) at 25 °C and 50 °C, with I0 ∝ T³·exp(−Eg/kT) and a ∝ T (De Soto et al. 2006, eqs. 7 to 10). */
    private double theoreticalIdeality() {
        double cold = kelvins(0);
        double warm = kelvins(RISE);
        double saturationGrowth = 3 * Math.log(warm / cold)
                + BAND_GAP / (BOLTZMANN * cold)
                - BAND_GAP * (1 + BAND_GAP_PER_KELVIN * RISE) / (BOLTZMANN * warm);
        double lightGrowth =
                Math.log(1 + module.shortCircuitCurrentCoefficient().perKelvin() * RISE);
        double open = 1 + module.openCircuitVoltageCoefficient().perKelvin() * RISE;
        return voc * (1 - open * cold / warm) / (saturationGrowth - lightGrowth);
    }

    /** The series resistance at which the power is flat at the maximum power point; the slope grows with it throughout. */
    private Trial flatAtMaximumPower(double idealityVolts) {
        double most = (voc - vmp) / imp;
        return trial(
                idealityVolts, last(0, most, ohms -> trial(idealityVolts, ohms).slopeExcess() < 0));
    }

    private Trial trial(double idealityVolts, double seriesOhms) {
        double atShort = isc * seriesOhms;
        double atMaximum = vmp + imp * seriesOhms;
        double shortDiode = Math.exp((atShort - voc) / idealityVolts);
        double maximumDiode = Math.exp((atMaximum - voc) / idealityVolts);
        // the equation of open circuit taken from the other two: I = D·(1 − e^((x − Voc)/a)) + G·(Voc − x)
        double determinant = (1 - shortDiode) * (voc - atMaximum) - (1 - maximumDiode) * (voc - atShort);
        double openDiode = (isc * (voc - atMaximum) - imp * (voc - atShort)) / determinant;
        double shuntSiemens = ((1 - shortDiode) * imp - (1 - maximumDiode) * isc) / determinant;
        double conductance = openDiode * maximumDiode / idealityVolts + shuntSiemens;
        return new Trial(
                idealityVolts, seriesOhms, openDiode, shuntSiemens, conductance * (vmp - imp * seriesOhms) / imp - 1);
    }

    private boolean isSound(Trial trial) {
        return trial(trial.idealityVolts(), 0).slopeExcess() <= 0
                && trial.openDiode() > 0
                && trial.shuntSiemens() >= NO_SHUNT * isc / voc;
    }

    /** Lets the ideality go with temperature so that the power does what the sheet says. */
    private DiodeKernel meetPowerCoefficient(Trial trial) {
        double target = module.powerCoefficient().perKelvin();
        double mildest = powerCoefficient(trial, LEAST_EXPONENT);
        double steepest = powerCoefficient(trial, MOST_EXPONENT);
        if (target > mildest || target < steepest) {
            throw refuse(
                    "powerCoefficient",
                    ("powerCoefficient %s does not go with openCircuitVoltageCoefficient %s and"
                                    + " shortCircuitCurrentCoefficient %s: with them it can be from %s to %s")
                            .formatted(
                                    module.powerCoefficient(),
                                    module.openCircuitVoltageCoefficient(),
                                    module.shortCircuitCurrentCoefficient(),
                                    TemperatureCoefficient.perKelvin(steepest).rounded(3),
                                    TemperatureCoefficient.perKelvin(mildest).rounded(3)));
        }
        return kernel(
                trial, last(LEAST_EXPONENT, MOST_EXPONENT, exponent -> powerCoefficient(trial, exponent) > target));
    }

    private double powerCoefficient(Trial trial, double exponent) {
        DiodeKernel kernel = kernel(trial, exponent);
        return (standardSunWatts(kernel, RISE) - standardSunWatts(kernel, -RISE)) / (2 * RISE * vmp * imp);
    }

    private static double standardSunWatts(DiodeKernel kernel, double rise) {
        return kernel.maximumPowerWatts(
                DiodeKernel.REFERENCE_WATTS_PER_SQUARE_METRE, DiodeKernel.REFERENCE_CELSIUS + rise);
    }

    private DiodeKernel kernel(Trial trial, double exponent) {
        double reverse = Math.exp(-voc / trial.idealityVolts());
        return DiodeKernelBuilder.builder()
                .lightAmperes(trial.openDiode() * (1 - reverse) + trial.shuntSiemens() * voc)
                .lightAmperesPerKelvin(
                        isc * module.shortCircuitCurrentCoefficient().perKelvin())
                .openCircuitVolts(voc)
                .openCircuitVoltsPerKelvin(
                        voc * module.openCircuitVoltageCoefficient().perKelvin())
                .idealityVolts(trial.idealityVolts())
                .idealityExponent(exponent)
                .seriesOhms(trial.seriesOhms())
                .shuntSiemens(trial.shuntSiemens())
                .build();
    }

    private static double kelvins(double rise) {
        return DiodeKernel.CELSIUS_ZERO_KELVINS + DiodeKernel.REFERENCE_CELSIUS + rise;
    }

    /** The last place of an interval where something holds that holds up to some place and not beyond. */
    private static double last(double from, double to, DoublePredicate holds) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static InvalidInput refuse(String field, String message) {
        return new InvalidInput(List.of(new Problem("/" + field, ProblemCode.INCONSISTENT, message)));
    }
}
