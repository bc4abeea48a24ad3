package org.daybank.core.design;

import java.util.List;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.Diversion;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.UnitStrings;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.wiring.CircuitSizing;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/**
 * The hazards of a design. A hazard is present exactly when its cause is in the design; each names the part or circuit, says
 * what can happen there and what to do, and defers to local codes.
 */
final class Hazards {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    private static final Length LONG_RUN = Length.metres(30);
    private static final Length EXPOSED_HEIGHT = Length.metres(1000);

    private final HazardList hazards = new HazardList();
    private final DesignBrief brief;
    private final WiringPlan wiring;

    private Hazards(DesignBrief brief, WiringPlan wiring) {
        this.brief = brief;
        this.wiring = wiring;
    }

    /** The hazards of a system on a bank, the gravest first within each part. */
    static List<Hazard> of(DesignBrief brief, BatterySystem system) {
        Hazards all = new Hazards(brief, system.wiring());
        BankHazards.of(brief, system, all.hazards);
        Diversion diversion = system.chargeController().diversion();
        if (diversion != null) {
            all.hazards.addAll(List.of(diversion.hazard()));
        }
        ArrayLayout array = system.array();
        all.arrayVoltage(system.moduleExtremes().coldestOpenCircuit(array.series()), "array to controller");
        all.array("array to controller", array.shortCircuitCurrent(), array.power());
        system.inverter().ifPresent(all::inverter);
        switch (brief.kind()) {
            case STAND_ALONE -> {}
            case MOBILE -> all.mobile();
            case GRID_INTERACTIVE, GRID_BACKUP -> all.grid();
        }
        if (brief.bank().location() == BankLocation.INDOORS) {
            all.hazards.add(
                    "bankIndoors",
                    Severity.NOTICE,
                    "bank",
                    "Keep the bank out of bedrooms and escape routes.",
                    "The bank stands indoors, where people are.");
        }
        system.generator().ifPresent(generator -> all.hazards.addAll(generator.hazards()));
        all.hazards.addMissing(system.wiring().hazards());
        return all.hazards.all();
    }

    /** The hazards of an array that feeds the grid, the gravest first within each part. */
    static List<Hazard> of(DesignBrief brief, GridSystem system) {
        Hazards all = new Hazards(brief, system.wiring());
        all.feed(system);
        all.grid();
        all.hazards.addMissing(system.wiring().hazards());
        return all.hazards.all();
    }

    private void feed(GridSystem system) {
        ModuleExtremes extremes = system.moduleExtremes();
        StringInverterFit strings = system.stringInverters().orElse(null);
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
        array(circuit, extremes.module().shortCircuitCurrent().times(together), system.arrayPower());
        if (strings != null) {
            storedCharge("The capacitors of %s hold the array's voltage after switching off.", strings.product());
            hazards.add(
                    "reversePolarity",
                    Severity.WARNING,
                    circuit,
                    "Measure voltage and polarity of each string before it is connected.",
                    together > 1
                            ? "A string connected the wrong way round destroys the inverter, or is fed by the others."
                            : "A string connected the wrong way round destroys the inverter.");
        }
    }

    private void grid() {
        hazards.add(
                "backfeed",
                Severity.DANGER,
                "inverter to grid",
                "Use only inverters tested to stop when the grid is gone (IEC 62116); label both sources; have the"
                        + " grid operator agree before it is switched on.",
                "A service fed by an array or a bank is live from two sides: opening the main switch alone does not"
                        + " make it dead.");
        if (brief.kind() == SystemKind.GRID_BACKUP) {
            hazards.add(
                    "backupPanel",
                    Severity.DANGER,
                    "essential loads panel",
                    "Keep neutral and earth of the panel as the inverter's maker shows for both modes; lock the grid"
                            + " out by the inverter's own transfer or a listed switch.",
                    "While the grid is away the panel stays live from the bank; a second path to the grid would feed"
                            + " the street.");
            hazards.add(
                    "safetySupply",
                    Severity.WARNING,
                    "essential loads panel",
                    "Give medical devices, emergency lighting and alarms the supply of their own that codes ask for.",
                    "This backup ends when the bank is empty or the inverter fails: no life may hang on it.");
        }
    }

    private void mobile() {
        if (brief.shore() != null) {
            hazards.add(
                    "shoreConnection",
                    Severity.DANGER,
                    "shore inlet",
                    "Use an inlet with residual-current protection, an isolation transformer on boats, and unplug at"
                            + " the post first, at the vehicle last.",
                    "A reversed or unearthed post makes hull or body live; with shore connected the inverter must not"
                            + " bond neutral to earth a second time.");
        }
        hazards.add(
                "vehicle",
                Severity.DANGER,
                "bank",
                "Bolt batteries and modules down for braking and crash; fuse every cable that leaves the bank within a"
                        + " hand's breadth of it.",
                "In a vehicle cables chafe and loads shift: a chafed cable draws the bank's short-circuit current"
                        + " through the body.");
        if (brief.alternator() != null) {
            hazards.add(
                    "alternatorLimit",
                    Severity.DANGER,
                    "alternator",
                    "Charge through a DC converter that limits current and stops before the battery cuts itself off.",
                    "Without a limit an alternator feeds an empty bank with all it has and can burn; cut off under load"
                            + " its voltage surge destroys electronics.");
        }
    }

    private void arrayVoltage(Voltage coldest, String circuit) {
        if (coldest.compareTo(TOUCHABLE_DC) > 0) {
            hazards.add(
                    "directVoltage",
                    Severity.DANGER,
                    circuit,
                    "Cover the modules or wait for night, and measure, before touching conductors; use only parts rated"
                            + " for this DC voltage.",
                    "On the coldest morning the strings reach %s of direct current: deadly, and there whenever there"
                            + " is light.",
                    coldest);
        }
    }

    private void array(String circuit, Current shortCircuit, Power power) {
        hazards.add(
                "connectorsUnderLoad",
                Severity.DANGER,
                circuit,
                "Open the array disconnect first; use connectors of one make and type.",
                "A connector pulled apart under %s draws an arc that does not go out.",
                shortCircuit);
        hazards.add(
                "arrayFaults",
                Severity.DANGER,
                circuit,
                "Plan earth-fault and arc-fault protection, and rapid shutdown on buildings, where they are required.",
                "Damaged insulation in an array of %s feeds a fault that can start a fire and that no fuse may clear.",
                power);
        hazards.add(
                "windAndSnow",
                Severity.DANGER,
                "array",
                "Have roof or frame checked for wind, snow and the weight of the array itself; whoever works on"
                        + " a roof must be secured against falling.",
                "Wind lifts and snow loads the array; what falls off it can kill.");
        boolean exposed = brief.site().elevation().compareTo(EXPOSED_HEIGHT) > 0;
        boolean due = wiring.circuits().stream().anyMatch(CircuitSizing::surgeProtection);
        if (due || exposed || brief.array().cableLength().compareTo(LONG_RUN) > 0) {
            hazards.add(
                    "surgeProtection",
                    Severity.WARNING,
                    circuit,
                    "Plan surge protective devices at both ends of the run, and bonding of frames.",
                    "With a run of %s, %s above the sea, a stroke nearby can destroy the electronics at both ends.",
                    brief.array().cableLength(),
                    brief.site().elevation());
        }
    }

    private void inverter(InverterFit inverter) {
        hazards.add(
                "liveOutput",
                Severity.DANGER,
                "AC output",
                "Switch the inverter off, disconnect the bank, secure both and measure before touching conductors; fit"
                        + " residual-current protection.",
                "The inverter makes %s by itself, with no other supply near: touching it can kill.",
                brief.service().voltage());
        hazards.add(
                "neutralEarthBond",
                Severity.DANGER,
                "AC output",
                "Bond neutral to earth at exactly one point in each mode of operation; never twice when a generator,"
                        + " shore power or the grid is connected.",
                "Without the bond no residual-current device trips; with two, currents run where none should.");
        storedCharge(
                "The capacitors of %s stay charged after switching off, and spark when a bank is connected.",
                inverter.product());
    }

    private void storedCharge(String text, String product) {
        hazards.add(
                "storedCharge",
                Severity.DANGER,
                "inverter",
                "Disconnect the source, wait as the maker says and measure before opening; pre-charge where the maker"
                        + " asks for it.",
                text,
                product);
    }
}
