package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Working;

/**
 * The set-points to type into a charger, for a whole bank. The battery's own instructions win.
 *
 * @param facts the bank
 * @param policy what was assumed
 * @param cells in series
 * @param absorption voltage held until the bank is full, at 25 °C
 * @param absorptionTime how long
 * @param floating voltage held afterwards, at 25 °C; absent for lithium unless the policy asks for it: then charging rests
 * @param equalisation voltage of the occasional equalising charge at 25 °C; vented lead-acid only
 * @param equalisationInterval time from one equalising charge to the next; vented lead-acid only
 * @param equalisationTime how long an equalising charge lasts; vented lead-acid only
 * @param disconnect voltage at which loads are switched off
 * @param reconnect voltage at which they come back
 * @param compensation change of the charging voltages of the bank for each kelvin over 25 °C; zero for lithium
 * @param absorptionWhenCold absorption voltage at the coldest bank temperature: the highest the bus sees in an everyday
 *     charge; an equalising charge goes higher still
 * @param absorptionWhenHot absorption voltage at the hottest bank temperature
 * @param chargingFrom coldest cell temperature at which charging is allowed, of the battery where one is chosen; only lithium
 *     has one
 */
@RecordBuilder
public record ChargeSettings(
        @NotRepeated Facts facts,
        @NotRepeated ChargePolicy policy,
        int cells,
        Voltage absorption,
        TimeSpan absorptionTime,
        Optional<Voltage> floating,
        Optional<Voltage> equalisation,
        Optional<TimeSpan> equalisationInterval,
        Optional<TimeSpan> equalisationTime,
        Voltage disconnect,
        Voltage reconnect,
        VoltageCoefficient compensation,
        Voltage absorptionWhenCold,
        Voltage absorptionWhenHot,
        Optional<Temperature> chargingFrom)
        implements ChargeSettingsBuilder.With {
    private static final Temperature REFERENCE = Temperature.celsius(25);

    /**
     * The bank that is to be charged.
     *
     * @param chemistry of its cells
     * @param nominalVoltage what its bus is called: 12, 24 or 48 V
     * @param coldest temperature of the bank
     * @param hottest temperature of the bank
     */
    public record Facts(
            Chemistry chemistry,

            @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

            @Bounds(minimum = "-60 Cel", maximum = "80 Cel") Temperature coldest,

            @Bounds(minimum = "-60 Cel", maximum = "80 Cel") Temperature hottest) {
        /** Validates the components. */
        public Facts {
            Validation.of(Facts.class, chemistry, nominalVoltage, coldest, hottest)
                    .that(
                            BankDemand.isNominal(nominalVoltage),
                            "nominalVoltage",
                            ProblemCode.OUT_OF_RANGE,
                            BankDemand.notNominal(nominalVoltage))
                    .notBelow("hottest", hottest, "coldest", coldest)
                    .done();
        }
    }

    /** The set-points for a bank. */
    public static ChargeSettings of(Facts facts, ChargePolicy policy) {
        Chemistry.Traits cell = facts.chemistry().traits();
        int cells = facts.chemistry().cellsFor(facts.nominalVoltage());
        boolean lithium = facts.chemistry().family() == BatteryFamily.LITHIUM;
        VoltageCoefficient compensation = switch (facts.chemistry().family()) {
            case LEAD_ACID -> policy.leadAcidCompensation().times(cells);
            case LITHIUM -> VoltageCoefficient.ZERO;
        };
        Voltage absorption = cell.absorption().times(cells);
        return new ChargeSettings(
                facts,
                policy,
                cells,
                absorption,
                cell.absorptionTime(),
                lithium && !policy.lithiumFloat()
                        ? Optional.empty()
                        : Optional.of(cell.floating().times(cells)),
                cell.equalisation().map(voltage -> voltage.times(cells)),
                cell.equalisation().map(vented -> policy.equalisationInterval()),
                cell.equalisation().map(vented -> policy.equalisationTime()),
                cell.disconnect().times(cells),
                cell.reconnect().times(cells),
                compensation,
                absorption.plus(shift(compensation, facts.coldest(), policy)),
                absorption.plus(shift(compensation, facts.hottest(), policy)),
                lithium ? Optional.of(cell.chargeRateByTemperature().begin()) : Optional.empty());
    }

    /** The same for one battery, whose data sheet says from which temperature it may be charged. */
    public ChargeSettings forBattery(Battery battery) {
        return withChargingFrom(chargingFrom.map(typical -> battery.resolved().coldestCharge()));
    }

    /** How far a charging voltage moves at a temperature; beyond the clamps no further. */
    private static Voltage shift(VoltageCoefficient compensation, Temperature temperature, ChargePolicy policy) {
        return compensation.times(clamped(temperature, policy).minus(REFERENCE));
    }

    private static Temperature clamped(Temperature temperature, ChargePolicy policy) {
        return temperature.compareTo(policy.coldestCompensated()) < 0
                ? policy.coldestCompensated()
                : temperature.compareTo(policy.warmestCompensated()) > 0 ? policy.warmestCompensated() : temperature;
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        Chemistry.Traits cell = facts.chemistry().traits();
        return Working.builder()
                .step(
                        "absorption at 25 °C",
                        "U = n · U_cell",
                        "manufacturers' charging instructions; IEEE 1361 describes the regimes",
                        absorption,
                        "%s · %s",
                        cells,
                        cell.absorption())
                .step(
                        "absorption when cold",
                        "U = U_25 + n · c · (T − 25 °C), T clamped",
                        "manufacturers' charging instructions",
                        absorptionWhenCold,
                        "%s + %s · (%s − 25 °C)",
                        absorption,
                        compensation,
                        clamped(facts.coldest(), policy))
                .build();
    }
}
