package org.daybank.core.design.search;

import static org.daybank.core.working.Message.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.catalog.StockLine;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.DesignRule;
import org.daybank.core.design.Wishes;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** The rule that every product is delivered within the time that the customer wishes; without such a wish it rejects nothing. */
public final class DeliveryRule {
    private final @Nullable TimeSpan limit;
    private final Map<String, StockLine> lines = new HashMap<>();

    /** Creates the rule for the stock of a catalogue. */
    public DeliveryRule(Catalog catalog, Wishes wishes) {
        this.limit = wishes.deliveredWithin();
        catalog.stock().forEach(line -> lines.put(line.model(), line));
    }

    BankFit applied(BankFit fit) {
        BankLayout layout = fit.layout();
        return limit == null ? fit : fit.and(checks(limit, fit.product(), layout == null ? 1 : layout.count()));
    }

    InverterFit applied(InverterFit fit) {
        return limit == null ? fit : fit.and(checks(limit, fit.product(), fit.count()));
    }

    StringInverterFit applied(StringInverterFit fit) {
        return limit == null ? fit : fit.and(checks(limit, fit.product(), fit.count()));
    }

    MicroinverterFit applied(MicroinverterFit fit) {
        return limit == null ? fit : fit.and(checks(limit, fit.product(), fit.count()));
    }

    /** For a controller and its modules. */
    ChargerFit applied(ChargerFit fit) {
        return limit == null
                ? fit
                : fit.and(checks(limit, fit.product(), fit.count()))
                        .and(checks(limit, fit.array().product(), fit.array().modules()));
    }

    /** The rule for a number of modules; empty without the wish. */
    List<Check> modules(String model, int count) {
        return limit == null ? List.of() : checks(limit, model, count);
    }

    /** Returns a failed check where less than the required number of a product is in stock and its lead time is unknown. */
    public Optional<Check> unavailable(String model, int count) {
        StockLine line = lines.get(model);
        return line == null || line.inStock() >= count || line.leadTime() != null
                ? Optional.empty()
                : Optional.of(Check.that(
                        DesignRule.DELIVERY,
                        false,
                        value("count", count),
                        value("model", model),
                        value("inStock", line.inStock())));
    }

    private List<Check> checks(TimeSpan wished, String model, int count) {
        StockLine line = lines.get(model);
        if (line == null) {
            return List.of(Check.that(
                            DesignRule.DELIVERY,
                            false,
                            value("model", model),
                            value("count", count),
                            value("wished", wished))
                    .variant("unknownStock"));
        }
        if (line.inStock() >= count) {
            return List.of(Check.atMost(
                    DesignRule.DELIVERY,
                    TimeSpan.ZERO,
                    wished,
                    value("count", count),
                    value("model", model),
                    value("inStock", line.inStock())));
        }
        TimeSpan lead = line.leadTime();
        return List.of(
                lead == null
                        ? Check.that(
                                        DesignRule.DELIVERY,
                                        false,
                                        value("count", count),
                                        value("model", model),
                                        value("inStock", line.inStock()),
                                        value("wished", wished))
                                .variant("unknownLeadTime")
                        : Check.atMost(
                                        DesignRule.DELIVERY,
                                        lead,
                                        wished,
                                        value("model", model),
                                        value("count", count),
                                        value("inStock", line.inStock()))
                                .variant("leadTime"));
    }
}
