package org.daybank.core.quantity;

/** The checks of a number that becomes a quantity. */
final class Finite {
    private Finite() {}

    /** The number, −0.0 made 0.0; NaN and infinities are refused. */
    static double number(double number, String noun, String symbol) {
        if (!Double.isFinite(number)) {
            throw new QuantityRangeException("%s must be a finite number%s, but was %s."
                    .formatted(subject(noun), symbol.isEmpty() ? "" : " of " + symbol, number));
        }
        return number + 0.0;
    }

    static double notNegative(double number, String noun, String symbol) {
        return atLeast(0, number, noun, symbol);
    }

    static double atLeast(double least, double number, String noun, String symbol) {
        if (number(number, noun, symbol) < least) {
            throw new QuantityRangeException("%s must be at least %s %s, but was %s %s."
                    .formatted(subject(noun), Decimals.shortest(least), symbol, Decimals.shortest(number), symbol));
        }
        return number + 0.0;
    }

    static double within(double limit, double degrees, String noun) {
        if (!(Math.abs(degrees) <= limit)) {
            throw new QuantityRangeException("%s must be from −%s to %s degrees, but was %s."
                    .formatted(subject(noun), Decimals.shortest(limit), Decimals.shortest(limit), degrees));
        }
        return degrees + 0.0;
    }

    private static String subject(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "An " : "A ") + noun;
    }
}
