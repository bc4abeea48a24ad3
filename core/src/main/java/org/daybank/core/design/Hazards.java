package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

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
import org.daybank.core.working.HazardCode;

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
            all.hazards.add(Hazard.of(HazardCode.BANK_INDOORS, "bank"));
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
            storedCharge(strings.product());
            hazards.add(Hazard.of(HazardCode.REVERSE_POLARITY, circuit).variant("string"));
        }
    }

    private void grid() {
        hazards.add(Hazard.of(HazardCode.BACKFEED, "inverter to grid"));
        if (brief.kind() == SystemKind.GRID_BACKUP) {
            hazards.add(Hazard.of(HazardCode.BACKUP_PANEL, "essential loads panel"));
            hazards.add(Hazard.of(HazardCode.SAFETY_SUPPLY, "essential loads panel"));
        }
    }

    private void mobile() {
        if (brief.shore() != null) {
            hazards.add(Hazard.of(HazardCode.SHORE_CONNECTION, "shore inlet"));
        }
        hazards.add(Hazard.of(HazardCode.VEHICLE, "bank"));
        if (brief.alternator() != null) {
            hazards.add(Hazard.of(HazardCode.ALTERNATOR_LIMIT, "alternator"));
        }
    }

    private void arrayVoltage(Voltage coldest, String circuit) {
        if (coldest.compareTo(TOUCHABLE_DC) > 0) {
            hazards.add(Hazard.of(HazardCode.DIRECT_VOLTAGE, circuit, value("voltage", coldest)));
        }
    }

    private void array(String circuit, Current shortCircuit, Power power) {
        hazards.add(Hazard.of(HazardCode.CONNECTORS_UNDER_LOAD, circuit, value("shortCircuit", shortCircuit)));
        hazards.add(Hazard.of(HazardCode.ARRAY_FAULTS, circuit, value("power", power)));
        hazards.add(Hazard.of(HazardCode.WIND_AND_SNOW, "array"));
        boolean exposed = brief.resolved().site().elevation().compareTo(EXPOSED_HEIGHT) > 0;
        boolean due = wiring.circuits().stream().anyMatch(CircuitSizing::surgeProtection);
        if (due || exposed || brief.array().cableLength().compareTo(LONG_RUN) > 0) {
            hazards.add(Hazard.of(
                    HazardCode.SURGE_PROTECTION,
                    circuit,
                    value("length", brief.array().cableLength())));
        }
    }

    private void inverter(InverterFit inverter) {
        hazards.add(Hazard.of(
                HazardCode.LIVE_OUTPUT,
                "AC output",
                value("voltage", brief.service().voltage())));
        hazards.add(Hazard.of(HazardCode.NEUTRAL_EARTH_BOND, "AC output"));
        storedCharge(inverter.product());
    }

    private void storedCharge(String product) {
        hazards.add(Hazard.of(HazardCode.STORED_CHARGE, "inverter", value("product", product)));
    }
}
