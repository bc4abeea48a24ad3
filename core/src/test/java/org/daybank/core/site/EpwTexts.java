package org.daybank.core.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Weather files of an invented place, for the tests of this package. */
final class EpwTexts {
    private static final List<String> HEADER = List.of(
            "LOCATION,Larkspur Ridge,NR,XX,Invented,000000,46.87,-113.50,5.5,1340.0",
            "DESIGN CONDITIONS,0",
            "TYPICAL/EXTREME PERIODS,0",
            "GROUND TEMPERATURES,0",
            "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
            "COMMENTS 1,invented",
            "COMMENTS 2,invented",
            "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31");

    private EpwTexts() {}

    /** Lines of a whole year; the line of hour h is at index 8 + h. */
    static List<String> lines(int year) {
        List<String> lines = new ArrayList<>(HEADER);
        for (LocalDate date = LocalDate.of(year, 1, 1); date.getYear() == year; date = date.plusDays(1)) {
            for (int hour = 1; hour <= 24; hour++) {
                boolean light = hour > 8 && hour <= 16;
                lines.add(row(date, hour, light ? "300" : "0", light ? "400.5" : "0", light ? "120" : "0"));
            }
        }
        return lines;
    }

    private static String row(LocalDate date, int hour, String global, String direct, String diffuse) {
        return "%d,%d,%d,%d,0,?9?9,%d.5,-4.0,92,80600,0,0,257,%s,%s,%s,0,0,0,0,200,2.5,9,8"
                .formatted(
                        date.getYear(),
                        date.getMonthValue(),
                        date.getDayOfMonth(),
                        hour,
                        date.getMonthValue(),
                        global,
                        direct,
                        diffuse);
    }

    /** A year with one line changed; line numbers count from 1, as in the messages. */
    static String withLine(int line, UnaryOperator<String> change) {
        List<String> lines = lines(2001);
        lines.set(line - 1, change.apply(lines.get(line - 1)));
        return String.join("\r\n", lines);
    }

    static String join(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }
}
