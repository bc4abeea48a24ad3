package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.NotAcceptableResponse;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What a client takes, as the header Accept says it (RFC 9110, 12.5.1). */
final class Accept {
    private static final String ANYTHING = "*/*";
    private static final int LONGEST = 8192;

    private Accept() {}

    /**
     * The media type that the client likes best; the earlier of two it likes alike.
     *
     * @param offered media types without parameters, the usual one first
     * @throws NotAcceptableResponse when the client takes none of them
     */
    static String choose(Context context, String... offered) {
        String header = context.header("Accept");
        if (header == null || header.isBlank()) {
            return offered[0];
        }
        List<Range> ranges = List.of(header.substring(0, Math.min(header.length(), LONGEST))
                        .toLowerCase(Locale.ROOT)
                        .replace(" ", "")
                        .split(",", -1))
                .stream()
                .map(Range::of)
                .toList();
        String best = List.of(offered).stream()
                .max(Comparator.comparingDouble((String type) -> quality(ranges, type))
                        .thenComparing(Comparator.comparingInt(
                                        (String type) -> List.of(offered).indexOf(type))
                                .reversed()))
                .orElseThrow();
        if (quality(ranges, best) <= 0) {
            throw new NotAcceptableResponse(
                    "The answer is %s, which Accept leaves out".formatted(String.join(" or ", offered)));
        }
        return best;
    }

    /** The quality that the most specific range gives a type; 0 when none covers it. */
    private static double quality(List<Range> ranges, String type) {
        return ranges.stream()
                .filter(range -> range.covers(type))
                .max(Comparator.comparingInt(Range::specificity))
                .map(Range::quality)
                .orElse(0.0);
    }

    /**
     * One range of media types.
     *
     * @param type as {@code text/csv}, {@code text/*} or the one for anything
     * @param quality from 0, not taken, to 1
     */
    private record Range(String type, double quality) {
        static Range of(String text) {
            List<String> parts = List.of(text.split(";", -1));
            double quality = parts.stream()
                    .skip(1)
                    .filter(part -> part.matches("q=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)"))
                    .mapToDouble(part -> Double.parseDouble(part.substring(2)))
                    .findFirst()
                    .orElse(1);
            return new Range(parts.get(0), quality);
        }

        boolean covers(String offered) {
            return type.equals(ANYTHING)
                    || type.equals(offered)
                    || type.equals(offered.substring(0, offered.indexOf('/')) + "/*");
        }

        int specificity() {
            return type.equals(ANYTHING) ? 0 : type.endsWith("/*") ? 1 : 2;
        }
    }
}
