package org.daybank.core.site;

import java.util.Objects;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.schema.ProblemCode;
import org.jspecify.annotations.Nullable;

/**
 * Reads a weather year from text in the EPW format (EnergyPlus weather): header lines from LOCATION to DATA PERIODS, then one
 * line for each hour. Nothing is filled in: hours that are missing, marked as missing or impossible are told with their line.
 */
public final class EpwReader {
    private static final int LOCATION_CELLS = 10;
    private static final int LATITUDE = 6;
    private static final int LONGITUDE = 7;
    private static final int UTC_OFFSET = 8;
    private static final int ELEVATION = 9;
    private static final String LAST_HEADER = "\nDATA PERIODS";

    private EpwReader() {}

    /**
     * Reads a year.
     *
     * @param text the whole file
     * @throws org.daybank.core.schema.InvalidInput when it is not in this format, or hours are missing, out of order or
     *     impossible; the first hundred are named by their line
     */
    public static WeatherYear read(String text) {
        return readPlain(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private static WeatherYear readPlain(String text) {
        RowProblems problems = new RowProblems();
        int lastHeader = text.indexOf(LAST_HEADER);
        String[] location = text.lines().findFirst().orElse("").split(",", -1);
        if (!location[0].strip().equals("LOCATION") || location.length < LOCATION_CELLS || lastHeader < 0) {
            problems.addForFile(
                    ProblemCode.UNREADABLE,
                    "this is no EPW text: it must begin with a LOCATION line (name, region, country, source, number, latitude, longitude, UTC offset, elevation) and have a DATA PERIODS line before the hours");
            problems.done();
        }
        Place place = place(location, problems);
        int firstRow = text.indexOf('\n', lastHeader + 1) + 1;
        EpwRows rows = new EpwRows(problems);
        if (firstRow > 0) {
            rows.read(text, firstRow, (int) text.substring(0, firstRow).lines().count() + 1);
        }
        rows.checkComplete();
        problems.done();
        return rows.weather(Objects.requireNonNull(place));
    }

    private static @Nullable Place place(String[] cells, RowProblems problems) {
        try {
            return new Place(
                    Latitude.parse(cells[LATITUDE]),
                    Longitude.parse(cells[LONGITUDE]),
                    UtcOffset.parse(cells[UTC_OFFSET]),
                    Length.parse(cells[ELEVATION] + " m"));
        } catch (IllegalArgumentException refused) {
            problems.add(1, ProblemCode.UNREADABLE, String.valueOf(refused.getMessage()));
            return null;
        }
    }
}
