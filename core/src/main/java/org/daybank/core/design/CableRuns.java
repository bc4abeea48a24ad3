package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Length;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * How long the cables are, one way each; that from the array stands with the array.
 *
 * @param string within the array, from the last module to where strings join
 * @param controllerToBank between charge controller and bank
 * @param bankToInverter between bank and inverter
 * @param acOutput from the inverter to its panel, or to the grid's
 * @param dcLoads from the bank to the loads that run on its voltage
 */
@RecordBuilder
public record CableRuns(
        @Bounds(minimum = "0.1 m", maximum = "1000 m") @Assumed(value = "5 m", source = "a string beside the next")
        Length string,

        @Bounds(minimum = "0.1 m", maximum = "1000 m") @Assumed(value = "2 m", source = "on one wall")
        Length controllerToBank,

        @Bounds(minimum = "0.1 m", maximum = "1000 m") @Assumed(value = "1.5 m", source = "as short as can be")
        Length bankToInverter,

        @Bounds(minimum = "0.1 m", maximum = "5000 m") @Assumed(value = "10 m", source = "a panel in the same building")
        Length acOutput,

        @Bounds(minimum = "0.1 m", maximum = "5000 m") @Assumed(value = "8 m", source = "loads in the same building")
        Length dcLoads)
        implements CableRunsBuilder.With {
    private static final CableRuns STANDARD = Defaults.of(CableRuns.class);

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a length is out of range
     */
    public CableRuns {
        string = Defaults.otherwise(string, CableRuns.class, "string");
        controllerToBank = Defaults.otherwise(controllerToBank, CableRuns.class, "controllerToBank");
        bankToInverter = Defaults.otherwise(bankToInverter, CableRuns.class, "bankToInverter");
        acOutput = Defaults.otherwise(acOutput, CableRuns.class, "acOutput");
        dcLoads = Defaults.otherwise(dcLoads, CableRuns.class, "dcLoads");
        Validation.of(CableRuns.class, string, controllerToBank, bankToInverter, acOutput, dcLoads)
                .done();
    }

    /** All in one building. */
    public static CableRuns standard() {
        return STANDARD;
    }
}
