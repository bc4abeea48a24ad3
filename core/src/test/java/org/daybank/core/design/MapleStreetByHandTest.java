package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.backup;
import static org.daybank.core.design.Designs.energy;
import static org.daybank.core.design.Designs.inverters;
import static org.daybank.core.design.Designs.system;
import static org.daybank.core.design.Margins.assertMargin;
import static org.daybank.core.design.Margins.rules;

import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.YieldModel;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.LoadEnergy;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sun.SunMonth;
import org.junit.jupiter.api.Test;

/**
 * Backup of a clinic's essential loads on a split-phase service, worked by hand from the methods and the data sheets of the
 * sample catalogue. The arithmetic in the comments keeps five to seven digits, hence the tolerances.
 */
class MapleStreetByHandTest {
    private static final DesignOutcome DESIGN = SystemDesigner.design(MapleStreet.BRIEF, Catalog.sample());

    /** The same with yields in proportion to irradiance, as one can reckon them by hand. */
    private static final DesignOutcome PROPORTIONAL = SystemDesigner.design(
            MapleStreet.BRIEF.withPolicy(MapleStreet.BRIEF
                    .policy()
                    .withArray(MapleStreet.BRIEF.policy().array().withYieldModel(YieldModel.PROPORTIONAL))),
            Catalog.sample());

    @Test
    void onlyTheEssentialLoadsCount() {
        // fridges 2 · 140 W · 24 h · 0.45 = 3024 Wh, lights 8 · 11 W · 6 h = 528 Wh, rack 95 W · 24 h = 2280 Wh
        assertThat(DESIGN.budget().table())
                .extracting(LoadEnergy::name)
                .containsExactly("vaccine fridge", "emergency light", "network rack");
        assertThat(DESIGN.budget().in(Month.DECEMBER).acEnergy().wattHours()).isCloseTo(5832, within(1e-9));
    }

    @Test
    void peakAndSurge() {
        PeakLoad peak = DESIGN.budget().peak();
        // 280 + 88 + 95 = 463 W; power factors .7, .6, .6: 285.657 + 117.333 + 126.667 = 529.657 var; 703.495 VA
        assertThat(peak.running()).isEqualTo(Power.watts(463));
        assertThat(peak.runningApparent().voltAmperes()).isCloseTo(703.495, within(1e-3));
        // Both fridges start by themselves, five times 400 VA at a power factor of 0.4: 800 W and 1833.030 var, 520 W
        // and
        // 1547.373 var more than running: 983 W, 2077.030 var, 2297.900 VA
        assertThat(peak.surge().watts()).isCloseTo(983, within(1e-9));
        assertThat(peak.surgeApparent().voltAmperes()).isCloseTo(2297.900, within(1e-3));
    }

    @Test
    void inverterOnTwoLines() {
        InverterFit inverter = system(DESIGN).inverter().orElseThrow();
        // A WR-C4400-48U feeds both lines: 2290, and 4000 W / 0.905 / 42 V = 105.2355 A of 125 A: 0.15812. Two
        // WR-C3600-48U
        // cost 3780 and draw 6000 / 0.905 / 42 = 157.9 A
        assertThat(inverter.product()).isEqualTo("WR-C4400-48U");
        assertThat(inverter.count()).isEqualTo(1);
        assertMargin(inverter.checks(), "bankCurrent", 0.15812);
        // The fullest line has one fridge (140 W, 142.829 var) to itself and half of the rest: (463 − 140)/2 + 140 =
        // 301.5 W,
        // (529.657 − 142.829)/2 + 142.829 = 336.243 var, 451.621 VA
        // In 41 °C 1 − 0.008 · 16 = 0.872 is left, half of it on a line: 1744 W against 301.5 · 1.25: 0.78390;
        // 1918.4 VA against 451.621 · 1.25: 0.70573
        assertThat(inverter.linePeak().running().watts()).isCloseTo(301.5, within(1e-9));
        assertMargin(inverter.checks(), "continuousPower", 0.78390);
        assertMargin(inverter.checks(), "continuousApparentPower", 0.70573);
        // The start: that fridge's 400 W and 916.515 var, (983 − 400)/2 + 400 = 691.5 W, (2077.030 − 916.515)/2 +
        // 916.515
        // = 1496.773 var, 1648.788 VA of 9000 / 2: 0.63360
        assertMargin(inverter.checks(), "surge", 0.63360);
        // The grid comes in: 451.621 / 120 V = 3.76351 A of 60 A: 0.93727
        assertMargin(inverter.checks(), "transferCurrent", 0.93727);
        Map<String, List<String>> broken = rules(inverters(DESIGN).orElseThrow().rejected());
        assertThat(broken.get("WR-C3600-48U")).containsExactly("bankCurrent");
        // made for 24 V, to 32 V, not 56 V; two units, one on each line: 2 · 2200 / 0.89 / 21 = 235.4 A; no AC input
        assertThat(broken.get("WR-S2500-24U"))
                .containsExactly("nominalVoltage", "highestBankVoltage", "bankCurrent", "transferCurrent");
        // at 12 V nothing makes 120 V, at 24 V nothing takes the grid in
        assertThat(system(DESIGN).nominalVoltage()).isEqualTo(Voltage.volts(48));
    }

    @Test
    void energyOfADay() {
        // 4000 W, idle 24 W, 94.5 % at its best, 90.5 % at full load. k0 = 0.006, root 0.0774597; 1/0.905 − 1/0.945 =
        // 0.0467713,
        // root 0.2162668; √k2 = 0.2937264, k2 = 0.0862752; k1 = 0.0582011 − 2 · 0.0774597 · 0.2937264 = 0.0126972
        InverterCurve curve = DESIGN.budget().inverter();
        assertThat(curve.k1().fraction()).isCloseTo(0.0126972, within(2e-7));
        assertThat(curve.k2().fraction()).isCloseTo(0.0862752, within(2e-7));
        // Fridges 280 W · 0.45 = 126 W, variance 280² · 0.45 · 0.55 = 19404; rack 95 W; lights 88 W from 17 to 23:
        //   18 hours: 24 + 1.0126972 · 221 + 2.156881e-5 · (48841 + 19404) = 24 + 223.80607 + 1.47196 = 249.27803
        //    6 hours: 24 + 1.0126972 · 309 + 2.156881e-5 · (95481 + 19404) = 24 + 312.92342 + 2.47793 = 339.40135
        // 18 · 249.27803 + 6 · 339.40135 = 6523.4127 Wh; controller HN-T40 0.7 W · 24 h = 16.8 Wh: 6540.2127 Wh, every
        // day
        MonthBudget december = DESIGN.budget().in(Month.DECEMBER);
        assertThat(december.inverterLoss().wattHours()).isCloseTo(6523.4127 - 5832, within(1e-3));
        assertThat(december.dailyEnergy().wattHours()).isCloseTo(6540.2127, within(1e-3));
        assertThat(DESIGN.budget().heaviestRun().worstDailyEnergy().wattHours()).isCloseTo(6540.2127, within(1e-3));
    }

    @Test
    void bankForOneDay() {
        BankFit bank = system(DESIGN).bank();
        BankCapacity capacity = Objects.requireNonNull(bank.capacity());
        // Indoors, 12 °C: 0.95 + 0.05 · 2/15 = 0.956667
        assertThat(capacity.temperatureFactor().fraction()).isCloseTo(0.956667, within(5e-7));
        // 6540.2127 / 51.2 V = 127.7385 Ah; / 0.8 = 159.6732 Ah, by the day no less; / 0.956667 · 1.1 = 183.5963 Ah
        assertThat(capacity.byDepth().ampereHours()).isCloseTo(159.6732, within(1e-4));
        assertThat(capacity.byDailyDepth().ampereHours()).isCloseTo(159.6732, within(1e-4));
        assertThat(capacity.requiredCapacity().ampereHours()).isCloseTo(183.5963, within(2e-4));
        // two of 100 Ah
        BankLayout layout = Objects.requireNonNull(bank.layout());
        assertThat(layout.product()).isEqualTo("BK-L48-100");
        assertThat(layout.parallel()).isEqualTo(2);
        // 16 · 2.9 V = 46.4 V; (24 + 1.0126972 · 463 + 0.0862752 · 463² / 4000) / 46.4 = 497.5025 / 46.4 = 10.7220 A of
        // 100 · (1 + 0.9) = 190 A: 0.94357; the start 983 / 0.905 / 46.4 = 23.4092 A of 200 · 1.9 = 380 A: 0.93840
        assertMargin(bank.checks(), "dischargeCurrent", 0.94357);
        assertMargin(bank.checks(), "surgeCurrent", 0.93840);
    }

    @Test
    void sunOfDecember() {
        // δ = −23.04963°, ω_s = 70.14322°, 9.35243 h; H_0 = 4044.346 Wh/m²; K = 2020 / 4044.346 = 0.499463; Erbs,
        // winter: 0.391648
        // a = 0.409 + 0.5016 · sin 10.14322° = 0.497336; b = 0.6609 − 0.4767 · sin 10.14322° = 0.576949
        // Eight equal parts of the day, morning like afternoon, facing south at 30°: cos θ = sin δ · sin(φ − 30°) + cos
        // δ ·
        // cos(φ − 30°) · cos ω; the columns as for the field station:
        //   ω        u       cos θ_z  cos θ   R       global  diffuse  beam    outside  A
        //   −61.375° 0.1394  0.1002   0.3773  3.7639   63.56   31.94    31.63  163.28  0.1937
        //   −43.840° 0.3816  0.2744   0.5977  2.1779  205.44   87.44   118.00  446.98  0.2640
        //   −26.304° 0.5568  0.4004   0.7571  1.8908  332.91  127.57   205.34  652.16  0.3149
        //    −8.768° 0.6486  0.4665   0.8406  1.8022  408.09  148.62   259.47  759.75  0.3415
        // Beam Σ beam · R = 2 · (119.03 + 257.00 + 388.25 + 467.61) = 2463.8
        // Circumsolar A · diffuse = 6.19, 23.08, 40.17, 50.75, twice 240.38 on the horizontal; · R = 2 · (23.29 + 50.27
        // + 75.95
        // + 91.46) = 481.94; rest (791.13 − 240.38) · (1 + cos 30°) / 2 = 513.86; ground 2020 · 0.2 · (1 − cos 30°) / 2
        // = 27.06
        // Together 3486.7; finer parts (4000) give 3486.97
        SunMonth december = DESIGN.sun().in(Month.DECEMBER);
        assertThat(december.clearness().fraction()).isCloseTo(0.499463, within(1e-6));
        assertThat(december.diffuseFraction().fraction()).isCloseTo(0.391648, within(1e-6));
        assertThat(december.beam().wattHoursPerSquareMetre()).isCloseTo(2463.8, within(0.4));
        assertThat(december.ground().wattHoursPerSquareMetre()).isCloseTo(27.063, within(1e-3));
        assertThat(december.planeOfArray().wattHoursPerSquareMetre()).isCloseTo(3486.97, within(0.1));
    }

    @Test
    void modulesForDecember() {
        ArraySize size = energy(PROPORTIONAL).monthlyBalance();
        // Day from 7.32379 to 16.67621. At the bank, + 0.7 W: 249.97803 and 340.10135 W with light
        // Dark: 6 h · 340.10135 + (7.32379 + 0.32379 + 1) h · 249.97803 = 2040.608 + 2161.702 = 4202.31 Wh, of
        // 6540.2127: 0.642534
        // 6540.2127 · (0.357466 + 0.642534 / 0.94) = 6808.445 Wh
        assertThat(size.inDesignMonth().month()).isEqualTo(Month.DECEMBER);
        assertThat(size.inDesignMonth().need().wattHours()).isCloseTo(6808.445, within(5e-3));
        // PL-435N: 3486.97 / 9.35243 = 372.84 W/m², energy-weighted · π²/8 = 459.97; rise 23/800 · 459.97 = 13.22 K,
        // cells
        // 1.3 + 3 + 13.22 = 17.52 °C; 1 + 0.003 · 7.48 = 1.02243
        // 435 W · 3.48697 h · 1.02243 · 0.866761 · 0.97 = 1303.89 Wh in a month of mean days; on clear ones the
        // energy-weighted irradiance is no more than 800 W/m², a rise of 23 K: 2.87 % less at the most
        double hand = 1303.89;
        assertThat(size.inDesignMonth().moduleYield().wattHours()).isBetween(0.9713 * hand, hand);
        // 6808.445 · 1.1 / 1303.89 = 5.7438, at the most 5.9135: six modules
        assertThat(size.exactModules().fraction()).isBetween(5.7438, 5.9136);
        assertThat(size.modules()).isEqualTo(6);
        assertThat(energy(DESIGN).monthlyBalance().modules()).isEqualTo(6);
    }

    @Test
    void stringsAndController() {
        ChargerFit charger = system(DESIGN).chargeController();
        assertThat(charger.product()).isEqualTo("HN-T40");
        assertThat(charger.array().product()).isEqualTo("PL-435N");
        // Coldest 39.4 V · (1 + 0.0025 · 43) = 43.6355 V; hottest: cells 41 + 23/800 · 1000 = 69.75 °C, 32.9 · (1 −
        // 0.00345 ·
        // 44.75) · 0.98 = 27.26424 V. Charging takes 56 + 5 = 61 V: three in series, 81.7927 V: 0.34086
        assertThat(charger.array().series()).isEqualTo(3);
        assertThat(charger.array().stringsOnEach()).containsExactly(2);
        assertMargin(charger.checks(), "hottestMaximumPowerVoltage", 0.34086);
        // 130.9065 V of 140 · 0.98 = 137.2 V: 0.04587
        assertMargin(charger.checks(), "coldestOpenCircuitVoltage", 0.04587);
        // 2 · 13.75 · 1.25 = 34.375 A of 45 A: 0.23611
        assertMargin(charger.checks(), "inputCurrent", 0.23611);
        // Full sun 2610 · 0.95 · 0.98² · 0.97 = 2309.87 W, / 51.2 V = 45.1 A, but no more than 40 A, of the bank's
        // 60 · 1.9 = 114 A: 0.64912
        assertThat(charger.chargingCurrent().amperes()).isEqualTo(40);
        assertMargin(charger.checks(), "bankChargeCurrent", 0.64912);
    }

    @Test
    void panelAndPrice() {
        // 6 · 179 + 289 + 2 · 1149 + 2290 = 5951
        assertThat(DESIGN.billOfMaterials().orElseThrow().total()).hasToString("5951.00 EUR");
        EssentialPanel panel = backup(DESIGN).essentialPanel();
        // 200 Ah · 51.2 V = 10.24 kWh; 6 · 435 W = 2610 W
        assertThat(panel.bank().kilowattHours()).isCloseTo(10.24, within(1e-12));
        assertThat(panel.array().watts()).isCloseTo(2610, within(1e-9));
        assertThat(panel.price()).hasToString("5951.00 EUR");
        // The whole house besides: (14 · 36 · 11 + 2200 · 2 + 900 · 11 · 0.5 + 550 · 10.5) Wh = 5544 + 4400 + 4950 +
        // 5775 =
        // 20 669 Wh on a working day, so 26 501 Wh, 4.54 times the panel's 5832 Wh. The inverters' losses do not grow
        // as much,
        // the bank is rounded to whole strings: more than three times the bank
        EssentialPanel.WholeHouse house = panel.wholeHouse().orElseThrow();
        double wholeBank = house.bank().kilowattHours();
        assertThat(wholeBank).isGreaterThan(26.501 / 0.8 * 1.1);
        assertThat(house.bankSaved().fraction()).isCloseTo(1 - 10.24 / wholeBank, within(1e-12));
    }
}
