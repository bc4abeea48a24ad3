package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.daybank.core.Refused;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.DischargeCurve;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;

class SimulatorTest {
    /** No cut-off, and the year begins as said. */
    private static final SimulationPolicy PLAIN =
            SimulationPolicy.standard().withReconnectRise(Ratio.ZERO).withSettle(false);

    /** 51.2 V · 280 Ah. */
    private static final double BANK = 14336;

    /** Lost in an hour at rest: 2 % a month of 730.5 hours. */
    private static final double LEAK = 0.02 / 730.5;

    private static SimulatedYear first(Simulation simulation) {
        return simulation.byYear().get(0);
    }

    private static Check check(Simulation simulation, String rule) {
        return simulation.checks().stream()
                .filter(check -> check.rule().code().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutSunTheBankGivesWhatItHoldsOnce() {
        SimulatedYear year =
                first(Systems.run(Systems.lithium(1, Systems.steady(0, 100)).build(), Systems.darkness(), PLAIN));

        // 0.8 · 14336 Wh = 11468.8 Wh, less what leaks in the some 114 hours that it lasts: hour after hour by hand
        double held = BANK;
        double served = 0;
        for (int hour = 0; hour < 8760; hour++) {
            held -= held * LEAK;
            double out = Math.max(0, Math.min(100, held - 0.2 * BANK));
            held -= out;
            served += out;
        }
        assertThat(year.ledger().served().wattHours()).isCloseTo(served, within(1e-6));
        assertThat(served).isBetween(11468.8 - 114 * BANK * LEAK, 11468.8);
        assertThat(year.demand().wattHours()).isCloseTo(876_000, within(1e-6));
        assertThat(year.unservedOther().wattHours()).isCloseTo(876_000 - served, within(1e-6));
        assertThat(year.unservedEssential().wattHours()).isZero();
        // 114 whole hours, and a part of the one after
        assertThat(year.lossOfLoad().hours()).isEqualTo(8760 - 114);
        assertThat(year.longestOutage().hours()).isEqualTo(8760 - 114);
        assertThat(year.lossOfLoadProbability().fraction()).isCloseTo(8646 / 8760.0, within(1e-12));
    }

    @Test
    void essentialLoadsGoOnToTheirOwnDepth() {
        SimulatedYear year =
                first(Systems.run(Systems.lithium(1, Systems.steady(50, 50)).build(), Systems.darkness(), PLAIN));

        // others end at 0.2, essentials at 0.1 of the capacity: at most 0.7 · 14336 / 2 + 0.2 · … are of no use here,
        // but the
        // essentials get at least a tenth of the capacity more than the others
        double essential = 438_000 - year.unservedEssential().wattHours();
        double other = 438_000 - year.unservedOther().wattHours();
        assertThat(essential - other).isBetween(0.1 * BANK - 60 * BANK * LEAK, 0.1 * BANK + 50);
        assertThat(year.lossOfEssentialLoad()).isLessThan(year.lossOfLoad());
        assertThat(year.lowestStateOfCharge().fraction()).isLessThan(0.1);
    }

    @Test
    void withoutLoadsEverythingIsSpilledButWhatLeaks() {
        SimulatedYear year = first(Systems.run(
                Systems.lithium(1, Systems.steady(0, 0)).build(), Systems.sky(1, hour -> hour == 12 ? 800 : 0), PLAIN));

        // 3 · 410 W · 0.8 = 984 Wh a day, 0.975 of it through the controller
        assertThat(year.ledger().array().wattHours()).isCloseTo(365 * 984.0, within(1e-6));
        assertThat(year.ledger().controllerLoss().wattHours()).isCloseTo(365 * 984 * 0.025, within(1e-6));
        assertThat(year.lossOfLoad().hours()).isZero();
        assertThat(year.servedShare()).isEqualTo(Ratio.ONE);
        assertThat(year.ledger().selfDischarge().wattHours()).isCloseTo(8760 * LEAK * BANK, within(20.0));
        // what is not spilled makes up for the leak, at an efficiency of 0.94, but for the last day's
        double taken = year.ledger().array().wattHours()
                - year.ledger().controllerLoss().wattHours()
                - year.ledger().spilled().wattHours();
        assertThat(taken * 0.94)
                .isCloseTo(
                        year.ledger().selfDischarge().wattHours()
                                + year.ledger().heldAfter().wattHours()
                                - BANK,
                        within(1e-6));
        assertThat(year.equivalentFullCycles()).isZero();
    }

    @Test
    void anEndlessBankCarriesWhatItsLossesLeave() {
        // 984 Wh · 0.975 · a day at noon; 24 · 30 W = 720 Wh go out: 30 at once, 690 through the bank, which takes
        // 929.4
        Simulation simulation = Systems.run(
                Systems.lithium(1000, Systems.steady(0, 30)).build(),
                Systems.sky(1, hour -> hour == 12 ? 800 : 0),
                PLAIN);

        assertThat(first(simulation).lossOfLoad().hours()).isZero();
        assertThat(simulation.reliability().availability()).isEqualTo(Ratio.ONE);
    }

    @Test
    void nextToNoBankServesWhileTheSunShines() {
        var battery = Systems.battery("BK-L48-280H")
                .withCapacity(DischargeCurve.parse("20 h: 0.000001 Ah"))
                .withHeater(null);
        SimulatedYear year = first(Systems.run(
                Systems.lithium(1, Systems.steady(0, 100))
                        .bank(BankLayout.of(battery, Voltage.volts(48), 1, 1))
                        .build(),
                Systems.sky(1, hour -> hour >= 8 && hour < 16 ? 400 : 0),
                PLAIN));

        // eight hours a day
        assertThat(year.lossOfLoad().hours()).isEqualTo(16 * 365);
        assertThat(year.ledger().served().wattHours()).isCloseTo(8 * 365 * 100, within(1.0));
    }

    @Test
    void controllersClipWhatTheyCannotGive() {
        // 6 strings: 7380 W · 0.8 = 5904 W, · 0.975 = 5756.4 W; 60 A · 51.2 V = 3072 W
        SimulatedYear year = first(Systems.run(
                Systems.lithium(4, Systems.steady(0, 400))
                        .array(Systems.modules(3, 6))
                        .build(),
                Systems.sky(1, hour -> hour == 11 || hour == 12 ? 800 : 0),
                PLAIN));

        assertThat(year.ledger().clipped().wattHours()).isCloseTo(365 * 2 * (5756.4 - 3072), within(1e-5));
    }

    @Test
    void theEngineFillsInAndBurnsByItsCurve() {
        EngineRule engine = EngineRuleBuilder.builder()
                .power(Power.watts(2000))
                .startBelow(Ratio.of(0.3))
                .stopAbove(Ratio.of(0.8))
                .build();
        Simulation simulation = Systems.run(
                Systems.lithium(1, Systems.steady(0, 100)).engine(engine).build(), Systems.darkness(), PLAIN);
        SimulatedYear year = first(simulation);

        assertThat(year.lossOfLoad().hours()).isZero();
        // all energy comes through its charger at 0.9: fuel is 0.246 L for each kWh made and 0.081 L for each hour and
        // kW
        double made = year.ledger().engine().wattHours() / 0.9 / 1000;
        assertThat(year.fuel().litres())
                .isCloseTo(0.246 * made + 0.081 * 2 * year.engineTime().hours(), within(1e-6));
        // each run lifts the bank from about 0.3 to about 0.8: 0.5 · 14336 = 7168 Wh at 0.94 · (1800 − 100) W takes 5 h
        assertThat(year.engineTime().hours() / year.engineStarts()).isCloseTo(5, within(0.6));
        assertThat(check(simulation, "engineStop").passed()).isTrue();
        // in whole hours of some 1598 W: after four 6392 Wh are in, after five 7990
        assertThat(check(simulation, "engineStop").value()).isEqualTo(Optional.of(TimeSpan.hours(5)));
        assertThat(simulation.reliability().months().get(0).fuel().litres()).isPositive();
    }

    static SimulatedSystem cabin() {
        return Systems.lithium(1, Systems.steady(100, 100))
                .engine(EngineRuleBuilder.builder().power(Power.watts(100)).build())
                .build();
    }

    static SimulatedSystem house() {
        return Systems.lithium(2, Systems.steady(200, 300)).build();
    }

    static SunnyYears evenings() {
        return Systems.sky(2, hour -> hour > 16 && hour < 20 ? 300 : 0);
    }

    @Test
    void anEngineThatNeverReachesItsStopIsTold() {
        EngineRule engine = EngineRuleBuilder.builder().power(Power.watts(100)).build();
        Simulation simulation = Systems.run(
                Systems.lithium(1, Systems.steady(0, 100)).engine(engine).build(), Systems.darkness(), PLAIN);

        assertThat(check(simulation, "engineStop").passed()).isFalse();
        assertThat(check(simulation, "engineStop").message().toString())
                .contains("the bank never reaches the stop threshold 80 %");
    }

    @Test
    void shoreCarriesTheLoadsWhileItIsThere() {
        ShorePower night = new ShorePower(Power.watts(1000), List.of(TimeWindow.parse("22:30-06:00")), Ratio.of(0.9));
        SimulatedYear year = first(Systems.run(
                Systems.lithium(1, Systems.steady(0, 100)).shore(night).build(), Systems.darkness(), PLAIN));

        assertThat(year.lossOfLoad().hours()).isZero();
        // what comes from shore is what the loads take and what the bank loses on the way in
        assertThat(year.ledger().shore().wattHours()).isBetween(876_000.0, 876_000 / 0.94 + BANK);
    }

    @Test
    void aColdLithiumBankTakesNothing() {
        // below 0 °C outdoors, no heater: the sun cannot charge it
        var battery = Systems.battery("BK-L48-100");
        SimulatedYear year = first(Systems.run(
                Systems.lithium(1, Systems.steady(0, 10))
                        .bank(BankLayout.of(battery, Voltage.volts(48), 1, 1))
                        .housing(new BankHousing(null, null, null, null))
                        .build(),
                Systems.sky(1, hour -> 800),
                PLAIN));
        // air of 1 °C: 0.1 C of 100 Ah at 51.2 V at most
        assertThat(year.ledger().batteryLoss().wattHours()).isLessThan(8760 * 512 * 0.06);
        assertThat(year.lossOfLoad().hours()).isZero();
    }

    @Test
    void theLedgerCloses() {
        Simulation simulation = Systems.run(
                Systems.lithium(2, Systems.steady(80, 120))
                        .array(Systems.modules(3, 2))
                        .wells(new KineticWells(Ratio.of(0.4), 1.2))
                        .engine(EngineRuleBuilder.builder()
                                .power(Power.watts(900))
                                .build())
                        .build(),
                Systems.sky(3, hour -> hour > 8 && hour < 15 ? 320 : 0),
                SimulationPolicy.standard().withDischargeLossShare(Ratio.of(0.5)));

        assertThat(simulation.byYear())
                .hasSize(3)
                .allSatisfy(year -> assertThat(year.ledger().imbalance()).isCloseTo(0, within(1e-9)));
    }

    /** Where loads are cut off and come back, a cycle may take several days and need not end with the year. */
    @Test
    void yearsRepeatedComeToTheSameState() {
        SimulatedSystem system = Systems.lithium(1, Systems.steady(40, 60)).build();
        SimulationPolicy unsettled = PLAIN.withInitialCharge(Ratio.of(0.3));
        Simulation thrice = Systems.run(system, Systems.sky(3, hour -> hour > 9 && hour < 14 ? 300 : 0), unsettled);
        SimulatedYear second = thrice.byYear().get(1);
        SimulatedYear third = thrice.byYear().get(2);

        assertThat(third.ledger().heldBefore().wattHours())
                .isCloseTo(second.ledger().heldBefore().wattHours(), within(1e-6));
        assertThat(third.lossOfLoad()).isEqualTo(second.lossOfLoad());
        Simulation settled = Systems.run(
                system, Systems.sky(1, hour -> hour > 9 && hour < 14 ? 300 : 0), unsettled.withSettle(true));
        assertThat(first(settled).lossOfLoad()).isEqualTo(second.lossOfLoad());
        assertThat(first(settled).ledger().heldBefore())
                .isEqualTo(second.ledger().heldBefore());
    }

    @Test
    void aBankThatBeginsBelowItsFloorIsRefused() {
        SimulatedSystem system = Systems.lithium(1, Systems.steady(0, 100)).build();

        assertThatThrownBy(() -> Systems.run(system, Systems.darkness(), PLAIN.withInitialCharge(Ratio.of(0.1))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(
                        "initialCharge must be at least what a depth of discharge of 0.8 leaves, but was 0.1.");
    }

    /** What was left out follows the bank and the loads of a copy. */
    @Test
    void absorptionAndInverterFollowWhatTheyDependOn() {
        SimulatedSystem lithium = Systems.lithium(1, Systems.steady(0, 100)).build();
        // 16 cells of 3.45 V
        assertThat(lithium.absorption()).isNull();
        assertThat(lithium.resolved().absorption().volts())
                .isEqualTo(
                        16
                                * Chemistry.LITHIUM_IRON_PHOSPHATE
                                        .traits()
                                        .absorption()
                                        .volts(),
                        within(1e-9));

        Battery block = Systems.battery("BK-L48-280H").withChemistry(Chemistry.AGM);
        SimulatedSystem lead = lithium.withBank(BankLayout.of(block, Voltage.volts(48), 1, 1));
        assertThat(lead.resolved().absorption().volts())
                .isEqualTo(block.cells() * Chemistry.AGM.traits().absorption().volts(), within(1e-9));

        LoadProfile larger = Systems.steady(0, 1000);
        assertThat(lithium.withLoads(larger).resolved().inverter()).isEqualTo(larger.stated());
        assertThat(lithium.withLoads(larger))
                .isEqualTo(Systems.lithium(1, larger).build());
    }

    @Test
    void anAbsorptionVoltageBelongsToItsBank() {
        SimulatedSystem system = Systems.lithium(1, Systems.steady(0, 100)).build();
        // 51.2 V nominal: from 51.2 V to 76.8 V
        assertThat(Refused.places(() -> system.withAbsorption(Voltage.volts(5))))
                .containsExactly("/absorption");
        assertThat(Refused.places(() -> system.withAbsorption(Voltage.volts(76.9))))
                .containsExactly("/absorption");
        assertThat(Refused.places(() -> system.withAbsorption(Voltage.volts(76.8))))
                .isEmpty();
        assertThat(Refused.places(() -> system.withAbsorption(Voltage.volts(1e12))))
                .contains("/absorption");
    }

    @Test
    void anEngineThatStopsBeforeItStartsIsRefused() {
        assertThatThrownBy(() -> EngineRuleBuilder.builder()
                        .power(Power.watts(100))
                        .startBelow(Ratio.of(0.6))
                        .stopAbove(Ratio.of(0.5))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("stopAbove must be above startBelow 0.6, but was 0.5.");
        assertThatThrownBy(() -> EngineRuleBuilder.builder().build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("power is required.");
        assertThatThrownBy(() -> EngineRuleBuilder.builder()
                        .power(Power.watts(500))
                        .chargerEfficiency(Ratio.of(0.4))
                        .build())
                .isInstanceOf(InvalidInput.class)
                .hasMessage("chargerEfficiency must be from 0.5 to 1, but was 0.4.");
        assertThatThrownBy(() -> new ShorePower(Power.ZERO, null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("power must be above 0 W, but was 0 W.");
        assertThatThrownBy(() -> new ShorePower(Power.watts(500), null, Ratio.of(1.1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("chargerEfficiency must be from 0.5 to 1, but was 1.1.");
    }

    @Test
    void withoutTrackingTheBankVoltageDecides() {
        // held at the bank's voltage a module of 36 cells gives about its current: 8.6 A · 0.8 at 12.8 V nominal
        // and two side by side twice that
        for (int strings : new int[] {1, 2}) {
            SimulatedSystem system = SimulatedSystemBuilder.builder()
                    .loads(Systems.steady(0, 60))
                    .array(ArrayLayout.shared(
                            Catalog.sample().modules().stream()
                                    .filter(module -> module.model().equals("PL-160"))
                                    .findFirst()
                                    .orElseThrow(),
                            1,
                            strings,
                            1))
                    .controller(Systems.controller("HN-P20"))
                    .bank(BankLayout.of(Systems.battery("BK-L12-200H"), Voltage.volts(12), 1, 1))
                    .housing(Systems.WARM_ROOM)
                    .depthOfDischarge(Ratio.of(0.8))
                    .build();
            SimulatedYear year = first(Systems.run(system, Systems.sky(1, hour -> hour == 12 ? 800 : 0), PLAIN));

            assertThat(year.ledger().array().wattHours()).isCloseTo(strings * 365 * 8.6 * 0.8 * 12.8, within(1e-6));
            assertThat(year.ledger().controllerLoss().wattHours()).isZero();
            assertThat(year.ledger().imbalance()).isCloseTo(0, within(1e-9));
        }
    }
}
