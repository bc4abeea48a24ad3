package org.daybank.core.site;

import java.time.Month;
import java.util.Locale;
import java.util.Optional;

/** Follows month, day and hour from line to line: each must be the hour after the one before, hours counting from 1 to 24. */
final class EpwClock {
    private int month = 1;
    private int day = 1;
    private int hour = 1;

    /** What is wrong with the next hour, or nothing; goes on from whatever it was. */
    Optional<String> next(double monthGiven, double dayGiven, double hourGiven) {
        boolean leapDay = month == 3 && day == 1 && hour == 1 && monthGiven == 2 && dayGiven == 29;
        boolean expected = leapDay ? hourGiven == 1 : monthGiven == month && dayGiven == day && hourGiven == hour;
        Optional<String> complaint = expected
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "expected month %s, day %s, hour %s but found month %.0f, day %.0f, hour %.0f",
                        month,
                        day,
                        hour,
                        monthGiven,
                        dayGiven,
                        hourGiven));
        goOnFrom(monthGiven, dayGiven, hourGiven);
        return complaint;
    }

    private void goOnFrom(double monthGiven, double dayGiven, double hourGiven) {
        boolean real = monthGiven >= 1 && monthGiven <= 12 && dayGiven >= 1 && hourGiven >= 1 && hourGiven <= 24;
        if (real) {
            month = (int) monthGiven;
            day = (int) dayGiven;
            hour = (int) hourGiven;
        }
        hour++;
        if (hour > 24) {
            hour = 1;
            day++;
            if (day > Month.of(month).minLength()) {
                day = 1;
                month = month % 12 + 1;
            }
        }
    }
}
