package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Length;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;

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
        @Assumed(value = "5 m", least = "0.1 m", most = "1000 m", source = "a string beside the next")
        Length string,

        @Assumed(value = "2 m", least = "0.1 m", most = "1000 m", source = "on one wall")
        Length controllerToBank,

        @Assumed(value = "1.5 m", least = "0.1 m", most = "1000 m", source = "as short as can be")
        Length bankToInverter,

        @Assumed(value = "10 m", least = "0.1 m", most = "5000 m", source = "a panel in the same building")
        Length acOutput,

        @Assumed(value = "8 m", least = "0.1 m", most = "5000 m", source = "loads in the same building")
        Length dcLoads)
        implements CableRunsBuilder.With {
    private static final CableRuns STANDARD = Policies.standard(CableRuns.class);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when a length is out of range
     */
    public CableRuns {
        string = Policies.otherwise(string, CableRuns.class, "string");
        controllerToBank = Policies.otherwise(controllerToBank, CableRuns.class, "controllerToBank");
        bankToInverter = Policies.otherwise(bankToInverter, CableRuns.class, "bankToInverter");
        acOutput = Policies.otherwise(acOutput, CableRuns.class, "acOutput");
        dcLoads = Policies.otherwise(dcLoads, CableRuns.class, "dcLoads");
        Policies.check(CableRuns.class, string, controllerToBank, bankToInverter, acOutput, dcLoads);
    }

    /** All in one building. */
    public static CableRuns standard() {
        return STANDARD;
    }
}
