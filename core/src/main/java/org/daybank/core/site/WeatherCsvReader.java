package org.daybank.core.site;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.schema.ProblemCode;

/**
 * Reads a weather year from comma-separated text. The first line names the columns, each with its unit after an underscore:
 * any of {@code global}, {@code direct}, {@code diffuse} (as {@code global_W/m2}), {@code air} ({@code air_Cel}) and
 * {@code wind} ({@code wind_m/s}); then one line for each hour from midnight of 1 January, 8760 or 8784 of them. Lines that
 * begin with {@code #} are remarks. Nothing is filled in: hours that are missing, marked as missing or impossible are told
 * with their line.
 */
public final class WeatherCsvReader {
    private final RowProblems problems = new RowProblems();
    private final List<CsvColumn> columns = new ArrayList<>();
    private int hours;
    private int lastLine;

    private WeatherCsvReader() {}

    /**
     * Reads a year.
     *
     * @param text the whole file
     * @param place where and by which clock the values were taken
     * @param year of the calendar that the hours follow, from 1950 to 2050; a leap year when there are 8784
     * @throws org.daybank.core.schema.InvalidInput when columns or hours are missing, unreadable or impossible; the first
     *     hundred are named by their line
     */
    public static WeatherYear read(String text, Place place, int year) {
        WeatherCsvReader reader = new WeatherCsvReader();
        reader.readLines(text.startsWith("\uFEFF") ? text.substring(1) : text);
        reader.checkComplete();
        return reader.weather(place, year);
    }

    private void readLines(String text) {
        int line = 0;
        int start = 0;
        while (start < text.length()) {
            int newline = text.indexOf('\n', start);
            int end = newline < 0 ? text.length() : newline;
            line++;
            if (text.charAt(start) != '#' && !blank(text, start, end)) {
                lastLine = line;
                if (columns.isEmpty()) {
                    readHeader(text.substring(start, end).strip(), line);
                } else {
                    readRow(text, start, end, line);
                }
            }
            start = end + 1;
        }
    }

    private static boolean blank(String text, int start, int end) {
        int i = start;
        while (i < end && Character.isWhitespace(text.charAt(i))) {
            i++;
        }
        return i == end;
    }

    private void readHeader(String header, int line) {
        if (header.indexOf(';') >= 0 || header.indexOf('\t') >= 0) {
            problems.add(
                    line,
                    ProblemCode.UNREADABLE,
                    "the columns are parted by semicolons or tabs: part them by commas and write decimals with a point");
            problems.done();
        }
        for (String name : header.split(",", -1)) {
            CsvColumn.named(name.strip(), complaint -> problems.add(line, ProblemCode.UNKNOWN_NAME, complaint))
                    .ifPresent(column -> {
                        if (columns.stream().anyMatch(other -> other.kind() == column.kind())) {
                            problems.add(
                                    line,
                                    ProblemCode.CONFLICT,
                                    "column %s is there twice".formatted(column.kind().label));
                        }
                        columns.add(column);
                    });
        }
        problems.done();
    }

    private void readRow(String text, int start, int end, int line) {
        int cells = 1;
        for (int i = start; i < end; i++) {
            cells += text.charAt(i) == ',' ? 1 : 0;
        }
        if (cells != columns.size()) {
            problems.add(
                    line,
                    ProblemCode.INCONSISTENT,
                    "%s cells where the header names %s columns; decimals are written with a point, not a comma"
                            .formatted(cells, columns.size()));
            return;
        }
        int from = start;
        for (CsvColumn column : columns) {
            int comma = text.indexOf(',', from);
            int to = comma < 0 || comma > end ? end : comma;
            column.take(DecimalText.read(text, from, to), hours)
                    .ifPresent(complaint -> problems.add(line, ProblemCode.OUT_OF_RANGE, complaint));
            from = to + 1;
        }
        hours++;
    }

    private void checkComplete() {
        if (columns.isEmpty()) {
            problems.addForFile(
                    ProblemCode.MISSING, "the text has no line that names the columns, as in 'global_W/m2,air_Cel'");
        } else if (hours != HourCalendar.COMMON && hours != HourCalendar.LEAP) {
            problems.addForFile(
                    ProblemCode.MISSING,
                    "a year has 8760 or 8784 hours but the text has %s, up to line %s".formatted(hours, lastLine));
        }
        problems.done();
    }

    private WeatherYear weather(Place place, int year) {
        WeatherYearBuilder weather = WeatherYearBuilder.builder().place(place).year(year);
        for (CsvColumn column : columns) {
            double[] values = column.values(hours);
            switch (column.kind()) {
                case GLOBAL -> weather.global(HourlySeries.wattsPerSquareMetre(values));
                case DIRECT -> weather.direct(HourlySeries.wattsPerSquareMetre(values));
                case DIFFUSE -> weather.diffuse(HourlySeries.wattsPerSquareMetre(values));
                case AIR -> weather.air(HourlySeries.celsius(values));
                case WIND -> weather.wind(HourlySeries.metresPerSecond(values));
            }
        }
        return weather.build();
    }
}
