package org.daybank.core.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.daybank.core.quantity.QuantityFormatException;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class RatioByFamilyTest {
    @Test
    void readsOneForEachFamily() {
        RatioByFamily depth = RatioByFamily.parse(" leadAcid 50 %, lithium 0.8 ");

        assertThat(depth.of(BatteryFamily.LEAD_ACID)).isEqualTo(Ratio.of(0.5));
        assertThat(depth.of(BatteryFamily.LITHIUM)).isEqualTo(Ratio.of(0.8));
        assertThat(RatioByFamily.parse(depth.toString())).isEqualTo(depth);
    }

    @Test
    void readsOneForBothFamilies() {
        assertThat(RatioByFamily.parse("0.7")).isEqualTo(RatioByFamily.both(Ratio.of(0.7)));
    }

    @Test
    void refusesWhatIsNeither() {
        assertThatThrownBy(() -> RatioByFamily.parse("lithium 0.8")).isInstanceOf(QuantityFormatException.class);
        assertThatThrownBy(() -> new RatioByFamily(null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("leadAcid is required. lithium is required.");
    }

    @Test
    void aPolicyHoldsEachFamilyToTheRange() {
        assertThatThrownBy(() ->
                        BankPolicy.standard().withDepthOfDischarge(new RatioByFamily(Ratio.of(0.01), Ratio.of(1.2))))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("depthOfDischarge/leadAcid must be from 0.05 to 1, but was 0.01. "
                        + "depthOfDischarge/lithium must be from 0.05 to 1, but was 1.2.");
    }
}
