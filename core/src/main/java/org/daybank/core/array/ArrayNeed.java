package org.daybank.core.array;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Validation;

/**
 * What is asked of an array.
 *
 * @param dailyEnergy energy that leaves the bank on the mean day of each month: twelve values, or one for every month
 * @param afterDark share of it that is drawn while it is dark and so passes through the battery; twelve values or one
 * @param chemistry of the bank
 */
@RecordBuilder
public record ArrayNeed(
        List<Energy> dailyEnergy,

        @Assumed(source = "half of the energy is drawn after dark")
        List<Ratio> afterDark,

        @Assumed(value = "lithiumIronPhosphate", source = "no chemistry stated")
        Chemistry chemistry)
        implements ArrayNeedBuilder.With {
    private static final int MONTHS = 12;

    /**
     * Resolves what was left out; one value stands for twelve.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right
     */
    public ArrayNeed {
        dailyEnergy = everyMonth(dailyEnergy);
        afterDark = afterDark == null ? Collections.nCopies(MONTHS, Ratio.of(0.5)) : everyMonth(afterDark);
        chemistry = chemistry == null ? Chemistry.LITHIUM_IRON_PHOSPHATE : chemistry;
        new Validation()
                .required("dailyEnergy", dailyEnergy)
                .length("dailyEnergy", dailyEnergy, MONTHS)
                .eachWithin("dailyEnergy", dailyEnergy, Energy.ZERO, Energy.kilowattHours(100_000))
                .length("afterDark", afterDark, MONTHS)
                .eachWithin("afterDark", afterDark, Ratio.ZERO, Ratio.ONE)
                .done();
    }

    private static <T> List<T> everyMonth(List<T> values) {
        return values != null && values.size() == 1 ? Collections.nCopies(MONTHS, values.get(0)) : values;
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
