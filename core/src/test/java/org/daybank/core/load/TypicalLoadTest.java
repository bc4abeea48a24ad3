package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TypicalLoadTest {
    private static final List<TypicalLoad> LIST = TypicalLoad.list();

    @Test
    void atLeastThirtyEachUnderANameOfItsOwnAndWithItsSource() {
        assertThat(LIST).hasSizeGreaterThanOrEqualTo(30);
        assertThat(LIST).extracting(typical -> typical.load().name()).doesNotHaveDuplicates();
        assertThat(LIST).allSatisfy(typical -> assertThat(typical.source()).isNotBlank());
    }

    @Test
    void everyKindAndBothSuppliesHaveOne() {
        assertThat(LIST).extracting(typical -> typical.load().kind()).contains(LoadKind.values());
        assertThat(LIST).extracting(typical -> typical.load().supply()).contains(Supply.values());
    }

    @Test
    void eachCanStandInABudgetAndDrawsSomething() {
        List<Load> loads = LIST.stream().map(TypicalLoad::load).toList();

        assertThat(EnergyBudget.of(EnergyDemandBuilder.builder().loads(loads).build(), LoadPolicy.standard())
                        .table())
                .hasSameSizeAs(LIST)
                .allSatisfy(line -> assertThat(line.dailyEnergy().wattHours()).isBetween(1.0, 5000.0));
    }

    @Test
    void figuresLieInThePublishedRangesOfTheirKind() {
        for (TypicalLoad typical : LIST) {
            Load load = typical.load();
            double start = load.startingMultiple().fraction();
            switch (load.kind()) {
                case COMPRESSOR -> {
                    // refrigerators .3-.5 and freezers .4-.6 of the time; compressors start at 3 to 8 times
                    assertThat(load.dutyCycle().fraction()).as(load.name()).isBetween(0.3, 0.6);
                    assertThat(start).as(load.name()).isBetween(3.0, 8.0);
                }
                case UNIVERSAL_MOTOR -> assertThat(start).as(load.name()).isBetween(2.0, 3.0);
                case SOFT_START_MOTOR -> assertThat(start).as(load.name()).isBetween(1.0, 3.0);
                case RESISTIVE, LIGHTING -> assertThat(start).as(load.name()).isEqualTo(1);
                case INDUCTION_MOTOR, ELECTRONICS, SENSITIVE_ELECTRONICS ->
                    assertThat(start).as(load.name()).isBetween(1.0, 7.0);
            }
        }
    }

    @Test
    void standbyLiesInThePublishedRanges() {
        // set-top boxes 5 to 20 W, televisions 0.5 to 3 W
        assertThat(named("set-top box").standby().watts()).isBetween(5.0, 20.0);
        assertThat(named("television").standby().watts()).isBetween(0.5, 3.0);
        // routers draw 6 to 12 W around the clock
        assertThat(named("wireless router").power().watts()).isBetween(6.0, 12.0);
        assertThat(named("wireless router").hoursPerDay()).isEqualTo(24.0);
    }

    private static Load named(String name) {
        return LIST.stream()
                .map(TypicalLoad::load)
                .filter(load -> load.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
