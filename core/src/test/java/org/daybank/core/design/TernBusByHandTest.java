package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.controllers;
import static org.daybank.core.design.Designs.energy;
import static org.daybank.core.design.Designs.inverters;
import static org.daybank.core.design.Designs.rejectedVoltages;
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
import org.daybank.core.load.MonthBudget;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.junit.jupiter.api.Test;

/**
 * A mobile system, worked by hand from the methods and the data sheets of the sample catalogue: the alternator spares modules,
 * the shore power asks for an AC input. The arithmetic in the comments keeps five to seven digits, hence the tolerances.
 */
class TernBusByHandTest {
    private static final DesignOutcome DESIGN = SystemDesigner.design(TernBus.BRIEF, Catalog.sample());

    /** The same with yields in proportion to irradiance, as one can reckon them by hand. */
    private static final DesignOutcome PROPORTIONAL = SystemDesigner.design(
            TernBus.BRIEF.withPolicy(TernBus.BRIEF
                    .policy()
                    .withArray(TernBus.BRIEF.policy().array().withYieldModel(YieldModel.PROPORTIONAL))),
            Catalog.sample());

    @Test
    void peak() {
        // Laptops 3 · 45 = 135 W, printer 60 W, kettle 750 W may run together: 945 W. Power factor 0.6 of the
        // electronics:
        // 195 W · 0.8 / 0.6 = 260 var; √(945² + 260²) = √(893025 + 67600) = 980.115 VA. None of them starts hard.
        PeakLoad peak = DESIGN.budget().peak();
        assertThat(peak.running()).isEqualTo(Power.watts(945));
        assertThat(peak.runningApparent().voltAmperes()).isCloseTo(980.115, within(5e-4));
        assertThat(peak.surge()).isEqualTo(Power.watts(945));
        // lights 54 W and fan 28 W: 82 / 0.97 = 84.5361 W
        assertThat(DESIGN.budget().dcPeak().watts()).isCloseTo(84.5361, within(5e-5));
    }

    @Test
    void whyTwelveVoltsAreRejected() {
        assertThat(system(DESIGN).nominalVoltage()).isEqualTo(Voltage.volts(24));
        assertThat(rejectedVoltages(DESIGN))
                .extracting(RejectedVoltage::voltage)
                .containsExactly(Voltage.volts(12));
        // Of the inverters for 12 V only the WR-C1600-12 takes shore power in: 1300 W / 0.87 / 10.5 V = 142.310 A, over
        // 125 A
        List<Check> reasons = rejectedVoltages(DESIGN).get(0).failedChecks();
        assertThat(reasons).extracting(check -> check.rule().code()).containsExactly("bankCurrent");
        assertThat(reasons.get(0).value().orElseThrow().baseValue()).isCloseTo(142.310, within(5e-4));
    }

    @Test
    void inverterThatTakesShorePowerIn() {
        InverterFit inverter = system(DESIGN).inverter().orElseThrow();
        // WR-C2000-24 at 1049; the WR-C3000-24 costs 1549
        assertThat(inverter.product()).isEqualTo("WR-C2000-24");
        assertThat(inverter.count()).isEqualTo(1);
        // In 33 °C: 1 − 0.008 · 8 = 0.936; 1497.6 W against 945 · 1.25 = 1181.25 W: 0.21124;
        // 1872 VA against 980.115 · 1.25 = 1225.144 VA: 0.34554; 3800 VA against 980.115 VA: 0.74208
        assertMargin(inverter.checks(), "continuousPower", 0.21124);
        assertMargin(inverter.checks(), "continuousApparentPower", 0.34554);
        assertMargin(inverter.checks(), "surge", 0.74208);
        // 1600 W / 0.89 / 21 V = 85.6073 A of 125 A: 0.31514; charged, 8 cells · 3.5 V = 28 V of 32 V
        assertMargin(inverter.checks(), "bankCurrent", 0.31514);
        assertMargin(inverter.checks(), "highestBankVoltage", 0.125);
        // Shore power: 980.115 VA / 230 V = 4.26137 A through 25 A: 0.82955; it has 2300 VA: 0.57386
        assertMargin(inverter.checks(), "transferCurrent", 0.82955);
        assertMargin(inverter.checks(), "sourcePeak", 0.57386);
        // 1300 W · 0.936 = 1216.8 W would carry the loads, but there is nowhere to plug the shore cable in
        Map<String, List<String>> broken = rules(inverters(DESIGN).orElseThrow().rejected());
        assertThat(broken.get("WR-S1500-24")).contains("transferCurrent").doesNotContain("continuousPower");
    }

    @Test
    void energyOfADay() {
        // WR-C2000-24: 1600 W, idle 11 W, 94 % at its best, 89 % at full load. k0 = 11 / 1600 = 0.006875, root
        // 0.0829156;
        // 1/0.89 − 1/0.94 = 0.0597657, root 0.2444703; √k2 = 0.3273859, k2 = 0.1071815;
        // k1 = 0.0638298 − 2 · 0.0829156 · 0.3273859 = 0.0095390
        InverterCurve curve = DESIGN.budget().inverter();
        assertThat(curve.k0().fraction()).isCloseTo(0.006875, within(1e-12));
        assertThat(curve.k1().fraction()).isCloseTo(0.0095390, within(2e-7));
        assertThat(curve.k2().fraction()).isCloseTo(0.1071815, within(2e-7));

        // Five days of seven. Share s of the hours on, mean P·s, variance P²·s·(1 − s):
        //   laptops 135 W, 9 to 17, s = 0.6 · 5/7 = 0.4285714: 57.85714, 4463.265
        //   printer  60 W, s = 0.5/24 · 5/7 = 0.0148810:        0.89286,   52.774
        //   kettle  750 W, s = 0.2/24 · 5/7 = 0.0059524:        4.46429, 3328.284
        // Draw 11 + 1.0095390 · P + 6.698846e-5 · (P² + variance):
        //   16 hours: 11 + 1.0095390 ·  5.35714 + 6.698846e-5 · (  28.699 + 3381.059) = 16.63666
        //    8 hours: 11 + 1.0095390 · 63.21429 + 6.698846e-5 · (3996.046 + 7844.324) = 75.61045
        // 16 · 16.63666 + 8 · 75.61045 = 871.0702 Wh, of which the loads take 8 · 57.85714 + 24 · 5.35714 = 591.4286 Wh
        // Lights 54 W · 6 h · 5/7 = 231.4286 Wh, / 0.97 = 238.5862 Wh; controller HN-T15 0.4 W · 24 h = 9.6 Wh
        // 871.0702 + 238.5862 + 9.6 = 1119.2563 Wh; in summer the fan's 28 W · 4 h / 0.97 = 115.4639 Wh more: 1234.7202
        // Wh
        MonthBudget december = DESIGN.budget().in(Month.DECEMBER);
        assertThat(december.acEnergy().wattHours()).isCloseTo(591.4286, within(5e-5));
        assertThat(december.inverterLoss().wattHours()).isCloseTo(871.0702 - 591.4286, within(1e-3));
        assertThat(december.dailyEnergy().wattHours()).isCloseTo(1119.2563, within(1e-3));
        assertThat(DESIGN.budget().in(Month.JULY).dailyEnergy().wattHours()).isCloseTo(1234.7202, within(1e-3));
        // A day and a half may both be days of use. Laptops s = 0.6: 81 W, 4374; printer s = 0.0208333: 1.25 W, 73.438;
        // kettle s = 0.0083333: 6.25 W, 4648.438:
        //   16 hours: 11 + 1.0095390 ·  7.5 + 6.698846e-5 · (  56.25 + 4721.875) = 18.89162
        //    8 hours: 11 + 1.0095390 · 88.5 + 6.698846e-5 · (7832.25 + 9095.875) = 101.47819
        // 16 · 18.89162 + 8 · 101.47819 = 1114.0915 Wh; lights 324 / 0.97 = 334.0206; fan 115.4639; controller 9.6:
        // 1573.1760 Wh
        assertThat(DESIGN.budget().heaviestRun().worstDailyEnergy().wattHours()).isCloseTo(1573.176, within(1e-3));
    }

    @Test
    void bank() {
        BankFit bank = system(DESIGN).bank();
        BankCapacity capacity = Objects.requireNonNull(bank.capacity());
        // Indoors, 5 °C at the lowest: lithium may be charged, and delivers 0.85 + 0.10 · 5/10 = 0.90
        assertThat(bank.heated()).isFalse();
        assertThat(capacity.temperatureFactor().fraction()).isCloseTo(0.9, within(1e-12));
        // 1573.176 Wh · 1.5 / 25.6 V = 92.1783 Ah; / 0.8 = 115.2229 Ah; / 0.9 · 1.1 = 140.8279 Ah
        assertThat(capacity.autonomyCharge().ampereHours()).isCloseTo(92.1783, within(1e-4));
        assertThat(capacity.byDepth().ampereHours()).isCloseTo(115.2229, within(1e-4));
        assertThat(capacity.requiredCapacity().ampereHours()).isCloseTo(140.8279, within(2e-4));
        // two of 100 Ah for 1238, as against 1239 for one heated 200 Ah and 1276 for four BK-L12-100
        BankLayout layout = Objects.requireNonNull(bank.layout());
        assertThat(layout.product()).isEqualTo("BK-L24-100");
        assertThat(layout.series()).isEqualTo(1);
        assertThat(layout.parallel()).isEqualTo(2);
        // 8 · 2.9 V = 23.2 V; (11 + 1.0095390 · 945 + 0.1071815 · 945² / 1600 + 84.5361) / 23.2
        //   = (11 + 954.0143 + 59.8224 + 84.5361) / 23.2 = 47.8178 A of 100 · (1 + 0.9) = 190 A: 0.74833
        assertMargin(bank.checks(), "dischargeCurrent", 0.74833);
        // (945 / 0.89 + 84.5361) / 23.2 = 49.4109 A of 200 · 1.9 = 380 A: 0.86997
        assertMargin(bank.checks(), "surgeCurrent", 0.86997);
    }

    @Test
    void whatTheAlternatorLeavesToTheArray() {
        ArraySize size = energy(PROPORTIONAL).monthlyBalance();
        // 30 A for twice 40 minutes: 40 Ah, · 25.6 V = 1024 Wh a day. December is left 1119.2563 − 1024 = 95.2563 Wh
        // Sunset at arccos(−tan 53.2° · tan −23.0496°) = 55.3352°: the day lasts 7.37803 h, from 8.31099 to 15.68901
        // Draws at the bank, + 0.4 W, with lights 54 · 5/7 / 0.97 = 39.7644 W: 9 to 11 and 14 to 17 115.7748 W; 11 to
        // 14
        // 76.0105 W; 17 to 18 56.8010 W; the others 17.0367 W
        // Dark: 0.31099 · 115.7748 + 115.7748 + 56.8010 + (8.31099 + 6) · 17.0367 = 36.0048 + 115.7748 + 56.8010 +
        //   243.8116 = 452.392 Wh, over 1119.2563 Wh: 0.404189; need 95.2563 · (0.595811 + 0.404189 / 0.94) = 97.7139
        // Wh
        assertThat(size.inDesignMonth().month()).isEqualTo(Month.DECEMBER);
        assertThat(DESIGN.budget().in(Month.DECEMBER).afterDark().fraction()).isCloseTo(0.404189, within(2e-6));
        assertThat(size.inDesignMonth().need().wattHours()).isCloseTo(97.7139, within(1e-3));
        // Flat on the roof, it gets what falls on level ground: 490 Wh/m². 490 / 7.37803 = 66.41 W/m², energy-weighted
        // · π²/8 = 81.93; PL-450: rise 25/800 · 81.93 = 2.56 K, cells 4.8 + 3 + 2.56 = 10.36 °C; 1 + 0.0036 · 14.64 =
        // 1.05270
        // 450 W · 0.49 h · 1.05270 · 0.866761 · 0.96 = 193.146 Wh. That is for a month of mean days; on clear ones the
        // sun at
        // noon, 13.75° high, gives no more than 1361 · 1.033 · sin 13.75° = 334 W/m², 10.4 K: 2.7 % less at the most
        double hand = 193.146;
        assertThat(size.inDesignMonth().moduleYield().wattHours()).isBetween(0.973 * hand, hand);
        // 97.7139 · 1.3 / 193.146 = 0.65768: one module either way. Without the alternator it would be eight:
        // 1119.2563 · 1.025800 · 1.3 / 193.146 = 7.728
        assertThat(size.exactModules().fraction()).isBetween(0.65768, 0.65768 / 0.973);
        assertThat(size.modules()).isEqualTo(1);
        assertThat(energy(DESIGN).monthlyBalance().modules()).isEqualTo(1);
    }

    @Test
    void oneModuleOnItsController() {
        ChargerFit charger = system(DESIGN).chargeController();
        assertThat(charger.array().product()).isEqualTo("PL-450");
        assertThat(charger.product()).isEqualTo("HN-T15");
        // Coldest 49.6 V · (1 + 0.0028 · 37) = 54.73856 V of 75 V · 0.98 = 73.5 V: 0.25526
        assertMargin(charger.checks(), "coldestOpenCircuitVoltage", 0.25526);
        // Hottest: cells 33 + 25/800 · 1000 = 64.25 °C; 41.3 · (1 − 0.0041 · 39.25) · 0.98 = 33.96072 V, over 28 + 4 V:
        // 0.06127
        assertMargin(charger.checks(), "hottestMaximumPowerVoltage", 0.06127);
        // 11.6 A · 1.25 = 14.5 A of 15 A: 0.03333
        assertMargin(charger.checks(), "inputCurrent", 0.03333);
        // Full sun 450 · 0.95 · 0.98² · 0.96 = 394.148 W, / 25.6 V = 15.40 A, but no more than 15 A, of the bank's
        // 50 · 1.9 = 95 A: 0.84211
        assertThat(charger.chargingCurrent().amperes()).isEqualTo(15);
        assertMargin(charger.checks(), "bankChargeCurrent", 0.84211);
        // at the bank's own voltage only modules of its voltage group will do
        assertThat(rules(controllers(DESIGN).rejected()).get("HN-P20")).contains("moduleGroup");
    }

    @Test
    void price() {
        // 186 + 92 + 2 · 619 + 1049 = 2565
        assertThat(DESIGN.billOfMaterials().orElseThrow().total()).hasToString("2565.00 EUR");
    }
}
