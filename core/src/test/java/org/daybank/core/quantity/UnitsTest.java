package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

class UnitsTest {
    static final List<Dimension> DIMENSIONS = Dimension.ALL;

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void codesAreUniqueWithinADimension(Dimension dimension) {
        assertThat(dimension.units()).extracting(Unit::code).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void aSpellingMeansOneUnit(Dimension dimension) {
        Map<String, Unit> seen = new HashMap<>();
        for (Unit unit : dimension.units()) {
            for (String spelling : Dimension.spellings(unit)) {
                assertThat(seen.put(spelling, unit)).as(spelling).isNull();
            }
        }
    }

    /** The Unified Code for Units of Measure, case sensitive: atoms with a metric prefix where the atom takes one. */
    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void codesAreBuiltOfUcumAtoms(Dimension dimension) {
        Set<String> metric = Set.of("W", "V", "A", "J", "Ohm", "m", "g", "Hz", "K", "Cel", "L", "t", "rad", "s");
        Set<String> plain = Set.of("h", "min", "d", "a", "deg", "%", "1", "[degF]", "[ft_i]", "[in_i]", "[lb_av]");
        Set<String> atoms = new HashSet<>(plain);
        for (String prefix : List.of("", "m", "c", "k", "M")) {
            atoms.addAll(metric.stream().map(atom -> prefix + atom).collect(Collectors.toSet()));
        }
        for (Unit unit : dimension.units()) {
            for (String part : unit.code().split("[./]", -1)) {
                assertThat(atoms).as(unit.code()).contains(part.replaceAll("[23]$", ""));
            }
        }
    }

    @Test
    void everyDimensionIsListedAbove() {
        assertThat(Dimension.ALL)
                .extracting(dimension -> (Object) dimension.ofBase().apply(1).getClass())
                .containsExactlyInAnyOrder((Object[]) Quantity.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @FieldSource("DIMENSIONS")
    void theBaseUnitIsTheFirstAndScalesByOne(Dimension dimension) {
        assertThat(dimension.ofBase().apply(7).baseUnit()).isEqualTo(dimension.baseUnit());
        assertThat(dimension.parse().apply("7 " + dimension.baseUnit().code()).baseValue())
                .isEqualTo(7);
    }

    /** Definitions of the units: SI prefixes, the international foot, inch and pound, the minute, hour and day. */
    @ParameterizedTest
    @CsvSource({
        "W, 1",
        "mW, 0.001",
        "kW, 1000",
        "MW, 1000000",
        "V.A, 1",
        "kV.A, 1000",
        "W.h, 1",
        "kW.h, 1000",
        "MW.h, 1000000",
        "A.h, 1",
        "mA.h, 0.001",
        "kA.h, 1000",
        "V, 1",
        "mV, 0.001",
        "kV, 1000",
        "A, 1",
        "mA, 0.001",
        "kA, 1000",
        "Ohm, 1",
        "mOhm, 0.001",
        "kOhm, 1000",
        "1/K, 1",
        "%/K, 0.01",
        "V/K, 1",
        "mV/K, 0.001",
        "W/K, 1",
        "W/m2, 1",
        "kW/m2, 1000",
        "kW.h/m2, 1",
        "W.h/m2, 0.001",
        "m, 1",
        "mm, 0.001",
        "cm, 0.01",
        "km, 1000",
        "[ft_i], 0.3048",
        "[in_i], 0.0254",
        "mm2, 1",
        "cm2, 100",
        "m2, 1000000",
        "kg, 1",
        "g, 0.001",
        "t, 1000",
        "[lb_av], 0.45359237",
        "m/s, 1",
        "Hz, 1",
        "m3/h, 1",
        "L/s, 3.6",
        "L/h, 0.001",
        "h, 1",
        "d, 24",
        "a, 8760",
        "deg, 1"
    })
    void oneOfAUnitIsSoManyBaseUnits(String code, double base) {
        assertThat(one(code)).containsExactly(base);
    }

    /** 1 J = 1 W·s = 1/3600 Wh; 1 km/h = 1/3.6 m/s; π rad = 180°: no finite decimals, so rounded once. */
    @Test
    void unitsThatDoNotDivideEvenlyAreRoundedOnce() {
        assertThat(one("J")).containsExactly(1 / 3600.0);
        assertThat(one("kJ")).containsExactly(1 / 3.6);
        assertThat(one("MJ")).containsExactly(1000 / 3.6);
        assertThat(one("MJ/m2")).containsExactly(1 / 3.6);
        assertThat(one("km/h")).containsExactly(1 / 3.6);
        assertThat(one("s")).containsExactly(1 / 3600.0);
        assertThat(one("min")).containsExactly(1 / 60.0);
        assertThat(one("rad")).containsExactly(180 / Math.PI);
        assertThat(Energy.parse("3600 J")).isEqualTo(Energy.wattHours(1));
        assertThat(Speed.parse("36 km/h")).isEqualTo(Speed.metresPerSecond(10));
        assertThat(TimeSpan.parse("90 min")).isEqualTo(TimeSpan.hours(1.5));
        assertThat(Angle.parse("3.14159265358979324 rad").degrees()).isCloseTo(180, within(Math.ulp(180.0)));
    }

    private static List<Double> one(String code) {
        return Dimension.ALL.stream()
                .filter(dimension -> !dimension.toString().startsWith("Temperature")
                        || dimension.toString().startsWith("TemperatureCoefficient"))
                .filter(dimension ->
                        dimension.units().stream().anyMatch(unit -> unit.code().equals(code)))
                .map(dimension -> dimension.parse().apply("1 " + code).baseValue())
                .toList();
    }

    @Test
    void readableTextTakesTheLargestPrefixThatShowsAWhole() {
        assertThat(Power.watts(999)).hasToString("999 W");
        assertThat(Power.watts(1000)).hasToString("1 kW");
        assertThat(Power.watts(1200)).hasToString("1.2 kW");
        assertThat(Power.watts(-2_500_000)).hasToString("-2.5 MW");
        assertThat(ApparentPower.voltAmperes(3000)).hasToString("3 kVA");
        assertThat(Charge.ampereHours(281.25)).hasToString("281.25 Ah");
        assertThat(Temperature.celsius(-7)).hasToString("-7 °C");
        assertThat(CrossSection.squareMillimetres(35)).hasToString("35 mm²");
        assertThat(Power.watts(1234.567).rounded(3)).isEqualTo("1.23 kW");
        assertThat(Power.ZERO).hasToString("0 W");
        assertThat(TemperatureCoefficient.parse("-0.0028 1/K")).hasToString("-0.28 %/K");
        assertThat(Length.metres(4350.1)).hasToString("4.3501 km");
    }
}
