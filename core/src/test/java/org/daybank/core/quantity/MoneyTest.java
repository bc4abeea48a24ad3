package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
    private static final Currency EURO = Currency.getInstance("EUR");

    /** ISO 4217 minor units: 2 for the euro, none for the yen, 3 for the Kuwaiti dinar. */
    @ParameterizedTest
    @CsvSource({
        "129 EUR, 12900",
        "129.00 EUR, 12900",
        "129.5 eur, 12950",
        "-0.01 EUR, -1",
        "−3 EUR, -300",
        "0 EUR, 0",
        "129 JPY, 129",
        "1.234 KWD, 1234",
        "129.500000 EUR, -",
        "129\u00a0EUR, 12900"
    })
    void amountsAreHeldInMinorUnits(String text, String minorUnits) {
        if (minorUnits.equals("-")) {
            assertThatThrownBy(() -> Money.parse(text)).isInstanceOf(QuantityFormatException.class);
        } else {
            assertThat(Money.parse(text).minorUnits()).isEqualTo(Long.parseLong(minorUnits));
        }
    }

    @Test
    void tenthsAddUpExactly() {
        // in binary fractions 0.1 + 0.2 is not 0.3
        assertThat(Money.of("0.10", "EUR").plus(Money.of("0.20", "EUR"))).isEqualTo(Money.of("0.30", "EUR"));
        assertThat(Money.of("19.99", "EUR").times(3)).isEqualTo(Money.of("59.97", "EUR"));
    }

    @Test
    void moreDecimalsThanTheCurrencyHasAreRefused() {
        assertThatThrownBy(() -> Money.of("1.005", "EUR"))
                .hasMessage(
                        "'1.005' is not an amount of EUR: write a decimal number with at most 2 decimals, as in '129'");
        assertThatThrownBy(() -> Money.of("1.5", "JPY")).hasMessageContaining("at most 0 decimals");
        assertThat(Money.of("1.500", "EUR")).isEqualTo(Money.of("1.5", "EUR"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "129",
                "EUR",
                "129EUR",
                "129 Taler",
                "abc EUR",
                "1e3 EUR",
                "1 000 EUR",
                "123456789012345 EUR",
                "NaN EUR"
            })
    void whatIsNoAmountIsRefused(String text) {
        assertThatThrownBy(() -> Money.parse(text)).isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void aDecimalCommaIsToldApart() {
        assertThatThrownBy(() -> Money.parse("129,00 EUR"))
                .hasMessageContaining("the decimal sign is a point, not a comma");
        assertThatThrownBy(() -> Money.parse("129.00 Euro"))
                .hasMessageContaining("'Euro' is not a currency: write an ISO 4217 code");
    }

    @Test
    void theLargestAmountOfTheFinestCurrencyIsHeld() {
        assertThat(Money.of("99999999999999.9999", "CLF").minorUnits()).isEqualTo(999_999_999_999_999_999L);
    }

    @Test
    void aBrokenMultipleGoesToTheNearestMinorUnitAndAHalfToTheEvenOne() {
        Money price = Money.of("9.00", "EUR");
        // 9 EUR · 16.891 = 152.019 EUR
        assertThat(price.times(new BigDecimal("16.891"))).isEqualTo(Money.of("152.02", "EUR"));
        assertThat(Money.of("0.01", "EUR").times(new BigDecimal("2.5"))).isEqualTo(Money.of("0.02", "EUR"));
        assertThat(Money.of("0.01", "EUR").times(new BigDecimal("3.5"))).isEqualTo(Money.of("0.04", "EUR"));
        assertThatThrownBy(() -> new Money(Long.MAX_VALUE, EURO).times(new BigDecimal("1.5")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void aDifferenceMayBeNegative() {
        assertThat(Money.of("1.00", "EUR").minus(Money.of("1.25", "EUR"))).isEqualTo(Money.of("-0.25", "EUR"));
    }

    @Test
    void twoCurrenciesDoNotMix() {
        Money euro = Money.of("1", "EUR");
        Money franc = Money.of("1", "CHF");
        assertThatThrownBy(() -> euro.plus(franc))
                .hasMessage("Amounts of two currencies do not mix: 1.00 EUR and 1.00 CHF");
        assertThatThrownBy(() -> euro.minus(franc)).hasMessageContaining("two currencies");
        assertThatThrownBy(() -> euro.compareTo(franc)).hasMessageContaining("two currencies");
        assertThat(euro).isNotEqualTo(franc);
    }

    @Test
    void overflowIsRefused() {
        Money huge = new Money(Long.MAX_VALUE, EURO);
        assertThatThrownBy(() -> huge.plus(new Money(1, EURO))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> huge.times(2)).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest
    @CsvSource({"129.00 EUR", "-0.05 EUR", "129 JPY", "1.234 KWD", "0.00 EUR"})
    void textReadsBack(String text) {
        assertThat(Money.parse(text)).hasToString(text);
        assertThat(Money.zero(EURO)).hasToString("0.00 EUR").isLessThan(Money.of("0.01", "EUR"));
    }
}
