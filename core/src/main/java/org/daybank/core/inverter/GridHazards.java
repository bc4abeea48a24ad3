package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.HazardCode;

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
                .ifPresent(voltage -> hazards.add(
                        Hazard.of(HazardCode.DIRECT_VOLTAGE, "array to inverter", value("voltage", voltage))));
        if (!strings.isEmpty() || !selection.microinverters().ranked().isEmpty()) {
            hazards.add(Hazard.of(HazardCode.BACKFEED, "inverter to grid"));
            hazards.add(Hazard.of(HazardCode.PRELIMINARY_SIZES, "all circuits"));
        }
        return List.copyOf(hazards);
    }
}
