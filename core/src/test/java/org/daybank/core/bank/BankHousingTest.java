package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BankHousingTest {
    private static final Temperature COLDEST_MONTH = Temperature.celsius(-6.1);
    private static final Temperature RECORD_LOW = Temperature.celsius(-29);

    @ParameterizedTest
    @CsvSource({
        // half way: −6.1 − 22.9 / 2 = −17.55
        "0.5, -17.55",
        "0, -6.1",
        "1, -29"
    })
    void outdoorsAColdSpellLiesBetweenTheColdestMonthAndTheRecordLow(double spell, double celsius) {
        assertThat(BankHousing.standard()
                        .lowest(COLDEST_MONTH, RECORD_LOW, Ratio.of(spell))
                        .celsius())
                .isCloseTo(celsius, within(1e-9));
    }

    @Test
    void indoorsTheRoomDecides() {
        BankHousing cellar = new BankHousing(BankLocation.INDOORS, Temperature.celsius(8), null, null);

        assertThat(cellar.lowest(COLDEST_MONTH, RECORD_LOW, Ratio.of(0.5))).isEqualTo(Temperature.celsius(8));
        // a moderately heated room unless said
        assertThat(new BankHousing(BankLocation.INDOORS, null, null, null)
                        .lowest(COLDEST_MONTH, RECORD_LOW, Ratio.of(0.5)))
                .isEqualTo(Temperature.celsius(15));
    }

    @Test
    void aRoomGetsNoColderThanItsLowest() {
        BankHousing cellar = new BankHousing(BankLocation.INDOORS, Temperature.celsius(8), null, null);

        assertThat(cellar.around(Temperature.celsius(-3))).isEqualTo(Temperature.celsius(8));
        assertThat(cellar.around(Temperature.celsius(17))).isEqualTo(Temperature.celsius(17));
        assertThat(BankHousing.standard().around(Temperature.celsius(-3))).isEqualTo(Temperature.celsius(-3));
    }

    @Test
    void outdoorsIsTheSafeGuess() {
        assertThat(new BankHousing(null, null, null, null)).isEqualTo(BankHousing.standard());
        assertThat(BankHousing.standard().location()).isEqualTo(BankLocation.OUTDOORS);
    }

    @Test
    void everythingOutOfRangeIsToldAtOnce() {
        assertThatThrownBy(() -> new BankHousing(
                        null, Temperature.celsius(40), ThermalConductance.wattsPerKelvin(60), Temperature.celsius(-1)))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(problem -> problem.path())
                                .containsExactly("/indoorLowest", "/heatLoss", "/heaterSetPoint"));
    }
}
