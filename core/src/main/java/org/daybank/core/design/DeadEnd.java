package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankRule;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerRule;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterRule;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/** Where the search for a system of one voltage and chemistry ended without one: what every product breaks there. */
final class DeadEnd {
    private final Search search;
    private final Voltage voltage;
    private final Chemistry chemistry;
    private final @Nullable InverterSelection inverters;
    private final @Nullable InverterFit inverter;
    private final BankSelection batteries;
    private @Nullable ChargerSelection controllers;

    private DeadEnd(Search search, Voltage voltage, Chemistry chemistry) {
        this.search = search;
        this.voltage = voltage;
        this.chemistry = chemistry;
        this.inverters = search.needs().needsInverter() ? search.inverters(voltage, chemistry) : null;
        this.inverter = inverters == null || inverters.ranked().isEmpty()
                ? null
                : inverters.ranked().get(0);
        this.batteries = search.batteries(voltage, inverter, Power.ZERO);
    }

    /** At one voltage, with the chemistry that comes furthest. */
    static DeadEnd of(Search search, List<Chemistry> chemistries, Voltage voltage) {
        return furthest(chemistries.stream()
                .map(chemistry -> new DeadEnd(search, voltage, chemistry))
                .toList());
    }

    /** The one that came furthest, the first of them when several did. */
    static DeadEnd furthest(List<DeadEnd> ends) {
        return ends.stream()
                .reduce((first, next) -> next.stage() > first.stage() ? next : first)
                .orElseThrow();
    }

    /** How many of its parts do: the inverter, the bank. */
    private int stage() {
        return !hasInverter() ? 0 : roomiest().isEmpty() ? 1 : 2;
    }

    private boolean hasInverter() {
        return inverters == null || inverter != null;
    }

    /** Of the banks that do, with as many strings as may be, the one that takes the most current. */
    private Optional<BankLayout> roomiest() {
        return batteries.ranked().stream()
                .map(fit -> fit.battery())
                .filter(battery -> battery.chemistry() == chemistry)
                .map(battery -> BankLayout.of(
                        battery,
                        voltage,
                        (int) Math.rint(voltage.dividedBy(battery.nominalVoltage())),
                        battery.mostInParallel()))
                .max(Comparator.comparing(BankLayout::maximumChargeCurrent));
    }

    Voltage voltage() {
        return voltage;
    }

    /** Every inverter held against the loads; absent when every load is DC. */
    @Nullable
    InverterSelection inverters() {
        return inverters;
    }

    /** Every battery held against the loads behind the cheapest inverter that does, or a typical one. */
    BankSelection batteries() {
        return batteries;
    }

    /** Every controller held against the bank that takes the most current, with the module that comes nearest. */
    ChargerSelection controllers() {
        ChargerSelection known = controllers;
        if (known == null) {
            known = nearestControllers();
            controllers = known;
        }
        return known;
    }

    private ChargerSelection nearestControllers() {
        List<ChargerSelection> byModule =
                search.controllers(voltage, chemistry, inverter, roomiest().orElse(null));
        return byModule.stream()
                .filter(all -> !all.ranked().isEmpty())
                .findFirst()
                .or(() -> byModule.stream()
                        .flatMap(all -> near(all).stream().map(rejection -> Map.entry(rejection, all)))
                        .min(Map.Entry.comparingByKey(NearestMiss.NEAREST_FIRST))
                        .map(Map.Entry::getValue))
                .orElse(byModule.get(0));
    }

    /** Every module with the controller that comes nearest. */
    ModuleSelection modules() {
        ChargerSelection all = controllers();
        String nearest = all.ranked().isEmpty()
                ? near(all).stream()
                        .min(NearestMiss.NEAREST_FIRST)
                        .or(() -> all.rejected().stream().findFirst())
                        .map(Rejection::product)
                        .orElse(null)
                : all.ranked().get(0).product();
        return search.modules(voltage, chemistry, inverter, roomiest().orElse(null), nearest);
    }

    private static List<Rejection> near(ChargerSelection all) {
        return NearestMiss.without(
                NearestMiss.without(all.rejected(), ControllerRule.BUS_VOLTAGE), ControllerRule.CHEMISTRY);
    }

    /** The rules that the nearest inverter, battery or controller breaks. */
    List<Check> reasons() {
        if (inverters != null && inverter == null) {
            return NearestMiss.of(
                    DesignRule.INVERTER, NearestMiss.without(inverters.rejected(), InverterRule.NOMINAL_VOLTAGE));
        }
        if (roomiest().isEmpty()) {
            return NearestMiss.of(DesignRule.BATTERY, NearestMiss.without(batteries.rejected(), BankRule.SERIES_COUNT));
        }
        if (!search.coverable(voltage, chemistry, inverter)) {
            return List.of(Check.that(DesignRule.ARRAY, false));
        }
        ChargerSelection controllers = controllers();
        if (!controllers.ranked().isEmpty()) {
            return List.of(Check.that(DesignRule.CHARGE_CONTROLLER, false));
        }
        List<Rejection> near = near(controllers);
        return near.isEmpty() && !controllers.rejected().isEmpty()
                ? List.of(Check.that(
                                DesignRule.CHARGE_CONTROLLER,
                                false,
                                value("voltage", voltage),
                                value("chemistry", chemistry))
                        .variant("v2"))
                : NearestMiss.of(DesignRule.CHARGE_CONTROLLER, near);
    }
}
