package org.daybank.core.design;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.quantity.Money;
import org.daybank.core.working.Assessment;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;

/**
 * The modules of a catalogue, each in as many as are needed, with the controller or the inverter of the design.
 *
 * @param ranked those that fit, cheapest first with what they are connected to, then by model
 * @param rejected the others, with every rule they break, in the order of the catalogue
 */
public record ModuleSelection(List<Choice> ranked, List<Rejection> rejected) {
    /** Keeps copies. */
    public ModuleSelection {
        ranked = List.copyOf(ranked);
        rejected = List.copyOf(rejected);
    }

    /**
     * So many of one module.
     *
     * @param product model of the module
     * @param modules how many
     * @param connectedTo model of the controllers or inverters
     * @param count how many of these
     * @param price of both
     * @param checks every rule, kept
     */
    public record Choice(String product, int modules, String connectedTo, int count, Money price, List<Check> checks)
            implements Assessment {
        /** Keeps a copy. */
        public Choice {
            checks = List.copyOf(checks);
        }
    }

    /** On a controller. */
    static ModuleSelection ofFits(Stream<ChargerFit> fits) {
        return of(fits.map(fit -> new Choice(
                fit.array().product(),
                fit.array().modules(),
                fit.product(),
                fit.count(),
                fit.priceWithArray(),
                fit.checks())));
    }

    /** Behind inverters that feed the grid. */
    static ModuleSelection ofOptions(Stream<GridOption> options) {
        return of(options.map(option -> new Choice(
                option.module().model(),
                option.array().modules(),
                option.product(),
                option.count(),
                option.price(),
                option.checks())));
    }

    private static ModuleSelection of(Stream<Choice> choices) {
        List<Choice> all = choices.toList();
        return new ModuleSelection(
                Assessment.ranked(all, Comparator.comparing(Choice::price)), Assessment.rejected(all));
    }
}
