package org.daybank.core.simulation;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What stands there: the parts of one system, as they were chosen.
 *
 * @param loads what they ask in each hour
 * @param inverter what it draws for what it gives; left out, one with a stated efficiency and idle draw
 * @param array modules and the strings on each controller
 * @param controller between array and bank; as many as the array's strings are shared among
 * @param absorption voltage of the bank when it is nearly full; what a controller without tracking holds the array to
 * @param bank batteries in series and parallel
 * @param housing where the bank stands
 * @param depthOfDischarge depth at which loads that are not essential are cut off
 * @param wells how a bank drawn hard seems empty and recovers; absent, it gives all it holds at any rate
 * @param engine that stands by; absent when there is none
 * @param shore AC from outside; absent when there is none
 * @param alternator of a vehicle; absent when there is none
 */
@RecordBuilder
public record SimulatedSystem(
        LoadProfile loads,

        @Assumed(source = "one stated efficiency and idle draw")
        InverterCurve inverter,

        ArrayLayout array,
        ChargeController controller,

        @Assumed(source = "typical of the chemistry") Voltage absorption,

        BankLayout bank,

        @Assumed(source = "the safe guess: an unheated shed")
        BankHousing housing,

        Ratio depthOfDischarge,
        @Nullable KineticWells wells,
        @Nullable EngineRule engine,
        @Nullable ShorePower shore,
        @Nullable Alternator alternator)
        implements SimulatedSystemBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public SimulatedSystem {
        housing = housing == null ? BankHousing.standard() : housing;
        new Validation()
                .required("loads", loads)
                .required("array", array)
                .required("controller", controller)
                .required("bank", bank)
                .required("depthOfDischarge", depthOfDischarge)
                .within("depthOfDischarge", depthOfDischarge, Ratio.of(0.01), Ratio.ONE)
                .done();
        inverter = inverter == null ? loads.stated() : inverter;
        absorption = absorption == null
                ? bank.battery()
                        .chemistry()
                        .traits()
                        .absorption()
                        .times(bank.battery().cells() * bank.series())
                : absorption;
    }
}
