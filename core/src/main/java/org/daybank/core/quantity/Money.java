package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * An amount of money in whole minor units of one currency; never a binary fraction.
 *
 * <p>Adding amounts of two currencies is refused: rates of exchange are not known here.
 *
 * @param minorUnits the amount in the smallest unit of the currency, cents for the most part
 * @param currency the ISO 4217 currency
 */
public record Money(long minorUnits, Currency currency) implements Comparable<Money> {
    private static final Pattern AMOUNT = Pattern.compile("[+-]?\\d{1,14}(?:\\.\\d{1,4})?");

    /** Nothing, in a currency. */
    public static Money zero(Currency currency) {
        return new Money(0, currency);
    }

    /**
     * An amount such as {@code "129.00"} in a currency such as {@code "EUR"}.
     *
     * @throws QuantityFormatException when the amount is not a decimal number, has more decimals than the currency, or
     *     the currency is not an ISO 4217 code
     */
    public static Money of(String amount, String currencyCode) {
        Currency currency;
        try {
            currency = Currency.getInstance(currencyCode.strip().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException unknown) {
            throw new QuantityFormatException(
                    currencyCode,
                    "'%s' is not a currency: write an ISO 4217 code, as in 'EUR'"
                            .formatted(QuantityFormatException.shown(currencyCode)));
        }
        String trimmed = Decimals.tidied(amount);
        int decimals = Math.max(0, currency.getDefaultFractionDigits());
        if (AMOUNT.matcher(trimmed).matches()) {
            BigDecimal decimal = new BigDecimal(trimmed);
            if (decimal.stripTrailingZeros().scale() <= decimals) {
                return new Money(
                        decimal.setScale(decimals, RoundingMode.UNNECESSARY)
                                .unscaledValue()
                                .longValueExact(),
                        currency);
            }
        }
        throw new QuantityFormatException(
                amount,
                "'%s' is not an amount of %s: %swrite a decimal number with at most %s decimals, as in '129'"
                        .formatted(
                                QuantityFormatException.shown(amount),
                                currency.getCurrencyCode(),
                                Decimals.commaHint(amount),
                                decimals));
    }

    /**
     * Reads an amount followed by its currency: {@code "129.00 EUR"}.
     *
     * @throws QuantityFormatException when the text is not of that form
     */
    public static Money parse(CharSequence text) {
        String trimmed = Decimals.tidied(text);
        int space = trimmed.lastIndexOf(' ');
        if (space < 0) {
            throw new QuantityFormatException(
                    text,
                    "'%s' is not an amount of money: write the amount and its currency, as in '129.00 EUR'"
                            .formatted(QuantityFormatException.shown(text)));
        }
        return of(trimmed.substring(0, space), trimmed.substring(space + 1));
    }

    /** The amount in plain decimals of the currency's main unit: {@code 129.00}. */
    public String amount() {
        return BigDecimal.valueOf(minorUnits, Math.max(0, currency.getDefaultFractionDigits()))
                .toPlainString();
    }

    /**
     * Sum of the two.
     *
     * @throws IllegalArgumentException when the currencies differ
     * @throws ArithmeticException when the sum is beyond any amount that can be held
     */
    public Money plus(Money other) {
        requireSame(other);
        return new Money(Math.addExact(minorUnits, other.minorUnits), currency);
    }

    /**
     * This many times the amount.
     *
     * @throws ArithmeticException when the product is beyond any amount that can be held
     */
    public Money times(long count) {
        return new Money(Math.multiplyExact(minorUnits, count), currency);
    }

    /**
     * So many times the amount, to the nearest minor unit (a half goes to the even one).
     *
     * @throws ArithmeticException when the product is beyond any amount that can be held
     */
    public Money times(BigDecimal factor) {
        return new Money(
                BigDecimal.valueOf(minorUnits)
                        .multiply(factor)
                        .setScale(0, RoundingMode.HALF_EVEN)
                        .longValueExact(),
                currency);
    }

    /**
     * Difference of the two; negative when the other is larger.
     *
     * @throws IllegalArgumentException when the currencies differ
     * @throws ArithmeticException when the difference is beyond any amount that can be held
     */
    public Money minus(Money other) {
        requireSame(other);
        return new Money(Math.subtractExact(minorUnits, other.minorUnits), currency);
    }

    /**
     * By amount.
     *
     * @throws IllegalArgumentException when the currencies differ
     */
    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return Long.compare(minorUnits, other.minorUnits);
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "Amounts of two currencies do not mix: %s and %s".formatted(this, other));
        }
    }

    /** Amount and currency code, which {@link #parse} reads back to an equal value. */
    @Override
    public String toString() {
        return amount() + " " + currency.getCurrencyCode();
    }
}
