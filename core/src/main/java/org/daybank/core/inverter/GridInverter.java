package org.daybank.core.inverter;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;

/** What the inverters that feed an array into the grid, without a bank, have in common. */
public sealed interface GridInverter permits StringInverter, Microinverter {
    /** Its code. */
    String model();

    /** Continuous AC power. */
    Power power();

    /** The service that one unit feeds. */
    Phases phases();

    /** The service's voltage from line to neutral that it is made for. */
    Voltage outputVoltage();

    /** Frequencies that it can follow. */
    List<Frequency> frequencies();

    /** Open-circuit voltage that destroys it when exceeded. */
    Voltage maximumInputVoltage();

    /** Lower edge of the voltages between which it finds the best point of what is on an input. */
    Voltage trackingLowest();

    /** Upper edge of these voltages. */
    Voltage trackingHighest();

    /** Weighted over the loads of a year. */
    Ratio efficiency();

    /** Hottest air at which it gives its continuous power. */
    Temperature fullPowerUpTo();

    /** Change of its power for each kelvin above; zero or negative. */
    TemperatureCoefficient derating();

    /** Price of one. */
    Money price();

    /** What it gives in air this hot. */
    default Power powerIn(Temperature air) {
        TemperatureDifference above =
                air.compareTo(fullPowerUpTo()) > 0 ? air.minus(fullPowerUpTo()) : TemperatureDifference.ZERO;
        return power().times(Math.max(0, 1 + derating().times(above).fraction()));
    }

    /** What it feeds into each of its lines at its continuous power: {@code P / (n · V)} from line to neutral. */
    default Current lineCurrent(Voltage lineToNeutral) {
        return power().dividedBy(phases().lines()).dividedBy(lineToNeutral);
    }
}
