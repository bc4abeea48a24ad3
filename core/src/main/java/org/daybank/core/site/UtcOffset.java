package org.daybank.core.site;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far the clocks of a place run ahead of universal time all year round, without summer time.
 *
 * @param minutes from −720 (−12:00) to 840 (+14:00); negative to the west
 */
public record UtcOffset(int minutes) implements Comparable<UtcOffset> {
    private static final int LEAST = -12 * 60;
    private static final int MOST = 14 * 60;
    private static final Pattern CLOCK = Pattern.compile("([+-]?)(\\d{1,2}):(\\d{2})");
    private static final Pattern HOURS = Pattern.compile("[+-]?\\d{1,2}(\\.\\d{1,4})?");

    /**
     * Validation the number.
     *
     * @throws IllegalArgumentException when it is out of range
     */
    public UtcOffset {
        if (minutes < LEAST || minutes > MOST) {
            throw new IllegalArgumentException(
                    "A UTC offset must be from -12:00 to +14:00, but was %s.".formatted(print(minutes)));
        }
    }

    /** The offset of so many hours, halves and quarters included. */
    public static UtcOffset hours(double hours) {
        return new UtcOffset((int) Math.round(hours * 60));
    }

    /**
     * Reads {@code "+05:30"} or decimal hours, {@code "5.5"}.
     *
     * @throws IllegalArgumentException when the text is neither, or out of range
     */
    public static UtcOffset parse(CharSequence text) {
        String trimmed = text.toString().strip().replace('−', '-');
        Matcher clock = CLOCK.matcher(trimmed);
        if (clock.matches() && Integer.parseInt(clock.group(3)) < 60) {
            int minutes = Integer.parseInt(clock.group(2)) * 60 + Integer.parseInt(clock.group(3));
            return new UtcOffset(clock.group(1).equals("-") ? -minutes : minutes);
        }
        if (HOURS.matcher(trimmed).matches()) {
            return hours(Double.parseDouble(trimmed));
        }
        throw new IllegalArgumentException("'%s' is not a UTC offset: write hours and minutes, as in '+05:30' or '-7'"
                .formatted(trimmed.length() > 40 ? trimmed.substring(0, 40) + "…" : trimmed));
    }

    /** The offset in hours. */
    public double hours() {
        return minutes / 60.0;
    }

    @Override
    public int compareTo(UtcOffset other) {
        return Integer.compare(minutes, other.minutes);
    }

    /** As in {@code +05:30}, which {@link #parse} reads back. */
    @Override
    public String toString() {
        return print(minutes);
    }

    private static String print(int minutes) {
        return String.format(
                Locale.ROOT, "%s%02d:%02d", minutes < 0 ? "-" : "+", Math.abs(minutes) / 60, Math.abs(minutes) % 60);
    }
}
