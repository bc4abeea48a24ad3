package org.daybank.core.generator;

import static org.daybank.core.working.Message.value;

import java.math.BigDecimal;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Volume;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * The customary size of engine generator that charges a bank and carries loads meanwhile, and what it does in a year.
 *
 * @param need what was asked
 * @param policy what was assumed
 * @param chargeCurrent into the bank
 * @param chargePower into the bank, at its charging voltage
 * @param chargerInput real power that the charger takes for it
 * @param askedPower {@code V · I / (η · PF) + loads}: what the set must carry, in VA or W
 * @param siteFactor what altitude and heat leave of a rating
 * @param requiredRating rating whose power at the site carries what is asked within the load share
 * @param sets how many run side by side; one, but where the largest customary size is too small
 * @param rating of each set, the next customary size
 * @param sitePower what all sets give at the site
 * @param meanLoadShare share of it that charger and mean loads take
 * @param checks the rules it was held against
 * @param months from January
 * @param yearlyHours that it runs
 * @param yearlyMade energy at its terminals
 * @param yearlyFuel that it burns
 * @param yearlyFuelCost price of the fuel
 * @param price of all sets
 * @param yearlyWear share of the price that the hours of a year use up
 * @param rule how a simulation starts and stops it
 */
public record GeneratorSize(
        @NotRepeated GeneratorNeed need,
        @NotRepeated GeneratorPolicy policy,
        Current chargeCurrent,
        Power chargePower,
        Power chargerInput,
        Power askedPower,
        Ratio siteFactor,
        Power requiredRating,
        int sets,
        Power rating,
        Power sitePower,
        Ratio meanLoadShare,
        List<Check> checks,
        List<GeneratorMonth> months,
        TimeSpan yearlyHours,
        Energy yearlyMade,
        Volume yearlyFuel,
        Money yearlyFuelCost,
        Money price,
        Money yearlyWear,
        EngineRule rule) {
    private static final double DERATE_METRES = 300;
    private static final double DERATE_KELVINS = 5.5;

    /** Keeps copies. */
    public GeneratorSize {
        checks = List.copyOf(checks);
        months = List.copyOf(months);
    }

    /** Sizes a generator. */
    public static GeneratorSize of(GeneratorNeed need, GeneratorPolicy policy) {
        Current current = need.chargeCurrent();
        Power charge = current.times(need.chargingVoltage());
        Power input = charge.dividedBy(need.chargerEfficiency().fraction());
        Power asked = input.dividedBy(need.chargerPowerFactor().fraction()).plus(need.concurrentLoads());
        Power most = input.plus(need.concurrentLoads());
        Ratio site = siteFactor(need, policy);
        Power required =
                larger(asked, most.dividedBy(policy.mostLoadShare().fraction())).dividedBy(site.fraction());
        int sets = (int) Math.max(1, Math.ceil(required.dividedBy(GeneratorRatings.largest())));
        Power rating = GeneratorRatings.next(required.dividedBy(sets));
        Power sitePower = rating.times(sets).times(site);
        Power mean = input.plus(need.meanLoads());
        List<GeneratorMonth> months = Arrays.stream(Month.values())
                .map(month -> month(month, need, policy, charge, mean, rating.times(sets)))
                .toList();
        TimeSpan hours = TimeSpan.hours(
                months.stream().mapToDouble(m -> m.hours().hours()).sum());
        Volume fuel = Volume.litres(
                months.stream().mapToDouble(m -> m.fuel().litres()).sum());
        Money price = times(policy.pricePerKilowatt(), rating.times(sets).kilowatts());
        return new GeneratorSize(
                need,
                policy,
                current,
                charge,
                input,
                asked,
                site,
                required,
                sets,
                rating,
                sitePower,
                Ratio.of(mean.dividedBy(sitePower)),
                checks(need, policy, current, most, mean, sitePower, months),
                months,
                hours,
                Energy.wattHours(
                        months.stream().mapToDouble(m -> m.made().wattHours()).sum()),
                fuel,
                times(policy.fuelPricePerLitre(), fuel.litres()),
                price,
                times(price, hours.dividedBy(policy.serviceLife())),
                new EngineRule(
                        sitePower,
                        policy.startBelow(),
                        policy.stopAbove(),
                        need.chargerEfficiency(),
                        policy.litresPerKilowattHour(),
                        policy.litresPerHourPerKilowatt() / site.fraction()));
    }

    private static Ratio siteFactor(GeneratorNeed need, GeneratorPolicy policy) {
        double steps = Math.max(0, need.elevation().metres()) / DERATE_METRES;
        double warmer =
                Math.max(0, need.hottestAir().celsius() - policy.ratedAir().celsius()) / DERATE_KELVINS;
        return Ratio.of((1 - policy.altitudeDerate().fraction() * steps)
                * (1 - policy.heatDerate().fraction() * warmer));
    }

    /** The bank gets the charger's power and is spared the loads. */
    private static GeneratorMonth month(
            Month month, GeneratorNeed need, GeneratorPolicy policy, Power charge, Power mean, Power rated) {
        Energy shortfall = need.shortfall(month.getValue() - 1);
        TimeSpan hours = shortfall.dividedBy(charge.plus(need.meanLoads()));
        Energy made = mean.times(hours);
        return new GeneratorMonth(
                month,
                shortfall,
                hours,
                made,
                Volume.litres(policy.litresPerKilowattHour() * made.kilowattHours()
                        + policy.litresPerHourPerKilowatt() * rated.kilowatts() * hours.hours()));
    }

    private static List<Check> checks(
            GeneratorNeed need,
            GeneratorPolicy policy,
            Current current,
            Power most,
            Power mean,
            Power sitePower,
            List<GeneratorMonth> months) {
        List<Check> checks = new ArrayList<>();
        checks.add(Check.atMost(GeneratorRule.BANK_CHARGE_CURRENT, current, need.maximumChargeCurrent()));
        checks.add(Check.atMost(
                GeneratorRule.MOST_LOAD,
                most,
                sitePower.times(policy.mostLoadShare()),
                value("sitePower", sitePower),
                value("mostLoadShare", policy.mostLoadShare())));
        checks.add(Check.atLeast(
                GeneratorRule.LEAST_LOAD,
                mean,
                sitePower.times(policy.leastLoadShare()),
                value("leastLoadShare", policy.leastLoadShare())));
        GeneratorMonth worst = months.stream()
                .max(Comparator.comparingDouble(GeneratorMonth::shareOfMonth))
                .orElseThrow();
        checks.add(Check.atMost(
                GeneratorRule.HOURS_OF_MONTH,
                worst.hours(),
                TimeSpan.days(worst.month().minLength()),
                value("month", worst.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH))));
        return checks;
    }

    /** What can hurt someone beside an engine. */
    public List<Hazard> hazards() {
        return GeneratorHazards.of(this);
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        return GeneratorWorking.of(this);
    }

    private static Power larger(Power a, Power b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static Money times(Money price, double factor) {
        return price.times(BigDecimal.valueOf(factor));
    }
}
