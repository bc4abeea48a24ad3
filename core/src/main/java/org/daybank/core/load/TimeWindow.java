package org.daybank.core.load;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * A daily window of time, which may run across midnight.
 *
 * @param fromMinute first minute of the day, from 0
 * @param toMinute minute of the day at which it ends, up to 1440; at or before the first when it runs across midnight
 */
public record TimeWindow(
        @Bounds(minimum = "0", maximum = "1439") int fromMinute,
        @Bounds(minimum = "0", maximum = "1440") int toMinute) {
    private static final int MINUTES = 60;
    private static final int DAY = 24 * MINUTES;
    private static final Pattern FORM = Pattern.compile("(\\d{2}:\\d{2})\\s*[-–]\\s*(\\d{2}:\\d{2})");

    /**
     * Validates the minutes.
     *
     * @throws org.daybank.core.schema.InvalidInput when one lies outside the day or the window is empty
     */
    public TimeWindow {
        Validation.of(TimeWindow.class, fromMinute, toMinute)
                .that(
                        fromMinute != toMinute,
                        "toMinute",
                        ProblemCode.INCONSISTENT,
                        "toMinute must differ from fromMinute %s.".formatted(fromMinute))
                .done();
    }

    /**
     * Reads {@code "18:00-23:00"}; the end may be {@code 24:00}, and {@code "22:00-06:00"} runs across midnight.
     *
     * @throws IllegalArgumentException when the text is not of that form
     */
    public static TimeWindow parse(CharSequence text) {
        Matcher form = FORM.matcher(text.toString().strip());
        try {
            if (form.matches()) {
                return new TimeWindow(minute(form.group(1)), minute(form.group(2)));
            }
        } catch (DateTimeParseException noTime) {
            // told below, like any other text that is not a window
        }
        throw new IllegalArgumentException(
                "'%s' is not a time window: write hours and minutes, as in '18:00-23:00'".formatted(text));
    }

    private static int minute(String time) {
        return time.equals("24:00") ? DAY : LocalTime.parse(time).toSecondOfDay() / 60;
    }

    /** Whether a minute of the day, from 0 to 1439, lies within. */
    public boolean covers(int minute) {
        return fromMinute < toMinute
                ? minute >= fromMinute && minute < toMinute
                : minute >= fromMinute || minute < toMinute;
    }

    /** Share of an hour of the day, from 0 to 23, that some windows cover together. */
    public static double share(List<TimeWindow> windows, int hour) {
        int covered = 0;
        for (int minute = hour * MINUTES; minute < (hour + 1) * MINUTES; minute++) {
            covered += covered(windows, minute) ? 1 : 0;
        }
        return covered / (double) MINUTES;
    }

    private static boolean covered(List<TimeWindow> windows, int minute) {
        for (TimeWindow window : windows) {
            if (window.covers(minute)) {
                return true;
            }
        }
        return false;
    }

    /** Time of a day that some windows cover together. */
    public static TimeSpan daily(List<TimeWindow> windows) {
        return TimeSpan.hours(IntStream.range(0, DAY / MINUTES)
                .mapToDouble(hour -> share(windows, hour))
                .sum());
    }

    @Override
    public String toString() {
        return "%s-%s".formatted(text(fromMinute), text(toMinute));
    }

    private static String text(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
}
