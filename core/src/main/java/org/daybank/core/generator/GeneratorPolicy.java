package org.daybank.core.generator;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * What a planner may argue with when an engine generator is sized.
 *
 * @param altitudeDerate share of its power lost for each 300 m above the sea
 * @param heatDerate share of its power lost for each 5.5 K above ratedAir
 * @param ratedAir air for which the rating holds
 * @param leastLoadShare of what it gives at the site, below which an engine wears and soots
 * @param mostLoadShare of what it gives at the site, kept free for starts and long runs
 * @param litresPerKilowattHour fuel for each kilowatt-hour made
 * @param litresPerHourPerKilowatt fuel for each hour and kilowatt of the rating, made or not
 * @param fuelPricePerLitre delivered to the site
 * @param pricePerKilowatt of the rating, for the generator
 * @param serviceLife hours until it is worn out
 * @param startBelow state of charge at which it starts
 * @param stopAbove state of charge at which it stops; more than startBelow
 */
@RecordBuilder
public record GeneratorPolicy(
        @Bounds(minimum = "0", maximum = "0.04", sensible = "0.03–0.04; less with a turbocharger")
        @Assumed(value = "0.035", source = "customary for engines without a turbocharger; the data sheet wins")
        Ratio altitudeDerate,

        @Bounds(minimum = "0", maximum = "0.04", sensible = "0.01–0.02")
        @Assumed(value = "0.01", source = "customary for small engines; the data sheet wins")
        Ratio heatDerate,

        @Bounds(minimum = "0 Cel", maximum = "50 Cel")
        @Assumed(value = "25 Cel", source = "reference condition of ISO 3046-1 and ISO 8528-1")
        Temperature ratedAir,

        @Bounds(minimum = "0", maximum = "0.7", sensible = "0.3–0.5")
        @Assumed(value = "0.3", source = "unburnt fuel collects in engines that run below it")
        Ratio leastLoadShare,

        @Bounds(minimum = "0.3", maximum = "1", sensible = "0.7–0.9") @Assumed(value = "0.8", source = "custom")
        Ratio mostLoadShare,

        @Bounds(minimum = "0.05", maximum = "2")
        @Assumed(value = "0.246", source = "typical curve of small diesel engines")
        Double litresPerKilowattHour,

        @Bounds(minimum = "0", maximum = "0.5")
        @Assumed(value = "0.081", source = "typical curve of small diesel engines")
        Double litresPerHourPerKilowatt,

        @Bounds(minimum = "0", maximum = "10000000")
        @Assumed(
                value = "1.70 EUR",
                source = "diesel at the pump in much of Europe, 2024; bringing it there is not in it")
        Money fuelPricePerLitre,

        @Bounds(minimum = "0", maximum = "1000000000")
        @Assumed(value = "600 EUR", source = "small diesel sets with electric start, about; a price list wins")
        Money pricePerKilowatt,

        @Bounds(minimum = "100 h", maximum = "60000 h", sensible = "1500 h portable, 10000 h and more at 1500/min")
        @Assumed(value = "5000 h", source = "between air-cooled portable sets and slow water-cooled ones")
        TimeSpan serviceLife,

        @Bounds(minimum = "0", maximum = "0.95", sensible = "0.3–0.5")
        @Assumed(value = "0.4", source = "before the loads are cut off")
        Ratio startBelow,

        @Bounds(minimum = "0.05", maximum = "0.99", sensible = "0.7–0.9")
        @Assumed(value = "0.8", source = "the last fifth charges slowly and is left to the array")
        Ratio stopAbove)
        implements GeneratorPolicyBuilder.With {
    private static final GeneratorPolicy STANDARD = Defaults.of(GeneratorPolicy.class);

    /**
     * Validates the policy.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is outside its bounds or contradicts another
     */
    public GeneratorPolicy {
        altitudeDerate = Defaults.otherwise(altitudeDerate, GeneratorPolicy.class, "altitudeDerate");
        heatDerate = Defaults.otherwise(heatDerate, GeneratorPolicy.class, "heatDerate");
        ratedAir = Defaults.otherwise(ratedAir, GeneratorPolicy.class, "ratedAir");
        leastLoadShare = Defaults.otherwise(leastLoadShare, GeneratorPolicy.class, "leastLoadShare");
        mostLoadShare = Defaults.otherwise(mostLoadShare, GeneratorPolicy.class, "mostLoadShare");
        litresPerKilowattHour =
                Defaults.otherwise(litresPerKilowattHour, GeneratorPolicy.class, "litresPerKilowattHour");
        litresPerHourPerKilowatt =
                Defaults.otherwise(litresPerHourPerKilowatt, GeneratorPolicy.class, "litresPerHourPerKilowatt");
        fuelPricePerLitre = Defaults.otherwise(fuelPricePerLitre, GeneratorPolicy.class, "fuelPricePerLitre");
        pricePerKilowatt = Defaults.otherwise(pricePerKilowatt, GeneratorPolicy.class, "pricePerKilowatt");
        serviceLife = Defaults.otherwise(serviceLife, GeneratorPolicy.class, "serviceLife");
        startBelow = Defaults.otherwise(startBelow, GeneratorPolicy.class, "startBelow");
        stopAbove = Defaults.otherwise(stopAbove, GeneratorPolicy.class, "stopAbove");
        Validation.of(
                        GeneratorPolicy.class,
                        altitudeDerate,
                        heatDerate,
                        ratedAir,
                        leastLoadShare,
                        mostLoadShare,
                        litresPerKilowattHour,
                        litresPerHourPerKilowatt,
                        fuelPricePerLitre,
                        pricePerKilowatt,
                        serviceLife,
                        startBelow,
                        stopAbove)
                .exceeds("mostLoadShare", mostLoadShare, "leastLoadShare", leastLoadShare)
                .exceeds("stopAbove", stopAbove, "startBelow", startBelow)
                .that(
                        fuelPricePerLitre.currency().equals(pricePerKilowatt.currency()),
                        "pricePerKilowatt",
                        ProblemCode.CONFLICT,
                        "pricePerKilowatt must be in the currency of fuelPricePerLitre %s, but was %s."
                                .formatted(fuelPricePerLitre, pricePerKilowatt))
                .done();
    }

    /** The cited defaults. */
    public static GeneratorPolicy standard() {
        return STANDARD;
    }
}
