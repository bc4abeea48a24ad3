package org.daybank.core.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The units of one dimension: reads and prints its values. */
final class UnitTable {
    private final String noun;
    private final List<Unit> units;
    private List<Unit> readableUnits;
    private final Map<String, Unit> bySpelling = new LinkedHashMap<>();

    /** The first unit is the base unit; values print in it, its thousandfold or its millionfold. */
    UnitTable(String noun, Unit... units) {
        this.noun = noun;
        this.units = List.of(units);
        for (Unit unit : units) {
            bySpelling.put(unit.code(), unit);
            bySpelling.put(unit.symbol(), unit);
            unit.definition().otherSpellings().forEach(spelling -> bySpelling.put(spelling, unit));
        }
        String code = units[0].code();
        readableUnits = List.of(code, "k" + code, "M" + code).stream()
                .flatMap(readable -> Stream.ofNullable(bySpelling.get(readable)))
                .toList();
    }

    /** This table, whose values print in the given units instead, smallest first. */
    UnitTable readIn(Unit... readable) {
        readableUnits = List.of(readable);
        return this;
    }

    String noun() {
        return noun;
    }

    boolean has(String spelling) {
        return bySpelling.containsKey(spelling);
    }

    /** The enum of its units. */
    Class<?> unitType() {
        return units.get(0).getClass();
    }

    double parse(CharSequence text) {
        String trimmed = Decimals.tidied(text);
        Matcher number = Decimals.NUMBER.matcher(trimmed);
        if (!number.lookingAt()) {
            throw refuse(text, "expected a number and a unit");
        }
        String unitText = trimmed.substring(number.end()).strip();
        Optional<String> excess = Decimals.excess(number);
        if (excess.isPresent()) {
            throw refuse(text, excess.get());
        }
        if (unitText.startsWith(",")) {
            throw refuse(text, "the decimal sign is a point, not a comma");
        }
        if (unitText.isEmpty()) {
            throw refuse(text, "the unit is missing");
        }
        Unit unit = bySpelling.get(unitText);
        if (unit == null) {
            throw refuse(text, UnitTables.complaint(unitText));
        }
        double base = unit.definition().scale().toBase(new BigDecimal(number.group()));
        if (!Double.isFinite(base)) {
            throw refuse(text, "the number is too large");
        }
        return base;
    }

    private QuantityFormatException refuse(CharSequence text, String why) {
        return new QuantityFormatException(
                text,
                "'%s' is not %s %s: %s; write it with one of the units %s, as in '%s'"
                        .formatted(
                                QuantityFormatException.shown(text),
                                "aeiou".indexOf(noun.charAt(0)) >= 0 ? "an" : "a",
                                noun,
                                why,
                                units.stream().map(Unit::code).collect(Collectors.joining(", ")),
                                "12.5 " + units.get(0).symbol()));
    }

    /** Text that {@link #parse} reads back to exactly this number of base units. */
    String print(double base) {
        Unit unit = readableUnit(base);
        double number = number(base, unit).doubleValue();
        boolean same = Double.isFinite(number)
                && unit.definition().scale().toBase(new BigDecimal(Double.toString(number))) == base;
        return same
                ? Decimals.shortest(number) + " " + unit.symbol()
                : Decimals.shortest(base) + " " + units.get(0).symbol();
    }

    /** Text to so many significant digits. */
    String print(double base, int significantDigits) {
        Unit unit = readableUnit(base);
        Scale scale = unit.definition().scale();
        Optional<BigDecimal> near =
                scale.shift().signum() == 0 ? Decimals.near(scale.fromBase(base), significantDigits) : Optional.empty();
        return Decimals.plain(near.orElseGet(() -> number(base, unit).round(new MathContext(significantDigits))))
                + " "
                + unit.symbol();
    }

    /** The shortest decimal that is this number, as a number of the unit. */
    private static BigDecimal number(double base, Unit unit) {
        Scale scale = unit.definition().scale();
        BigDecimal scaled = new BigDecimal(Double.toString(base)).multiply(scale.divisor());
        BigDecimal multiplier = scale.multiplier().stripTrailingZeros();
        boolean powerOfTen = multiplier.unscaledValue().equals(BigInteger.ONE);
        return (powerOfTen
                        ? scaled.scaleByPowerOfTen(multiplier.scale())
                        : scaled.divide(multiplier, MathContext.DECIMAL128))
                .subtract(scale.shift());
    }

    /** The largest of the readable units that shows at least one whole, or else the smallest of them. */
    private Unit readableUnit(double base) {
        if (base == 0) {
            return units.get(0);
        }
        Unit readable = readableUnits.get(0);
        for (Unit larger : readableUnits) {
            if (Math.abs(larger.definition().scale().fromBase(base)) >= 1) {
                readable = larger;
            }
        }
        return readable;
    }
}
