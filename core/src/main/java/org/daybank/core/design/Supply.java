package org.daybank.core.design;

import static org.daybank.core.working.Message.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.catalog.StockLine;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** Holds products against the time within which the customer wants them; without such a wish they stay as they are. */
final class Supply {
    private final @Nullable TimeSpan within;
    private final Map<String, StockLine> lines = new HashMap<>();

    Supply(Catalog catalog, Wishes wishes) {
        this.within = wishes.deliveredWithin();
        catalog.stock().forEach(line -> lines.put(line.model(), line));
    }

    BankFit held(BankFit fit) {
        BankLayout layout = fit.layout();
        return within == null ? fit : fit.and(rules(within, fit.product(), layout == null ? 1 : layout.count()));
    }

    InverterFit held(InverterFit fit) {
        return within == null ? fit : fit.and(rules(within, fit.product(), fit.count()));
    }

    StringInverterFit held(StringInverterFit fit) {
        return within == null ? fit : fit.and(rules(within, fit.product(), fit.count()));
    }

    MicroinverterFit held(MicroinverterFit fit) {
        return within == null ? fit : fit.and(rules(within, fit.product(), fit.count()));
    }

    /** A controller and the modules behind it. */
    ChargerFit held(ChargerFit fit) {
        return within == null
                ? fit
                : fit.and(rules(within, fit.product(), fit.count()))
                        .and(rules(within, fit.array().product(), fit.array().modules()));
    }

    /** The rule that so many modules are there in time; none without the wish. */
    List<Check> modules(String model, int count) {
        return within == null ? List.of() : rules(within, model, count);
    }

    private List<Check> rules(TimeSpan asked, String model, int count) {
        StockLine line = lines.get(model);
        if (line != null && line.inStock() >= count) {
            return List.of(Check.atMost(
                    DesignRule.DELIVERY,
                    TimeSpan.ZERO,
                    asked,
                    value("model", model),
                    value("count", count),
                    value("inStock", line.inStock())));
        }
        TimeSpan lead = line == null ? null : line.leadTime();
        if (line == null || lead == null) {
            return List.of(Check.that(
                            DesignRule.DELIVERY,
                            false,
                            value("model", model),
                            value("count", count),
                            value(
                                    "stock",
                                    line == null ? "nothing is known of its stock" : line.inStock() + " are in stock"),
                            value("asked", asked))
                    .variant("v2"));
        }
        return List.of(Check.atMost(
                        DesignRule.DELIVERY,
                        lead,
                        asked,
                        value("model", model),
                        value("count", count),
                        value("inStock", line.inStock()))
                .variant("v2"));
    }
}
