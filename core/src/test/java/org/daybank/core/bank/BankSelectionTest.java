package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

class BankSelectionTest {
    private static final BankNeed NEED = BankNeedBuilder.builder()
            .dailyEnergy(Energy.kilowattHours(2.4))
            .nominalVoltage(Voltage.volts(24))
            .lowest(Temperature.celsius(10))
            .build();

    @Test
    void cheapestFirstAndOfEqualsByModel() {
        Battery dear = Batteries.LITHIUM_12V.withModel("A").withPrice(Money.of("320", "EUR"));
        Battery second = Batteries.LITHIUM_12V.withModel("C");
        Battery first = Batteries.LITHIUM_12V.withModel("B");

        assertThat(BankSelection.of(NEED, List.of(dear, second, first), BankPolicy.standard())
                        .ranked())
                .extracting(BankFit::product)
                .containsExactly("B", "C", "A");
    }

    @Test
    void whatDoesNotFitSaysEveryRuleItBreaks() {
        Battery bad = Batteries.LITHIUM_12V.withMostInSeries(1).withMostInParallel(1);
        BankSelection selection = BankSelection.of(
                NEED.withLowest(Temperature.celsius(-5)), List.of(bad, Batteries.HEATED_12V), BankPolicy.standard());

        assertThat(selection.ranked()).extracting(BankFit::product).containsExactly("heated 12 V");
        assertThat(selection.rejected()).extracting(Rejection::product).containsExactly("lithium 12 V");
        assertThat(selection.rejected().get(0).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("seriesCount", "chargingTemperature", "parallelStrings");
    }

    @Test
    void anEmptyCatalogueLeavesNothing() {
        BankSelection selection = BankSelection.of(NEED, List.of(), BankPolicy.standard());

        assertThat(selection.ranked()).isEmpty();
        assertThat(selection.rejected()).isEmpty();
    }
}
