package org.daybank.core.grid;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.Currency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
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

        @Assumed(source = "none") EnergyPrice unavoidablePrice,

        @Assumed(source = "none") Money monthlyCharge,

        @Assumed(value = "year", source = "custom where exports are credited")
        CreditPeriod creditPeriod,

        @Assumed(value = "december", source = "the calendar year")
        Month yearOfAccountEnds,

        @Nullable EnergyPrice exportPrice,
        @Nullable EnergyPrice expiredCreditPrice,
        @Nullable Power exportLimit)
        implements TariffBuilder.With {
    /** Of a price that was divided and multiplied again. */
    private static final double ROUNDING = 1e-12;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range, or in another currency
     */
    public Tariff {
        new Validation().required("importPrice", importPrice).done();
        Currency currency = importPrice.currency();
        unavoidablePrice = unavoidablePrice == null ? EnergyPrice.nothing(currency) : unavoidablePrice;
        monthlyCharge = monthlyCharge == null ? Money.zero(currency) : monthlyCharge;
        creditPeriod = Defaults.otherwise(creditPeriod, Tariff.class, "creditPeriod");
        yearOfAccountEnds = Defaults.otherwise(yearOfAccountEnds, Tariff.class, "yearOfAccountEnds");
        Validation checks = new Validation()
                .that(
                        monthlyCharge.minorUnits() >= 0,
                        "monthlyCharge",
                        ProblemCode.OUT_OF_RANGE,
                        "monthlyCharge must not be negative")
                .that(
                        unavoidablePrice.minorUnits(unavoidablePrice.per())
                                <= importPrice.minorUnits(unavoidablePrice.per()) * (1 + ROUNDING),
                        "unavoidablePrice",
                        ProblemCode.INCONSISTENT,
                        "unavoidablePrice %s must not be above importPrice %s, of which it is a part"
                                .formatted(unavoidablePrice.text(), importPrice.text()))
                .atLeast("exportLimit", exportLimit, Power.ZERO);
        inCurrency(checks, "unavoidablePrice", unavoidablePrice.currency(), currency);
        inCurrency(checks, "monthlyCharge", monthlyCharge.currency(), currency);
        inCurrency(checks, "exportPrice", exportPrice == null ? currency : exportPrice.currency(), currency);
        inCurrency(
                checks,
                "expiredCreditPrice",
                expiredCreditPrice == null ? currency : expiredCreditPrice.currency(),
                currency);
        checks.done();
    }

    private static void inCurrency(Validation checks, String field, Currency found, Currency currency) {
        checks.that(
                found.equals(currency),
                field,
                ProblemCode.CONFLICT,
                () -> "%s must be in the currency of importPrice, %s, but was in %s."
                        .formatted(field, currency.getCurrencyCode(), found.getCurrencyCode()));
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
