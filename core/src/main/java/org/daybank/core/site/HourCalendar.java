package org.daybank.core.site;

import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;

/**
 * Which day an hour of a year falls on. A year has 8784 hours when it is a leap year and 8760 otherwise; a leap year given
 * with 8760 hours has no 29 February.
 *
 * @param year of the common calendar
 * @param hours 8760 or 8784
 */
public record HourCalendar(int year, int hours) {
    /** Hours of a common year. */
    public static final int COMMON = 8760;

    /** Hours of a leap year. */
    public static final int LEAP = 8784;

    private static final int HOURS_OF_A_DAY = 24;
    private static final int FEBRUARY_29_IN_LEAP_YEAR = 60;

    /**
     * Validation both.
     *
     * @throws IllegalArgumentException when the hours are neither 8760 nor 8784, or 8784 in a year that is none
     */
    public HourCalendar {
        if (hours != COMMON && hours != LEAP) {
            throw new IllegalArgumentException("A year has 8760 or 8784 hours but here are " + hours);
        }
        if (hours == LEAP && !LocalDate.ofYearDay(year, 1).isLeapYear()) {
            throw new IllegalArgumentException("%s is no leap year but has %s hours".formatted(year, hours));
        }
    }

    /** Number of days. */
    public int days() {
        return hours / HOURS_OF_A_DAY;
    }

    /** The date of a day, counted from 0. */
    public LocalDate date(int day) {
        boolean skipsLeapDay = hours == COMMON && LocalDate.ofYearDay(year, 1).isLeapYear();
        int dayOfYear = day + 1;
        return LocalDate.ofYearDay(
                year, skipsLeapDay && dayOfYear >= FEBRUARY_29_IN_LEAP_YEAR ? dayOfYear + 1 : dayOfYear);
    }

    /** First hour of a month, counted from 0. */
    public int firstHour(Month month) {
        return (month.firstDayOfYear(hours == LEAP) - 1) * HOURS_OF_A_DAY;
    }

    /** The hour after the last of a month. */
    public int endHour(Month month) {
        return firstHour(month) + month.length(hours == LEAP) * HOURS_OF_A_DAY;
    }

    /** An hour in words: {@code 6 January, 02:00–03:00}. */
    public String words(int hour) {
        LocalDate date = date(hour / HOURS_OF_A_DAY);
        int from = hour % HOURS_OF_A_DAY;
        String month = date.getMonth().name();
        return String.format(
                Locale.ROOT,
                "%s %s, %02d:00–%02d:00",
                date.getDayOfMonth(),
                month.charAt(0) + month.substring(1).toLowerCase(Locale.ROOT),
                from,
                from + 1);
    }
}
