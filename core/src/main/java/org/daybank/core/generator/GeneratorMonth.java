package org.daybank.core.generator;

import java.time.Month;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;

/**
 * What an engine does in a month.
 *
 * @param month which
 * @param shortfall what the sun leaves missing at the bank
 * @param hours that it runs
 * @param made at its own terminals
 * @param fuel that it burns
 */
public record GeneratorMonth(Month month, Energy shortfall, TimeSpan hours, Energy made, Volume fuel) {
    /** Share of the hours that a month surely has. */
    double shareOfMonth() {
        return hours.dividedBy(TimeSpan.days(month.minLength()));
    }
}
