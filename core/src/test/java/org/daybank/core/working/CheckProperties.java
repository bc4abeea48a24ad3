package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Power;

class CheckProperties {

    @Property
    void aRuleIsKeptExactlyWhenItsMarginIsNotNegative(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double actual,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double limit) {
        for (Check check : new Check[] {
            Check.atMost(SampleRule.COLDEST_VOLTAGE, Power.watts(actual), Power.watts(limit)),
            Check.atLeast(SampleRule.COLDEST_VOLTAGE, Power.watts(actual), Power.watts(limit))
        }) {
            assertThat(check.passed()).isEqualTo(check.margin().orElseThrow().fraction() >= 0);
        }
    }
}
