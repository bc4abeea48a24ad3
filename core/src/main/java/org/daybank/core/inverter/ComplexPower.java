package org.daybank.core.inverter;

import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;

/**
 * Real and reactive power, which add up each for itself; loads draw reactive power and give none.
 *
 * @param watts real power
 * @param vars reactive power
 */
record ComplexPower(double watts, double vars) {
    static final ComplexPower ZERO = new ComplexPower(0, 0);

    static ComplexPower of(Power power, ApparentPower apparent) {
        double watts = power.watts();
        double voltAmperes = Math.max(watts, apparent.voltAmperes());
        return new ComplexPower(watts, Math.sqrt((voltAmperes - watts) * (voltAmperes + watts)));
    }

    ComplexPower less(ComplexPower other) {
        return new ComplexPower(Math.max(0, watts - other.watts), Math.max(0, vars - other.vars));
    }

    ComplexPower times(double factor) {
        return new ComplexPower(watts * factor, vars * factor);
    }

    ComplexPower shared(int lines) {
        return new ComplexPower(watts / lines, vars / lines);
    }

    ComplexPower plus(ComplexPower other) {
        return new ComplexPower(watts + other.watts, vars + other.vars);
    }

    Power power() {
        return Power.watts(watts);
    }

    ApparentPower apparent() {
        return ApparentPower.voltAmperes(Math.hypot(watts, vars));
    }
}
