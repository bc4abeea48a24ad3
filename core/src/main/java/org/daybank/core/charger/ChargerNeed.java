package org.daybank.core.charger;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;

/**
 * What is asked of a charge controller, whichever module feeds it.
 *
 * @param nominalVoltage what the bus is called
 * @param chemistry of the bank
 * @param chargingVoltage absorption voltage of the bank at 25 °C
 * @param lowestVoltage of the bus, at which loads are switched off
 * @param hottestAir air around the controller
 * @param maximumChargeCurrent most that the bank takes
 * @param dcLoadCurrent what the DC loads draw while they run; the load output must carry it where one is asked for
 * @param functions asked for besides charging
 */
@RecordBuilder
public record ChargerNeed(
        Voltage nominalVoltage,
        Chemistry chemistry,

        @Assumed(source = "absorption voltage typical of the chemistry")
        Voltage chargingVoltage,

        @Assumed(source = "disconnect voltage typical of the chemistry")
        Voltage lowestVoltage,

        @Assumed(value = "40 Cel", source = "no temperature stated")
        Temperature hottestAir,

        @Assumed(value = "100 kA", source = "no limit stated")
        Current maximumChargeCurrent,

        @Assumed(value = "0 A", source = "no DC loads stated")
        Current dcLoadCurrent,

        @Assumed(source = "none asked for") List<ControllerFunction> functions)
        implements ChargerNeedBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or can never be right
     */
    public ChargerNeed {
        hottestAir = Policies.otherwise(hottestAir, ChargerNeed.class, "hottestAir");
        maximumChargeCurrent = Policies.otherwise(maximumChargeCurrent, ChargerNeed.class, "maximumChargeCurrent");
        dcLoadCurrent = Policies.otherwise(dcLoadCurrent, ChargerNeed.class, "dcLoadCurrent");
        functions = List.copyOf(Objects.requireNonNullElse(functions, List.of()));
        new Validation()
                .required("nominalVoltage", nominalVoltage)
                .within("nominalVoltage", nominalVoltage, Voltage.volts(12), Voltage.volts(48))
                .required("chemistry", chemistry)
                .within("chargingVoltage", chargingVoltage, Voltage.volts(1), Voltage.volts(2000))
                .within("lowestVoltage", lowestVoltage, Voltage.volts(1), Voltage.volts(2000))
                .atLeast("dcLoadCurrent", dcLoadCurrent, Current.ZERO)
                .above("maximumChargeCurrent", maximumChargeCurrent, Current.ZERO)
                .done();
        chargingVoltage = chargingVoltage == null
                ? chemistry.traits().absorption().times(chemistry.cellsFor(nominalVoltage))
                : chargingVoltage;
        lowestVoltage = lowestVoltage == null
                ? chemistry.traits().disconnect().times(chemistry.cellsFor(nominalVoltage))
                : lowestVoltage;
    }

    /** True nominal voltage of the bank. */
    public Voltage trueNominal() {
        return chemistry.trueNominal(nominalVoltage);
    }
}
