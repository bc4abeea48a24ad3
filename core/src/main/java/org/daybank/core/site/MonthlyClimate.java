package org.daybank.core.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Twelve monthly means, from January. Exactly one of {@code dailyIrradiation} and {@code clearness} is given.
 *
 * @param dailyIrradiation on the horizontal, mean per day, from 0 to 14 kWh/m² (more than the sun sends anywhere in a day);
 *     absent when clearness stands in its place
 * @param clearness share of the extraterrestrial irradiation that reaches the ground, from 0 to 0.9: twelve values, or one
 *     for every month, which is then repeated; an estimate in place of measured irradiation
 * @param meanAir mean temperature of the air, from −70 to 50 °C
 * @param albedo share of the sunlight that the ground throws back
 * @param snowLoss share of the array's yield that is lost under snow
 */
@RecordBuilder
public record MonthlyClimate(
        @Bounds(minimum = "0 kWh/m2", maximum = "14 kWh/m2", minimumItems = 12, maximumItems = 12) @Nullable
        List<Irradiation> dailyIrradiation,

        @Bounds(minimum = "0", maximum = "0.9", minimumItems = 1, maximumItems = 12) @Nullable
        List<Ratio> clearness,

        @Bounds(minimum = "-70 Cel", maximum = "50 Cel", minimumItems = 12, maximumItems = 12)
        List<Temperature> meanAir,

        @Bounds(
                minimum = "0",
                maximum = "1",
                minimumItems = 12,
                maximumItems = 12,
                sensible = "0.2 grass or soil, to 0.8 fresh snow")
        @Assumed(source = "0.2 in every month: ground without snow (Liu and Jordan 1963)")
        List<Ratio> albedo,

        @Bounds(minimum = "0", maximum = "1", minimumItems = 12, maximumItems = 12, sensible = "0–0.5")
        @Assumed(source = "0 in every month: no snow on the array stated")
        List<Ratio> snowLoss)
        implements MonthlyClimateBuilder.With {
    private static final int MONTHS = 12;

    /**
     * Takes the constant defaults for what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or out of range
     */
    public MonthlyClimate {
        clearness = clearness != null && clearness.size() == 1 ? everyMonth(clearness.get(0)) : clearness;
        albedo = albedo == null ? everyMonth(Ratio.of(0.2)) : albedo;
        snowLoss = snowLoss == null ? everyMonth(Ratio.ZERO) : snowLoss;
        Validation.of(MonthlyClimate.class, dailyIrradiation, clearness, meanAir, albedo, snowLoss)
                .that(
                        dailyIrradiation != null || clearness != null,
                        "dailyIrradiation",
                        ProblemCode.MISSING,
                        "dailyIrradiation is required: twelve daily means on the horizontal, or clearness in its place.")
                .that(
                        dailyIrradiation == null || clearness == null,
                        "clearness",
                        ProblemCode.CONFLICT,
                        "dailyIrradiation and clearness are both given: clearness replaces irradiation, leave one of them out.")
                .that(
                        clearness == null || clearness.size() <= 1 || clearness.size() >= MONTHS,
                        "clearness",
                        ProblemCode.OUT_OF_RANGE,
                        "clearness must have 1 element or 12, but has " + (clearness == null ? 0 : clearness.size())
                                + ".")
                .done();
        dailyIrradiation = dailyIrradiation == null ? null : List.copyOf(dailyIrradiation);
        clearness = clearness == null ? null : List.copyOf(clearness);
        meanAir = List.copyOf(meanAir);
        albedo = List.copyOf(albedo);
        snowLoss = List.copyOf(snowLoss);
    }

    private static List<Ratio> everyMonth(Ratio ratio) {
        return Collections.nCopies(MONTHS, ratio);
    }

    /** Days of a month in the mean of four years: a February has 28.25. */
    public static double daysIn(Month month) {
        return month == Month.FEBRUARY ? 28.25 : month.maxLength();
    }

    /** Mean air temperature of the warmest month. */
    public Temperature warmestMonth() {
        return Collections.max(meanAir);
    }

    /** Mean air temperature of the coldest month. */
    public Temperature coldestMonth() {
        return Collections.min(meanAir);
    }
}
