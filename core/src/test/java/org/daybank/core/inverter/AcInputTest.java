package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.inverter.InverterSheets.NEED;
import static org.daybank.core.inverter.InverterSheets.STACKABLE;
import static org.daybank.core.inverter.InverterSheets.broken;
import static org.daybank.core.inverter.InverterSheets.margin;
import static org.daybank.core.inverter.InverterSheets.peak;

import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** What is wished of shore power or a generator, each rule broken once. */
class AcInputTest {
    private static final InverterPolicy POLICY = InverterPolicy.standard();

    private static final AcSource SOURCE = AcSourceBuilder.builder()
            .current(Current.amperes(16))
            .chargingCurrent(Current.amperes(30))
            .maximumChargeCurrent(Current.amperes(40))
            .longestTransfer(TimeSpan.seconds(0.02))
            .build();

    @Test
    void fitsWithItsMargins() {
        InverterFit fit = fit(NEED.withAcSource(SOURCE), STACKABLE);

        assertThat(broken(fit.checks())).isEmpty();
        // 1500 VA / 230 V = 6.52174 A of 20 A
        assertThat(margin(fit.checks(), "transferCurrent")).isCloseTo(1 - 1500 / 230.0 / 20, within(1e-12));
        // 35 A of 30 A asked; set to 5 A of 40 A that the bank takes
        assertThat(margin(fit.checks(), "chargingCurrent")).isCloseTo(5 / 30.0, within(1e-12));
        assertThat(margin(fit.checks(), "bankChargeCurrent")).isCloseTo(35 / 40.0, within(1e-12));
        assertThat(fit.chargingCurrent()).isEqualTo(Current.amperes(35));
        // 35 A · 60 V / 0.9 / 0.96 = 2430.56 VA
        assertThat(Objects.requireNonNull(fit.chargerInput()).voltAmperes())
                .isCloseTo(35 * 60 / 0.9 / 0.96, within(1e-9));
    }

    @Test
    void withoutSourceNothingIsJudged() {
        InverterFit fit = fit(NEED, STACKABLE);
        assertThat(fit.chargingCurrent()).isNull();
        assertThat(fit.chargerInput()).isNull();
        assertThat(fit.checks()).noneMatch(limit -> limit.rule().code().equals("transferCurrent"));
    }

    @Test
    void transfer() {
        // 6.52 A through 6 A
        assertBroken(SOURCE, STACKABLE.withTransferCurrent(Current.amperes(6)), "transferCurrent");
        assertBroken(SOURCE, STACKABLE.withTransferCurrent(null), "transferCurrent");
        assertBroken(SOURCE.withLongestTransfer(TimeSpan.seconds(0.015)), STACKABLE, "transferTime");
        assertBroken(SOURCE, STACKABLE.withTransferTime(null), "transferTime");
        assertThat(broken(fit(NEED.withAcSource(SOURCE.withLongestTransfer(null)), STACKABLE.withTransferTime(null))
                        .checks()))
                .isEmpty();
    }

    @Test
    void charging() {
        assertBroken(SOURCE.withChargingCurrent(Current.amperes(36)), STACKABLE, "chargingCurrent");
        assertBroken(SOURCE, STACKABLE.withLeastChargeCurrent(null).withChargeCurrent(null), "chargingCurrent");
        // without a setting 35 A are too much for 32 A; with one it is turned down to what the bank takes
        AcSource small = SOURCE.withMaximumChargeCurrent(Current.amperes(32));
        assertBroken(small, STACKABLE.withLeastChargeCurrent(null), "bankChargeCurrent");
        assertThat(fit(NEED.withAcSource(small), STACKABLE).chargingCurrent()).isEqualTo(Current.amperes(32));
        // a bank that takes whatever comes is charged with all that the charger gives, and no rule speaks of it
        InverterFit all = fit(NEED.withAcSource(SOURCE.withMaximumChargeCurrent(null)), STACKABLE);
        assertThat(all.chargingCurrent()).isEqualTo(Current.amperes(35));
        assertThat(InverterSheets.check(all.checks(), "bankChargeCurrent")).isNull();
    }

    @Test
    void aWeakSourceTakesAnInverterThatAssists() {
        // 4 A · 230 V = 920 W; of 1200 W and √(1500² − 1200²) = 900 var remain 280 W and 900 var of the inverter's 2500
        // VA
        AcSource weak = SOURCE.withCurrent(Current.amperes(4));
        InverterFit fit = fit(NEED.withAcSource(weak), STACKABLE);
        assertThat(broken(fit.checks())).isEmpty();
        assertThat(margin(fit.checks(), "sourcePeak")).isCloseTo(1 - Math.hypot(280, 900) / 2500, within(1e-12));
        assertBroken(weak, STACKABLE.withFunctions(List.of(InverterFunction.CHARGER)), "sourcePeak");
    }

    @Test
    void peaksThatFallOnlyWhileTheSourceIsThere() {
        // 3000 W · 1.25 = 3750 W take two units; 10 A · 230 V = 2300 W from the source leave 1450 W for one
        InverterNeed need = NEED.withPeak(peak(3000, 3000, 3000, 3000));
        AcSource source = SOURCE.withCurrent(Current.amperes(10));
        assertThat(fit(need.withAcSource(source), STACKABLE).count()).isEqualTo(2);

        InverterFit one = fit(need.withAcSource(source.withCoversPeaks(true)), STACKABLE);
        assertThat(one.count()).isEqualTo(1);
        assertThat(broken(one.checks())).isEmpty();
        assertThat(margin(one.checks(), "continuousPower")).isCloseTo(1 - 1450 / 2000.0, within(1e-12));
        // at a power factor of 0.75 the source gives no reactive power: 1450 W and √(4000² − 3000²) · 1.25 = 3307 var
        InverterFit vars =
                fit(need.withPeak(peak(3000, 4000, 3000, 4000)).withAcSource(source.withCoversPeaks(true)), STACKABLE);
        assertThat(vars.count()).isEqualTo(2);
        assertThat(margin(vars.checks(), "continuousApparentPower"))
                .isCloseTo(1 - Math.hypot(1450, Math.sqrt(7e6) * 1.25) / 5000, within(1e-12));
        // one that cannot add its power to the source's carries everything by itself
        assertThat(fit(need.withAcSource(source.withCoversPeaks(true)), STACKABLE.withFunctions(List.of()))
                        .count())
                .isEqualTo(2);
    }

    @Test
    void wishesThatContradictThemselves() {
        assertThatThrownBy(() -> SOURCE.withCurrent(null).withCoversPeaks(true))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("current must be given where coversPeaks is true, but was left out.");
        assertThat(AcSourceBuilder.builder().build().coversPeaks()).isFalse();
        assertThatThrownBy(() -> SOURCE.withChargingCurrent(Current.amperes(50)))
                .hasMessage("chargingCurrent must be at most maximumChargeCurrent 40 A, but was 50 A.");
        assertThat(SOURCE.withChargingCurrent(Current.amperes(40)).chargingCurrent())
                .isEqualTo(Current.amperes(40));
        assertThatThrownBy(() -> STACKABLE.withLeastChargeCurrent(Current.amperes(36)))
                .hasMessage("leastChargeCurrent must be at most chargeCurrent 35 A, but was 36 A.");
        assertThat(STACKABLE.withLeastChargeCurrent(Current.amperes(35)).leastChargeCurrent())
                .isEqualTo(Current.amperes(35));
        assertThatThrownBy(() -> STACKABLE.withChargeCurrent(null))
                .hasMessage("leastChargeCurrent must be left out where chargeCurrent is left out.");
    }

    private static InverterFit fit(InverterNeed need, Inverter inverter) {
        return InverterFit.of(need, inverter, POLICY);
    }

    private static void assertBroken(AcSource source, Inverter inverter, String rule) {
        assertThat(broken(fit(NEED.withAcSource(source), inverter).checks())).containsExactly(rule);
    }
}
