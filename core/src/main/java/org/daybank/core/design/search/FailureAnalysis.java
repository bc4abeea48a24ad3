package org.daybank.core.design.search;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankRule;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerRule;
import org.daybank.core.design.DesignRule;
import org.daybank.core.design.ModuleSelection;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterRule;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/** Why the search at one system nominal voltage and with one chemistry found no system: the rules that every product fails. */
public final class FailureAnalysis {
    private final ProductEvaluation evaluation;
    private final Voltage voltage;
    private final Chemistry chemistry;
    private final @Nullable InverterSelection inverters;
    private final @Nullable InverterFit inverter;
    private final BankSelection batteries;
    private final Optional<BankLayout> largestBank;
    private @Nullable ChargerSelection controllers;

    private FailureAnalysis(ProductEvaluation evaluation, Voltage voltage, Chemistry chemistry) {
        this.evaluation = evaluation;
        this.voltage = voltage;
        this.chemistry = chemistry;
        this.inverters = evaluation.requirements().needsInverter() ? evaluation.inverters(voltage, chemistry) : null;
        this.inverter = inverters == null || inverters.ranked().isEmpty()
                ? null
                : inverters.ranked().get(0);
        this.batteries = evaluation.batteries(voltage, inverter, Power.ZERO);
        this.largestBank = largestBank();
    }

    /** At one voltage, with the chemistry for which most parts fit. */
    static FailureAnalysis of(ProductEvaluation evaluation, List<Chemistry> chemistries, Voltage voltage) {
        return nearest(chemistries.stream()
                .map(chemistry -> new FailureAnalysis(evaluation, voltage, chemistry))
                .toList());
    }

    /** Returns the analysis in which most parts fit, the first of several. */
    public static FailureAnalysis nearest(List<FailureAnalysis> analyses) {
        return analyses.stream()
                .reduce((first, next) -> next.fittingParts() > first.fittingParts() ? next : first)
                .orElseThrow();
    }

    /** The number of parts that fit: the inverter, the bank. */
    private int fittingParts() {
        return !hasInverter() ? 0 : largestBank.isEmpty() ? 1 : 2;
    }

    private boolean hasInverter() {
        return inverters == null || inverter != null;
    }

    /** Of the banks that fit, with as many strings as may be connected, the one with the highest maximum charging current. */
    private Optional<BankLayout> largestBank() {
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

    /** Returns the system nominal voltage. */
    public Voltage voltage() {
        return voltage;
    }

    /** Returns every inverter, ranked or rejected for the loads; empty when every load is DC. */
    public Optional<InverterSelection> inverters() {
        return Optional.ofNullable(inverters);
    }

    /** Returns every battery, ranked or rejected, with the cheapest inverter that fits or an inverter of assumed efficiency. */
    public BankSelection batteries() {
        return batteries;
    }

    /** Returns every controller, ranked or rejected, for the bank of the highest charging current and the nearest module. */
    public ChargerSelection controllers() {
        ChargerSelection known = controllers;
        if (known == null) {
            known = nearestControllers();
            controllers = known;
        }
        return known;
    }

    private ChargerSelection nearestControllers() {
        List<ChargerSelection> byModule =
                evaluation.controllers(voltage, chemistry, inverter, largestBank.orElse(null));
        return byModule.stream()
                .filter(all -> !all.ranked().isEmpty())
                .findFirst()
                .or(() -> byModule.stream()
                        .flatMap(all -> suitable(all).stream().map(rejection -> Map.entry(rejection, all)))
                        .min(Map.Entry.comparingByKey(NearestRejection.NEAREST_FIRST))
                        .map(Map.Entry::getValue))
                .orElse(byModule.get(0));
    }

    /** Returns every module, ranked or rejected, with the nearest controller. */
    public ModuleSelection modules() {
        ChargerSelection all = controllers();
        String nearest = all.ranked().isEmpty()
                ? suitable(all).stream()
                        .min(NearestRejection.NEAREST_FIRST)
                        .or(() -> all.rejected().stream().findFirst())
                        .map(Rejection::product)
                        .orElse(null)
                : all.ranked().get(0).product();
        return evaluation.modules(voltage, chemistry, inverter, largestBank.orElse(null), nearest);
    }

    private static List<Rejection> suitable(ChargerSelection all) {
        return NearestRejection.without(
                NearestRejection.without(all.rejected(), ControllerRule.BUS_VOLTAGE), ControllerRule.CHEMISTRY);
    }

    /** Returns the kinds of product that the catalogue lacks or, where it has all, the rules that the nearest product fails. */
    public List<Check> failedChecks() {
        List<Check> lacking = lacking();
        if (!lacking.isEmpty()) {
            return lacking;
        }
        if (inverters != null && inverter == null) {
            return NearestRejection.failedChecks(
                    NearestRejection.without(inverters.rejected(), InverterRule.NOMINAL_VOLTAGE),
                    Check.that(DesignRule.INVERTER, false, value("voltage", voltage))
                            .variant("noneSuitable"));
        }
        if (largestBank.isEmpty()) {
            return NearestRejection.failedChecks(
                    NearestRejection.without(batteries.rejected(), BankRule.SERIES_COUNT),
                    Check.that(DesignRule.BATTERY, false, value("voltage", voltage))
                            .variant("noneSuitable"));
        }
        if (!evaluation.coverable(voltage, chemistry, inverter)) {
            return List.of(Check.that(DesignRule.ARRAY, false));
        }
        if (!controllers().ranked().isEmpty()) {
            return List.of(Check.that(DesignRule.CHARGE_CONTROLLER, false));
        }
        return NearestRejection.failedChecks(
                suitable(controllers()),
                Check.that(
                                DesignRule.CHARGE_CONTROLLER,
                                false,
                                value("voltage", voltage),
                                value("chemistry", chemistry))
                        .variant("noneSuitable"));
    }

    private List<Check> lacking() {
        Catalog catalog = evaluation.catalog();
        List<Check> lacking = new ArrayList<>();
        if (inverters != null && catalog.inverters().isEmpty()) {
            lacking.add(Check.that(DesignRule.INVERTER, false));
        }
        if (catalog.batteries().isEmpty()) {
            lacking.add(Check.that(DesignRule.BATTERY, false));
        }
        if (catalog.modules().isEmpty()) {
            lacking.add(Check.that(DesignRule.ARRAY, false).variant("noModules"));
        }
        if (catalog.controllers().isEmpty()) {
            lacking.add(Check.that(DesignRule.CHARGE_CONTROLLER, false).variant("noControllers"));
        }
        return lacking;
    }
}
