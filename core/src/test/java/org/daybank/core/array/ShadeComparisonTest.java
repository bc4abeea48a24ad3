package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** Cases whose answer can be bounded by hand. */
class ShadeComparisonTest {
    private static final ShadePolicy POLICY = ShadePolicy.standard();

    /** 400 W: 33 V · 12.12 A. */
    private static final PvModule MODULE = PvModuleBuilder.builder()
            .model("M400")
            .power(Power.watts(400))
            .openCircuitVoltage(Voltage.volts(39.5))
            .shortCircuitCurrent(Current.amperes(12.8))
            .maximumPowerVoltage(Voltage.volts(33))
            .maximumPowerCurrent(Current.amperes(12.12))
            .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(-0.26))
            .powerCoefficient(TemperatureCoefficient.percentPerKelvin(-0.34))
            .cellsInSeries(54)
            .systemVoltage(Voltage.volts(1500))
            .seriesFuse(Current.amperes(25))
            .price(Money.of("150", "EUR"))
            .build();

    /** What the sheet says: 33 V · 12.12 A = 399.96 W. */
    private static final double BEST = 33 * 12.12;

    private static final StringInSun HALF_SHADED =
            new StringInSun(List.of(modules("sunny", 1000, 5), modules("shaded", 300, 5)));

    private static ModuleInSun modules(String name, double wattsPerSquareMetre, int count) {
        return new ModuleInSun(
                name, MODULE, Irradiance.wattsPerSquareMetre(wattsPerSquareMetre), Temperature.celsius(25), count);
    }

    private static ShadeComparison compare(ModuleInSun... groups) {
        return ShadeComparison.of(new StringInSun(List.of(groups)), POLICY);
    }

    @Test
    void halfTheModulesInShadeArePassedBy() {
        ShadeComparison half = ShadeComparison.of(HALF_SHADED, POLICY);

        // five at full power less half a volt each, 5 · 399.96 W − 2.5 V · 12.12 A = 1969.5 W, against at most 3.84 A ·
        // 395 V
        assertThat(half.bypassed()).containsExactly("shaded");
        assertThat(half.stringCurrent().amperes()).isCloseTo(12.12, within(0.1));
        assertThat(half.limiting()).isNull();
    }

    @Test
    void inEvenLightNothingIsLost() {
        ShadeComparison even = compare(modules("all", 1000, 10));

        // the solver's tolerance of the fit: the sheet's point is met to 1e-6
        assertThat(even.stringPower().watts()).isCloseTo(10 * BEST, within(1e-3));
        assertThat(even.moduleLevelPower().watts()).isCloseTo(10 * BEST, within(1e-3));
        assertThat(even.shareLost().fraction()).isCloseTo(0, within(1e-9));
        assertThat(even.stringCurrent().amperes()).isCloseTo(12.12, within(1e-3));
        assertThat(even.stringVoltage().volts()).isCloseTo(330, within(0.05));
        assertThat(even.limiting()).isNull();
        assertThat(even.bypassed()).isEmpty();
        assertThat(even.modules()).hasSize(1);
    }

    @Test
    void aDarkModuleCostsItsDiodesAndNoMore() {
        ShadeComparison shaded = compare(modules("open", 1000, 9), modules("covered", 0, 1));

        // the string gives I · (9 · V(I) − 0.5 V): at least what it gives at the others' best current, at most 9 · P
        double atTheirBest = 9 * BEST - 0.5 * 12.12;
        assertThat(shaded.stringPower().watts()).isBetween(atTheirBest - 1e-3, 9 * BEST);
        // its own best current lies no more than a little lower: the gain over theirs is of second order
        assertThat(shaded.stringPower().watts()).isCloseTo(atTheirBest, within(0.1));
        assertThat(shaded.moduleLevelPower().watts()).isCloseTo(9 * BEST, within(1e-3));
        assertThat(shaded.bypassed()).containsExactly("covered");
        assertThat(shaded.limiting()).isNull();
        assertThat(shaded.modules().get(1).maximumPower()).isEqualTo(Power.ZERO);
        assertThat(shaded.modules().get(1).powerInString().watts())
                .isCloseTo(-0.5 * shaded.stringCurrent().amperes(), within(1e-9));
    }

    @Test
    void deepShadeIsPassedByAndLightShadeHoldsTheStringDown() {
        // At 200 W/m² a module drives a fifth of the current. Carried, the ten give at most 10 · 39.5 V · 2.6 A = 1027
        // W;
        // passed by, the nine give 3594 W and more.
        ShadeComparison deep = compare(modules("open", 1000, 9), modules("shaded", 200, 1));
        assertThat(deep.bypassed()).containsExactly("shaded");
        assertThat(deep.stringPower().watts()).isBetween(9 * BEST - 0.5 * 12.12 - 1e-3, 9 * BEST);

        // At 950 W/m² carrying it gives at least ten times what it gives itself, about 3798 W; passing by at most 3600
        // W.
        ShadeComparison light = compare(modules("open", 1000, 9), modules("shaded", 950, 1));
        double itsBest = light.modules().get(1).maximumPower().watts();
        assertThat(light.bypassed()).isEmpty();
        assertThat(light.limiting()).isEqualTo("shaded");
        assertThat(light.stringPower().watts()).isBetween(10 * itsBest, 9 * BEST + itsBest);
        assertThat(light.shareLost().fraction()).isPositive();
    }

    @Test
    void twoAlikeShadesInTwoGroupsAreOneShade() {
        ShadeComparison one = compare(modules("open", 900, 6), modules("edge", 500, 4));
        ShadeComparison two = compare(modules("a", 500, 1), modules("open", 900, 6), modules("b", 500, 3));

        assertThat(two.stringPower().watts()).isCloseTo(one.stringPower().watts(), within(1e-6));
        assertThat(two.moduleLevelPower().watts())
                .isCloseTo(one.moduleLevelPower().watts(), within(1e-6));
    }

    @Test
    void theHighestOfThreePeaks() {
        // Peaks near: five at 1000 W/m² alone 5 · 400 W = 2000 W less diodes; eight from 600 W/m² about 0.6 · 8 · 400 W
        // =
        // 1920 W; all ten at 300 W/m² 0.3 · 10 · 400 W = 1200 W and somewhat more. The first is 2000 W − 5 · 6 W = 1970
        // W; a
        // string at 600 W/m² gains from the five bright modules' higher voltage, (39.5 − 33) V at the most.
        ShadeComparison comparison =
                compare(modules("open", 1000, 5), modules("half", 600, 3), modules("deep", 300, 2));

        double five = 5 * BEST - 5 * 0.5 * 12.12;
        // eight at the half-lit ones' best current: theirs, and of the others at least as much voltage
        ShadeComparison.Share half = comparison.modules().get(1);
        double eight = 8 * half.maximumPower().watts()
                - 2 * 0.5 * half.maximumPowerCurrent().amperes();
        double ten = 10 * comparison.modules().get(2).maximumPower().watts();
        assertThat(comparison.stringPower().watts())
                .isGreaterThanOrEqualTo(Math.max(five, Math.max(eight, ten)) - 1e-3);
        assertThat(comparison.bypassed()).contains("deep");
        double sum = 0;
        for (ShadeComparison.Share share : comparison.modules()) {
            sum += share.count() * share.powerInString().watts();
        }
        assertThat(sum).isCloseTo(comparison.stringPower().watts(), within(1e-6));
    }

    @Test
    void unlikeModulesInEvenLight() {
        // the weaker module is the same sheet with 10.91 A in place of 12.12 A: 90 % of the current
        PvModule weaker = PvModuleBuilder.builder(MODULE)
                .model("M360")
                .power(Power.watts(360))
                .shortCircuitCurrent(Current.amperes(11.52))
                .maximumPowerCurrent(Current.amperes(10.908))
                .build();
        ShadeComparison mixed = ShadeComparison.of(
                new StringInSun(List.of(
                        modules("strong", 1000, 5),
                        new ModuleInSun(
                                "weak", weaker, Irradiance.wattsPerSquareMetre(1000), Temperature.celsius(25), 5))),
                POLICY);

        // 5 · 400 W + 5 · 360 W one by one; in the string at least 10 · 360 W
        assertThat(mixed.moduleLevelPower().watts()).isCloseTo(5 * BEST + 5 * 33 * 10.908, within(1e-3));
        assertThat(mixed.stringPower().watts()).isBetween(10 * 33 * 10.908, 5 * BEST + 5 * 33 * 10.908);
        assertThat(mixed.limiting()).isEqualTo("weak");
    }

    @Test
    void inTheDarkThereIsNothing() {
        ShadeComparison dark = compare(modules("all", 0, 10));

        assertThat(dark.stringPower()).isEqualTo(Power.ZERO);
        assertThat(dark.moduleLevelPower()).isEqualTo(Power.ZERO);
        assertThat(dark.shareLost().fraction()).isZero();
    }

    @Test
    void workingShowsTheNumbersUsed() {
        ShadeComparison comparison = compare(modules("open", 1000, 9), modules("shaded", 700, 1));
        assertThat(comparison.working().steps()).hasSize(4);
        assertThat(comparison.working().steps().get(3).result())
                .isEqualTo(comparison.shareLost().significant(4));
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> new StringInSun(List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> compare(modules("a", 1000, 1), modules("a", 500, 1)))
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> modules("a", 1501, 1)).hasMessageContaining("irradiance");
        assertThatThrownBy(() -> modules("a", 1000, 0)).hasMessageContaining("count");
    }
}
