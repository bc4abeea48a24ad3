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
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What stands there: the parts of one system, as they were chosen.
 *
 * @param loads what they ask in each hour
 * @param inverter what it draws for what it gives; null when left out
 * @param array modules and the strings on each controller
 * @param controller between array and bank; as many as the array's strings are shared among
 * @param absorption voltage of the bank when it is nearly full; what a controller without tracking holds the array to; null
 *     when left out
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

        @Assumed(source = "one stated efficiency and idle draw") @Nullable
        InverterCurve inverter,

        ArrayLayout array,
        ChargeController controller,

        @Bounds(exclusiveMinimum = "0 V", maximum = "1500 V") @Assumed(source = "typical of the chemistry") @Nullable
        Voltage absorption,

        BankLayout bank,

        @Assumed(source = "the safe guess: an unheated shed")
        BankHousing housing,

        @Bounds(minimum = "0.01", maximum = "1") Ratio depthOfDischarge,
        @Nullable KineticWells wells,
        @Nullable EngineRule engine,
        @Nullable ShorePower shore,
        @Nullable Alternator alternator)
        implements SimulatedSystemBuilder.With, Resolvable<SimulatedSystem.Resolved> {
    /** Multiple of its nominal voltage above which no bank is charged; nickel-cadmium is charged highest, 1.65 V at 1.2 V. */
    private static final double HIGHEST_CHARGING = 1.5;

    /**
     * The components whose defaults follow from others.
     *
     * @param inverter what it draws for what it gives
     * @param absorption voltage of the bank when it is nearly full
     */
    public record Resolved(InverterCurve inverter, Voltage absorption) {}

    /**
     * Takes the standard housing where none is given.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent
     */
    public SimulatedSystem {
        housing = housing == null ? BankHousing.standard() : housing;
        Voltage nominal = bank == null ? null : bank.battery().trueNominal().times(bank.series());
        Validation.of(
                        SimulatedSystem.class,
                        loads,
                        inverter,
                        array,
                        controller,
                        absorption,
                        bank,
                        housing,
                        depthOfDischarge,
                        wells,
                        engine,
                        shore,
                        alternator)
                .that(
                        bank == null || (bank.series() >= 1 && bank.parallel() >= 1),
                        "bank",
                        ProblemCode.INCONSISTENT,
                        () -> "bank must have at least one battery in series and one string, but had %s and %s."
                                .formatted(bank.series(), bank.parallel()))
                .notBelow("absorption", absorption, "the bank's nominal voltage", nominal)
                .notAbove(
                        "absorption",
                        absorption,
                        HIGHEST_CHARGING + " times the bank's nominal voltage,",
                        nominal == null ? null : nominal.times(HIGHEST_CHARGING))
                .done();
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                inverter != null ? inverter : loads.stated(), absorption != null ? absorption : typicalAbsorption());
    }

    private Voltage typicalAbsorption() {
        return bank.battery()
                .chemistry()
                .traits()
                .absorption()
                .times(bank.battery().cells() * bank.series());
    }
}
