package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.daybank.core.load.kernel.DemandTable;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class EnergyBudgetTest {
    private static final Load LAMP = Loads.dc(20).hoursPerDay(5.0).build();
    private static final StandingDraw SMALL_PARTS = StandingDraw.steady(Power.watts(3));
    private static final Load LAPTOP = Loads.ac(46).hoursPerDay(10.0).build();

    private static EnergyDemand demand(Load... loads) {
        return EnergyDemandBuilder.builder().loads(List.of(loads)).build();
    }

    private static EnergyBudget at(double latitude, Load load) {
        return EnergyBudget.of(
                EnergyDemandBuilder.builder(demand(load))
                        .latitude(Latitude.degrees(latitude))
                        .build(),
                Loads.LOSSLESS);
    }

    private static EnergyBudget over(double days, Load... loads) {
        return EnergyBudget.of(
                EnergyDemandBuilder.builder(demand(loads))
                        .autonomy(TimeSpan.days(days))
                        .build(),
                Loads.LOSSLESS);
    }

    private static MonthBudget january(LoadPolicy policy, Load... loads) {
        return EnergyBudget.of(demand(loads), policy).in(Month.JANUARY);
    }

    @Test
    void theMeanDayByItsFormula() {
        Load readers = Loads.dc(30)
                .count(4)
                .hoursPerDay(6.0)
                .dutyCycle(Ratio.of(0.5))
                .standby(Power.watts(2))
                .daysPerWeek(3.5)
                .build();

        // 4 · (30 W · 6 h · 0.5 + 2 W · (24 − 6) h) · 3.5 / 7 = 4 · (90 + 36) · 0.5 = 252 Wh
        assertThat(january(Loads.LOSSLESS, readers).dcEnergy().wattHours()).isCloseTo(252, within(1e-9));
        assertThat(EnergyBudget.of(demand(readers), Loads.LOSSLESS).table())
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.name()).isEqualTo("dc load");
                    assertThat(line.dailyEnergy().wattHours()).isCloseTo(252, within(1e-9));
                });
    }

    @Test
    void theThreeWaysOfSayingWhenTakeTheSameEnergy() {
        Load windows =
                Loads.ac(46).windows(List.of(TimeWindow.parse("22:00-06:30"))).build();
        Load fractions = Loads.ac(46)
                .hourlyFractions(Collections.nCopies(24, Ratio.of(8.5 / 24)))
                .build();
        Load hours = Loads.ac(46).hoursPerDay(8.5).build();

        // 46 W · 8.5 h = 391 Wh; / 0.92 = 425 Wh; with one efficiency and no squares it does not matter when
        for (Load load : List.of(windows, fractions, hours)) {
            assertThat(january(LoadPolicy.standard().withInverterIdle(Ratio.ZERO), load)
                            .dailyEnergy()
                            .wattHours())
                    .isCloseTo(425, within(1e-9));
        }
    }

    @Test
    void directCurrentLosesInTheWiring() {
        MonthBudget month = january(LoadPolicy.standard(), LAMP);

        // 20 W · 5 h = 100 Wh at the lamp; / 0.97 = 103.0928 Wh at the bank
        assertThat(month.dcEnergy().wattHours()).isCloseTo(100, within(1e-9));
        assertThat(month.dailyEnergy().wattHours()).isCloseTo(103.0928, within(1e-4));
        assertThat(month.wiringLoss().wattHours()).isCloseTo(3.0928, within(1e-4));
        // no AC load, no inverter
        assertThat(month.inverterLoss().wattHours()).isCloseTo(0, within(1e-9));
        assertThat(month.acEnergy().wattHours()).isZero();
    }

    @Test
    void idleDrawIsCountedOnceForTheHoursTheInverterIsOn() {
        // 460 Wh at the laptop, / 0.92 = 500 Wh; idle: 46 W · 1.25 · 0.008 = 0.46 W, 24 h: 11.04 Wh
        MonthBudget month = january(LoadPolicy.standard(), LAPTOP);

        assertThat(month.dailyEnergy().wattHours()).isCloseTo(511.04, within(1e-9));
        assertThat(month.inverterLoss().wattHours()).isCloseTo(51.04, within(1e-9));
        // a second load shares the idle draw of its inverter: 46 W + 46 W, 1000 Wh, 92 · 1.25 · 0.008 = 0.92 W, 22.08
        // Wh
        assertThat(january(LoadPolicy.standard(), LAPTOP, LAPTOP).dailyEnergy().wattHours())
                .isCloseTo(1022.08, within(1e-9));
    }

    @Test
    void anInverterThatIsSwitchedOffDoesNotIdle() {
        LoadPolicy switched = LoadPolicy.standard().withInverterAlwaysOn(false);
        Load evening =
                Loads.ac(46).windows(List.of(TimeWindow.parse("18:00-22:00"))).build();

        // 46 W · 4 h / 0.92 = 200 Wh; idle 0.46 W for the 4 h of the window: 1.84 Wh
        assertThat(january(switched, evening).dailyEnergy().wattHours()).isCloseTo(201.84, within(1e-9));
    }

    @Test
    void aMonthWithoutUseTakesNothing() {
        Load fan = Loads.ac(46)
                .hoursPerDay(10.0)
                .standby(Power.watts(5))
                .monthsOfUse(List.of(Month.JULY))
                .build();
        EnergyBudget budget = EnergyBudget.of(demand(fan), LoadPolicy.standard());

        assertThat(budget.in(Month.JUNE).dailyEnergy().wattHours()).isZero();
        assertThat(budget.in(Month.JUNE).worstDailyEnergy().wattHours()).isZero();
        assertThat(budget.in(Month.JUNE).afterDark()).isEqualTo(Ratio.ZERO);
        assertThat(budget.in(Month.JUNE).runningPower()).isEqualTo(Power.ZERO);
        // 460 + 5 · 14 = 530 Wh at the fan
        assertThat(budget.in(Month.JULY).acEnergy().wattHours()).isCloseTo(530, within(1e-9));
        assertThat(budget.heaviestMonth().month()).isEqualTo(Month.JULY);
    }

    @Test
    void theWorstRunIsAsLongAsTheAutonomy() {
        Load drill = Loads.dc(600).hoursPerDay(0.5).daysPerWeek(3.0).build();

        // mean day 300 Wh · 3/7 = 128.571 Wh; all three days of a run of three 300 Wh; of ten days 6: 180 Wh a day
        MonthBudget three = over(3, drill).in(Month.MAY);
        MonthBudget ten = over(10, drill).in(Month.MAY);
        assertThat(three.dailyEnergy().wattHours()).isCloseTo(128.571, within(1e-3));
        assertThat(three.worstDailyEnergy().wattHours()).isCloseTo(300, within(1e-9));
        assertThat(ten.worstDailyEnergy().wattHours()).isCloseTo(180, within(1e-9));
    }

    @Test
    void theMonthOfTheWorstRunNeedNotBeThatOfTheMeanDay() {
        // used once a week, but on the one day of the run: June has the worse day, January the larger mean
        Load steady = Loads.dc(10).hoursPerDay(23.0).build();
        Load january = Loads.dc(15)
                .hoursPerDay(1.0)
                .monthsOfUse(List.of(Month.JANUARY))
                .build();
        Load june = Loads.dc(100)
                .hoursPerDay(1.0)
                .daysPerWeek(1.0)
                .monthsOfUse(List.of(Month.JUNE))
                .build();
        EnergyBudget budget = over(1, steady, january, june);

        // January 230 + 15 = 245 Wh against June 230 + 100/7 = 244.29 Wh; worst day 245 against 330 Wh
        assertThat(budget.heaviestMonth().month()).isEqualTo(Month.JANUARY);
        assertThat(budget.heaviestRun().month()).isEqualTo(Month.JUNE);
        assertThat(budget.heaviestRun().worstDailyEnergy().wattHours()).isCloseTo(330, within(1e-9));
    }

    @Test
    void essentialLoadsAreCountedAtTheLoads() {
        Load freezer = Loads.ac(100)
                .hoursPerDay(24.0)
                .dutyCycle(Ratio.of(0.4))
                .essential(true)
                .build();
        EnergyBudget budget = EnergyBudget.of(demand(freezer, LAPTOP, LAMP), LoadPolicy.standard());

        // 100 W · 24 h · 0.4 = 960 Wh of 960 + 460 + 100
        assertThat(budget.in(Month.MAY).essentialEnergy().wattHours()).isCloseTo(960, within(1e-9));
        assertThat(budget.essentialPeak().running().watts()).isCloseTo(100, within(1e-9));
        assertThat(budget.peak().running().watts()).isCloseTo(146, within(1e-9));
    }

    @Test
    void afterDarkOnTheEquatorIsWhatRunsFromSixToSix() {
        Load noon =
                Loads.dc(30).windows(List.of(TimeWindow.parse("11:00-13:00"))).build();
        Load evening =
                Loads.dc(30).windows(List.of(TimeWindow.parse("17:00-20:00"))).build();

        // of 60 + 90 Wh the hours from six to eight are dark: 60 / 150
        assertThat(january(Loads.LOSSLESS, noon, evening).afterDark().fraction())
                .isCloseTo(0.4, within(1e-9));
    }

    @Test
    void afterDarkFollowsLatitudeAndSeason() {
        Load steady = Loads.dc(10).hoursPerDay(24.0).build();
        EnergyBudget budget = at(46.87, steady);
        EnergyBudget south = at(-46.87, steady);
        EnergyBudget polar = at(80, steady);

        // mean day of December, δ = −23.05°: cos ω = tan 46.87° · tan 23.05° = 0.45426, ω = 62.982°; dark 1 −
        // 62.982/180 = 0.6501
        assertThat(budget.in(Month.DECEMBER).afterDark().fraction()).isCloseTo(0.6501, within(5e-4));
        // mean day of June, δ = 23.09°: cos ω = −1.06757 · 0.42631 = −0.45512, ω = 117.072°; dark 0.3496
        assertThat(budget.in(Month.JUNE).afterDark().fraction()).isCloseTo(0.3496, within(1e-3));
        assertThat(south.in(Month.JUNE).afterDark().fraction()).isCloseTo(0.6504, within(1e-3));
        assertThat(polar.in(Month.DECEMBER).afterDark().fraction()).isCloseTo(1, within(1e-12));
        assertThat(polar.in(Month.JUNE).afterDark().fraction()).isCloseTo(0, within(1e-12));
    }

    @Test
    void theSystemsOwnPartsDrawAroundTheClock() {
        LoadProfile profile = LoadProfile.of(demand(LAMP), Loads.LOSSLESS);
        StandingDraw standing =
                new StandingDraw(Collections.nCopies(12, Power.watts(2)), Collections.nCopies(12, Power.watts(10)));
        MonthBudget month = profile.budget(standing).in(Month.MARCH);

        // 100 + 2 · 24 = 148 Wh on the mean day, 100 + 10 · 24 = 340 Wh each day of the worst run
        assertThat(month.dailyEnergy().wattHours()).isCloseTo(148, within(1e-9));
        assertThat(month.worstDailyEnergy().wattHours()).isCloseTo(340, within(1e-9));
        assertThat(month.standingEnergy().wattHours()).isCloseTo(48, within(1e-9));
        assertThat(month.inverterLoss().wattHours()).isCloseTo(0, within(1e-9));
    }

    @Test
    void theRunningPowerOfTwoLevelsIsWeightedByEnergy() {
        Load day =
                Loads.dc(100).windows(List.of(TimeWindow.parse("06:00-18:00"))).build();
        Load evening =
                Loads.dc(200).windows(List.of(TimeWindow.parse("18:00-21:00"))).build();

        // ΣP²t / ΣPt = (100² · 12 + 200² · 3) / (100 · 12 + 200 · 3) = 240 000 / 1800 = 133.333 W
        assertThat(january(Loads.LOSSLESS, day, evening).runningPower().watts()).isCloseTo(133.3333, within(1e-4));
        // a pump that runs half an hour of the 24 without a known time draws 400 W whenever it draws
        Load pump = Loads.dc(400).hoursPerDay(0.5).build();
        assertThat(january(Loads.LOSSLESS, pump).runningPower().watts()).isCloseTo(400, within(1e-9));
    }

    @Test
    void theRunningPowerIsThatAtTheBank() {
        // 400 W half an hour a day through wiring that loses 3 %: 400 / 0.97 = 412.371 W whenever it draws
        Load pump = Loads.dc(400).hoursPerDay(0.5).build();
        assertThat(january(LoadPolicy.standard(), pump).runningPower().watts()).isCloseTo(412.371, within(1e-3));
        // 1000 W a quarter of the time through an inverter of 80 % that does not idle: 1250 W whenever it draws
        Load heater = Loads.ac(1000).dutyCycle(Ratio.of(0.25)).hoursPerDay(24.0).build();
        LoadPolicy lossy = Loads.LOSSLESS.withInverterEfficiency(Ratio.of(0.8));
        assertThat(january(lossy, heater).runningPower().watts()).isCloseTo(1250, within(1e-9));
    }

    @Test
    void ofMonthsThatDrawTheSameTheFirstCounts() {
        EnergyBudget budget = EnergyBudget.of(demand(LAMP), LoadPolicy.standard());

        assertThat(budget.heaviestMonth().month()).isEqualTo(Month.JANUARY);
        assertThat(budget.heaviestRun().month()).isEqualTo(Month.JANUARY);
    }

    @Test
    void theRunningPowerOfALoadThatAlsoStandsByKnowsBothLevels() {
        Load radio = Loads.dc(100).hoursPerDay(6.0).standby(Power.watts(20)).build();

        // (100² · 6 + 20² · 18) / (100 · 6 + 20 · 18) = 67 200 / 960 = 70 W
        assertThat(january(Loads.LOSSLESS, radio).runningPower().watts()).isCloseTo(70, within(1e-9));
    }

    @Test
    void aChosenInverterLosesByTheSquareOfWhatIsOn() {
        InverterCurve inverter = new InverterCurve(Power.kilowatts(1), Ratio.of(0.01), Ratio.of(0.02), Ratio.of(0.05));
        Load heater = Loads.ac(1000).dutyCycle(Ratio.of(0.25)).hoursPerDay(24.0).build();
        EnergyBudget budget =
                LoadProfile.of(demand(heater), LoadPolicy.standard()).budget(inverter, StandingDraw.NONE);

        // on 1080 W for 6 h, off 10 W for 18 h: 6480 + 180 = 6660 Wh
        assertThat(budget.in(Month.MAY).dailyEnergy().wattHours()).isCloseTo(6660, within(1e-6));
        assertThat(budget.in(Month.MAY).inverterLoss().wattHours()).isCloseTo(660, within(1e-6));
        assertThat(budget.inverter()).isEqualTo(inverter);
    }

    @Test
    void everyDirectCurrentLoadAtOnce() {
        Load pump = Loads.dc(174).count(2).hoursPerDay(0.5).build();

        // (20 + 2 · 174) W / 0.97 = 379.381 W
        assertThat(EnergyBudget.of(demand(LAMP, pump, LAPTOP), LoadPolicy.standard())
                        .dcPeak()
                        .watts())
                .isCloseTo(379.381, within(1e-3));
    }

    @Test
    void loadsThatObjectToAModifiedSineAreNamed() {
        Load drive = Loads.named("drive", Supply.AC, 500)
                .kind(LoadKind.SOFT_START_MOTOR)
                .hoursPerDay(1.0)
                .build();
        Load onTheBank = Loads.named("meter", Supply.DC, 5)
                .kind(LoadKind.SENSITIVE_ELECTRONICS)
                .hoursPerDay(1.0)
                .build();

        assertThat(EnergyBudget.of(demand(drive, onTheBank, LAPTOP), LoadPolicy.standard())
                        .sineLoads())
                .containsExactly("drive");
    }

    @Test
    void theWorkingShowsTheNumbersThatWereUsed() {
        EnergyBudget budget = EnergyBudget.of(demand(LAMP, LAPTOP), LoadPolicy.standard());

        assertThat(budget.working().steps().get(0).substituted()).isEqualTo("1 · (20 W·5 h·1 + 0 W·(24 − 5)) · 7/7");
        assertThat(budget.working().steps().get(0).result()).isEqualTo("100 Wh");
        // two loads, the bank in the heaviest month, apparent power, surge
        assertThat(budget.working().steps())
                .hasSize(5)
                .allSatisfy(step -> assertThat(step.source()).isNotBlank());
    }

    @Test
    void anEmptyListAndTooLongAListAreRefused() {
        assertThatThrownBy(() -> demand()).isInstanceOf(InvalidInput.class).hasMessage("loads must not be empty.");
        assertThatThrownBy(() -> demand(Collections.nCopies(501, LAMP).toArray(Load[]::new)))
                .hasMessage("loads must have at most 500 elements, but has 501.");
        assertThatThrownBy(() -> over(61, LAMP))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("autonomy must be from 2.4 h to 60 d, but was 61 d.");
    }

    @Test
    void onlyLoadsOfAlternatingCurrentNeedAnInverter() {
        assertThat(LoadProfile.of(demand(LAMP), LoadPolicy.standard()).needsInverter())
                .isFalse();
        assertThat(LoadProfile.of(demand(LAMP, LAPTOP), LoadPolicy.standard()).needsInverter())
                .isTrue();
    }

    @Test
    void theHoursOfAYearAreToldAtTheLoadsAndAtTheBank() {
        Load fridge = Loads.ac(46).hoursPerDay(24.0).build();
        Load lamps = Loads.dc(20)
                .windows(List.of(TimeWindow.parse("18:00-22:00")))
                .monthsOfUse(List.of(Month.JANUARY, Month.DECEMBER))
                .essential(true)
                .build();
        LoadProfile profile = LoadProfile.of(demand(fridge, lamps), LoadPolicy.standard());
        DemandTable hours = profile.everything(profile.stated());

        for (Month month : Month.values()) {
            boolean winter = month == Month.JANUARY || month == Month.DECEMBER;
            for (int hour = 0; hour < 24; hour++) {
                double dc = winter && hour >= 18 && hour < 22 ? 20 : 0;
                assertThat(hours.atLoads[month.getValue() - 1][hour]).isCloseTo(46 + dc, within(1e-9));
                // 46 W / 0.92 + 46 W · 1.25 · 0.008 = 50.46 W, and 20 W / 0.97
                assertThat(hours.atBank[month.getValue() - 1][hour]).isCloseTo(50.46 + dc / 0.97, within(1e-9));
            }
        }
        // of these the lamps alone are essential
        assertThat(profile.essentials(profile.stated()).atLoads[11])
                .containsExactly(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 20, 20, 20, 20, 0, 0);
    }

    @Test
    void essentialLoadsOfBothSuppliesAddUp() {
        Load freezer = Loads.ac(100).hoursPerDay(4.0).essential(true).build();
        Load radio = Loads.dc(10).hoursPerDay(6.0).essential(true).build();

        // 400 Wh and 60 Wh
        assertThat(january(LoadPolicy.standard(), freezer, radio)
                        .essentialEnergy()
                        .wattHours())
                .isCloseTo(460, within(1e-9));
    }

    @Test
    void theRunningPowerThroughALossThatGrowsWithTheSquareOfPower() {
        // 1000 W a quarter of the time: mean 250 W, variance 1000² · 0.25 · 0.75 = 187 500 W². With k0 = 0.01, k1 =
        // 0.02 and
        // k2 = 0.05 of 1000 W: 250 + 10 + 5 + 0.05 · (250² + 187 500) / 1000 = 277.5 W. The draw changes by
        // 1 + 0.02 + 2 · 0.05 · 0.25 = 1.045 for each watt: (277.5² + 1.045² · 187 500) / 277.5 = 1015.355 W
        Load heater = Loads.ac(1000).dutyCycle(Ratio.of(0.25)).hoursPerDay(24.0).build();
        InverterCurve curve = new InverterCurve(Power.kilowatts(1), Ratio.of(0.01), Ratio.of(0.02), Ratio.of(0.05));
        MonthBudget month = LoadProfile.of(demand(heater), LoadPolicy.standard())
                .budget(curve, StandingDraw.NONE)
                .in(Month.JANUARY);

        assertThat(month.dailyEnergy().wattHours()).isCloseTo(24 * 277.5, within(1e-9));
        assertThat(month.runningPower().watts()).isCloseTo(1015.355, within(5e-4));
    }

    @Test
    void asManyLoadsAsMayBeAndOneMore() {
        assertThat(demand(Collections.nCopies(500, LAMP).toArray(Load[]::new)).loads())
                .hasSize(500);
        assertThatThrownBy(() -> demand(Collections.nCopies(501, LAMP).toArray(Load[]::new)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("loads must have at most 500 elements, but has 501.");
    }

    @Test
    void aPolicyOutOfRangeIsRefused() {
        assertThatThrownBy(() -> LoadPolicy.standard().withDcWiringEfficiency(Ratio.of(1.1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("dcWiringEfficiency must be from 0.5 to 1, but was 1.1.");
    }

    @Test
    void whatThePartsDrawIsAddedAroundTheClock() {
        LoadProfile profile = LoadProfile.of(demand(LAMP), Loads.LOSSLESS);

        // 20 W for 5 h, and 3 W for 24 h
        assertThat(profile.budget(SMALL_PARTS).in(Month.MARCH).dailyEnergy().wattHours())
                .isCloseTo(172, within(1e-9));
        assertThatThrownBy(() -> new StandingDraw(SMALL_PARTS.meanDay(), List.of(Power.watts(3))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("worstRun must have at least 12 elements, but has 1.");
    }
}
