package org.daybank.core.wiring;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.Optional;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;

/**
 * One choice of conductors for a circuit, and what comes of it.
 *
 * @param size of each conductor
 * @param parallel conductors side by side for each pole or line
 * @param crossSection of those together
 * @param groupingFactor share of the ampacity that is left among the cables that lie together
 * @param terminalAmpacity of those in parallel, at the terminals, uncorrected
 * @param correctedAmpacity of those in parallel, by their insulation, corrected for ambient and grouping
 * @param ampacity the lesser of the two, and no more than the device that small conductors may have (NFPA 70 240.4(D)): what
 *     an overcurrent device may ask of them
 * @param temperature of the metal at the operating current
 * @param resistance of the run one way at that temperature
 * @param drop at the operating current
 * @param dropShare of the operating voltage
 * @param loss at the operating current
 * @param yearlyLoss of the energy that flows in a year; absent when that is not known
 * @param metalMass of all conductors of the circuit but the earthing conductor
 * @param metalCost of that mass
 */
public record ConductorRun(
        ConductorSize size,
        int parallel,
        CrossSection crossSection,
        Ratio groupingFactor,
        Current terminalAmpacity,
        Current correctedAmpacity,
        Current ampacity,
        Temperature temperature,
        Resistance resistance,
        Voltage drop,
        Ratio dropShare,
        Power loss,
        Optional<Energy> yearlyLoss,
        Mass metalMass,
        Money metalCost) {

    /** What comes of a conductor in a circuit. */
    static ConductorRun of(
            Conductor conductor,
            int parallel,
            Ratio ambientFactor,
            Ratio groupingFactor,
            Circuit circuit,
            WiringPolicy policy) {
        Current corrected =
                conductor.ofInsulation().times(parallel).times(ambientFactor).times(groupingFactor);
        Current atTerminals = conductor.atTerminals().times(parallel);
        Temperature temperature = temperature(circuit, policy, corrected);
        Resistance resistance = policy.metal()
                .at(temperature, conductor.each100Metres())
                .times(circuit.length().metres() / 100 / parallel);
        Voltage drop = circuit.operatingCurrent().times(resistance).times(circuit.dropMultiple());
        Voltage runningDrop =
                circuit.resolved().runningCurrent().times(resistance).times(circuit.dropMultiple());
        CrossSection area = conductor.size().crossSection().times(parallel);
        Mass mass = policy.metal().mass(circuit.length(), area).times(circuit.conductors());
        return new ConductorRun(
                conductor.size(),
                parallel,
                area,
                groupingFactor,
                atTerminals,
                corrected,
                least(atTerminals, corrected, conductor.mostDevice()),
                temperature,
                resistance,
                drop,
                Ratio.of(drop.dividedBy(circuit.operatingVoltage())),
                circuit.operatingCurrent()
                        .times(circuit.operatingCurrent().times(resistance))
                        .times(circuit.loadedConductors()),
                Optional.ofNullable(circuit.yearlyEnergy())
                        .map(energy -> energy.times(runningDrop.dividedBy(circuit.operatingVoltage()))),
                mass,
                policy.pricePerKilogram().times(BigDecimal.valueOf(mass.kilograms())));
    }

    private static Current least(Current... currents) {
        return Collections.min(Arrays.asList(currents));
    }

    /** {@code T = T_a + (T_insulation − T_a) · (I / I_z)²}: heat goes with the square of the current. */
    private static Temperature temperature(Circuit circuit, WiringPolicy policy, Current corrected) {
        Temperature air = CircuitSizing.air(circuit, policy);
        double load = Math.min(1, circuit.operatingCurrent().dividedBy(corrected));
        TemperatureDifference rise = policy.insulationTemperature().minus(air).times(load * load);
        return air.plus(rise);
    }
}
