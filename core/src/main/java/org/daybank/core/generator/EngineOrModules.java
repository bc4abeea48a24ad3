package org.daybank.core.generator;

import java.math.BigDecimal;
import java.util.Comparator;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Working;

/**
 * Whether the engine is the cheaper way through the dark months, or more modules.
 *
 * @param size of the engine
 * @param more what modules cost and bring
 * @param largestShortfall of the month that lacks most
 * @param modules that would cover it
 * @param modulesPrice of all of them
 * @param modulesYearly their price as an annuity
 * @param engineYearly fuel and wear of a year
 * @param cheaper which costs less a year; the engine when both cost the same
 * @param saving by which it does
 */
public record EngineOrModules(
        @NotRepeated GeneratorSize size,
        @NotRepeated MoreModules more,
        Energy largestShortfall,
        int modules,
        Money modulesPrice,
        Money modulesYearly,
        Money engineYearly,
        WinterSource cheaper,
        Money saving) {
    private static final int MOST_MODULES = 1_000_000;

    /**
     * Compares the two.
     *
     * @throws org.daybank.core.schema.InvalidInput when the prices are in two currencies, or it would take over a million modules
     */
    public static EngineOrModules of(GeneratorSize size, MoreModules more) {
        Energy largest = size.months().stream()
                .map(GeneratorMonth::shortfall)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        double count = Math.ceil(largest.dividedBy(more.moduleYield()));
        new Validation()
                .that(
                        more.pricePerModule().currency().equals(size.price().currency()),
                        "pricePerModule",
                        ProblemCode.CONFLICT,
                        () -> "pricePerModule must be in the currency of the generator's prices, %s, but was %s."
                                .formatted(size.price().currency().getCurrencyCode(), more.pricePerModule()))
                .that(
                        count <= MOST_MODULES,
                        "moduleYield",
                        ProblemCode.OUT_OF_RANGE,
                        () ->
                                "moduleYield must be large enough for a million modules to cover a shortfall of %s, but was %s."
                                        .formatted(largest, more.moduleYield()))
                .done();
        int modules = (int) count;
        Money price = more.pricePerModule().times(modules);
        Money modulesYearly = price.times(BigDecimal.valueOf(more.annuityFactor()));
        Money engineYearly = size.yearlyFuelCost().plus(size.yearlyWear());
        boolean engine = engineYearly.compareTo(modulesYearly) <= 0;
        return new EngineOrModules(
                size,
                more,
                largest,
                modules,
                price,
                modulesYearly,
                engineYearly,
                engine ? WinterSource.ENGINE : WinterSource.MODULES,
                engine ? modulesYearly.minus(engineYearly) : engineYearly.minus(modulesYearly));
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        return Working.builder()
                .step(
                        "modules instead",
                        "N = ⌈E_short / E_module⌉",
                        "in the month that lacks most",
                        modules,
                        "%s / %s",
                        largestShortfall,
                        more.moduleYield())
                .step(
                        "their yearly cost",
                        "A = N · price · i / (1 − (1 + i)^−n)",
                        "annuity",
                        modulesYearly,
                        "%s · %s · %s",
                        modules,
                        more.pricePerModule(),
                        more.annuityFactor())
                .step(
                        "yearly cost of the engine",
                        "fuel + wear",
                        "what stops when it does not run",
                        engineYearly,
                        "%s + %s",
                        size.yearlyFuelCost(),
                        size.yearlyWear())
                .build();
    }
}
