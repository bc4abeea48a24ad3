package org.daybank.core.grid;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.Currency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What a grid operator charges and pays. With an export price, what is exported is sold; without one, it is credited
 * kilowatt-hour for kilowatt-hour (net metering).
 *
 * @param importPrice of energy from the grid, everything included that goes by the kilowatt-hour
 * @param unavoidablePrice part of importPrice that credits cannot pay
 * @param monthlyCharge due whatever flows; credits cannot pay it
 * @param creditPeriod how long credits last under net metering
 * @param yearOfAccountEnds month at whose end credits of a year expire
 * @param exportPrice of energy sold to the grid; absent under net metering
 * @param expiredCreditPrice paid for credits that expire; absent when they are lost
 * @param exportLimit most that the grid takes; absent without limit
 */
@RecordBuilder
public record Tariff(
        EnergyPrice importPrice,

        @Assumed(source = "none, in the currency of importPrice") @Nullable
        EnergyPrice unavoidablePrice,

        @Bounds(minimum = "0", maximum = "10000000000")
        @Assumed(source = "none, in the currency of importPrice")
        @Nullable
        Money monthlyCharge,

        @Assumed(value = "year", source = "custom where exports are credited")
        CreditPeriod creditPeriod,

        @Assumed(value = "december", source = "the calendar year")
        Month yearOfAccountEnds,

        @Nullable EnergyPrice exportPrice,
        @Nullable EnergyPrice expiredCreditPrice,

        @Bounds(minimum = "0 W", maximum = "100000 kW") @Nullable
        Power exportLimit)
        implements TariffBuilder.With, Resolvable<Tariff.Resolved> {
    /** Of a price that was divided and multiplied again. */
    private static final double ROUNDING = 1e-12;

    /**
     * The components whose defaults follow from others.
     *
     * @param unavoidablePrice part of importPrice that credits cannot pay
     * @param monthlyCharge due whatever flows
     */
    public record Resolved(EnergyPrice unavoidablePrice, Money monthlyCharge) {}

    /**
     * Validates the tariff.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or in another currency
     */
    public Tariff {
        creditPeriod = Defaults.otherwise(creditPeriod, Tariff.class, "creditPeriod");
        yearOfAccountEnds = Defaults.otherwise(yearOfAccountEnds, Tariff.class, "yearOfAccountEnds");
        Validation validation = Validation.of(
                Tariff.class,
                importPrice,
                unavoidablePrice,
                monthlyCharge,
                creditPeriod,
                yearOfAccountEnds,
                exportPrice,
                expiredCreditPrice,
                exportLimit);
        if (importPrice != null) {
            Currency currency = importPrice.currency();
            inCurrency(validation, "unavoidablePrice", currencyOf(unavoidablePrice), currency);
            inCurrency(validation, "monthlyCharge", monthlyCharge == null ? null : monthlyCharge.currency(), currency);
            inCurrency(validation, "exportPrice", currencyOf(exportPrice), currency);
            inCurrency(validation, "expiredCreditPrice", currencyOf(expiredCreditPrice), currency);
            withinImportPrice(validation, unavoidablePrice, importPrice);
        }
        validation.done();
    }

    private static void withinImportPrice(
            Validation validation, @Nullable EnergyPrice unavoidable, EnergyPrice importPrice) {
        validation.that(
                unavoidable == null
                        || unavoidable.minorUnits(unavoidable.per())
                                <= importPrice.minorUnits(unavoidable.per()) * (1 + ROUNDING),
                "unavoidablePrice",
                ProblemCode.INCONSISTENT,
                () -> "unavoidablePrice must be at most importPrice %s, of which it is a part, but was %s."
                        .formatted(importPrice.text(), unavoidable == null ? "" : unavoidable.text()));
    }

    private static @Nullable Currency currencyOf(@Nullable EnergyPrice price) {
        return price == null ? null : price.currency();
    }

    private static void inCurrency(Validation validation, String field, @Nullable Currency found, Currency required) {
        validation.that(
                found == null || found.equals(required),
                field,
                ProblemCode.CONFLICT,
                () -> "%s must be in the currency of importPrice, %s, but was in %s."
                        .formatted(field, required.getCurrencyCode(), found));
    }

    @Override
    public Resolved resolved() {
        Currency currency = importPrice.currency();
        return new Resolved(
                unavoidablePrice == null ? EnergyPrice.nothing(currency) : unavoidablePrice,
                monthlyCharge == null ? Money.zero(currency) : monthlyCharge);
    }

    /** Whether exports are credited rather than sold. */
    public boolean netMetering() {
        return exportPrice == null;
    }

    /** Whether credits end with a month. */
    boolean creditsEndWith(Month month) {
        return switch (creditPeriod) {
            case MONTH -> true;
            case YEAR -> month == yearOfAccountEnds;
            case UNLIMITED -> false;
        };
    }
}
