package org.daybank.core.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;

/** Whatever a generator must charge and carry. */
class GeneratorProperties {
    private static final GeneratorPolicy POLICY = GeneratorPolicy.standard();

    @Provide
    Arbitrary<GeneratorNeed> needs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(12, 600),
                        Arbitraries.doubles().between(1, 1000),
                        Arbitraries.doubles().between(0.5, 1),
                        Arbitraries.doubles().between(0.4, 1),
                        Arbitraries.doubles().between(0, 20_000),
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.doubles().between(0, 5000),
                        Arbitraries.doubles().between(-20, 55))
                .as((volts, amperes, efficiency, powerFactor, loads, meanShare, metres, air) ->
                        GeneratorNeedBuilder.builder()
                                .chargingVoltage(Voltage.volts(volts))
                                .maximumChargeCurrent(Current.amperes(amperes))
                                .chargerEfficiency(Ratio.of(efficiency))
                                .chargerPowerFactor(Ratio.of(powerFactor))
                                .concurrentLoads(Power.watts(loads))
                                .meanLoads(Power.watts(loads * meanShare))
                                .elevation(Length.metres(metres))
                                .hottestAir(Temperature.celsius(air))
                                .monthlyShortfall(Collections.nCopies(12, Energy.kilowattHours(10)))
                                .build());
    }

    /** The set carries charger and loads within their share, and all volt-amperes, in every month and place. */
    @Property(tries = 500, edgeCases = EdgeCasesMode.MIXIN)
    void carriesWhatIsAsked(@ForAll("needs") GeneratorNeed need) {
        GeneratorSize size = GeneratorSize.of(need, POLICY);

        // a share of 1e-12 for the rounding of a quotient and its product
        assertThat(size.sitePower().watts())
                .isGreaterThanOrEqualTo(size.askedPower().watts() * (1 - 1e-12));
        assertThat(size.chargerInput().plus(need.concurrentLoads()).watts())
                .isLessThanOrEqualTo(size.sitePower().watts() * 0.8 * (1 + 1e-12));
        assertThat(size.checks())
                .filteredOn(check -> check.rule().code().equals("bankChargeCurrent"))
                .allMatch(Check::passed);
    }

    /** What it brings to the bank and spares it in its hours is what was missing. */
    @Property(tries = 500)
    void coversTheShortfall(@ForAll("needs") GeneratorNeed need) {
        GeneratorSize size = GeneratorSize.of(need, POLICY);

        double brought = size.yearlyHours().hours()
                * (size.chargePower().watts() + need.meanLoads().watts());
        assertThat(brought).isCloseTo(120_000, within(1e-6));
        double lostInCharger = size.yearlyHours().hours()
                * (size.chargerInput().watts() - size.chargePower().watts());
        assertThat(size.yearlyMade().wattHours()).isCloseTo(120_000 + lostInCharger, within(1e-5));
    }

    @Property(tries = 300)
    void higherHotterAndWithMoreToChargeItIsNeverSmaller(
            @ForAll("needs") GeneratorNeed need,
            @ForAll @DoubleRange(min = 0, max = 500) double metres,
            @ForAll @DoubleRange(min = 0, max = 5) double kelvins,
            @ForAll @DoubleRange(min = 1, max = 2) double factor) {
        GeneratorNeed harder = need.withElevation(need.elevation().plus(Length.metres(metres)))
                .withHottestAir(Temperature.celsius(need.hottestAir().celsius() + kelvins))
                .withMaximumChargeCurrent(need.maximumChargeCurrent().times(factor));

        assertThat(GeneratorSize.of(harder, POLICY).requiredRating().watts())
                .isGreaterThanOrEqualTo(
                        GeneratorSize.of(need, POLICY).requiredRating().watts() * (1 - 1e-12));
    }

    /** Twice the energy missing takes twice the hours and twice the fuel of the same set. */
    @Property(tries = 300)
    void fuelFollowsTheShortfall(
            @ForAll("needs") GeneratorNeed need, @ForAll @DoubleRange(min = 0, max = 50) double factor) {
        GeneratorSize once = GeneratorSize.of(need, POLICY);
        GeneratorSize more = GeneratorSize.of(
                need.withMonthlyShortfall(Collections.nCopies(12, Energy.kilowattHours(10 * factor))), POLICY);

        assertThat(more.rating()).isEqualTo(once.rating());
        assertThat(more.yearlyFuel().litres())
                .isCloseTo(
                        once.yearlyFuel().litres() * factor,
                        within(1e-9 * (1 + more.yearlyFuel().litres())));
    }

    /** A loan is paid off by its annuities: {@code A · Σ (1 + i)^−k = 1} over the years. */
    @Property(tries = 300)
    void theAnnuityPaysOffItsPrice(
            @ForAll @DoubleRange(min = 0, max = 0.5) double interest, @ForAll("years") int years) {
        MoreModules more = new MoreModules(
                Money.of("100", "EUR"), Energy.kilowattHours(1), TimeSpan.years(years), Ratio.of(interest));
        double worth = 0;
        for (int year = 1; year <= years; year++) {
            worth += more.annuityFactor() / Math.pow(1 + interest, year);
        }

        // expm1 and log1p keep tiny rates exact to some ulp; the sum loses some of 50 terms
        assertThat(worth).isCloseTo(1, within(1e-9));
    }

    @Provide
    Arbitrary<Integer> years() {
        return Arbitraries.integers().between(1, 50);
    }
}
