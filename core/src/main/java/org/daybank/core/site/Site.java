package org.daybank.core.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * Where the system stands and what the weather is like there.
 *
 * @param latitude decimal degrees, positive to the north
 * @param elevation above the sea, from −430 to 9000 m
 * @param recordLow coldest air ever measured, or expected once in the life of the system; from −90 °C up to the coldest
 *     month's mean
 * @param recordHigh hottest air, from the warmest month's mean up to 65 °C
 * @param months twelve monthly means
 * @param horizon what stands between the array and the low sun
 */
@RecordBuilder
public record Site(
        Latitude latitude,

        @Bounds(sensible = "0–5000 m") @Assumed(value = "0 m", source = "sea level: no elevation stated")
        Length elevation,

        Temperature recordLow,

        @Bounds(sensible = "warmest month's mean + 10–20 K")
        @Assumed(source = "warmest month's mean + 15 K, the usual distance between a monthly mean and the hottest hour")
        Temperature recordHigh,

        MonthlyClimate months,

        @Assumed(value = "open", source = "nothing stated that would shade the array")
        Horizon horizon)
        implements SiteBuilder.With {
    private static final TemperatureDifference HOTTEST_OVER_WARMEST_MONTH = TemperatureDifference.kelvins(15);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or can never be right
     */
    public Site {
        elevation = elevation == null ? Length.ZERO : elevation;
        horizon = horizon == null ? Horizon.OPEN : horizon;
        recordHigh = recordHigh == null && months != null
                ? months.warmestMonth().plus(HOTTEST_OVER_WARMEST_MONTH)
                : recordHigh;
        Validation checks = new Validation()
                .required("latitude", latitude)
                .within("elevation", elevation, Length.metres(-430), Length.metres(9000))
                .required("recordLow", recordLow)
                .required("months", months);
        if (months != null) {
            checks.within("recordLow", recordLow, Temperature.celsius(-90), months.coldestMonth())
                    .within("recordHigh", recordHigh, months.warmestMonth(), Temperature.celsius(65));
        }
        checks.done();
    }
}
