package org.daybank.api.wire;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What to say of a name that is not known. */
final class Names {
    private static final int SHOWN = 40;

    private Names() {}

    /** A sentence that names the nearest known name, or all of them when none is near. */
    static String complaint(String unknown, List<String> known) {
        String shown = shown(unknown);
        if (known.isEmpty()) {
            return "'%s' is not known here: no names are".formatted(shown);
        }
        String nearest = known.stream()
                .min(Comparator.comparingInt(name -> distance(shown, name)))
                .orElseThrow();
        return distance(shown, nearest) <= Math.max(2, nearest.length() / 3)
                ? "'%s' is not known here; the nearest known name is '%s'".formatted(shown, nearest)
                : "'%s' is not known here; known are %s".formatted(shown, String.join(", ", known));
    }

    /** Text from outside, cut to what a sentence can hold. */
    static String shown(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }

    /** Letters to insert, delete or exchange to make one name of the other, capitals aside (Levenshtein). */
    private static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
