package org.daybank.core.wiring;

import java.util.Objects;
import org.daybank.core.quantity.Current;

/**
 * Whether a string needs a fuse: when the others could feed more into it backwards than its modules stand.
 *
 * @param strings in parallel
 * @param reverseCurrent {@code (N_p − 1) · 1.25 · I_sc}, plus what bank or inverter feed back
 * @param seriesFuse what its modules stand
 * @param needed whether each string needs a fuse
 */
public record StringFusing(int strings, Current reverseCurrent, Current seriesFuse, boolean needed) {
    /** Sun brighter than standard: IEC 62548-1, NFPA 70 690.8(A). */
    private static final double BRIGHT_SUN = 1.25;

    /** Judges the string of a circuit. */
    static StringFusing of(Circuit circuit) {
        ParallelStrings parallel = Objects.requireNonNull(circuit.strings());
        Current reverse = circuit.resolved()
                .designCurrent()
                .times(BRIGHT_SUN * (parallel.count() - 1))
                .plus(parallel.backfeed());
        return new StringFusing(
                parallel.count(),
                reverse,
                parallel.seriesFuse(),
                parallel.count() > 1 && reverse.compareTo(parallel.seriesFuse()) > 0);
    }
}
