package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of an array.
 *
 * @param dailyEnergy energy that leaves the bank on the mean day of each month: twelve values, or one for every month
 * @param afterDark share of it that is drawn while it is dark and so passes through the battery; twelve values or one
 * @param chemistry of the bank
 */
@RecordBuilder
public record ArrayNeed(
        @Bounds(minimum = "0 kWh", maximum = "100000 kWh", minimumItems = 1, maximumItems = 12)
        List<Energy> dailyEnergy,

        @Bounds(minimum = "0", maximum = "1", minimumItems = 1, maximumItems = 12)
        @Assumed(source = "half of the energy is drawn after dark")
        List<Ratio> afterDark,

        @Assumed(value = "lithiumIronPhosphate", source = "no chemistry stated")
        Chemistry chemistry)
        implements ArrayNeedBuilder.With {
    private static final int MONTHS = 12;

    /**
     * Validates the components; one value becomes twelve.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public ArrayNeed {
        afterDark = afterDark == null ? List.of(Ratio.of(0.5)) : afterDark;
        chemistry = Defaults.otherwise(chemistry, ArrayNeed.class, "chemistry");
        validateMonths(
                        validateMonths(
                                Validation.of(ArrayNeed.class, dailyEnergy, afterDark, chemistry),
                                "dailyEnergy",
                                dailyEnergy),
                        "afterDark",
                        afterDark)
                .done();
        dailyEnergy = everyMonth(dailyEnergy);
        afterDark = everyMonth(afterDark);
    }

    private static Validation validateMonths(Validation validation, String field, @Nullable List<?> values) {
        return validation.that(
                values == null || values.size() <= 1 || values.size() >= MONTHS,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must have 1 or %s values, but has %s."
                        .formatted(field, MONTHS, values == null ? 0 : values.size()));
    }

    private static <T> List<T> everyMonth(List<T> values) {
        return values.size() == 1 ? Collections.nCopies(MONTHS, values.get(0)) : List.copyOf(values);
    }

    /**
     * What must reach the bank in a month: the share drawn after dark passes through the battery and loses there, energy on
     * the tracking path and charge on the direct path.
     */
    public Energy atBank(int month, ChargePath path) {
        Ratio efficiency = batteryEfficiency(path);
        double share = afterDark.get(month).fraction();
        return dailyEnergy.get(month).times(1 - share + share / efficiency.fraction());
    }

    /** What the battery gives back: of the energy on the tracking path, of the charge on the direct path. */
    Ratio batteryEfficiency(ChargePath path) {
        return path == ChargePath.TRACKING
                ? chemistry.traits().energyEfficiency()
                : chemistry.traits().coulombicEfficiency();
    }
}
