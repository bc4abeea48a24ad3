package org.daybank.core.site;

import java.time.Year;
import java.util.Arrays;
import java.util.Optional;
import org.daybank.core.schema.ProblemCode;

/** The hours of an EPW text, one after the other. */
final class EpwRows {
    /** Cells by {@link WeatherColumn}: global, direct, diffuse, air, wind. */
    private static final int[] CELLS = {13, 14, 15, 6, 21};

    private static final int CELLS_NEEDED = 22;
    private static final double AIR_MARKED_MISSING = 99.9;

    /** Typical years are put together from several; the sun is then taken from the middle between two leap years. */
    private static final int TYPICAL_COMMON_YEAR = 2002;

    private static final int TYPICAL_LEAP_YEAR = 2000;

    private final RowProblems problems;
    private final EpwClock clock = new EpwClock();
    private final double[][] values = new double[CELLS.length][HourCalendar.LEAP];
    private final int[] starts = new int[CELLS_NEEDED + 1];
    private int hours;
    private int lastLine;
    private int firstYear;
    private boolean oneYear = true;

    EpwRows(RowProblems problems) {
        this.problems = problems;
    }

    void read(String text, int from, int firstLine) {
        int line = firstLine;
        int start = from;
        while (start < text.length()) {
            int newline = text.indexOf('\n', start);
            int end = newline < 0 ? text.length() : newline;
            if (!text.substring(start, Math.min(end, start + 2)).isBlank()) {
                row(text, start, end, line);
            }
            start = end + 1;
            line++;
        }
    }

    private void row(String text, int start, int end, int line) {
        lastLine = line;
        if (!cut(text, start, end)) {
            problems.add(
                    line,
                    ProblemCode.UNREADABLE,
                    "the line breaks off: at least %s cells with commas between are needed".formatted(CELLS_NEEDED));
            return;
        }
        clock.next(number(text, 1), number(text, 2), number(text, 3))
                .ifPresent(complaint -> problems.add(line, ProblemCode.INCONSISTENT, complaint));
        countYear(number(text, 0));
        int dayOfYear = Math.min(hours / 24 + 1, 366);
        for (int i = 0; i < CELLS.length; i++) {
            WeatherColumn column = WeatherColumn.ALL.get(i);
            double value = number(text, CELLS[i]);
            Optional<String> complaint = column == WeatherColumn.AIR && value == AIR_MARKED_MISSING
                    ? Optional.of("air is 99.9, which marks a missing value.")
                    : column.complaint(value, dayOfYear);
            complaint.ifPresent(words -> problems.add(line, ProblemCode.OUT_OF_RANGE, words));
            if (hours < HourCalendar.LEAP) {
                values[i][hours] = value;
            }
        }
        hours++;
    }

    /** Finds where the cells begin; false when there are too few. */
    private boolean cut(String text, int start, int end) {
        int cell = 0;
        starts[0] = start;
        for (int i = start; i < end && cell < CELLS_NEEDED; i++) {
            if (text.charAt(i) == ',') {
                starts[++cell] = i + 1;
            }
        }
        return cell == CELLS_NEEDED;
    }

    private double number(String text, int cell) {
        return DecimalText.read(text, starts[cell], starts[cell + 1] - 1);
    }

    private void countYear(double year) {
        if (hours == 0) {
            firstYear = (int) year;
        }
        oneYear &= firstYear == (int) year;
    }

    void checkComplete() {
        if (hours != HourCalendar.COMMON && hours != HourCalendar.LEAP) {
            problems.addForFile(
                    ProblemCode.MISSING,
                    "a year has 8760 or 8784 hours but the text has %s, up to line %s".formatted(hours, lastLine));
        }
    }

    WeatherYear weather(Place place) {
        return new WeatherYear(
                place,
                calendarYear(),
                HourlySeries.wattsPerSquareMetre(Arrays.copyOf(values[0], hours)),
                HourlySeries.wattsPerSquareMetre(Arrays.copyOf(values[1], hours)),
                HourlySeries.wattsPerSquareMetre(Arrays.copyOf(values[2], hours)),
                HourlySeries.celsius(Arrays.copyOf(values[3], hours)),
                HourlySeries.metresPerSecond(Arrays.copyOf(values[4], hours)));
    }

    private int calendarYear() {
        boolean fits = hours == HourCalendar.COMMON || Year.isLeap(firstYear);
        if (oneYear && fits && firstYear >= 1950 && firstYear <= 2050) {
            return firstYear;
        }
        return hours == HourCalendar.LEAP ? TYPICAL_LEAP_YEAR : TYPICAL_COMMON_YEAR;
    }
}
