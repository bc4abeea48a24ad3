package org.daybank.core.inverter;

import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;
import org.jspecify.annotations.Nullable;

/**
 * What the fullest line of a service carries when nobody has said which load is on which line: all loads balanced but for the
 * largest single one, which is on one line. Where not even that one is known, the running loads are balanced and everything
 * that starts is on one line.
 */
final class FullestLine {
    private FullestLine() {}

    /** The peak on the fullest of so many lines; that of the service itself on a single line. */
    static PeakLoad of(PeakLoad total, @Nullable PeakLoad largest, int lines) {
        if (lines == 1) {
            return total;
        }
        Vector running = Vector.of(total.running(), total.runningApparent());
        Vector start = Vector.of(total.surge(), total.surgeApparent());
        Vector runningAlone = largest == null ? Vector.ZERO : Vector.of(largest.running(), largest.runningApparent());
        Vector startAlone = largest == null ? start.less(running) : Vector.of(largest.surge(), largest.surgeApparent());
        Vector runningLine = running.less(runningAlone).shared(lines).plus(runningAlone);
        Vector startLine = start.less(startAlone).shared(lines).plus(startAlone);
        return new PeakLoad(runningLine.power(), runningLine.apparent(), startLine.power(), startLine.apparent());
    }

    /** Real and reactive power, which add up each for itself; loads draw reactive power and give none. */
    private record Vector(double watts, double vars) {
        static final Vector ZERO = new Vector(0, 0);

        static Vector of(Power power, ApparentPower apparent) {
            double watts = power.watts();
            double voltAmperes = Math.max(watts, apparent.voltAmperes());
            return new Vector(watts, Math.sqrt((voltAmperes - watts) * (voltAmperes + watts)));
        }

        Vector less(Vector other) {
            return new Vector(Math.max(0, watts - other.watts), Math.max(0, vars - other.vars));
        }

        Vector shared(int lines) {
            return new Vector(watts / lines, vars / lines);
        }

        Vector plus(Vector other) {
            return new Vector(watts + other.watts, vars + other.vars);
        }

        Power power() {
            return Power.watts(watts);
        }

        ApparentPower apparent() {
            return ApparentPower.voltAmperes(Math.hypot(watts, vars));
        }
    }
}
