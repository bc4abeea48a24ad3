package org.daybank.core.sweep.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TextBufferProperties {
    @Property(tries = 20_000)
    void anyDoubleReadsBack(@ForAll long bits) {
        double number = Double.longBitsToDouble(bits);
        if (Double.isFinite(number)) {
            assertShortest(number);
        }
    }

    @Property(tries = 5_000)
    void numbersOfEverydayReadBack(@ForAll @DoubleRange(min = -1e6, max = 1e6) double number) {
        assertShortest(number);
        assertShortest(Math.round(number * 100) / 100.0);
    }

    @Example
    void edgesReadBack() {
        for (double number : new double[] {
            Double.MIN_VALUE,
            Double.MIN_VALUE * 2,
            Double.MIN_VALUE * 3,
            Double.MIN_NORMAL,
            Double.MAX_VALUE,
            2e-3,
            Double.parseDouble("1e23"),
            9.5e-3,
            0x1p52,
            0x1p53,
            0x1p54,
            1e21,
            1e22,
            123456789012345680.0,
            1e-6,
            1e-7,
            4.35,
            0.1 + 0.2
        }) {
            assertShortest(number);
            assertShortest(-number);
        }
    }

    @Example
    void numbersLookAsAPersonWritesThem() {
        assertThat(text(0)).isEqualTo("0");
        assertThat(text(-0.0)).isEqualTo("0");
        assertThat(text(3)).isEqualTo("3");
        assertThat(text(-12.5)).isEqualTo("-12.5");
        assertThat(text(0.001)).isEqualTo("0.001");
        assertThat(text(0.000001)).isEqualTo("0.000001");
        assertThat(text(2e-3)).isEqualTo("0.002");
        assertThat(text(1e15)).isEqualTo("1000000000000000");
        assertThat(text(1e20)).isEqualTo("100000000000000000000");
        assertThat(text(1.5e300)).isEqualTo("1.5e300");
        assertThat(text(1e300)).isEqualTo("1e300");
        assertThat(text(2.5e-9)).isEqualTo("2.5e-9");
    }

    /** It reads back, and has as many digits as another implementation of shortest decimals finds. */
    private static void assertShortest(double number) {
        String text = text(number);
        assertThat(Double.parseDouble(text)).isEqualTo(number + 0.0);
        String other = NumberOutput.toString(number, true);
        assertThat(new BigDecimal(text)).isEqualByComparingTo(new BigDecimal(other));
    }

    private static String text(double number) {
        TextBuffer text = new TextBuffer();
        text.add(number);
        return text.toString();
    }
}
