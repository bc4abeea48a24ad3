package org.daybank.core.working;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;

/**
 * A sentence with figures in it, put into words only when it is read: a search judges thousands of products and shows a few.
 *
 * @param template text in which each {@code %s} takes the next value
 * @param values quantities (shown to three digits), ratios (as percentages), enum constants (as words), lists of these, or text
 */
public record Sentence(String template, List<Object> values) implements CharSequence {
    private static final String PLACE = "%s";
    private static final int DIGITS = 3;
    private static final Set<String> ABBREVIATIONS = Set.of("AC", "AGM", "DC", "MPPT", "PWM");

    /** A sentence with these figures. */
    public static Sentence of(String template, Object... values) {
        return new Sentence(template, List.of(values));
    }

    private static Object shown(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.rounded(DIGITS);
        }
        if (value instanceof Ratio ratio) {
            return ratio.rounded();
        }
        if (value instanceof Enum<?> constant) {
            return words(constant);
        }
        if (value instanceof Collection<?> list) {
            return list.stream().map(Sentence::shown).map(Object::toString).collect(Collectors.joining(", "));
        }
        return value;
    }

    /** The name of a constant as words: {@code modified sine}; the trade's abbreviations stay in capitals. */
    private static String words(Enum<?> constant) {
        return Arrays.stream(constant.name().split("_", -1))
                .map(word -> ABBREVIATIONS.contains(word) ? word : word.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }

    @Override
    public int length() {
        return toString().length();
    }

    @Override
    public char charAt(int index) {
        return toString().charAt(index);
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return toString().subSequence(start, end);
    }

    /** The sentence in words. */
    @Override
    public String toString() {
        // a plain splice: the general formatter takes several times as long, and an answer has hundreds of sentences
        StringBuilder words = new StringBuilder(template.length() + 16 * values.size());
        int from = 0;
        for (Object value : values) {
            int at = template.indexOf(PLACE, from);
            if (at < 0) {
                // a value that this wording of the sentence has no place for
                break;
            }
            words.append(template, from, at).append(shown(value));
            from = at + PLACE.length();
        }
        return words.append(template, from, template.length()).toString();
    }
}
