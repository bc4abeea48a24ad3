package org.daybank.core.load;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.working.Table;

/** The electrical nature of a load, each with what is typical of it. */
public enum LoadKind {
    /** Heating elements and filament lamps. */
    RESISTIVE,
    /** Lamps with their own electronics. */
    LIGHTING,
    /** Switch-mode supplies: computers, chargers, radios. */
    ELECTRONICS,
    /** Electronics that object to a distorted waveform: audio, medical and measuring devices, laser printers. */
    SENSITIVE_ELECTRONICS,
    /** Refrigerators and freezers: thermostat, hard start. */
    COMPRESSOR,
    /** Motors started straight on line: pumps, fans, saw benches. */
    INDUCTION_MOTOR,
    /** Motors behind a soft starter or drive. */
    SOFT_START_MOTOR,
    /** Commutator motors: hand tools, vacuum cleaners, mixers. */
    UNIVERSAL_MOTOR;

    /**
     * What is typical of one kind.
     *
     * @param dutyCycle share of its hours in which it draws its power
     * @param powerFactor real over apparent power when running
     * @param startingMultiple starting over running volt-amperes
     * @param selfSwitching whether a thermostat or a pressure switch starts it
     * @param waveform the least it needs
     */
    public record Traits(
            Ratio dutyCycle, Ratio powerFactor, Ratio startingMultiple, boolean selfSwitching, Waveform waveform) {}

    /** What is typical of this kind. */
    public Traits traits() {
        return Objects.requireNonNull(Published.TRAITS.get(this));
    }

    /** Reads the table once, when first asked. */
    private static final class Published {
        private static final Map<LoadKind, Traits> TRAITS = read();

        private static Map<LoadKind, Traits> read() {
            Map<LoadKind, Traits> traits = new EnumMap<>(LoadKind.class);
            for (Table.Row row :
                    Table.resource(LoadKind.class, "load-kinds.csv").rows()) {
                traits.put(
                        row.value(LoadKind.class, "kind"),
                        new Traits(
                                row.value(Ratio.class, "dutyCycle"),
                                row.value(Ratio.class, "powerFactor"),
                                row.value(Ratio.class, "startingMultiple"),
                                row.value(Boolean.class, "selfSwitching"),
                                row.value(Waveform.class, "waveform")));
            }
            return traits;
        }
    }
}
