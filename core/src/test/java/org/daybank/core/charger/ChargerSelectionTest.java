package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.charger.ChargerSheets.DIRECT;
import static org.daybank.core.charger.ChargerSheets.TRACKING;
import static org.daybank.core.charger.ChargerSheets.TWELVE;
import static org.daybank.core.charger.ChargerSheets.offer;
import static org.daybank.core.charger.ChargerSheets.twelveVolts;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

class ChargerSelectionTest {
    private static final ArrayOffer ONE = offer(TWELVE, 24, 20, 0.9, 1);

    @Test
    void cheapestFirstThenByModelAndShuntsLast() {
        ChargeController twin = DIRECT.withModel("A40");
        ChargeController shunt =
                DIRECT.withModel("S40").withKind(ControllerKind.SHUNT).withPrice(Money.of("5", "EUR"));

        ChargerSelection selection = ChargerSelection.of(
                twelveVolts(), ONE, List.of(shunt, TRACKING, DIRECT, twin), ChargerPolicy.standard());

        assertThat(selection.ranked()).extracting(ChargerFit::product).containsExactly("A40", "P40", "T60", "S40");
        assertThat(selection.rejected()).isEmpty();
    }

    @Test
    void theRejectedKeepTheOrderOfTheCatalogue() {
        ChargeController tooSmall = DIRECT.withModel("Z").withMaximumInputCurrent(Current.amperes(3));
        ChargeController tooWeak = DIRECT.withModel("B").withOutputCurrent(Current.amperes(3));

        ChargerSelection selection =
                ChargerSelection.of(twelveVolts(), ONE, List.of(tooSmall, DIRECT, tooWeak), ChargerPolicy.standard());

        assertThat(selection.rejected()).extracting(Rejection::product).containsExactly("Z", "B");
    }
}
