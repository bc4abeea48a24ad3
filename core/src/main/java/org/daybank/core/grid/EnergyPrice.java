package org.daybank.core.grid;

import java.util.Currency;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * What energy costs. A price finer than the smallest coin is told for more energy: 28.71 EUR for 100 kWh.
 *
 * @param price of so much energy, zero or more
 * @param per so much energy
 */
public record EnergyPrice(
        @Bounds(minimum = "0", maximum = "10000000000") Money price,

        @Bounds(minimum = "1 Wh", maximum = "1000000 kWh") @Assumed(value = "1 kWh", source = "how tariffs are told")
        Energy per) {
    /**
     * Validates the price.
     *
     * @throws org.daybank.core.schema.InvalidInput when the price is missing, or a value is outside its bounds
     */
    public EnergyPrice {
        per = Defaults.otherwise(per, EnergyPrice.class, "per");
        Validation.of(EnergyPrice.class, price, per).done();
    }

    /** Energy for nothing. */
    static EnergyPrice nothing(Currency currency) {
        return new EnergyPrice(Money.zero(currency), Energy.kilowattHours(1));
    }

    /** The currency. */
    public Currency currency() {
        return price.currency();
    }

    /** Price of an energy, in the smallest unit of the currency, not rounded. */
    double minorUnits(Energy energy) {
        return price.minorUnits() * energy.dividedBy(per);
    }

    /** As in {@code 28.71 EUR / 100 kWh}. */
    String text() {
        return "%s / %s".formatted(price, per);
    }
}
