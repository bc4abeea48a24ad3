package org.daybank.core.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Where the system stands and what the weather is like there.
 *
 * @param latitude decimal degrees, positive to the north
 * @param elevation above the sea, from −430 to 9000 m
 * @param recordLow coldest air ever measured, or expected once in the life of the system; at most the coldest month's mean
 * @param recordHigh hottest air; at least the warmest month's mean. Null when left out
 * @param months twelve monthly means
 * @param horizon what stands between the array and the low sun
 */
@RecordBuilder
public record Site(
        Latitude latitude,

        @Bounds(minimum = "-430 m", maximum = "9000 m", sensible = "0–5000 m")
        @Assumed(value = "0 m", source = "sea level: no elevation stated")
        Length elevation,

        @Bounds(minimum = "-90 Cel", maximum = "50 Cel") Temperature recordLow,

        @Bounds(minimum = "-50 Cel", maximum = "65 Cel", sensible = "warmest month's mean + 10–20 K")
        @Assumed(source = "warmest month's mean + 15 K, the usual distance between a monthly mean and the hottest hour")
        @Nullable
        Temperature recordHigh,

        MonthlyClimate months,

        @Assumed(value = "open", source = "nothing stated that would shade the array")
        Horizon horizon)
        implements SiteBuilder.With, Resolvable<Site.Resolved> {
    private static final TemperatureDifference HOTTEST_OVER_WARMEST_MONTH = TemperatureDifference.kelvins(15);

    /**
     * The components whose defaults follow from others.
     *
     * @param recordHigh hottest air
     */
    public record Resolved(Temperature recordHigh) {}

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent
     */
    public Site {
        elevation = Defaults.otherwise(elevation, Site.class, "elevation");
        horizon = Defaults.otherwise(horizon, Site.class, "horizon");
        Validation.of(Site.class, latitude, elevation, recordLow, recordHigh, months, horizon)
                .notAbove(
                        "recordLow",
                        recordLow,
                        "the coldest month's mean",
                        months == null ? null : months.coldestMonth())
                .notBelow(
                        "recordHigh",
                        recordHigh,
                        "the warmest month's mean",
                        months == null ? null : months.warmestMonth())
                .done();
    }

    @Override
    public Resolved resolved() {
        return new Resolved(
                recordHigh != null ? recordHigh : months.warmestMonth().plus(HOTTEST_OVER_WARMEST_MONTH));
    }
}
