package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.DischargeCurve;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.junit.jupiter.api.Test;

/** Many sizes of one system, held to the simulator and to a few sums by hand. */
class ManyDesignsTest {
    static final SimulationPolicy NEVER_CUT_OFF = SimulationPolicy.standard().withReconnectRise(Ratio.ZERO);

    private static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(46))
            .recordLow(Temperature.celsius(-20))
            .months(MonthlyClimateBuilder.builder()
                    .dailyIrradiation(Collections.nCopies(12, Irradiation.kilowattHoursPerSquareMetre(2.2)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(8)))
                    .build())
            .build();

    static SunnyYears madeUp(int years) {
        return SunnyYears.synthetic(
                SITE,
                new Plane(Angle.degrees(50), Angle.degrees(180)),
                7,
                years,
                SunPolicy.standard(),
                SyntheticPolicy.standard());
    }

    /** 120 W around the clock, a controller that takes all there is, out in the cold with a battery without a heater. */
    static SimulatedSystemBuilder cabin(int modules, double ampereHours) {
        return Systems.lithium(1, Systems.steady(0, 120))
                .array(Systems.modules(1, modules))
                .bank(BankLayout.of(
                        Systems.battery("BK-L48-280H")
                                .withCapacity(DischargeCurve.parse("20 h: %s Ah".formatted(ampereHours)))
                                .withHeater(null),
                        Voltage.volts(48),
                        1,
                        1))
                .housing(BankHousing.standard())
                .controller(Systems.controller("HN-T80X").withOutputCurrent(Current.amperes(500)));
    }

    static ManyDesigns many(SimulatedSystem system, SunnyYears sun, SimulationPolicy policy) {
        return ManyDesigns.of(
                system,
                ArrayYears.of(system, sun, ArrayPolicy.standard()),
                Systems.NO_SNOW,
                ArrayPolicy.standard(),
                policy);
    }

    private static Simulation one(SimulatedSystem system, SunnyYears sun, SimulationPolicy policy) {
        return Simulator.run(system, sun, Systems.NO_SNOW, ArrayPolicy.standard(), policy);
    }

    @Test
    void ofAWholeSystemTheYearIsTheSimulatorsToTheLastBit() {
        SunnyYears sun = madeUp(1);
        for (boolean essential : new boolean[] {false, true}) {
            for (double own : new double[] {0, 9}) {
                for (int modules = 1; modules <= 8; modules++) {
                    SimulatedSystem system = cabin(modules, 100)
                            .loads(Systems.steady(essential ? 120 : 0, essential ? 0 : 120))
                            .controller(Systems.controller("HN-T80X")
                                    .withOutputCurrent(Current.amperes(500))
                                    .withSelfConsumption(Power.watts(own)))
                            .build();
                    ManyDesigns many = many(system, sun, NEVER_CUT_OFF);

                    SizedSystemResult outcome = many.run(
                                    List.of(Power.watts(410 * modules)), List.of(many.bankOfTheSystem()))
                            .at(0, 0);

                    SimulatedYear year =
                            one(system, sun, NEVER_CUT_OFF).byYear().get(0);
                    assertThat(outcome.lossOfLoad()).isEqualTo(year.lossOfLoad());
                    assertThat(outcome.lossOfLoadProbability()).isEqualTo(year.lossOfLoadProbability());
                    assertThat(outcome.unserved())
                            .isEqualTo(essential ? year.unservedEssential() : year.unservedOther());
                    assertThat(outcome.spilled()).isEqualTo(year.ledger().spilled());
                    assertThat(outcome.throughput()).isEqualTo(year.throughput());
                    assertThat(outcome.lowestStateOfCharge()).isEqualTo(year.lowestStateOfCharge());
                }
            }
        }
    }

    @Test
    void ofSeveralYearsItIsTheMean() {
        SunnyYears sun = madeUp(3);
        SimulatedSystem system = cabin(4, 150).build();
        ManyDesigns many = many(system, sun, NEVER_CUT_OFF);

        SizedSystemResult outcome = many.run(List.of(Power.watts(1640)), List.of(many.bankOfTheSystem()))
                .at(0, 0);

        Reliability years = one(system, sun, NEVER_CUT_OFF).reliability();
        assertThat(years.lossOfLoad().hours()).isPositive();
        // sums of three years in another order: a few roundings
        assertThat(outcome.lossOfLoad().hours()).isCloseTo(years.lossOfLoad().hours(), within(1e-9));
        assertThat(outcome.unserved().wattHours())
                .isCloseTo(years.unservedOther().wattHours(), withPercentage(1e-12));
        assertThat(outcome.lowestStateOfCharge()).isEqualTo(years.lowestStateOfCharge());
    }

    @Test
    void everyPlaceOfTheGridIsItsOwnDesignInBlocksOfAnySize() {
        ManyDesigns many = many(cabin(1, 100).build(), madeUp(1), NEVER_CUT_OFF);
        List<Power> arrays =
                IntStream.range(0, 31).mapToObj(i -> Power.watts(200 + 97 * i)).toList();
        List<Energy> banks = IntStream.range(0, 29)
                .mapToObj(i -> Energy.wattHours(500 + 731 * i))
                .toList();

        DesignGrid grid = many.run(arrays, banks);

        for (int place : new int[] {0, 1, 299, 300, 301, 450, 898}) {
            int array = place / banks.size();
            int bank = place % banks.size();
            DesignGrid alone = many.run(List.of(arrays.get(array)), List.of(banks.get(bank)));
            assertThat(grid.at(array, bank)).isEqualTo(alone.at(0, 0));
        }
    }

    /** Nothing from the sky: a bank of 8000 Wh gives 0.8 of it, 6400 Wh, at 120 W; 53 hours and a third. */
    @Test
    void inTheDarkABankLastsAsLongAsItsEnergy() {
        SimulatedSystem system = cabin(1, 100).housing(Systems.WARM_ROOM).build();
        ManyDesigns many = many(system, Systems.darkness(), NEVER_CUT_OFF.withSettle(false));

        SizedSystemResult outcome = many.run(List.of(Power.watts(410)), List.of(Energy.wattHours(8000)))
                .at(0, 0);

        // 2 %/month leak over 53 hours takes at most 12 Wh of it, a tenth of an hour: the 54th hour lacks all the same
        assertThat(outcome.lossOfLoad().hours()).isEqualTo(8760 - 53);
        assertThat(outcome.throughput().wattHours()).isBetween(6388.0, 6400.0);
        assertThat(outcome.spilled()).isEqualTo(Energy.ZERO);
    }

    @Test
    void whatStandsInTheWayIsNamedAllAtOnce() {
        SimulatedSystem system = cabin(1, 100)
                .wells(new KineticWells(Ratio.of(0.3), 0.6))
                .loads(Systems.steady(10, 20))
                .build();

        assertThatThrownBy(() -> many(
                        system, Systems.darkness(), SimulationPolicy.standard().withDischargeLossShare(Ratio.of(0.5))))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        thrown -> assertThat(thrown.problems())
                                .extracting(Problem::path)
                                .containsExactly("/wells", "/loads", "/reconnectRise", "/dischargeLossShare"));
    }

    @Test
    void sizesAreAboveNothing() {
        ManyDesigns many = many(cabin(1, 100).build(), Systems.darkness(), NEVER_CUT_OFF);

        assertThatThrownBy(() -> many.run(List.of(Power.watts(10), Power.ZERO), List.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("arraySizes/1")
                .hasMessageContaining("bankSizes");
        assertThatThrownBy(() -> many.run(
                        Collections.nCopies(10_001, Power.watts(1)), Collections.nCopies(1000, Energy.wattHours(1))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("no more than 10000000 designs, but were 10001000.");
    }
}
