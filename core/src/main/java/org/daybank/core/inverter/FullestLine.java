package org.daybank.core.inverter;

import org.daybank.core.load.PeakLoad;
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
        ComplexPower running = ComplexPower.of(total.running(), total.runningApparent());
        ComplexPower start = ComplexPower.of(total.surge(), total.surgeApparent());
        ComplexPower runningAlone =
                largest == null ? ComplexPower.ZERO : ComplexPower.of(largest.running(), largest.runningApparent());
        ComplexPower startAlone =
                largest == null ? start.less(running) : ComplexPower.of(largest.surge(), largest.surgeApparent());
        ComplexPower runningLine = running.less(runningAlone).shared(lines).plus(runningAlone);
        ComplexPower startLine = start.less(startAlone).shared(lines).plus(startAlone);
        return new PeakLoad(runningLine.power(), runningLine.apparent(), startLine.power(), startLine.apparent());
    }
}
