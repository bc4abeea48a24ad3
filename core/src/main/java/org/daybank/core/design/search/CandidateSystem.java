package org.daybank.core.design.search;

import org.daybank.core.array.ArraySize;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.design.SystemParts;
import org.daybank.core.design.SystemPartsBuilder;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/**
 * Products that together make a system.
 *
 * @param nominalVoltage system nominal voltage
 * @param budget energy that leaves the bank, the power drawn by the controllers included
 * @param controllerDraw power that the budget counts for the controllers, no less than they draw
 * @param inverter the inverters; absent when every load is DC
 * @param bank evaluation of the battery
 * @param layout of the bank
 * @param size of the array
 * @param charger evaluation of the controller and the module
 */
public record CandidateSystem(
        Voltage nominalVoltage,
        EnergyBudget budget,
        Power controllerDraw,
        @Nullable InverterFit inverter,
        BankFit bank,
        BankLayout layout,
        ArraySize size,
        ChargerFit charger) {

    /** Returns whether it charges through a shunt controller, which is never recommended over another. */
    public boolean shunt() {
        return charger.controller().kind() == ControllerKind.SHUNT;
    }

    /** Returns the chemistry of the bank. */
    public Chemistry chemistry() {
        return layout.battery().chemistry();
    }

    /** Returns the price of modules, controllers, batteries and inverters. */
    public Money price() {
        Money parts = layout.price().plus(charger.priceWithArray());
        return inverter == null ? parts : parts.plus(inverter.price());
    }

    /** Returns the parts by their model codes, the array on a plane. */
    public SystemParts parts(Plane plane) {
        ArrayLayout array = charger.array();
        return SystemPartsBuilder.builder()
                .nominalVoltage(nominalVoltage)
                .module(array.product())
                .series(array.series())
                .strings(array.strings())
                .tilt(plane.tilt())
                .azimuth(plane.azimuth())
                .controller(charger.product())
                .controllers(charger.count())
                .battery(layout.product())
                .parallel(layout.parallel())
                .inverter(inverter == null ? null : inverter.product())
                .inverters(inverter == null ? 1 : inverter.count())
                .build();
    }
}
