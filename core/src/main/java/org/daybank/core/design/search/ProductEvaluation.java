package org.daybank.core.design.search;

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
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignRule;
import org.daybank.core.design.ModuleSelection;
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

/** Evaluates the products of a catalogue against the requirements of a brief. */
public final class ProductEvaluation {
    /** The number of modules that every controller is evaluated with where there is no system. */
    private static final int MAXIMUM_MODULES_TRIED = 40;

    private final DesignBrief brief;
    private final Catalog catalog;
    private final Requirements requirements;
    private final ModuleYields yields;
    private final DeliveryRule delivery;

    /**
     * Creates an evaluation.
     *
     * @param loads of the brief, by the hours
     * @param yields of modules at the site of the brief
     */
    public ProductEvaluation(DesignBrief brief, Catalog catalog, LoadProfile loads, ModuleYields yields) {
        this.brief = brief;
        this.catalog = catalog;
        this.requirements = new Requirements(brief, loads);
        this.yields = yields;
        this.delivery = new DeliveryRule(catalog, brief.wishes());
    }

    /** The products on offer. */
    Catalog catalog() {
        return catalog;
    }

    /** Returns the requirements of each kind of part. */
    public Requirements requirements() {
        return requirements;
    }

    /** The inverters for a bank that pass every rule, cheapest first. */
    List<InverterFit> fittingInverters(Voltage voltage, Chemistry chemistry) {
        InverterNeed need = requirements.inverter(voltage, chemistry);
        return inverters(
                        need,
                        catalog.inverters().stream()
                                .filter(inverter -> InverterFit.suits(need, inverter))
                                .toList())
                .ranked();
    }

    /** Returns every inverter of the catalogue, ranked or rejected, for the loads and a bank. */
    public InverterSelection inverters(Voltage voltage, Chemistry chemistry) {
        return inverters(requirements.inverter(voltage, chemistry), catalog.inverters());
    }

    private InverterSelection inverters(InverterNeed need, List<Inverter> offered) {
        return InverterSelection.of(offered.stream()
                .map(inverter -> delivery.applied(
                        InverterFit.of(need, inverter, brief.policy().inverter())))
                .toList());
    }

    /** The batteries of a chemistry that use their heaters, or those that do not. */
    BatteryCandidates batteryCandidates(PartRequirements minimum, Chemistry chemistry, boolean heated) {
        BankPolicy policy = brief.policy().bank();
        return new BatteryCandidates(
                minimum.bank(),
                catalog.batteries().stream()
                        .filter(battery ->
                                battery.chemistry() == chemistry && requirements.usesHeater(battery) == heated)
                        .toList(),
                policy,
                (need, battery, minimumStrings) -> delivery.applied(BankFit.of(need, battery, policy, minimumStrings)));
    }

    /** Modules and controllers of some kinds, by charge path. */
    List<ArrayCandidates> arrayCandidates(
            PartRequirements minimum, Voltage voltage, Chemistry chemistry, Predicate<ControllerKind> kinds) {
        ChargerNeed need = requirements.chargeController(voltage, chemistry, null);
        List<ArrayCandidates> choices = new ArrayList<>();
        for (ChargePath path : ChargePath.values()) {
            List<ChargeController> controllers = catalog.controllers().stream()
                    .filter(controller -> controller.kind().path() == path
                            && kinds.test(controller.kind())
                            && ChargerFit.suits(need, controller))
                    .toList();
            if (!controllers.isEmpty()) {
                choices.add(new ArrayCandidates(
                        path,
                        need,
                        minimum.array(),
                        moduleYields(path, voltage, chemistry),
                        controllers,
                        yields,
                        brief.policy().array(),
                        brief.policy().charger()));
            }
        }
        return choices;
    }

    /** The yields of the modules on a path; on the direct path a module without a voltage group fits in no number. */
    private List<ModuleYield> moduleYields(ChargePath path, Voltage voltage, Chemistry chemistry) {
        return catalog.modules().stream()
                .filter(module -> path == ChargePath.TRACKING || module.nominalGroup() != null)
                .map(module ->
                        path == ChargePath.TRACKING ? yields.tracking(module) : directYield(module, voltage, chemistry))
                .toList();
    }

    /** A controller with a module on a bank, or on one whose charging limit is left open. */
    ChargerFit controller(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable BankLayout bank,
            ArrayOffer offer,
            ChargeController controller) {
        return delivery.applied(ChargerFit.of(
                requirements.chargeController(voltage, chemistry, bank),
                offer,
                controller,
                brief.policy().charger()));
    }

    /** Returns every controller of the catalogue, ranked or rejected, with a module on a bank. */
    public ChargerSelection controllers(Voltage voltage, BankLayout bank, ArrayOffer offer) {
        return controllers(voltage, bank.battery().chemistry(), bank, offer);
    }

    /**
     * Returns every battery of the catalogue, ranked or rejected, for the wishes and the loads; the energy of its heater counts
     * where it uses one.
     *
     * @param inverter absent when every load is DC
     * @param controllerDraw power drawn by the charge controllers
     */
    public BankSelection batteries(Voltage voltage, @Nullable InverterFit inverter, Power controllerDraw) {
        EnergyBudget unheated = requirements.budget(inverter, false, controllerDraw);
        EnergyBudget heated = requirements.budget(inverter, true, controllerDraw);
        return BankSelection.of(catalog.batteries().stream()
                .map(battery -> withWishes(BankFit.of(
                        requirements.bank(
                                voltage,
                                battery.chemistry(),
                                inverter,
                                requirements.usesHeater(battery) ? heated : unheated),
                        battery,
                        brief.policy().bank())))
                .toList());
    }

    private BankFit withWishes(BankFit fit) {
        List<Chemistry> chemistries = brief.wishes().chemistries();
        Chemistry chemistry = fit.battery().chemistry();
        return delivery.applied(
                chemistries.contains(chemistry)
                        ? fit
                        : fit.and(List.of(Check.that(
                                DesignRule.CHEMISTRY,
                                false,
                                value("chemistry", chemistry),
                                value("chemistries", chemistries)))));
    }

    /** Whether some number of some module covers the requirement in every month. */
    boolean coverable(Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter) {
        EnergyBudget budget = requirements.budget(inverter, false, Power.ZERO);
        return catalog.modules().stream()
                .anyMatch(module -> offer(yields.extremes(module), voltage, chemistry, budget)
                        .isPresent());
    }

    /** Every controller of the catalogue for a bank, with one module after the other, in the order of price per watt; at least one selection. */
    List<ChargerSelection> controllers(
            Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, @Nullable BankLayout bank) {
        EnergyBudget budget = requirements.budget(inverter, false, Power.ZERO);
        if (catalog.modules().isEmpty()) {
            Check none = Check.that(DesignRule.ARRAY, false).variant("noModules");
            return List.of(new ChargerSelection(
                    List.of(),
                    catalog.controllers().stream()
                            .map(controller -> new Rejection(controller.model(), List.of(none)))
                            .toList()));
        }
        return catalog.modules().stream()
                .sorted(Comparator.comparingDouble(
                        module -> module.price().minorUnits() / module.power().watts()))
                .limit(MAXIMUM_MODULES_TRIED)
                .map(yields::extremes)
                .map(module -> offer(module, voltage, chemistry, budget)
                        .map(offer -> controllers(voltage, chemistry, bank, offer))
                        .orElseGet(() -> ChargerSelection.of(catalog.controllers().stream()
                                .map(controller -> insufficient(voltage, chemistry, bank, module, controller))
                                .toList())))
                .toList();
    }

    private ChargerSelection controllers(
            Voltage voltage, Chemistry chemistry, @Nullable BankLayout bank, ArrayOffer offer) {
        return ChargerSelection.of(catalog.controllers().stream()
                .map(controller -> controller(voltage, chemistry, bank, offer, controller))
                .toList());
    }

    /** Returns every module of the catalogue, ranked or rejected, with a controller on a bank. */
    public ModuleSelection modules(Voltage voltage, BankLayout bank, EnergyBudget budget, ChargeController controller) {
        return modules(voltage, bank.battery().chemistry(), bank, budget, controller);
    }

    /** The same before a bank is selected; the catalogue may have no controller. */
    ModuleSelection modules(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable InverterFit inverter,
            @Nullable BankLayout bank,
            @Nullable String model) {
        EnergyBudget budget = requirements.budget(inverter, false, Power.ZERO);
        Check none = Check.that(DesignRule.CHARGE_CONTROLLER, false).variant("noControllers");
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
        return ModuleSelection.of(catalog.modules().stream()
                .map(yields::extremes)
                .map(module -> offer(module, voltage, chemistry, budget)
                        .map(offer -> controller(voltage, chemistry, bank, offer, controller))
                        .orElseGet(() -> insufficient(voltage, chemistry, bank, module, controller)))
                .map(fit -> new ModuleSelection.Choice(
                        fit.array().product(),
                        fit.array().modules(),
                        fit.product(),
                        fit.count(),
                        fit.priceWithArray(),
                        fit.checks()))
                .toList());
    }

    /** Where no number of a module is enough, the controller fails, whatever other rules it fails with one module. */
    private ChargerFit insufficient(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable BankLayout bank,
            ModuleExtremes module,
            ChargeController controller) {
        ArrayOffer one = offer(module, Ratio.ONE, 1, direct(module, voltage, chemistry));
        Check none = Check.that(
                        DesignRule.ARRAY, false, value("model", module.module().model()))
                .variant("notCovered");
        return controller(voltage, chemistry, bank, one, controller).and(List.of(none));
    }

    /** Returns a module in the number that the design month requires; empty when no number of it is enough. */
    public Optional<ArrayOffer> offer(
            ModuleExtremes module, Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        ArrayNeed need = requirements.array(voltage, chemistry, budget);
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

    /** The yield at the bank's own voltage; absent for a module without a voltage group. */
    private @Nullable ModuleYield direct(ModuleExtremes module, Voltage voltage, Chemistry chemistry) {
        return module.module().nominalGroup() == null ? null : directYield(module.module(), voltage, chemistry);
    }

    private ModuleYield directYield(PvModule module, Voltage voltage, Chemistry chemistry) {
        return yields.direct(
                module,
                voltage,
                chemistry,
                requirements.settings(voltage, chemistry).absorption());
    }

    /** Returns the gain of maximum power point tracking for a module on a bank, through a controller of an efficiency. */
    public PathComparison comparison(ModuleExtremes module, Voltage voltage, Chemistry chemistry, Ratio efficiency) {
        return PathComparison.of(
                yields.tracking(module.module()).times(efficiency), directYield(module.module(), voltage, chemistry));
    }

    /** A system of evaluated parts. */
    CandidateSystem system(
            PartRequirements required, @Nullable InverterFit inverter, BankFit bank, ChargerFit charger) {
        BankLayout layout = Objects.requireNonNull(bank.layout());
        return new CandidateSystem(
                layout.nominalVoltage(),
                required.budget(),
                required.controllerDraw(),
                inverter,
                bank,
                layout,
                size(charger, layout, required.budget()),
                charger);
    }

    /** Need and yield of the array in its layout, through the controller with its own efficiency. */
    private ArraySize size(ChargerFit fit, BankLayout layout, EnergyBudget budget) {
        Chemistry chemistry = layout.battery().chemistry();
        PvModule module = fit.array().module();
        ModuleYield moduleYield = switch (fit.controller().kind().path()) {
            case TRACKING -> yields.tracking(module).times(fit.controller().efficiency());
            case DIRECT -> directYield(module, layout.nominalVoltage(), chemistry);
        };
        return ArraySize.of(
                        requirements.array(layout.nominalVoltage(), chemistry, budget),
                        moduleYield,
                        brief.policy().array())
                .withModules(fit.array().modules());
    }
}
