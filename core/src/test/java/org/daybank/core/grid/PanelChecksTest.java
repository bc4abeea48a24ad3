package org.daybank.core.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Check;
import org.daybank.core.working.Severity;
import org.junit.jupiter.api.Test;

class PanelChecksTest {
    /** A main of 100 A and an inverter of 32 A, which counts as 32 · 1.25 = 40 A: 140 A together. */
    private static BusbarCheck busbar(double rating) {
        return BusbarCheck.of(
                new Busbar(Current.amperes(rating), Current.amperes(100), Current.amperes(32)),
                BusbarPolicy.standard());
    }

    @Test
    void aBusbarThatTakesBothNeedsNoHazard() {
        BusbarCheck check = busbar(140);

        assertThat(check.together()).isEqualTo(Current.amperes(140));
        assertThat(check.anyPosition()).isTrue();
        assertThat(check.hazards()).isEmpty();
    }

    @Test
    void upToAFifthMoreFromOppositeEnds() {
        // 125 A · 1.2 = 150 A; 10 A of 150 A are left
        BusbarCheck check = busbar(125);

        assertThat(check.check().passed()).isTrue();
        assertThat(check.check().limit()).contains(Current.amperes(150));
        assertThat(check.check().message()).asString().contains("100 A", "40 A", "140 A", "125 A", "150 A");
        assertThat(check.hazards())
                .singleElement()
                .satisfies(hazard -> assertThat(hazard.severity()).isEqualTo(Severity.WARNING));
    }

    @Test
    void beyondThatItIsDangerous() {
        // 100 A · 1.2 = 120 A
        BusbarCheck check = busbar(100);

        assertThat(check.check().passed()).isFalse();
        assertThat(check.hazards()).singleElement().satisfies(hazard -> {
            assertThat(hazard.severity()).isEqualTo(Severity.DANGER);
            assertThat(hazard.action()).contains("smaller main");
        });
    }

    private static Coupling coupling(double gridKilowatts, double loadWatts) {
        return new Coupling(
                Power.kilowatts(gridKilowatts), Power.kilowatts(5), Power.kilowatts(4), Power.watts(loadWatts));
    }

    @Test
    void aGridInverterAsLargeAsTheMultimodeOneFits() {
        // 5 kW on 5 kW; 5 − 1 = 4 kW, which the bank just takes
        CouplingCheck check = CouplingCheck.of(coupling(5, 1000));

        assertThat(check.surplus()).isEqualTo(Power.kilowatts(4));
        assertThat(check.checks()).allMatch(Check::passed);
        assertThat(check.hazards()).isEmpty();
    }

    @Test
    void aLargerOneBreaksBothRules() {
        CouplingCheck check = CouplingCheck.of(coupling(6, 1000));

        assertThat(check.hazards()).extracting(hazard -> hazard.code().code()).containsExactly("coupling", "coupling");
    }

    @Test
    void loadsOverItsPowerLeaveNoSurplus() {
        assertThat(CouplingCheck.of(coupling(2, 3000)).surplus()).isEqualTo(Power.ZERO);
    }

    @Test
    void refusesWhatIsNoPanel() {
        assertThatThrownBy(() -> new Busbar(null, Current.ZERO, Current.amperes(10)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("rating is required. main must be above 0 A, but was 0 A.");
        assertThatThrownBy(() -> new Coupling(null, Power.ZERO, Power.watts(-1), null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("gridInverterPower is required. multimodePower must be above 0 W, but was 0 W. "
                        + "bankAccepts must be from 0 W to 100 MW, but was -1 W.");
        assertThatThrownBy(() -> coupling(5, -1))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("leastLoad must be from 0 W to 100 MW, but was -1 W.");
    }
}
