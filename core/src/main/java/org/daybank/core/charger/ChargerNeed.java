package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The requirements on a charge controller, whichever module feeds it. What was left out stays null; {@link #resolved()}
 * returns what it follows to.
 *
 * @param nominalVoltage nominal voltage of the DC system: 12, 24 or 48 V
 * @param chemistry of the bank
 * @param chargingVoltage absorption voltage of the bank at 25 °C
 * @param lowestVoltage of the bus, at which loads are switched off
 * @param hottestAir air around the controller
 * @param maximumChargeCurrent largest current that the bank accepts
 * @param dcLoadCurrent current of the DC loads while they run; the load output must carry it where one is required
 * @param functions required besides charging
 */
@RecordBuilder
public record ChargerNeed(
        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,
        Chemistry chemistry,

        @Bounds(minimum = "10 V", maximum = "75 V")
        @Assumed(source = "absorption voltage typical of the chemistry")
        @Nullable
        Voltage chargingVoltage,

        @Bounds(minimum = "1 V", maximum = "75 V")
        @Assumed(source = "disconnect voltage typical of the chemistry")
        @Nullable
        Voltage lowestVoltage,

        @Bounds(minimum = "-40 Cel", maximum = "90 Cel") @Assumed(value = "40 Cel", source = "no temperature stated")
        Temperature hottestAir,

        @Bounds(exclusiveMinimum = "0 A", maximum = "1000 kA") @Assumed(value = "100 kA", source = "no limit stated")
        Current maximumChargeCurrent,

        @Bounds(minimum = "0 A", maximum = "5000 kA") @Assumed(value = "0 A", source = "no DC loads stated")
        Current dcLoadCurrent,

        @Bounds(maximumItems = 8) @Assumed(source = "none required")
        List<ControllerFunction> functions)
        implements ChargerNeedBuilder.With, Resolvable<ChargerNeed.Resolved> {
    /** Largest charging voltage of a bank over its nominal voltage; 1.2 to 1.35 in practice. */
    private static final double LARGEST_CHARGING_SHARE = 1.6;

    /**
     * The components whose defaults follow from others.
     *
     * @param chargingVoltage as given, or the absorption voltage of the chemistry
     * @param lowestVoltage as given, or the disconnect voltage of the chemistry
     */
    public record Resolved(Voltage chargingVoltage, Voltage lowestVoltage) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent
     */
    public ChargerNeed {
        hottestAir = Defaults.otherwise(hottestAir, ChargerNeed.class, "hottestAir");
        maximumChargeCurrent = Defaults.otherwise(maximumChargeCurrent, ChargerNeed.class, "maximumChargeCurrent");
        dcLoadCurrent = Defaults.otherwise(dcLoadCurrent, ChargerNeed.class, "dcLoadCurrent");
        functions = functions == null ? List.of() : functions;
        Validation.of(
                        ChargerNeed.class,
                        nominalVoltage,
                        chemistry,
                        chargingVoltage,
                        lowestVoltage,
                        hottestAir,
                        maximumChargeCurrent,
                        dcLoadCurrent,
                        functions)
                .notBelow("chargingVoltage", chargingVoltage, "nominalVoltage", nominalVoltage)
                .that(
                        chargingVoltage == null
                                || nominalVoltage == null
                                || chargingVoltage.compareTo(nominalVoltage.times(LARGEST_CHARGING_SHARE)) <= 0,
                        "chargingVoltage",
                        ProblemCode.INCONSISTENT,
                        () -> "chargingVoltage must be at most %s times nominalVoltage %s, but was %s."
                                .formatted(LARGEST_CHARGING_SHARE, nominalVoltage, chargingVoltage))
                .done();
        functions = List.copyOf(functions);
        Resolved voltages = resolved(nominalVoltage, chemistry, chargingVoltage, lowestVoltage);
        new Validation()
                .exceeds("chargingVoltage", voltages.chargingVoltage(), "lowestVoltage", voltages.lowestVoltage())
                .done();
    }

    @Override
    public Resolved resolved() {
        return resolved(nominalVoltage, chemistry, chargingVoltage, lowestVoltage);
    }

    private static Resolved resolved(
            Voltage nominal, Chemistry chemistry, @Nullable Voltage charging, @Nullable Voltage lowest) {
        int cells = chemistry.cellsFor(nominal);
        return new Resolved(
                charging == null ? chemistry.traits().absorption().times(cells) : charging,
                lowest == null ? chemistry.traits().disconnect().times(cells) : lowest);
    }

    /** Returns the nominal voltage of the bank by cells. */
    public Voltage trueNominal() {
        return chemistry.trueNominal(nominalVoltage);
    }
}
