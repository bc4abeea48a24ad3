package org.daybank.core.wiring;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Voltage;

/** Circuits to try things out with. */
final class Circuits {
    private Circuits() {}

    /** Two strings of three modules, Isc 13.9 A each, and the run from them to the controller. */
    static Circuit array(double metres) {
        return CircuitBuilder.builder()
                .name("array to controller")
                .kind(CircuitKind.ARRAY_TO_CONTROLLER)
                .operatingVoltage(Voltage.volts(93.6))
                .operatingCurrent(Current.amperes(26.28))
                .designCurrent(Current.amperes(27.8))
                .highestVoltage(Voltage.volts(127.6))
                .length(Length.metres(metres))
                .build();
    }

    /** One of so many strings of three modules whose data sheet allows fuses of 25 A. */
    static Circuit string(int strings) {
        return CircuitBuilder.builder()
                .name("string")
                .kind(CircuitKind.STRING)
                .operatingVoltage(Voltage.volts(93.6))
                .operatingCurrent(Current.amperes(13.14))
                .designCurrent(Current.amperes(13.9))
                .highestVoltage(Voltage.volts(127.6))
                .length(Length.metres(4))
                .strings(new ParallelStrings(strings, Current.amperes(25), Current.ZERO))
                .build();
    }

    /** A circuit other than of an array, that runs at what it is rated for. */
    static Circuit supply(CircuitKind kind, double volts, double amperes, double metres) {
        return CircuitBuilder.builder()
                .name("supply")
                .kind(kind)
                .operatingVoltage(Voltage.volts(volts))
                .operatingCurrent(Current.amperes(amperes))
                .length(Length.metres(metres))
                .build();
    }
}
