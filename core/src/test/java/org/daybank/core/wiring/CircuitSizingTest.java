package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Circuits worked by hand. Tolerances are half of the last digit that the hand carried. */
class CircuitSizingTest {
    private static final WiringPolicy IEC = WiringPolicy.standard();
    private static final WiringPolicy NFPA = IEC.withRuleSet(RuleSet.NFPA);

    private static String size(CircuitSizing sized) {
        return sized.conductors().parallel() + " × " + sized.conductors().size().size();
    }

    /** An array of 27.8 A short-circuit current, 38 m away, in air of 40 °C, by IEC. */
    @Nested
    class ArrayByIec {
        private final CircuitSizing sized = CircuitSizing.of(
                Circuits.array(38).withYearlyEnergy(Energy.kilowattHours(2000)),
                IEC.withAmbient(Temperature.celsius(40)));

        @Test
        void eachRuleTakesItsOwnSize() {
            // 1.25 · 27.8 A = 34.75 A. Terminals, 70 °C in conduit: 4 mm² 32 A, 6 mm² 41 A.
            assertThat(sized.need().terminals().amperes()).isCloseTo(34.75, within(1e-9));
            assertThat(sized.sizes().terminals().orElseThrow().size()).isEqualTo("6 mm²");
            // Conditions, 90 °C at 40 °C: 4 mm² 42 A · 0.91 = 38.22 A.
            assertThat(sized.sizes().conditions().orElseThrow().size()).isEqualTo("4 mm²");
            // The next gPV size is 40 A; 6 mm² carries the lesser of 41 A and 54 A · 0.91 = 49.1 A.
            assertThat(sized.device().orElseThrow().rating()).isEqualTo(Current.amperes(40));
            assertThat(sized.sizes().device().orElseThrow().size()).isEqualTo("6 mm²");
            // 2 % of 93.6 V is 1.872 V; 2 · 26.28 A · 38 m · R: R ≤ 0.937 mΩ/m; cold, 16 mm² has 1.15, 25 mm² 0.727.
            assertThat(sized.sizes().drop().orElseThrow().size()).isEqualTo("25 mm²");
            assertThat(sized.governing()).isEqualTo(SizingRule.DROP);
            assertThat(size(sized)).isEqualTo("1 × 25 mm²");
            assertThat(sized.fits()).isTrue();
        }

        @Test
        void theDropIsThatOfTheWarmConductor() {
            // I_z = 133 A · 0.91 = 121.03 A; T = 40 + 50 · (26.28 / 121.03)² = 42.357 °C
            assertThat(sized.conductors().temperature().celsius()).isCloseTo(42.357, within(5e-4));
            // 0.727 mΩ/m · (1 + 0.00393 · 22.357) = 0.790878 mΩ/m; · 38 m = 30.0534 mΩ; 2 · 26.28 A · that = 1.57961 V
            assertThat(sized.conductors().resistance().milliohms()).isCloseTo(30.0534, within(1e-4));
            assertThat(sized.conductors().drop().volts()).isCloseTo(1.57961, within(1e-5));
            assertThat(sized.conductors().dropShare().fraction()).isCloseTo(0.016876, within(1e-6));
            // 2 · 26.28² A² · 30.0534 mΩ = 41.512 W
            assertThat(sized.conductors().loss().watts()).isCloseTo(41.512, within(1e-3));
            // all of it at the operating current: 2000 kWh · 0.016876 = 33.75 kWh
            assertThat(sized.conductors().yearlyLoss().orElseThrow().kilowattHours())
                    .isCloseTo(33.75, within(5e-3));
        }

        @Test
        void theMetalIsPricedByItsMass() {
            // 2 · 38 m · 25 mm² · 8890 kg/m³ = 16.891 kg; · 9 EUR = 152.019 EUR
            assertThat(sized.conductors().metalMass().kilograms()).isCloseTo(16.891, within(1e-9));
            assertThat(sized.conductors().metalCost()).isEqualTo(Money.of("152.02", "EUR"));
        }

        @Test
        void theNextSizeUpPaysBackSlowly() {
            LargerConductor larger = sized.nextSizeUp().orElseThrow();
            assertThat(larger.size().size()).isEqualTo("35 mm²");
            // 35 mm²: I_z = 164 · 0.91 = 149.24 A; T = 40 + 50 · (26.28 / 149.24)² = 41.550 °C;
            // R = 0.524 · (1 + 0.00393 · 21.550) · 38 = 21.5984 mΩ; drop 1.13522 V, 1.21284 %
            assertThat(larger.dropShare().fraction()).isCloseTo(0.0121284, within(1e-6));
            // metal: 2 · 38 · 35 · 8890 / 10⁶ = 23.6474 kg, 212.83 EUR: 60.81 EUR more
            assertThat(larger.extraCost()).isEqualTo(Money.of("60.81", "EUR"));
            // saved: 2000 kWh · (0.0168762 − 0.0121284) = 9.4956 kWh, 2.849 EUR a year: 21.35 years
            assertThat(larger.yearlySaving().orElseThrow().kilowattHours()).isCloseTo(9.496, within(2e-3));
            assertThat(larger.payBack().orElseThrow().years()).isCloseTo(21.35, within(0.01));
        }

        @Test
        void deviceAndDisconnectBreakTheColdestVoltage() {
            OvercurrentDevice device = sized.device().orElseThrow();
            assertThat(device.kind()).isEqualTo(DeviceKind.PHOTOVOLTAIC_FUSE);
            assertThat(device.directCurrent()).isTrue();
            assertThat(device.leastVoltage()).isEqualTo(Voltage.volts(127.6));
            assertThat(sized.disconnect()).isEqualTo(new Disconnect(Current.amperes(40), Voltage.volts(127.6), true));
        }

        @Test
        void surgeProtectionIsDueBeyondTheCriticalLength() {
            // 115 m / 4 flashes = 28.75 m
            assertThat(sized.surgeProtection()).isTrue();
            assertThat(CircuitSizing.of(Circuits.array(28.75), IEC).surgeProtection())
                    .isTrue();
            assertThat(CircuitSizing.of(Circuits.array(28.7), IEC).surgeProtection())
                    .isFalse();
            assertThat(CircuitSizing.of(Circuits.array(38), IEC.withGroundFlashDensity(0))
                            .surgeProtection())
                    .isFalse();
        }

        @Test
        void itsWorkingShowsTheNumbersUsed() {
            assertThat(sized.working().steps())
                    .anySatisfy(step -> {
                        assertThat(step.substituted()).isEqualTo("2 · 26.28 A · 30.05 mΩ");
                        assertThat(step.result()).isEqualTo("1.58 V");
                    })
                    .anySatisfy(step -> assertThat(step.substituted()).isEqualTo("1 × 25 mm² · 0.91 · 1"))
                    // 2 · 25 mm² · 38 m · 8890 kg/m³ = 16.891 kg, and 60.81 EUR / (9.496 kWh · 0.30 EUR) = 21.35 a
                    .anySatisfy(step -> {
                        assertThat(step.substituted()).isEqualTo("2 · 25 mm² · 38 m · 8890 kg/m³");
                        assertThat(step.result()).isEqualTo("16.89 kg");
                    })
                    .extracting(Step::name)
                    .containsExactly(
                            "array to controller: ampacity at the terminals",
                            "array to controller: ampacity under conditions of use",
                            "array to controller: overcurrent device",
                            "array to controller: ampacity that the device protects",
                            "array to controller: corrected ampacity",
                            "array to controller: conductor temperature",
                            "array to controller: resistance one way",
                            "array to controller: drop",
                            "array to controller: yearly loss",
                            "array to controller: metal",
                            "array to controller: pay-back of the next size up");
        }

        @Test
        void eachRuleSetNamesItsOwnTables() {
            assertThat(sized.working().steps())
                    .extracting(Step::source)
                    .contains("IEC 60364-5-52", "IEC 60228")
                    .doesNotContain("NFPA 70 310.15", "ASTM B258, ASTM B8");
            assertThat(CircuitSizing.of(Circuits.array(38), NFPA).working().steps())
                    .extracting(Step::source)
                    .contains("NFPA 70 310.15", "ASTM B258, ASTM B8")
                    .doesNotContain("IEC 60364-5-52", "IEC 60228");
        }

        @Test
        void energyThatIsWorthNothingPaysNothingBack() {
            CircuitSizing free = CircuitSizing.of(
                    Circuits.array(38).withYearlyEnergy(Energy.kilowattHours(2000)),
                    IEC.withEnergyPricePerKilowattHour(Money.of("0", "EUR")));

            assertThat(free.nextSizeUp().orElseThrow().yearlySaving()).isPresent();
            assertThat(free.nextSizeUp().orElseThrow().payBack()).isEmpty();
        }
    }

    @Nested
    class ByNfpa {
        @Test
        void theArrayTakesTheLargerOfTwoConductorsNeverBothFactorsAndTheCorrections() {
            CircuitSizing sized = CircuitSizing.of(Circuits.array(5), NFPA.withAmbient(Temperature.celsius(50)));
            // 1.25 · 1.25 · 27.8 A = 43.4375 A at 75 °C: 10 AWG 35 A, 8 AWG 50 A
            assertThat(sized.need().terminals().amperes()).isCloseTo(43.4375, within(1e-9));
            assertThat(sized.sizes().terminals().orElseThrow().size()).isEqualTo("8 AWG");
            // 1.25 · 27.8 A = 34.75 A after corrections: 10 AWG 40 A · 0.82 = 32.8 A; 8 AWG 55 A · 0.82 = 45.1 A
            assertThat(sized.need().conditions().amperes()).isCloseTo(34.75, within(1e-9));
            assertThat(sized.sizes().conditions().orElseThrow().size()).isEqualTo("8 AWG");
            // device from 43.4375 A: 45 A, within the lesser of 50 A and 45.1 A
            assertThat(sized.device().orElseThrow().rating()).isEqualTo(Current.amperes(45));
            assertThat(size(sized)).isEqualTo("1 × 8 AWG");
            // of rules that ask for one size the first is named
            assertThat(sized.governing()).isEqualTo(SizingRule.TERMINALS);
        }

        @Test
        void smallConductorsHaveSmallDevices() {
            // 1.25 · 14 A = 17.5 A: 20 A. 14 AWG carries 20 A at 75 °C, but its device may be 15 A at most: 12 AWG.
            CircuitSizing sized = CircuitSizing.of(Circuits.supply(CircuitKind.DC_LOADS, 24, 14, 1), NFPA);
            assertThat(sized.device().orElseThrow().rating()).isEqualTo(Current.amperes(20));
            assertThat(sized.sizes().terminals().orElseThrow().size()).isEqualTo("14 AWG");
            assertThat(sized.sizes().device().orElseThrow().size()).isEqualTo("12 AWG");
            assertThat(sized.governing()).isEqualTo(SizingRule.DEVICE);
        }

        @Test
        void aSmallConductorThatIsTheLargestAllowedIsTold() {
            CircuitSizing sized = CircuitSizing.of(
                    Circuits.supply(CircuitKind.DC_LOADS, 24, 14, 1),
                    NFPA.withLargestCrossSection(CrossSection.squareMillimetres(2.5)));
            assertThat(size(sized)).isEqualTo("1 × 14 AWG");
            assertThat(sized.checks())
                    .filteredOn(check -> !check.passed())
                    .extracting(check -> check.rule().code())
                    .containsExactly("deviceProtectsConductor");
        }

        @Test
        void conductorsLieInParallelWhenOneIsTooLarge() {
            // 1.25 · 200 A = 250 A at 75 °C: 4/0 AWG carries 230 A, 250 kcmil is above 120 mm². Two of 1/0 AWG carry
            // 300 A;
            // four conductors in one raceway leave 0.8: 2 · 170 A · 0.8 = 272 A, above the device of 250 A.
            CircuitSizing sized = CircuitSizing.of(Circuits.supply(CircuitKind.BANK_TO_INVERTER, 48, 200, 1.5), NFPA);
            assertThat(size(sized)).isEqualTo("2 × 1/0 AWG");
            assertThat(sized.device().orElseThrow().rating()).isEqualTo(Current.amperes(250));
            assertThat(sized.conductors().terminalAmpacity()).isEqualTo(Current.amperes(300));
            assertThat(sized.conductors().correctedAmpacity().amperes()).isCloseTo(272, within(1e-9));
            // 1/0 AWG: 0.127 mm · 92^(36/39) = 8.25146 mm, 53.4751 mm²; T = 30 + 60 · (200 / 272)² = 62.439 °C;
            // 0.017241 · 1.02 · (1 + 0.00393 · 42.439) · 1.5 / 53.4751 / 2 = 0.287782 mΩ, 2 · 200 A · that = 0.115113 V
            assertThat(sized.conductors().drop().volts()).isCloseTo(0.115113, within(1e-6));
        }

        @Test
        void theEarthingConductorFollowsTheDeviceAndGrowsWithTheLine() {
            // table 250.122: to 60 A 10 AWG; 8 AWG of line is what ampacity asks
            CircuitSizing near = CircuitSizing.of(Circuits.array(5), NFPA.withAmbient(Temperature.celsius(50)));
            assertThat(near.earthing().orElseThrow().size()).isEqualTo("10 AWG");
            // 38 m: R ≤ 0.937 mΩ/m: 4 AWG has 0.8152 · 1.02 = 0.8315 mΩ/m cold. The line grows from 8 to 4 AWG, in area
            // 92^(8/39) = 2.529 times; 10 AWG · 2.529 = 5.261 mm² · 2.529 = 13.30 mm²: 6 AWG
            CircuitSizing far = CircuitSizing.of(Circuits.array(38), NFPA);
            assertThat(size(far)).isEqualTo("1 × 4 AWG");
            assertThat(far.earthing().orElseThrow().size()).isEqualTo("6 AWG");
            // 1.25 · 48 A take a device of 60 A, the last for which 10 AWG will do; from 1.25 · 49 A on it is 8 AWG
            assertThat(CircuitSizing.of(Circuits.supply(CircuitKind.DC_LOADS, 24, 48, 1), NFPA)
                            .earthing()
                            .orElseThrow()
                            .size())
                    .isEqualTo("10 AWG");
            assertThat(CircuitSizing.of(Circuits.supply(CircuitKind.DC_LOADS, 24, 49, 1), NFPA)
                            .earthing()
                            .orElseThrow()
                            .size())
                    .isEqualTo("8 AWG");
        }
    }

    @Test
    void threePhasesDropByTheSquareRootOfThree() {
        CircuitSizing sized = CircuitSizing.of(
                Circuits.supply(CircuitKind.AC_OUTPUT, 400, 32, 40).withPhases(Phases.THREE), IEC);
        // Terminals, three loaded, 70 °C in conduit: 4 mm² 28 A, 6 mm² 36 A; breaker 32 A.
        assertThat(size(sized)).isEqualTo("1 × 6 mm²");
        assertThat(sized.device().orElseThrow().kind()).isEqualTo(DeviceKind.BREAKER);
        // T = 30 + 60 · (32 / 48)² = 56.667 °C; R = 3.08 · (1 + 0.00393 · 36.667) · 0.04 = 140.953 mΩ;
        // √3 · 32 A · that = 7.8124 V; loss 3 · 32² · that = 433.01 W
        assertThat(sized.conductors().drop().volts()).isCloseTo(7.8124, within(5e-4));
        assertThat(sized.conductors().loss().watts()).isCloseTo(433.01, within(0.01));
        // three lines and a neutral: 4 · 40 m · 6 mm² · 8890 kg/m³ = 8.5344 kg
        assertThat(sized.conductors().metalMass().kilograms()).isCloseTo(8.5344, within(1e-9));
    }

    @Test
    void generalFusesActLateAndAskForMoreConductor() {
        CircuitSizing sized = CircuitSizing.of(Circuits.supply(CircuitKind.BANK_TO_INVERTER, 51.2, 109, 1.5), IEC);
        // gG 125 A surely acts at 1.6 · 125 = 200 A, which may be 1.45 of the ampacity: 137.93 A. 35 mm² carries 125 A
        // at its
        // terminals, 50 mm² 151 A.
        assertThat(sized.device().orElseThrow().rating()).isEqualTo(Current.amperes(125));
        assertThat(sized.need().device().orElseThrow().amperes()).isCloseTo(137.931, within(1e-3));
        assertThat(sized.sizes().terminals().orElseThrow().size()).isEqualTo("35 mm²");
        assertThat(size(sized)).isEqualTo("1 × 50 mm²");
        // IEC 60364-5-54 table 54.2: half of a line conductor above 35 mm²
        assertThat(sized.earthing().orElseThrow().crossSection()).isEqualTo(CrossSection.squareMillimetres(25));
    }

    /** IEC 60364-5-54 table 54.2, and 6 mm² at least for frames. */
    @Test
    void theEarthingConductorFollowsTheLine() {
        // frames of a string of 1.5 mm²
        assertThat(earthing(Circuits.string(2))).isEqualTo("6 mm²");
        // as large as the line where no frame is bonded: 18 A on 2.5 mm²
        assertThat(earthing(Circuits.supply(CircuitKind.AC_OUTPUT, 230, 18, 10)))
                .isEqualTo("2.5 mm²");
        // 35 mm² over 60 m: the last line for which 16 mm² will do
        assertThat(earthing(Circuits.array(60))).isEqualTo("16 mm²");
    }

    private static String earthing(Circuit circuit) {
        return CircuitSizing.of(circuit, IEC).earthing().orElseThrow().size();
    }

    @Test
    void aConductorThatJustCarriesWhatIsAskedIsTaken() {
        // the terminals of 4 mm² carry 32 A; a breaker of 32 A protects 32 A
        CircuitSizing terminals = CircuitSizing.of(Circuits.supply(CircuitKind.AC_OUTPUT, 230, 32, 2), IEC);
        assertThat(terminals.sizes().terminals().orElseThrow().size()).isEqualTo("4 mm²");
        assertThat(terminals.sizes().device().orElseThrow().size()).isEqualTo("4 mm²");
        // in air of 30 °C the insulation of 2.5 mm² carries 31 A
        assertThat(CircuitSizing.of(Circuits.supply(CircuitKind.AC_OUTPUT, 230, 31, 2), IEC)
                        .sizes()
                        .conditions()
                        .orElseThrow()
                        .size())
                .isEqualTo("2.5 mm²");
    }

    @Test
    void beyondTheLargestConductorTheNextSizeUpIsAPair() {
        // a breaker of 250 A: the terminals of 95 mm² carry 232 A, those of 120 mm² 269 A; two of 70 mm² are the next
        // more
        // metal, two of 50 mm² less
        Circuit large = Circuits.supply(CircuitKind.AC_OUTPUT, 230, 250, 5);
        CircuitSizing sized = CircuitSizing.of(large, IEC);
        assertThat(size(sized)).isEqualTo("1 × 120 mm²");
        LargerConductor pair = sized.nextSizeUp().orElseThrow();
        assertThat(pair.parallel()).isEqualTo(2);
        assertThat(pair.size().size()).isEqualTo("70 mm²");
        // which is none where one conductor is all that may lie there
        assertThat(CircuitSizing.of(large, IEC.withMostParallel(1)).nextSizeUp())
                .isEmpty();
    }

    @Test
    void groupedCircuitsCarryLess() {
        // three circuits in one conduit, 0.7: 25 A by breaker of 25 A; 4 mm² 42 A · 0.7 = 29.4 A and 32 A at the
        // terminals
        CircuitSizing alone = CircuitSizing.of(Circuits.supply(CircuitKind.AC_OUTPUT, 230, 25, 2), IEC);
        CircuitSizing grouped =
                CircuitSizing.of(Circuits.supply(CircuitKind.AC_OUTPUT, 230, 25, 2), IEC.withGroupedCircuits(3));
        assertThat(alone.sizes().conditions().orElseThrow().size()).isEqualTo("2.5 mm²");
        assertThat(grouped.sizes().conditions().orElseThrow().size()).isEqualTo("4 mm²");
        assertThat(grouped.conductors().correctedAmpacity().amperes()).isCloseTo(29.4, within(1e-9));
    }

    @Test
    void aluminiumIsThickerAndLighter() {
        Circuit run = Circuits.array(60);
        ConductorRun copper = CircuitSizing.of(run, IEC).conductors();
        ConductorRun aluminium =
                CircuitSizing.of(run, IEC.withMetal(Metal.ALUMINIUM)).conductors();
        // 60 m: R ≤ 0.5936 mΩ/m; copper 35 mm² 0.524; aluminium 70 mm² 0.443 (50 mm² 0.641)
        assertThat(copper.size().size()).isEqualTo("35 mm²");
        assertThat(aluminium.size().size()).isEqualTo("70 mm²");
        // 2 · 60 m · 70 mm² · 2703 kg/m³ = 22.7052 kg against 2 · 60 · 35 · 8890 / 10⁶ = 37.338 kg
        assertThat(aluminium.metalMass().kilograms()).isCloseTo(22.7052, within(1e-9));
        assertThat(copper.metalMass().kilograms()).isCloseTo(37.338, within(1e-9));
    }

    @Test
    void energyIsLostAtTheCurrentAtWhichItFlows() {
        Circuit peak = Circuits.supply(CircuitKind.BANK_TO_INVERTER, 51.2, 100, 2)
                .withYearlyEnergy(Energy.kilowattHours(1000));
        ConductorRun atPeak = CircuitSizing.of(peak, IEC).conductors();
        ConductorRun gently = CircuitSizing.of(peak.withRunningCurrent(Current.amperes(10)), IEC)
                .conductors();
        // the share lost goes with the current: a tenth
        assertThat(gently.yearlyLoss().orElseThrow().wattHours())
                .isCloseTo(atPeak.yearlyLoss().orElseThrow().wattHours() / 10, within(1e-9));
    }

    @Nested
    class WhatDoesNotFit {
        private final CircuitSizing sized =
                CircuitSizing.of(Circuits.supply(CircuitKind.BANK_TO_INVERTER, 12, 300, 60), IEC);

        @Test
        void isToldWithTheLargestConductorsAndTheBrokenRule() {
            // 1 % of 12 V at 300 A over 60 m: 2 · 300 A · 60 m · R ≤ 0.12 V asks R ≤ 0.0033 mΩ/m; 4 × 120 mm² has 0.038
            assertThat(sized.fits()).isFalse();
            assertThat(size(sized)).isEqualTo("4 × 120 mm²");
            assertThat(sized.governing()).isEqualTo(SizingRule.DROP);
            assertThat(sized.sizes().drop()).isEmpty();
            assertThat(sized.checks())
                    .filteredOn(check -> !check.passed())
                    .extracting(check -> check.rule().code())
                    .containsExactly("voltageDrop");
            assertThat(sized.nextSizeUp()).isEmpty();
        }

        @Test
        void isToldWhenNoStandardDeviceIsLargeEnough() {
            CircuitSizing huge = CircuitSizing.of(Circuits.supply(CircuitKind.BANK_TO_INVERTER, 48, 1500, 1), IEC);
            assertThat(huge.fits()).isFalse();
            assertThat(huge.device()).isEmpty();
            assertThat(huge.checks())
                    .filteredOn(check -> check.rule().code().equals("standardDevice"))
                    .singleElement()
                    .satisfies(check -> assertThat(check.message())
                            .hasToString("No standard device carries 1.5 kA: divide the circuit."));
            // 1.25 · 27.8 A = 34.75 A
            assertThat(CircuitSizing.of(Circuits.array(5), IEC).checks())
                    .filteredOn(check -> check.rule().code().equals("standardDevice"))
                    .singleElement()
                    .satisfies(check -> assertThat(check.message()).hasToString("A standard device carries 34.8 A."));
        }

        @Test
        void isRefusedWhereTheTablesHoldNothing() {
            assertThatThrownBy(() -> CircuitSizing.of(Circuits.array(5).withAmbient(Temperature.celsius(82)), IEC))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessage("ambient must leave something of the ampacity of insulation for 90 °C, but was 82 °C.");
            assertThatThrownBy(() -> CircuitSizing.of(
                            Circuits.supply(CircuitKind.GRID, 400, 32, 5).withPhases(Phases.THREE),
                            IEC.withMetal(Metal.ALUMINIUM)))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("metal must be copper where three conductors are loaded");
            assertThatThrownBy(() -> CircuitSizing.of(
                            Circuits.array(5), NFPA.withLargestCrossSection(CrossSection.squareMillimetres(1.5))))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessage(
                            "largestCrossSection must be at least 2.08 mm², the thinnest conductor listed, but was 1.5 mm².");
        }
    }
}
