package org.daybank.core.sun;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Ratio;

/**
 * Which hours are dark: the share of each of the 24 solar hours that lies before sunrise or after sunset on the mean day of
 * each month. Twilight counts as dark, for it charges nothing.
 *
 * @param shares twelve months from January, each with 24 shares from 0 (light) to 1 (dark); the first is the hour from
 *     midnight to one
 */
public record DarkHours(List<List<Ratio>> shares) {
    private static final int HOURS = 24;

    /** Keeps copies. */
    public DarkHours {
        shares = shares.stream().map(List::copyOf).toList();
    }

    /** The dark hours at a latitude. */
    public static DarkHours at(Latitude latitude) {
        return new DarkHours(Arrays.stream(Month.values())
                .map(month -> SolarDay.on(latitude, MeanDays.dayOfYear(month), SunPolicy.standard())
                        .dayLength()
                        .hours())
                .map(DarkHours::darkShares)
                .toList());
    }

    private static List<Ratio> darkShares(double dayHours) {
        double sunrise = 12 - dayHours / 2;
        double sunset = 12 + dayHours / 2;
        return IntStream.range(0, HOURS)
                .mapToObj(hour -> Ratio.of(1 - Math.max(0, Math.min(hour + 1, sunset) - Math.max(hour, sunrise))))
                .toList();
    }

    /** The 24 shares of a month. */
    public List<Ratio> in(Month month) {
        return shares.get(month.getValue() - 1);
    }
}
