package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.evidence;
import static org.daybank.core.design.Designs.system;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankUse;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.simulation.SimulatedYear;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.junit.jupiter.api.Test;

/** The life of the bank that a design chose. */
class BankLifeTest {
    private static final Site EQUATOR = SiteBuilder.builder()
            .latitude(Latitude.degrees(0))
            .recordLow(Temperature.celsius(15))
            .recordHigh(Temperature.celsius(40))
            .months(MonthlyClimateBuilder.builder()
                    .clearness(List.of(Ratio.percent(55)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(35)))
                    .build())
            .build();

    private static final Load LANTERNS = LoadBuilder.builder()
            .name("lanterns")
            .supply(Supply.DC)
            .power(Power.watts(100))
            .windows(List.of(TimeWindow.parse("20:00-24:00")))
            .build();

    private static final DesignBrief EVENINGS = DesignBriefBuilder.builder()
            .site(EQUATOR)
            .loads(List.of(LANTERNS))
            .wishes(new Wishes(null, List.of(Chemistry.AGM), null, null, null, null))
            .build();

    private static DesignBrief simulated(DesignBrief brief, int years) {
        DesignPolicy policy = brief.policy();
        return brief.withPolicy(policy.withSystem(policy.system().withSimulatedYears(years)));
    }

    @Test
    void withoutHoursADischargeEachNight() {
        DesignOutcome design = SystemDesigner.design(simulated(EVENINGS, 0), Catalog.sample());
        BankLayout bank = system(design).bankLayout();
        BatteryLife life = evidence(design).batteryLife().orElseThrow();

        // 100 W · 4 h / 0.97 = 412.371 Wh in the dark, and half a day of what the controller draws: dark for 12 h, give
        // or take
        // a twentieth of an hour
        double own = system(design).chargeController().selfConsumption().watts() * 12;
        double depth = (400 / 0.97 + own) / bank.ratedEnergy().wattHours();
        assertThat(life.use().cycles())
                .hasSize(12)
                .allSatisfy(cycle -> assertThat(cycle.depth().fraction())
                        .isCloseTo(
                                depth, within(0.005 * own / bank.ratedEnergy().wattHours() + 1e-9)));
        assertThat(life.use().cycles().stream()
                        .mapToDouble(BankUse.Cycles::perYear)
                        .sum())
                .isEqualTo(365);
        // 35 °C all year: half the calendar life of the data sheet
        assertThat(Objects.requireNonNull(life.byCalendar()).years())
                .isCloseTo(Objects.requireNonNull(bank.battery().calendarLife()).years() / 2, within(1e-9));
        assertThat(design.working().steps()).extracting(step -> step.name()).contains("life by cycles", "life");
    }

    @Test
    void theHoursCountTheCycles() {
        DesignBrief brief = simulated(EVENINGS, 2);
        DesignOutcome design = SystemDesigner.design(brief, Catalog.sample());
        BatteryLife life = evidence(design).batteryLife().orElseThrow();
        List<SimulatedYear> years = SystemSimulator.run(
                        SimulationBriefBuilder.builder()
                                .brief(brief)
                                .parts(system(design).parts())
                                .build(),
                        Catalog.sample())
                .byYear();

        // every discharge is half of some whole cycle: as many full cycles as the throughput makes; what leaks away
        // besides
        // is 2 % of the capacity a month, a quarter of a cycle a year, and 2 · 10 K warmer cells leak no more than four
        // times that
        double throughput = years.stream()
                .mapToDouble(SimulatedYear::equivalentFullCycles)
                .average()
                .orElseThrow();
        assertThat(life.fullCyclesPerYear()).isBetween(throughput - 0.5, throughput + 1.5);
    }

    @Test
    void aProjectTwiceAsLongTakesMoreBanks() {
        DesignBrief brief = simulated(EVENINGS, 0);
        DesignPolicy policy = brief.policy();
        BatteryLife life = evidence(SystemDesigner.design(brief, Catalog.sample()))
                .batteryLife()
                .orElseThrow();
        BatteryLife longer = evidence(SystemDesigner.design(
                        brief.withPolicy(policy.withLife(policy.life()
                                .withProjectLife(policy.life().projectLife().times(2)))),
                        Catalog.sample()))
                .batteryLife()
                .orElseThrow();

        assertThat(longer.life()).isEqualTo(life.life());
        assertThat(longer.replacements()).isGreaterThan(life.replacements());
    }
}
