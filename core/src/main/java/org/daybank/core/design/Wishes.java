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
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
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
        @Bounds(minimum = "12 V", maximum = "48 V") @Nullable
        Voltage nominalVoltage,

        @Bounds(minimumItems = 1, maximumItems = 20) @Assumed(source = "every chemistry may be offered")
        List<Chemistry> chemistries,

        @Bounds(maximumItems = 20) @Assumed(source = "none required")
        List<ControllerFunction> controllerFunctions,

        @Bounds(maximumItems = 20) @Assumed(source = "none required")
        List<InverterFunction> inverterFunctions,

        @Bounds(minimum = "0", maximum = "1") @Nullable Ratio availability,

        @Bounds(minimum = "0 d", maximum = "730 d") @Nullable
        TimeSpan deliveredWithin)
        implements WishesBuilder.With {
    /** The nominal voltages that banks are built for, lowest first. */
    static final List<Voltage> VOLTAGES = List.of(Voltage.volts(12), Voltage.volts(24), Voltage.volts(48));

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is out of range
     */
    public Wishes {
        chemistries = chemistries == null ? List.of(Chemistry.values()) : chemistries;
        controllerFunctions = Objects.requireNonNullElse(controllerFunctions, List.of());
        inverterFunctions = Objects.requireNonNullElse(inverterFunctions, List.of());
        Validation checks = Validation.of(
                Wishes.class,
                nominalVoltage,
                chemistries,
                controllerFunctions,
                inverterFunctions,
                availability,
                deliveredWithin);
        customary(checks, nominalVoltage).done();
        chemistries = List.copyOf(chemistries);
        controllerFunctions = List.copyOf(controllerFunctions);
        inverterFunctions = List.copyOf(inverterFunctions);
    }

    /** Refuses a nominal voltage within the accepted range that no bank is built for. */
    static Validation customary(Validation checks, @Nullable Voltage nominalVoltage) {
        return checks.that(
                nominalVoltage == null
                        || nominalVoltage.compareTo(VOLTAGES.get(0)) < 0
                        || nominalVoltage.compareTo(VOLTAGES.get(VOLTAGES.size() - 1)) > 0
                        || VOLTAGES.contains(nominalVoltage),
                "nominalVoltage",
                ProblemCode.OUT_OF_RANGE,
                "nominalVoltage must be 12 V, 24 V or 48 V, but was " + nominalVoltage + ".");
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
