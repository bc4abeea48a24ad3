package org.daybank.core.inverter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Severity;

/** What can hurt someone where an array feeds the grid; each hazard appears only when its cause is there. */
final class GridHazards {
    /** DC above this is dangerous to touch; IEC 60364-4-41 takes 60 V where skin is wet and contact large. */
    private static final Voltage TOUCHABLE_DC = Voltage.volts(60);

    private GridHazards() {}

    static List<Hazard> of(GridInverterSelection selection) {
        List<Hazard> hazards = new ArrayList<>();
        List<StringInverterFit> strings = selection.stringInverters().ranked();
        Optional<Voltage> highest = strings.stream()
                .flatMap(fit -> fit.units().stream())
                .map(unit -> selection.extremes().coldestOpenCircuit(unit.longest()))
                .max(Comparator.naturalOrder());
        highest.filter(voltage -> voltage.compareTo(TOUCHABLE_DC) > 0)
                .ifPresent(
                        voltage -> hazards.add(
                                hazard(
                                        "directVoltage",
                                        Severity.DANGER,
                                        "array to inverter",
                                        "On the coldest morning the strings of one of the choices reach %s of direct current: deadly, and there whenever there is light."
                                                .formatted(voltage.rounded(3)),
                                        "Cover the modules or wait for night before touching conductors; never open a connector under load; plan rapid shutdown on buildings where it is required.")));
        if (!strings.isEmpty() || !selection.microinverters().ranked().isEmpty()) {
            hazards.add(
                    hazard(
                            "backfeed",
                            Severity.DANGER,
                            "inverter to grid",
                            "A service fed by an array is live from two sides: opening the main switch alone does not make it dead.",
                            "Use only inverters tested to stop when the grid is gone (IEC 62116); label both sources; have the grid operator agree before it is switched on."));
            hazards.add(hazard(
                    "preliminarySizes",
                    Severity.WARNING,
                    "all circuits",
                    "Currents here are the inverters' own; conductors, overcurrent devices and the panel that takes them are not sized yet.",
                    "Size conductors, devices and busbar for these currents and those of the main together."));
        }
        return List.copyOf(hazards);
    }

    private static Hazard hazard(String code, Severity severity, String subject, String text, String action) {
        return new Hazard(code, severity, subject, text, action + " " + Hazard.LOCAL_CODE);
    }
}
