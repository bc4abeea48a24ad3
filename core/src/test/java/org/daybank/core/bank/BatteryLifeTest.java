package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class BatteryLifeTest {
    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final LifePolicy POLICY = LifePolicy.standard();

    /** 24 V · 250 Ah = 6 kWh for 756 EUR. */
    private static final BankLayout VENTED = bank(Batteries.VENTED_6V
            .withCycleLife(CycleLife.parse("0.2: 2920; 0.4: 1460; 0.8: 365"))
            .withCalendarLife(TimeSpan.years(10)));

    private static BankLayout bank(Battery battery) {
        return BankLayout.of(battery, Voltage.volts(24), battery.seriesFor(Voltage.volts(24)), 1);
    }

    private static BatteryLife life(BankLayout bank, BankUse use) {
        return BatteryLife.of(bank, use, POLICY).orElseThrow();
    }

    @Test
    void cyclesComeFirst() {
        // 365 of 1460 cycles a year: four years; 20 a / 4 a = five banks, four of them replacements
        BatteryLife life = life(VENTED, BankUse.daily(Ratio.of(0.4)));

        assertThat(Objects.requireNonNull(life.wearPerYear()).fraction()).isCloseTo(0.25, ROUNDING);
        assertThat(life.life().years()).isCloseTo(4, ROUNDING);
        assertThat(life.governing()).isEqualTo(BatteryLife.Governing.CYCLES);
        assertThat(life.replacements()).isEqualTo(4);
        // 365 · 0.4 = 146 full cycles of 6 kWh: 876 kWh a year, 3504 kWh in all; 756 EUR / 3504 kWh = 0.2158 EUR
        assertThat(life.fullCyclesPerYear()).isCloseTo(146, ROUNDING);
        assertThat(life.deliveredPerYear().kilowattHours()).isCloseTo(876, ROUNDING);
        assertThat(life.deliveredOverLife().kilowattHours()).isCloseTo(3504, within(1e-6));
        assertThat(life.costPerKilowattHour()).isEqualTo(Money.of("0.22", "EUR"));
    }

    @Test
    void theCalendarComesFirst() {
        // at 10 % of depth 2920 · 2 = 5840 cycles: 16 years, over the 10 of the sheet; 20 a / 10 a: one replacement
        BatteryLife life = life(VENTED, BankUse.daily(Ratio.of(0.1)));

        assertThat(Objects.requireNonNull(life.byCycles()).years()).isCloseTo(16, ROUNDING);
        assertThat(life.life().years()).isCloseTo(10, ROUNDING);
        assertThat(life.governing()).isEqualTo(BatteryLife.Governing.CALENDAR);
        assertThat(life.replacements()).isEqualTo(1);
    }

    @Test
    void depthsAddUpByMiner() {
        // 146 / 2920 + 73 / 365 = 0.05 + 0.2 = 0.25 a year; 146 · 0.2 + 73 · 0.8 = 87.6 full cycles
        BankUse use = BankUseBuilder.builder()
                .cycles(List.of(new BankUse.Cycles(Ratio.of(0.2), 146), new BankUse.Cycles(Ratio.of(0.8), 73)))
                .build();
        BatteryLife life = life(VENTED, use);

        assertThat(life.life().years()).isCloseTo(4, ROUNDING);
        assertThat(life.fullCyclesPerYear()).isCloseTo(87.6, ROUNDING);
    }

    @Test
    void heatHalvesTheLifeOfLeadAcid() {
        // half the year at 35 °C, half at 5 °C: (2 + 1) / 2 = 1.5 times as fast; 10 a / 1.5 = 6.667 a
        BankUse use = BankUse.daily(Ratio.of(0.1))
                .withCellTemperatures(List.of(Temperature.celsius(35), Temperature.celsius(5)));
        BatteryLife vented = life(VENTED, use);

        assertThat(vented.ageing().fraction()).isCloseTo(1.5, ROUNDING);
        assertThat(vented.life().years()).isCloseTo(20 / 3.0, ROUNDING);
        // 20 a / 6.667 a = 3, but for rounding: two replacements
        assertThat(vented.replacements()).isEqualTo(2);
        // lithium as its sheet says
        BankLayout lithium = bank(Batteries.LITHIUM_12V.withCalendarLife(TimeSpan.years(12)));
        assertThat(life(lithium, use).life().years()).isCloseTo(12, ROUNDING);
        // 0.8 for each 10 K: (1.25 + 1) / 2 = 1.125; 12 a / 1.125
        LifePolicy hot = POLICY.withLifePerTenKelvin(new RatioByFamily(Ratio.of(0.5), Ratio.of(0.8)));
        assertThat(BatteryLife.of(lithium, use, hot).orElseThrow().life().years())
                .isCloseTo(12 / 1.125, ROUNDING);
    }

    @Test
    void whatTheSheetDoesNotSayStaysOut() {
        BankUse use = BankUse.daily(Ratio.of(0.4));
        BatteryLife cyclesOnly = life(bank(Batteries.LITHIUM_12V.withCycleLife(CycleLife.parse("0.8: 3650"))), use);

        // 3650 · 0.8 / 0.4 = 7300 cycles: 20 years, all of the project
        assertThat(cyclesOnly.byCalendar()).isNull();
        assertThat(cyclesOnly.life().years()).isCloseTo(20, ROUNDING);
        assertThat(cyclesOnly.replacements()).isZero();
        BatteryLife calendarOnly = life(bank(Batteries.LITHIUM_12V.withCalendarLife(TimeSpan.years(12))), use);
        assertThat(calendarOnly.byCycles()).isNull();
        assertThat(calendarOnly.wearPerYear()).isNull();
        assertThat(calendarOnly.governing()).isEqualTo(BatteryLife.Governing.CALENDAR);
        assertThat(BatteryLife.of(bank(Batteries.LITHIUM_12V), use, POLICY)).isEmpty();
    }

    @Test
    void theStepsShowTheNumbersUsed() {
        List<Step> steps = life(VENTED, BankUse.daily(Ratio.of(0.4))).working().steps();

        assertThat(steps)
                .extracting(Step::name)
                .containsExactly(
                        "cycles until worn",
                        "wear in a year",
                        "life by cycles",
                        "ageing",
                        "life by the calendar",
                        "life",
                        "replacements",
                        "energy over its life",
                        "cost for each kilowatt-hour");
        assertThat(steps.get(1).substituted()).isEqualTo("365 / 1460");
        assertThat(steps.get(1).result()).isEqualTo("0.25");
        assertThat(steps.get(8).result()).isEqualTo("0.22 EUR");
    }

    @Test
    void refusesWhatIsNoUse() {
        assertThatThrownBy(() -> new BankUse(List.of(), List.of(Temperature.celsius(90))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage(
                        "cycles must not be empty. cellTemperatures/0 must be from -60 °C to 80 °C, but was 90 °C.");
        assertThatThrownBy(() -> new BankUse.Cycles(Ratio.of(1.2), 0))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("depth must be from 0.001 to 1, but was 1.2. perYear must be above 0, but was 0.");
        assertThatThrownBy(() -> Batteries.AGM_12V.withCalendarLife(TimeSpan.years(200)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("calendarLife must be from");
    }

    @Test
    void wornAndTooOldAtOnceCountsAsWorn() {
        // 365 of 1460 cycles a year: four years, and four by the calendar
        BankLayout bank = bank(VENTED.battery().withCalendarLife(TimeSpan.years(4)));

        assertThat(life(bank, BankUse.daily(Ratio.of(0.4))).governing()).isEqualTo(BatteryLife.Governing.CYCLES);
    }

    @Test
    void aPolicyOutOfRangeIsRefused() {
        assertThatThrownBy(() -> POLICY.withLifePerTenKelvin(new RatioByFamily(Ratio.of(0.1), Ratio.of(1.1))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("lifePerTenKelvin/leadAcid must be from 0.2 to 1, but was 0.1. "
                        + "lifePerTenKelvin/lithium must be from 0.2 to 1, but was 1.1.");
        assertThatThrownBy(() -> POLICY.withProjectLife(TimeSpan.years(61)))
                .isInstanceOf(InvalidInput.class)
                // 60 · 365 d and 61 · 365 d
                .hasMessage("projectLife must be from 365 d to 21900 d, but was 22265 d.");
    }
}
