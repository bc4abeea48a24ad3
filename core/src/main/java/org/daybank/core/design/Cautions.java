package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BatteryFamily;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.Diversion;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.UnitStrings;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.wiring.CircuitSizing;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.working.Caution;
import org.daybank.core.working.Severity;

/**
 * What can hurt someone or something in a design. A caution appears when its cause is in the design, not always and not never;
 * each names the part or circuit, says what can happen here and what to do, and defers to local codes.
 */
final class Cautions {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    private static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    /** What the circuits tell and the design does not tell already. */
    private static final Set<String> OF_CIRCUITS_ALONE = Set.of("circuitDoesNotFit", "aluminiumTerminals");

    private static final Mass ONE_PERSON_LIFTS = Mass.kilograms(25);
    private static final Length LONG_RUN = Length.metres(30);
    private static final Length EXPOSED_HEIGHT = Length.metres(1000);

    private final List<Caution> cautions = new ArrayList<>();
    private final SystemDesign design;

    private Cautions(SystemDesign design) {
        this.design = design;
    }

    /** The cautions of a complete design, the gravest first within each part; none while nothing is chosen. */
    static List<Caution> of(SystemDesign design) {
        if (!design.complete()) {
            return List.of();
        }
        Cautions all = new Cautions(design);
        BankFit bank = design.bank();
        if (bank != null) {
            all.onBank(bank);
        }
        GridFeed feed = design.grid();
        if (feed != null) {
            all.feed(feed, SystemDesign.part(design.moduleExtremes()));
        }
        switch (design.brief().kind()) {
            case STAND_ALONE -> {}
            case MOBILE -> all.mobile();
            case GRID_INTERACTIVE, GRID_BACKUP -> all.grid();
        }
        all.system();
        EngineBackup engine = design.generator();
        if (engine != null) {
            all.cautions.addAll(engine.cautions());
        }
        WiringPlan wiring = design.wiring();
        if (wiring != null) {
            wiring.cautions().stream()
                    .filter(caution -> OF_CIRCUITS_ALONE.contains(caution.code()))
                    .forEach(all.cautions::add);
        }
        return List.copyOf(all.cautions);
    }

    private void onBank(BankFit bank) {
        BankLayout layout = SystemDesign.part(bank.layout());
        bank(layout);
        if (layout.battery().chemistry().family() == BatteryFamily.LEAD_ACID) {
            leadAcid(layout, bank);
        } else {
            lithium(bank);
        }
        Diversion diversion = SystemDesign.part(design.charger()).diversion();
        if (diversion != null) {
            cautions.add(diversion.caution());
        }
        ArrayLayout array = SystemDesign.part(design.array());
        arrayVoltage(
                SystemDesign.part(design.moduleExtremes()).coldestOpenCircuit(array.series()), "array to controller");
        array("array to controller", array.shortCircuitCurrent(), array.power());
        if (array.stringFuses()) {
            stringFuses(array.stringsOnEach().get(0));
        }
        inverter();
    }

    /** An array that feeds the grid. */
    private void feed(GridFeed feed, ModuleExtremes extremes) {
        StringInverterFit strings = feed.stringInverters();
        int longest = strings == null
                ? 1
                : strings.units().stream().mapToInt(UnitStrings::longest).max().orElse(1);
        int together = strings == null
                ? 1
                : strings.units().stream()
                        .mapToInt(UnitStrings::mostStrings)
                        .max()
                        .orElse(1);
        String circuit = strings == null ? "module to microinverter" : "array to inverter";
        arrayVoltage(extremes.coldestOpenCircuit(longest), circuit);
        array(circuit, extremes.module().shortCircuitCurrent().times(together), feed.arrayPower());
        if (strings != null && strings.stringFuses()) {
            stringFuses(together);
        }
        if (strings != null) {
            storedCharge(strings.product());
            add(
                    "reversePolarity",
                    Severity.WARNING,
                    circuit,
                    "Measure voltage and polarity of each string before it is connected.",
                    "A string connected the wrong way round destroys the inverter, or is fed by the others.");
        }
    }

    private void grid() {
        add(
                "backfeed",
                Severity.DANGER,
                "inverter to grid",
                "Use only inverters tested to stop when the grid is gone (IEC 62116); label both sources; have the"
                        + " grid operator agree before it is switched on.",
                "A service fed by an array or a bank is live from two sides: opening the main switch alone does not"
                        + " make it dead.");
        if (design.brief().kind() == SystemKind.GRID_BACKUP) {
            add(
                    "backupPanel",
                    Severity.DANGER,
                    "essential loads panel",
                    "Keep neutral and earth of the panel as the inverter's maker shows for both modes; lock the grid"
                            + " out by the inverter's own transfer or a listed switch.",
                    "While the grid is away the panel stays live from the bank; a second path to the grid would feed"
                            + " the street.");
        }
    }

    private void mobile() {
        if (design.brief().shore() != null) {
            add(
                    "shoreConnection",
                    Severity.DANGER,
                    "shore inlet",
                    "Use an inlet with residual-current protection, an isolation transformer on boats, and unplug at"
                            + " the post first, at the vehicle last.",
                    "A reversed or unearthed post makes hull or body live; with shore connected the inverter must not"
                            + " bond neutral to earth a second time.");
        }
        add(
                "vehicle",
                Severity.WARNING,
                "bank",
                "Bolt batteries and modules down for braking and crash; fuse every cable that leaves the bank within a"
                        + " hand's breadth of it.",
                "In a vehicle cables chafe and loads shift: a chafed cable draws the bank's short-circuit current"
                        + " through the body.");
        if (design.brief().alternator() != null) {
            add(
                    "alternatorLimit",
                    Severity.WARNING,
                    "alternator",
                    "Charge through a DC converter that limits current and stops when the management system opens.",
                    "An alternator feeds an empty lithium bank with all it has and burns; cut off under load its"
                            + " voltage surge destroys electronics.");
        }
    }

    private void add(String code, Severity severity, String subject, String action, String text, Object... figures) {
        Object[] shown = new Object[figures.length];
        for (int i = 0; i < figures.length; i++) {
            shown[i] = figures[i] instanceof Quantity quantity ? quantity.rounded(3) : figures[i];
        }
        cautions.add(new Caution(code, severity, subject, text.formatted(shown), action + " " + Caution.LOCAL_CODE));
    }

    private void bank(BankLayout layout) {
        add(
                "bankArc",
                Severity.DANGER,
                "bank",
                "Insulate tools, take off jewellery, cover terminals, wear eye protection.",
                "A bank of %s can weld metal, arc and burn, whatever its voltage.",
                layout.trueNominal());
        Voltage highest = highestBus(SystemDesign.part(design.chargeSettings()));
        if (highest.compareTo(TOUCHABLE_DC) > 0) {
            add(
                    "busVoltage",
                    Severity.DANGER,
                    "bank",
                    "Cover all live parts; keep one hand back, or disconnect charging before work.",
                    "While it is charged the bus reaches %s of direct current: touching it can kill, and an arc does"
                            + " not go out by itself.",
                    highest);
        }
        Current shortCircuit = layout.shortCircuitCurrent();
        add(
                "bankShortCircuit",
                Severity.DANGER,
                "bank to inverter",
                "Put a fuse that can break this current at this voltage right at the bank, before any other device.",
                "Bridged, the bank drives about %s until something melts; the cable is not reckoned in.",
                shortCircuit);
        add(
                "hotTerminals",
                Severity.WARNING,
                "bank",
                "Tighten to the maker's torque, check again after a month and then each year.",
                "A loose terminal heats up under %s and can start a fire.",
                design.inverter() == null
                        ? layout.maximumDischargeCurrent()
                        : design.inverter().currentAtRating());
        add(
                "reversePolarity",
                Severity.WARNING,
                "bank",
                "Measure the polarity before the last connection is made.",
                "Connected the wrong way round, the bank destroys controller and inverter at once.");
        if (layout.battery().mass().compareTo(ONE_PERSON_LIFTS) > 0) {
            add(
                    "lifting",
                    Severity.WARNING,
                    "bank",
                    "Lift with two people or a hoist; check what the floor carries.",
                    "One battery weighs %s, the whole bank %s.",
                    layout.battery().mass(),
                    layout.mass());
        }
        if (layout.count() > 1) {
            add(
                    "mixedBatteries",
                    Severity.WARNING,
                    "bank",
                    "Use batteries of one model, age and charge; replace them together.",
                    "In a bank of %s batteries an old or different one is overcharged or starved by the others.",
                    layout.count());
        }
        if (layout.parallel() > 1) {
            add(
                    "parallelStrings",
                    Severity.NOTICE,
                    "bank",
                    "Give each string its own fuse and equal cable lengths to common bars.",
                    "%s strings in parallel share current unequally, and a faulty one is fed by the others.",
                    layout.parallel());
        }
    }

    /** The highest voltage that a charge brings: on the coldest day, or to equalise. */
    private static Voltage highestBus(ChargeSettings settings) {
        Voltage cold = settings.absorptionWhenCold();
        return settings.equalisation()
                .filter(equalising -> equalising.compareTo(cold) > 0)
                .orElse(cold);
    }

    private void leadAcid(BankLayout layout, BankFit bank) {
        boolean vented = layout.battery().chemistry() == Chemistry.VENTED_LEAD_ACID;
        Ventilation ventilation = design.ventilation();
        if (ventilation != null) {
            add(
                    "hydrogen",
                    Severity.DANGER,
                    "bank",
                    "Ventilate from below to above, keep flames and sparks away; no switch or relay above the bank.",
                    "Charging sets hydrogen free, explosive from 4 %%: the room needs %s of fresh air, with openings"
                            + " of %s below and above; where it is heated, that air takes %s of heat.",
                    ventilation.flow(),
                    "%.0f cm²".formatted(ventilation.openings().squareCentimetres()),
                    ventilation.heatLoss());
        }
        if (vented) {
            add(
                    "acid",
                    Severity.DANGER,
                    "bank",
                    "Wear goggles and gloves, keep water and soda at hand, stand the bank in a tray.",
                    "Vented cells hold sulphuric acid and spray it when charged hard.");
        }
        if (ventilation != null && bank.temperature().celsius() < 0) {
            add(
                    "closedCupboard",
                    Severity.DANGER,
                    "bank",
                    "Keep the openings of a cupboard around the bank free in winter as well; what warms it must heat"
                            + " this air too, and must not spark.",
                    "Around the bank it gets down to %s: who closes or heats a cupboard against that cold keeps the"
                            + " hydrogen in. It needs %s of fresh air all the same, and that air takes %s of heat.",
                    bank.temperature(),
                    ventilation.flow(),
                    ventilation.heatLoss());
        }
        if (bank.temperature().celsius() < 0) {
            add(
                    "freezing",
                    Severity.WARNING,
                    "bank",
                    "Never leave it discharged in the cold; keep the low-voltage disconnect in use.",
                    "Around the bank it gets down to %s: a deeply discharged battery freezes and bursts.",
                    bank.temperature());
        }
    }

    private void lithium(BankFit bank) {
        add(
                "batteryManagement",
                Severity.DANGER,
                "bank",
                "Use only batteries with their own management system; set the controller so that the management never"
                        + " has to act, and see that controller and inverter stand its opening.",
                "Lithium cells must be watched one by one; when the management system disconnects, the array may drive"
                        + " the bus up and the inverter stops.");
        add(
                "lithiumFire",
                Severity.DANGER,
                "bank",
                "Mount on a wall that does not burn, away from escape routes; keep to the maker's distances.",
                "A damaged or overcharged lithium battery can burn and cannot be put out with little water.");
        if (bank.heated()) {
            add(
                    "heatedBank",
                    Severity.WARNING,
                    "bank",
                    "Build the insulated box as reckoned, and see that the heater has priority over other loads.",
                    "Without its heater the bank would fall to freezing air; below 0 °C lithium must not be charged.");
        }
        Temperature recordLow = design.brief().site().recordLow();
        boolean outdoors = design.brief().bank().location() == BankLocation.OUTDOORS;
        SystemDesign.part(design.chargeSettings())
                .chargingFrom()
                .filter(coldest -> outdoors && !bank.heated() && recordLow.compareTo(coldest) < 0)
                .ifPresent(coldest -> add(
                        "chargingInTheCold",
                        Severity.WARNING,
                        "bank",
                        "Take a battery whose management system stops charging in the cold, and let the controller"
                                + " measure the temperature of its cells.",
                        "The air has been as cold as %s; charged below %s, lithium cells are plated with metal and"
                                + " fail for good.",
                        recordLow,
                        coldest));
    }

    private void arrayVoltage(Voltage coldest, String circuit) {
        if (coldest.compareTo(TOUCHABLE_DC) > 0) {
            add(
                    "arrayVoltage",
                    Severity.DANGER,
                    circuit,
                    "Cover the modules or wait for night before touching conductors; use only parts rated for this DC"
                            + " voltage.",
                    "On the coldest morning the strings reach %s of direct current: deadly, and there whenever there"
                            + " is light.",
                    coldest);
        }
    }

    private void stringFuses(int strings) {
        add(
                "stringFuses",
                Severity.WARNING,
                "string",
                "Fuse each string with gPV fuses no larger than the modules' series fuse rating.",
                "%s strings in parallel can feed more into a faulty one than its modules stand.",
                strings);
    }

    private void array(String circuit, Current shortCircuit, Power power) {
        add(
                "connectorsUnderLoad",
                Severity.DANGER,
                circuit,
                "Open the array disconnect first; use connectors of one make and type.",
                "A connector pulled apart under %s draws an arc that does not go out.",
                shortCircuit);
        add(
                "arrayFaults",
                Severity.WARNING,
                circuit,
                "Plan earth-fault and arc-fault protection, and rapid shutdown on buildings, where they are required.",
                "Damaged insulation in a %s array feeds a fault that no fuse may clear.",
                power);
        add(
                "windAndSnow",
                Severity.DANGER,
                "array",
                "Have roof or frame checked for wind, snow and the weight of the array itself.",
                "Wind lifts and snow loads the array; what falls off it can kill.");
        boolean exposed = design.brief().site().elevation().compareTo(EXPOSED_HEIGHT) > 0;
        WiringPlan wiring = design.wiring();
        boolean due = wiring != null && wiring.circuits().stream().anyMatch(CircuitSizing::surgeProtection);
        if (due || exposed || design.brief().array().cableLength().compareTo(LONG_RUN) > 0) {
            add(
                    "lightning",
                    Severity.WARNING,
                    circuit,
                    "Plan surge protective devices at both ends of the run, and bonding of frames.",
                    "With a run of %s at a height of %s a stroke nearby destroys controller and loads.",
                    design.brief().array().cableLength(),
                    design.brief().site().elevation());
        }
    }

    private void inverter() {
        if (design.inverter() == null) {
            return;
        }
        add(
                "neutralEarthBond",
                Severity.DANGER,
                "AC output",
                "Bond neutral to earth at exactly one point in each mode of operation; never twice when a generator or"
                        + " shore power is connected.",
                "Without the bond no residual-current device trips; with two, currents run where none should.");
        storedCharge(design.inverter().product());
    }

    private void storedCharge(String product) {
        add(
                "storedCharge",
                Severity.WARNING,
                "inverter",
                "Disconnect the source, wait as the maker says and measure before opening; pre-charge where the maker"
                        + " asks for it.",
                "The capacitors of %s stay charged after switching off, and spark when a bank is connected.",
                product);
    }

    private void system() {
        add(
                "preliminarySizes",
                Severity.WARNING,
                "all circuits",
                "Have conductors, overcurrent devices and disconnects sized and installed for the place.",
                "Figures here are preliminary: they choose parts that fit each other, not the installation.");
        if (design.bank() != null && design.brief().bank().location() == BankLocation.INDOORS) {
            add(
                    "bankIndoors",
                    Severity.NOTICE,
                    "bank",
                    "Keep the bank out of bedrooms and escape routes.",
                    "The bank stands in a heated room where people are.");
        }
    }
}
