package org.daybank.core.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.junit.jupiter.api.Test;

/** Inputs about engine generators: no absurd value is accepted, and no contradiction. */
class GeneratorInputsTest {
    private static final GeneratorNeed NEED = Needs.uphill();

    private static void refused(ThrowingCallable construction, String path, ProblemCode code) {
        assertThatThrownBy(construction)
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .extracting(Problem::path, Problem::code)
                                .containsExactly(tuple(path, code)));
    }

    private static void outOfRange(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.OUT_OF_RANGE);
    }

    private static void inconsistent(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.INCONSISTENT);
    }

    @Test
    void noNeedIsAbsurd() {
        outOfRange(() -> NEED.withChargingVoltage(Voltage.volts(1e12)), "/chargingVoltage");
        outOfRange(() -> NEED.withChargingVoltage(Voltage.volts(5)), "/chargingVoltage");
        outOfRange(() -> NEED.withMaximumChargeCurrent(Current.amperes(-5)), "/maximumChargeCurrent");
        outOfRange(() -> NEED.withElevation(Length.metres(1e308)), "/elevation");
        outOfRange(() -> NEED.withChargerInput(Power.watts(1e300)), "/chargerInput");
        // 250 W of mean loads are part of the concurrent ones
        inconsistent(() -> NEED.withConcurrentLoads(Power.watts(249)), "/meanLoads");
        outOfRange(() -> NEED.withMonthlyShortfall(Collections.nCopies(11, Energy.ZERO)), "/monthlyShortfall");
        List<Energy> months = new ArrayList<>(Objects.requireNonNull(NEED.monthlyShortfall()));
        months.set(3, Energy.wattHours(-1));
        outOfRange(() -> NEED.withMonthlyShortfall(months), "/monthlyShortfall/3");
        List<Energy> gap = new ArrayList<>(months);
        gap.set(3, null);
        refused(() -> NEED.withMonthlyShortfall(gap), "/monthlyShortfall/3", ProblemCode.MISSING);
    }

    @Test
    void noPolicyIsAbsurd() {
        GeneratorPolicy standard = GeneratorPolicy.standard();
        assertThat(standard.withServiceLife(null)).isEqualTo(standard);
        outOfRange(() -> standard.withFuelPricePerLitre(Money.of("-0.01", "EUR")), "/fuelPricePerLitre");
        outOfRange(() -> standard.withPricePerKilowatt(Money.of("99999999999", "EUR")), "/pricePerKilowatt");
        refused(() -> standard.withPricePerKilowatt(Money.of("600", "USD")), "/pricePerKilowatt", ProblemCode.CONFLICT);
        inconsistent(
                () -> standard.withLeastLoadShare(Ratio.of(0.5)).withMostLoadShare(Ratio.of(0.5)), "/mostLoadShare");
        inconsistent(() -> standard.withStartBelow(Ratio.of(0.8)), "/stopAbove");
    }

    @Test
    void noModulesAreAbsurd() {
        outOfRange(
                () -> new MoreModules(Money.of("-1", "EUR"), Energy.kilowattHours(20), null, null), "/pricePerModule");
        outOfRange(() -> new MoreModules(Money.of("100", "EUR"), Energy.ZERO, null, null), "/moduleYield");
        outOfRange(
                () -> new MoreModules(Money.of("100", "EUR"), Energy.kilowattHours(1e9), null, null), "/moduleYield");
    }
}
