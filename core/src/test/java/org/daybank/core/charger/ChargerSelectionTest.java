package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.daybank.core.charger.ChargerSheets.DIRECT;
import static org.daybank.core.charger.ChargerSheets.TRACKING;
import static org.daybank.core.charger.ChargerSheets.TWELVE;
import static org.daybank.core.charger.ChargerSheets.offer;
import static org.daybank.core.charger.ChargerSheets.twelveVolts;

import java.util.List;
import java.util.Objects;
import org.assertj.core.util.DoubleComparator;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Rejection;
import org.daybank.core.working.Severity;
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
    void yearlyEnergyAgainstTheBest() {
        // one module: 600 kWh · 0.95 = 570 kWh and 450 kWh, each less 1 W · 8760 h = 8.76 kWh: 561.24 and 441.24
        ChargerSelection selection =
                ChargerSelection.of(twelveVolts(), ONE, List.of(DIRECT, TRACKING), ChargerPolicy.standard());

        assertThat(selection.ranked())
                .extracting(
                        fit -> Objects.requireNonNull(fit.energyAgainstBest()).fraction())
                .usingComparatorForType(new DoubleComparator(1e-9), Double.class)
                .containsExactly(441.24 / 561.24, 1.0);
    }

    @Test
    void aDiversionLoadNeedsASecondChargeControl() {
        ChargeController diverting = DIRECT.withFunctions(List.of(ControllerFunction.DIVERSION_CONTROL));
        ChargerNeed asked = twelveVolts().withFunctions(List.of(ControllerFunction.DIVERSION_CONTROL));

        assertThat(ChargerSelection.of(asked, ONE, List.of(diverting), ChargerPolicy.standard())
                        .hazards())
                .extracting(hazard -> hazard.code().code(), Hazard::severity)
                .containsExactly(tuple("secondChargeControl", Severity.WARNING));
        assertThat(ChargerSelection.of(twelveVolts(), ONE, List.of(diverting), ChargerPolicy.standard())
                        .hazards())
                .isEmpty();
        assertThat(ChargerSelection.of(asked, ONE, List.of(), ChargerPolicy.standard())
                        .hazards())
                .isEmpty();
    }

    @Test
    void theRejectedKeepTheOrderOfTheCatalogue() {
        ChargeController tooSmall = DIRECT.withModel("Z").withMaximumInputCurrent(Current.amperes(3));
        ChargeController tooWeak = DIRECT.withModel("B").withOutputCurrent(Current.amperes(3));

        ChargerSelection selection =
                ChargerSelection.of(twelveVolts(), ONE, List.of(tooSmall, DIRECT, tooWeak), ChargerPolicy.standard());

        assertThat(selection.rejected()).extracting(Rejection::product).containsExactly("Z", "B");
    }

    @Test
    void oneControllerWithTwoModulesOfOnePriceIsOrderedByTheModule() {
        ArrayOffer other = offer(TWELVE.withModel("L160"), 24, 20, 0.9, 1);
        List<ChargerFit> fits = List.of(
                ChargerFit.of(twelveVolts(), ONE, DIRECT, ChargerPolicy.standard()),
                ChargerFit.of(twelveVolts(), other, DIRECT, ChargerPolicy.standard()));

        assertThat(ChargerSelection.of(fits).ranked())
                .extracting(fit -> fit.array().product())
                .containsExactly("L160", "M160");
    }

    @Test
    void whereNoneBringsAnythingNothingIsHeldAgainstTheBest() {
        ArrayOffer dark = new ArrayOffer(
                ONE.extremes(), ONE.exactTracking(), 1, ONE.whenNew(), ONE.sunshine(), Energy.ZERO, Energy.ZERO);
        ChargeController thrifty = DIRECT.withSelfConsumption(Power.ZERO);

        // a controller that takes nothing brings 0 kWh, and one that takes 1 W around the clock less
        for (ChargeController controller : List.of(thrifty, DIRECT)) {
            assertThat(ChargerSelection.of(twelveVolts(), dark, List.of(controller), ChargerPolicy.standard())
                            .ranked())
                    .singleElement()
                    .satisfies(fit -> assertThat(fit.energyAgainstBest()).isNull());
        }
    }
}
