package org.daybank.core.design;

import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.Money;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/**
 * The modules of a catalogue, each in the number required, with the charge controller or the inverter of the design.
 *
 * @param ranked those that fit, cheapest first with what they are connected to, then by model
 * @param rejected the others, with every rule they fail, in the order of the catalogue
 */
public record ModuleSelection(List<Choice> ranked, List<Rejection> rejected) {
    /** Keeps copies. */
    public ModuleSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /**
     * A number of one module.
     *
     * @param product model of the module
     * @param modules how many
     * @param connectedTo model of the controllers or inverters
     * @param count how many of these
     * @param price of both
     * @param checks every rule, all passed
     */
    public record Choice(String product, int modules, String connectedTo, int count, Money price, List<Check> checks)
            implements Assessment {
        /** Keeps a copy. */
        public Choice {
            checks = List.copyOf(checks);
        }
    }

    /** Returns the modules, ranked and rejected. */
    public static ModuleSelection of(List<Choice> evaluated) {
        return new ModuleSelection(
                Assessment.ranked(evaluated, Comparator.comparing(Choice::price)), Assessment.rejected(evaluated));
    }
}
