package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;

/** Text goes both ways without loss, whatever the dimension, the unit and the size of the number. */
class QuantityTextProperties {

    @Property(tries = 2000)
    void printedTextReadsBackToAnEqualValue(
            @ForAll("dimensions") Dimension dimension, @ForAll("numbers") double number) {
        Quantity value = dimension.ofBase().apply(inDomain(dimension, number));

        assertThat(dimension.parse().apply(value.toString())).isEqualTo(value).hasSameHashCodeAs(value);
    }

    @Property
    void spellingsOfAUnitMeanTheSame(@ForAll("dimensions") Dimension dimension, @ForAll("decimals") BigDecimal number) {
        String amount = number.abs().toPlainString();
        for (Unit unit : dimension.units()) {
            Quantity byCode = dimension.parse().apply(number.abs() + " " + unit.code());
            for (String spelling : Dimension.spellings(unit)) {
                assertThat(dimension.parse().apply(amount + " " + spelling)).isEqualTo(byCode);
                // 1/K begins with a digit and needs its space
                if (!Character.isDigit(spelling.charAt(0))) {
                    assertThat(dimension.parse().apply(amount + spelling)).isEqualTo(byCode);
                }
            }
        }
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void aNumberOfAUnitComesBackFromIt(
            @ForAll("dimensions") Dimension dimension, @ForAll("decimals") BigDecimal number) {
        double amount = number.abs().doubleValue();
        for (Unit unit : dimension.units()) {
            double base =
                    dimension.parse().apply(number.abs() + " " + unit.code()).baseValue();
            double back = unit.definition().scale().fromBase(base);
            // two roundings of the number, and of the zero of the temperature scales
            assertThat(back).isCloseTo(amount, within(4 * Math.ulp(amount) + 4 * Math.ulp(500)));
        }
    }

    @Property(tries = 2000)
    void theSameAmountIsEqualWhateverThePrefix(@ForAll("decimals") BigDecimal number) {
        assertThat(Power.parse(number + " kW")).isEqualTo(Power.parse(number.movePointRight(3) + " W"));
        assertThat(Power.parse(number + " mW")).isEqualTo(Power.parse(number.movePointLeft(3) + " W"));
        assertThat(Energy.parse(number + " MWh")).isEqualTo(Energy.parse(number.movePointRight(3) + " kWh"));
        assertThat(Charge.parse(number + " mAh")).isEqualTo(Charge.parse(number.movePointLeft(3) + " Ah"));
        assertThat(Voltage.parse(number + " mV")).isEqualTo(Voltage.parse(number.movePointLeft(6) + " kV"));
        assertThat(Length.parse(number + " mm")).isEqualTo(Length.parse(number.movePointLeft(6) + " km"));
        assertThat(TemperatureCoefficient.parse(number + " %/K"))
                .isEqualTo(TemperatureCoefficient.parse(number.movePointLeft(2) + " 1/K"));
        assertThat(Ratio.parse(number + " %"))
                .isEqualTo(Ratio.parse(number.movePointLeft(2).toString()));
    }

    @Property(tries = 1000)
    void orderIsThatOfTheNumbers(
            @ForAll("dimensions") Dimension dimension, @ForAll("numbers") double one, @ForAll("numbers") double other) {
        double a = inDomain(dimension, one) + 0.0;
        double b = inDomain(dimension, other) + 0.0;

        assertThat(Integer.signum(
                        compare(dimension.ofBase().apply(a), dimension.ofBase().apply(b))))
                .isEqualTo(a < b ? -1 : a > b ? 1 : 0);
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    void roundedTextIsCloseToTheValue(
            @ForAll("dimensions") Dimension dimension,
            @ForAll("decimals") BigDecimal number,
            @ForAll @IntRange(min = 1, max = 9) int digits) {
        Quantity value =
                dimension.ofBase().apply(inDomain(dimension, number.abs().doubleValue()));

        double rounded = dimension.parse().apply(value.rounded(digits)).baseValue();
        // half a unit of the last digit is at most 5 · 10^-n of the value
        assertThat(rounded)
                .isCloseTo(value.baseValue(), within(5.001 * Math.pow(10, -digits) * Math.abs(value.baseValue())));
    }

    @Property(tries = 5000)
    void roundedTextIsTheWrittenNumberRoundedHalfUp(
            @ForAll @BigRange(min = "0.0002", max = "998") @net.jqwik.api.constraints.Scale(5) BigDecimal written,
            @ForAll @IntRange(min = 1, max = 9) int digits) {
        Charge charge = Charge.parse(written + " Ah");

        String[] words = charge.rounded(digits).split(" ", -1);
        BigDecimal rounded = written.round(new MathContext(digits));
        assertThat(words[1]).isEqualTo("Ah");
        assertThat(new BigDecimal(words[0])).isEqualByComparingTo(rounded);
        assertThat(words[0].length())
                .isLessThanOrEqualTo(rounded.toPlainString().length());
    }

    @Property
    void latitudesAndLongitudesReadBack(@ForAll("numbers") double number) {
        Latitude latitude = Latitude.degrees(Math.IEEEremainder(number, 180));
        Longitude longitude = Longitude.degrees(Math.IEEEremainder(number, 360));

        assertThat(Latitude.parse(latitude.toString())).isEqualTo(latitude);
        assertThat(Longitude.parse(longitude.toString())).isEqualTo(longitude);
    }

    @Property
    void ratiosReadBack(@ForAll("numbers") double number) {
        assertThat(Ratio.parse(Ratio.of(number).toString())).isEqualTo(Ratio.of(number));
    }

    @Provide
    Arbitrary<Dimension> dimensions() {
        return Arbitraries.of(Dimension.ALL);
    }

    /** Any finite number there is, and often one that a person would write. */
    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite),
                decimals().map(BigDecimal::doubleValue),
                Arbitraries.of(
                        0.0, -0.0, Double.MIN_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, 0.1, 999.9999999999999));
    }

    @Provide
    Arbitrary<BigDecimal> decimals() {
        return Arbitraries.bigDecimals()
                .between(new BigDecimal("-1000000"), new BigDecimal("1000000"))
                .ofScale(9);
    }

    private static double inDomain(Dimension dimension, double number) {
        return number < dimension.least() ? Math.abs(number) : number;
    }

    @SuppressWarnings("unchecked")
    private static int compare(Quantity a, Quantity b) {
        return ((Comparable<Object>) a).compareTo(b);
    }
}
