package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PathComparison;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterNeed;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.jspecify.annotations.Nullable;

/** The products of a catalogue held against what a brief asks of each kind of part. */
final class Search {
    /** Modules that every controller is tried with where no design is complete. */
    private static final int MOST_TRIED = 40;

    private final DesignBrief brief;
    private final Catalog catalog;
    private final Needs needs;
    private final ModuleYields yields;
    private final Supply supply;

    Search(DesignBrief brief, Catalog catalog, LoadProfile loads, ModuleYields yields) {
        this.brief = brief;
        this.catalog = catalog;
        this.needs = new Needs(brief, loads);
        this.yields = yields;
        this.supply = new Supply(catalog, brief.wishes());
    }

    /** What the brief asks of each kind of part. */
    Needs needs() {
        return needs;
    }

    /** The cheapest complete system, if there is one. */
    Optional<Candidate> cheapest(Voltage voltage, Chemistry chemistry) {
        return new BusSearch(this, voltage, chemistry).cheapest();
    }

    /** The cheapest complete system that charges through one kind of controller, if there is one. */
    Optional<Candidate> cheapest(Voltage voltage, Chemistry chemistry, ControllerKind kind) {
        return new BusSearch(this, voltage, chemistry).cheapest(kind);
    }

    /** The inverters for a bank that keep every rule, cheapest first. */
    List<InverterFit> fitting(Voltage voltage, Chemistry chemistry) {
        List<Inverter> forBus = catalog.inverters().stream()
                .filter(inverter -> inverter.nominalVoltage().equals(voltage))
                .toList();
        return inverters(needs.inverter(voltage, chemistry), forBus).ranked();
    }

    /** Every inverter of the catalogue held against the loads and a bank. */
    InverterSelection inverters(Voltage voltage, Chemistry chemistry) {
        return inverters(needs.inverter(voltage, chemistry), catalog.inverters());
    }

    private InverterSelection inverters(InverterNeed need, List<Inverter> offered) {
        return InverterSelection.of(offered.stream()
                .map(inverter -> supply.held(
                        InverterFit.of(need, inverter, brief.policy().inverter())))
                .toList());
    }

    /** The batteries of a chemistry that are heated, or those that are not. */
    BankChoices bankChoices(Reckoning least, Chemistry chemistry, boolean heated) {
        BankPolicy policy = brief.policy().bank();
        return new BankChoices(
                least.bank(),
                catalog.batteries().stream()
                        .filter(battery -> battery.chemistry() == chemistry && needs.runsHeated(battery) == heated)
                        .toList(),
                policy,
                (need, battery, leastStrings) -> supply.held(BankFit.of(need, battery, policy, leastStrings)));
    }

    /** Modules and controllers of a sort by path. */
    List<ArrayChoices> arrayChoices(
            Reckoning least, Voltage voltage, Chemistry chemistry, Predicate<ControllerKind> sort) {
        ChargerNeed need = needs.charger(voltage, chemistry, null);
        List<ArrayChoices> choices = new ArrayList<>();
        for (ChargePath path : ChargePath.values()) {
            List<ChargeController> controllers = catalog.controllers().stream()
                    .filter(controller -> controller.kind().path() == path
                            && sort.test(controller.kind())
                            && controller.busVoltages().contains(voltage)
                            && controller.chemistries().contains(chemistry)
                            && controller.functions().containsAll(need.functions()))
                    .toList();
            if (!controllers.isEmpty()) {
                choices.add(new ArrayChoices(
                        need,
                        least.array(),
                        moduleYields(path, voltage, chemistry),
                        controllers,
                        yields,
                        brief.policy().array(),
                        brief.policy().charger()));
            }
        }
        return choices;
    }

    /** A module of no voltage group is refused at the bank's own voltage, however many there are. */
    private List<ModuleYield> moduleYields(ChargePath path, Voltage voltage, Chemistry chemistry) {
        return catalog.modules().stream()
                .filter(module -> path == ChargePath.TRACKING || module.nominalGroup() != null)
                .map(module ->
                        path == ChargePath.TRACKING ? yields.tracking(module) : directYield(module, voltage, chemistry))
                .toList();
    }

    /** A controller with a module on a bank, or on one whose charging limit is open. */
    ChargerFit charger(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable BankLayout bank,
            ArrayOffer offer,
            ChargeController controller) {
        return supply.held(ChargerFit.of(
                needs.charger(voltage, chemistry, bank),
                offer,
                controller,
                brief.policy().charger()));
    }

    /** Every controller of the catalogue with a module on a bank. */
    ChargerSelection controllers(Voltage voltage, BankLayout bank, ArrayOffer offer) {
        return held(voltage, bank.battery().chemistry(), bank, offer);
    }

    /** Every battery of the catalogue held against the wishes and what it must carry, a heater of its own reckoned in. */
    BankSelection batteries(Voltage voltage, @Nullable InverterFit inverter, Power controllerDraw) {
        EnergyBudget unheated = needs.budget(inverter, false, controllerDraw);
        EnergyBudget heated = needs.budget(inverter, true, controllerDraw);
        return BankSelection.of(catalog.batteries().stream()
                .map(battery -> wished(BankFit.of(
                        needs.bank(
                                voltage, battery.chemistry(), inverter, needs.runsHeated(battery) ? heated : unheated),
                        battery,
                        brief.policy().bank())))
                .toList());
    }

    private BankFit wished(BankFit fit) {
        List<Chemistry> chemistries = brief.wishes().chemistries();
        Chemistry chemistry = fit.battery().chemistry();
        return supply.held(
                chemistries.contains(chemistry)
                        ? fit
                        : fit.and(List.of(Check.that(
                                DesignRule.CHEMISTRY,
                                false,
                                value("chemistries", chemistries),
                                value("chemistry", chemistry)))));
    }

    /** Whether any number of any module brings what a system asks for in every month. */
    boolean coverable(Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter) {
        EnergyBudget budget = needs.budget(inverter, false, Power.ZERO);
        return catalog.modules().stream()
                .anyMatch(module -> offer(yields.extremes(module), voltage, chemistry, budget)
                        .isPresent());
    }

    /** Every controller of the catalogue held against a bank, with one module after the other, the cheapest by the watt first; at least one answer. */
    List<ChargerSelection> controllers(
            Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, @Nullable BankLayout bank) {
        EnergyBudget budget = needs.budget(inverter, false, Power.ZERO);
        if (catalog.modules().isEmpty()) {
            Check none = Check.that(DesignRule.ARRAY, false).variant("v2");
            return List.of(new ChargerSelection(
                    List.of(),
                    catalog.controllers().stream()
                            .map(controller -> new Rejection(controller.model(), List.of(none)))
                            .toList()));
        }
        return catalog.modules().stream()
                .sorted(Comparator.comparingDouble(
                        module -> module.price().minorUnits() / module.power().watts()))
                .limit(MOST_TRIED)
                .map(yields::extremes)
                .map(module -> offer(module, voltage, chemistry, budget)
                        .map(offer -> held(voltage, chemistry, bank, offer))
                        .orElseGet(() -> ChargerSelection.of(catalog.controllers().stream()
                                .map(controller -> sunless(voltage, chemistry, bank, module, controller))
                                .toList())))
                .toList();
    }

    private ChargerSelection held(Voltage voltage, Chemistry chemistry, @Nullable BankLayout bank, ArrayOffer offer) {
        return ChargerSelection.of(catalog.controllers().stream()
                .map(controller -> charger(voltage, chemistry, bank, offer, controller))
                .toList());
    }

    /** Every module of the catalogue with a controller on a bank. */
    ModuleSelection modules(Voltage voltage, BankLayout bank, EnergyBudget budget, ChargeController controller) {
        return modules(voltage, bank.battery().chemistry(), bank, budget, controller);
    }

    /** The same before a bank is chosen, where no controller may be on offer. */
    ModuleSelection modules(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable InverterFit inverter,
            @Nullable BankLayout bank,
            @Nullable String model) {
        EnergyBudget budget = needs.budget(inverter, false, Power.ZERO);
        Check none = Check.that(DesignRule.CHARGE_CONTROLLER, false).variant("v3");
        return catalog.controllers().stream()
                .filter(controller -> controller.model().equals(model))
                .findFirst()
                .map(controller -> modules(voltage, chemistry, bank, budget, controller))
                .orElseGet(() -> new ModuleSelection(
                        List.of(),
                        catalog.modules().stream()
                                .map(module -> new Rejection(module.model(), List.of(none)))
                                .toList()));
    }

    private ModuleSelection modules(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable BankLayout bank,
            EnergyBudget budget,
            ChargeController controller) {
        return ModuleSelection.ofFits(catalog.modules().stream()
                .map(yields::extremes)
                .map(module -> offer(module, voltage, chemistry, budget)
                        .map(offer -> charger(voltage, chemistry, bank, offer, controller))
                        .orElseGet(() -> sunless(voltage, chemistry, bank, module, controller))));
    }

    /** Where no number of a module is enough, a controller fails, whatever else it breaks with one module. */
    private ChargerFit sunless(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable BankLayout bank,
            ModuleExtremes module,
            ChargeController controller) {
        ArrayOffer one = offer(module, Ratio.ONE, 1, direct(module, voltage, chemistry));
        Check none = Check.that(
                        DesignRule.ARRAY, false, value("model", module.module().model()))
                .variant("v3");
        return charger(voltage, chemistry, bank, one, controller).and(List.of(none));
    }

    /** A module with as many as the design month asks for; none when no number of it would do. */
    Optional<ArrayOffer> offer(ModuleExtremes module, Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        ArrayNeed need = needs.array(voltage, chemistry, budget);
        ArraySize tracking = ArraySize.of(
                need, yields.tracking(module.module()), brief.policy().array());
        if (!tracking.possible()) {
            return Optional.empty();
        }
        ModuleYield direct = direct(module, voltage, chemistry);
        return Optional.of(offer(
                module,
                tracking.exactModules(),
                direct == null
                        ? tracking.modules()
                        : ArraySize.of(need, direct, brief.policy().array()).modules(),
                direct));
    }

    private ArrayOffer offer(ModuleExtremes module, Ratio exact, int modulesDirect, @Nullable ModuleYield direct) {
        return new ArrayOffer(
                module,
                exact,
                modulesDirect,
                brief.policy().array().whenNew(),
                yields.sunshine(),
                yields.tracking(module.module()).yearly(),
                direct == null ? null : direct.yearly());
    }

    /** At the bank's own voltage; a module of no voltage group is refused there, however many there are. */
    private @Nullable ModuleYield direct(ModuleExtremes module, Voltage voltage, Chemistry chemistry) {
        return module.module().nominalGroup() == null ? null : directYield(module.module(), voltage, chemistry);
    }

    private ModuleYield directYield(PvModule module, Voltage voltage, Chemistry chemistry) {
        return yields.direct(
                module, voltage, chemistry, needs.settings(voltage, chemistry).absorption());
    }

    /** What tracking gains for a module on a bank, through a controller of an efficiency. */
    PathComparison comparison(ModuleExtremes module, Voltage voltage, Chemistry chemistry, Ratio efficiency) {
        return PathComparison.of(
                yields.tracking(module.module()).times(efficiency), directYield(module.module(), voltage, chemistry));
    }

    /** A whole. */
    Candidate complete(Reckoning reckoning, @Nullable InverterFit inverter, BankFit bank, ChargerFit charger) {
        BankLayout layout = Objects.requireNonNull(bank.layout());
        return new Candidate(
                layout.nominalVoltage(),
                reckoning.budget(),
                reckoning.counted(),
                inverter,
                bank,
                layout,
                size(charger, layout, reckoning.budget()),
                charger);
    }

    /** Need and yield of the array as it is laid out, through the controller as its data sheet has it. */
    private ArraySize size(ChargerFit fit, BankLayout layout, EnergyBudget budget) {
        Chemistry chemistry = layout.battery().chemistry();
        PvModule module = fit.array().module();
        ModuleYield moduleYield = switch (fit.controller().kind().path()) {
            case TRACKING -> yields.tracking(module).times(fit.controller().efficiency());
            case DIRECT -> directYield(module, layout.nominalVoltage(), chemistry);
        };
        return ArraySize.of(
                        needs.array(layout.nominalVoltage(), chemistry, budget),
                        moduleYield,
                        brief.policy().array())
                .withModules(fit.array().modules());
    }
}
