package org.daybank.core.grid;

import java.util.Currency;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What energy costs. A price finer than the smallest coin is told for more energy: 28.71 EUR for 100 kWh.
 *
 * @param price of so much energy, zero or more
 * @param per so much energy
 */
public record EnergyPrice(
        Money price,

        @Bounds(minimum = "1 Wh", maximum = "1000000 kWh") @Assumed(value = "1 kWh", source = "how tariffs are told")
        Energy per) {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when the price is missing or below zero, or the energy out of range
     */
    public EnergyPrice {
        per = Defaults.otherwise(per, EnergyPrice.class, "per");
        new Validation()
                .required("price", price)
                .that(
                        price == null || price.minorUnits() >= 0,
                        "price",
                        ProblemCode.OUT_OF_RANGE,
                        "price must not be negative")
                .done();
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
