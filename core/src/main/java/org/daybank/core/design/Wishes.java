package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ControllerFunction;
import org.daybank.core.inverter.InverterFunction;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What the customer wants besides.
 *
 * @param nominalVoltage 12, 24 or 48 V; absent when the planner may choose
 * @param chemistries that may be offered; all when left out
 * @param controllerFunctions asked of the charge controller besides charging
 * @param inverterFunctions asked of the inverter besides AC
 * @param availability least share of the hours in which every load gets all it asks, as simulation shows it; absent when
 *     keeping the rules is enough
 * @param deliveredWithin time within which every part is to be there, up to two years; nothing for what is in stock; absent
 *     when it may take any time
 */
@RecordBuilder
public record Wishes(
        @Nullable Voltage nominalVoltage,
        @Assumed(source = "every chemistry may be offered") List<Chemistry> chemistries,
        @Assumed(source = "none asked for") List<ControllerFunction> controllerFunctions,
        @Assumed(source = "none asked for") List<InverterFunction> inverterFunctions,
        @Nullable Ratio availability,
        @Nullable TimeSpan deliveredWithin)
        implements WishesBuilder.With {
    /** The nominal voltages that banks are built for, lowest first. */
    static final List<Voltage> VOLTAGES = List.of(Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when a value can never be right
     */
    public Wishes {
        chemistries = chemistries == null ? List.of(Chemistry.values()) : List.copyOf(chemistries);
        controllerFunctions = List.copyOf(Objects.requireNonNullElse(controllerFunctions, List.of()));
        inverterFunctions = List.copyOf(Objects.requireNonNullElse(inverterFunctions, List.of()));
        new Validation()
                .that(
                        nominalVoltage == null || VOLTAGES.contains(nominalVoltage),
                        "nominalVoltage",
                        "outOfRange",
                        "nominalVoltage must be 12 V, 24 V or 48 V but is " + nominalVoltage)
                .within("availability", availability, Ratio.ZERO, Ratio.ONE)
                .within("deliveredWithin", deliveredWithin, TimeSpan.ZERO, TimeSpan.days(730))
                .notEmpty("chemistries", chemistries)
                .done();
    }

    /** No wish at all. */
    public static Wishes none() {
        return new Wishes(null, List.of(Chemistry.values()), List.of(), List.of(), null, null);
    }

    /** Returns the system nominal voltages to search, lowest first. */
    public List<Voltage> voltages() {
        return nominalVoltage == null ? VOLTAGES : List.of(nominalVoltage);
    }
}
