package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with about charging.
 *
 * @param leadAcidCompensation change of the charging voltage of a lead-acid cell for each kelvin over 25 °C
 * @param lithiumFloat whether a full lithium bank is held at its float voltage; else charging rests until its voltage has fallen
 * @param coldestCompensated temperature below which the voltage is not raised further
 * @param warmestCompensated temperature above which it is not lowered further
 * @param equalisationInterval time from one equalising charge to the next; vented cells only
 * @param equalisationTime how long an equalising charge lasts
 */
@RecordBuilder
public record ChargePolicy(
        @Bounds(minimum = "-8 mV/K", maximum = "0 mV/K", sensible = "−3…−5 mV/K")
        @Assumed(value = "-5 mV/K", source = "manufacturers' charging instructions; the data sheet wins")
        VoltageCoefficient leadAcidCompensation,

        @Assumed(value = "false", source = "full cells age faster under voltage; only where the data sheet asks for it")
        boolean lithiumFloat,

        @Bounds(minimum = "-40 Cel", maximum = "25 Cel")
        @Assumed(value = "-20 Cel", source = "where controllers stop compensating")
        Temperature coldestCompensated,

        @Bounds(minimum = "25 Cel", maximum = "60 Cel")
        @Assumed(value = "50 Cel", source = "where controllers stop compensating")
        Temperature warmestCompensated,

        @Bounds(minimum = "7 d", maximum = "365 d", sensible = "30–90 d")
        @Assumed(
                value = "30 d",
                source = "manufacturers' charging instructions; sooner when the acid of the cells differs in gravity by"
                        + " more than 0.03")
        TimeSpan equalisationInterval,

        @Bounds(minimum = "0.5 h", maximum = "24 h", sensible = "1–4 h")
        @Assumed(value = "2 h", source = "manufacturers' charging instructions; until no cell's gravity rises any more")
        TimeSpan equalisationTime)
        implements ChargePolicyBuilder.With {
    private static final ChargePolicy STANDARD = Defaults.of(ChargePolicy.class);

    /**
     * Validation each value against its range.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent or out of range
     */
    public ChargePolicy {
        Validation.of(
                        ChargePolicy.class,
                        leadAcidCompensation,
                        lithiumFloat,
                        coldestCompensated,
                        warmestCompensated,
                        equalisationInterval,
                        equalisationTime)
                .done();
    }

    /** The cited defaults. */
    public static ChargePolicy standard() {
        return STANDARD;
    }
}
