package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.List;
import java.util.Set;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.Diversion;
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
 * What can hurt someone or something in a design. A hazard appears when its cause is in the design, not always and not never;
 * each names the part or circuit, says what can happen here and what to do, and defers to local codes.
 */
final class Hazards {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    /** What the circuits tell and the design does not tell already. */
    private static final Set<HazardCode> OF_CIRCUITS_ALONE =
            Set.of(HazardCode.CIRCUIT_DOES_NOT_FIT, HazardCode.ALUMINIUM_TERMINALS);

    private static final Length LONG_RUN = Length.metres(30);
    private static final Length EXPOSED_HEIGHT = Length.metres(1000);

    private final HazardList hazards = new HazardList();
    private final SystemDesign design;

    private Hazards(SystemDesign design) {
        this.design = design;
    }

    /** The hazards of a complete design, the gravest first within each part; none while nothing is chosen. */
    static List<Hazard> of(SystemDesign design) {
        if (!design.complete()) {
            return List.of();
        }
        Hazards all = new Hazards(design);
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
            all.hazards.addAll(engine.hazards());
        }
        WiringPlan wiring = design.wiring();
        if (wiring != null) {
            all.hazards.addAll(wiring.hazards().stream()
                    .filter(hazard -> OF_CIRCUITS_ALONE.contains(hazard.code()))
                    .toList());
        }
        return all.hazards.all();
    }

    private void onBank(BankFit bank) {
        BankHazards.of(design, bank, hazards);
        Diversion diversion = SystemDesign.part(design.charger()).diversion();
        if (diversion != null) {
            hazards.addAll(List.of(diversion.hazard()));
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
            hazards.add(Hazard.of(HazardCode.REVERSE_POLARITY, circuit).variant("string"));
        }
    }

    private void grid() {
        hazards.add(Hazard.of(HazardCode.BACKFEED, "inverter to grid"));
        if (design.brief().kind() == SystemKind.GRID_BACKUP) {
            hazards.add(Hazard.of(HazardCode.BACKUP_PANEL, "essential loads panel"));
            hazards.add(Hazard.of(HazardCode.SAFETY_SUPPLY, "essential loads panel"));
        }
    }

    private void mobile() {
        if (design.brief().shore() != null) {
            hazards.add(Hazard.of(HazardCode.SHORE_CONNECTION, "shore inlet"));
        }
        hazards.add(Hazard.of(HazardCode.VEHICLE, "bank"));
        if (design.brief().alternator() != null) {
            hazards.add(Hazard.of(HazardCode.ALTERNATOR_LIMIT, "alternator"));
        }
    }

    private void arrayVoltage(Voltage coldest, String circuit) {
        if (coldest.compareTo(TOUCHABLE_DC) > 0) {
            hazards.add(Hazard.of(HazardCode.DIRECT_VOLTAGE, circuit, value("voltage", coldest)));
        }
    }

    private void stringFuses(int strings) {
        hazards.add(Hazard.of(HazardCode.STRING_FUSES, "string", value("strings", strings)));
    }

    private void array(String circuit, Current shortCircuit, Power power) {
        hazards.add(Hazard.of(HazardCode.CONNECTORS_UNDER_LOAD, circuit, value("shortCircuit", shortCircuit)));
        hazards.add(Hazard.of(HazardCode.ARRAY_FAULTS, circuit, value("power", power)));
        hazards.add(Hazard.of(HazardCode.WIND_AND_SNOW, "array"));
        boolean exposed = design.brief().resolved().site().elevation().compareTo(EXPOSED_HEIGHT) > 0;
        WiringPlan wiring = design.wiring();
        boolean due = wiring != null && wiring.circuits().stream().anyMatch(CircuitSizing::surgeProtection);
        if (due || exposed || design.brief().array().cableLength().compareTo(LONG_RUN) > 0) {
            hazards.add(Hazard.of(
                    HazardCode.SURGE_PROTECTION,
                    circuit,
                    value("length", design.brief().array().cableLength()),
                    value("elevation", design.brief().resolved().site().elevation())));
        }
    }

    private void inverter() {
        if (design.inverter() == null) {
            return;
        }
        hazards.add(Hazard.of(
                HazardCode.LIVE_OUTPUT,
                "AC output",
                value("voltage", design.brief().service().voltage())));
        hazards.add(Hazard.of(HazardCode.NEUTRAL_EARTH_BOND, "AC output"));
        storedCharge(design.inverter().product());
    }

    private void storedCharge(String product) {
        hazards.add(Hazard.of(HazardCode.STORED_CHARGE, "inverter", value("product", product)));
    }

    private void system() {
        hazards.add(Hazard.of(HazardCode.PRELIMINARY_SIZES, "all circuits"));
        if (design.bank() != null && design.brief().bank().location() == BankLocation.INDOORS) {
            hazards.add(Hazard.of(HazardCode.BANK_INDOORS, "bank"));
        }
    }
}
