package org.daybank.core.load;

import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Table;

/**
 * What a planner meets when no name plate is at hand.
 *
 * @param load ready to stand in a list of loads
 * @param source where its figures come from
 */
public record TypicalLoad(Load load, String source) {

    /** The bundled list, lamp to borehole pump. */
    public static List<TypicalLoad> list() {
        return Published.LIST;
    }

    private static TypicalLoad of(Table.Row row) {
        Load load = LoadBuilder.builder()
                .name(row.text("name"))
                .kind(row.value(LoadKind.class, "kind"))
                .supply(row.value(Supply.class, "supply"))
                .power(Power.watts(row.value(Double.class, "power_W")))
                .hoursPerDay(row.value(Double.class, "hoursPerDay_h"))
                .dutyCycle(row.value(Ratio.class, "dutyCycle"))
                .startingMultiple(row.value(Ratio.class, "startingMultiple"))
                .powerFactor(row.value(Ratio.class, "powerFactor"))
                .selfSwitching(row.value(Boolean.class, "selfSwitching"))
                .waveform(row.value(Waveform.class, "waveform"))
                .standby(Power.watts(row.value(Double.class, "standby_W")))
                .build();
        return new TypicalLoad(load, sources(row.text("source")));
    }

    private static String sources(String letters) {
        return String.join(
                "; ",
                List.of(letters.split(" ", -1)).stream()
                        .map(letter -> switch (letter) {
                            case "N" -> "name plates and energy labels customary for the appliance";
                            case "M" -> "manufacturers' motor data";
                            case "D" -> "duty cycles customary for thermostats";
                            case "S" -> "standby measurements";
                            default -> throw new IllegalStateException("no source " + letter);
                        })
                        .toList());
    }

    /** Reads the list once, when first asked. */
    private static final class Published {
        private static final List<TypicalLoad> LIST =
                Table.resource(TypicalLoad.class, "typical-loads.csv").rows().stream()
                        .map(TypicalLoad::of)
                        .toList();
    }
}
