package org.daybank.core.inverter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Inputs about inverters: what was left out follows the other components, and no absurd value is accepted. */
class InverterInputsTest {
    private static final Inverter INVERTER = InverterSheets.STACKABLE;
    private static final InverterNeed NEED = InverterSheets.NEED;
    private static final InverterNeed DETAILED = NEED.withHourlyPeaks(Collections.nCopies(24, Power.watts(300)))
            .withSineLoads(List.of("clock"))
            .withFunctions(List.of(InverterFunction.ASSIST));
    private static final InverterNeed EVENINGS =
            NEED.withHourlyPeaks(Collections.nCopies(24, Power.watts(200))).withSineLoads(List.of("radio"));
    private static final GridArray ARRAY = GridSheets.array(20);
    private static final GridArray WALL = new GridArray(GridSheets.EXTREMES, 12, Ratio.of(0.85), GridSheets.WALL);
    private static final AcSource SOURCE = AcSourceBuilder.builder()
            .current(Current.amperes(16))
            .chargingCurrent(Current.amperes(30))
            .maximumChargeCurrent(Current.amperes(50))
            .build();

    /** Refused for one reason, on one component. */
    private static void refused(ThrowingCallable construction, String path, ProblemCode code) {
        AbstractThrowableAssert<?, ?> thrown = Assertions.assertThatThrownBy(construction);
        thrown.isInstanceOfSatisfying(
                InvalidInput.class,
                invalid -> assertThat(invalid.problems())
                        .extracting(Problem::path, Problem::code)
                        .containsExactly(tuple(path, code)));
    }

    private static List<Power> withGap(@Nullable List<Power> powers) {
        List<Power> gap = new ArrayList<>(Objects.requireNonNull(powers));
        gap.set(0, null);
        return gap;
    }

    private static void outOfRange(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.OUT_OF_RANGE);
    }

    private static void inconsistent(ThrowingCallable construction, String path) {
        refused(construction, path, ProblemCode.INCONSISTENT);
    }

    @Test
    void theHighestBankVoltageFollowsTheNominalOne() {
        InverterNeed small = InverterNeedBuilder.builder()
                .peak(InverterSheets.peak(1200, 1500, 2400, 4000))
                .nominalVoltage(Voltage.volts(12))
                .build();

        assertThat(small.highestBankVoltage()).isNull();
        // 12 V · 1.25 = 15 V; 48 V · 1.25 = 60 V
        assertThat(small.resolved().highestBankVoltage()).isEqualTo(Voltage.volts(15));
        InverterNeed large = small.withNominalVoltage(Voltage.volts(48));
        assertThat(large.resolved().highestBankVoltage()).isEqualTo(Voltage.volts(60));
        Check check = InverterFit.of(large, INVERTER, InverterPolicy.standard()).checks().stream()
                .filter(each -> each.rule() == InverterRule.HIGHEST_BANK_VOLTAGE)
                .findFirst()
                .orElseThrow();
        assertThat(check.message()).contains("60 V");
        // a voltage that was given stays
        assertThat(small.withHighestBankVoltage(Voltage.volts(14.6))
                        .withStartDuration(TimeSpan.seconds(1))
                        .resolved()
                        .highestBankVoltage())
                .isEqualTo(Voltage.volts(14.6));
    }

    @Test
    void apparentPowerFollowsPower() {
        Inverter unity = INVERTER.withApparentPower(null);

        assertThat(unity.apparentPower()).isNull();
        assertThat(unity.resolved().apparentPower()).isEqualTo(ApparentPower.voltAmperes(2000));
        assertThat(unity.withPower(Power.watts(3000)).resolved().apparentPower())
                .isEqualTo(ApparentPower.voltAmperes(3000));
        assertThat(INVERTER.withPower(Power.watts(1500)).resolved().apparentPower())
                .isEqualTo(ApparentPower.voltAmperes(2500));
    }

    @Test
    void shortCircuitCurrentFollowsInputCurrent() {
        StringInverter string = GridSheets.STRING.withMaximumShortCircuitCurrent(null);
        Microinverter micro = GridSheets.MICRO.withMaximumShortCircuitCurrent(null);

        assertThat(string.maximumShortCircuitCurrent()).isNull();
        assertThat(micro.maximumShortCircuitCurrent()).isNull();
        // 22 A · 1.25 = 27.5 A, 40 A · 1.25 = 50 A; 12 A · 1.25 = 15 A, 16 A · 1.25 = 20 A
        assertThat(string.resolved().maximumShortCircuitCurrent()).isEqualTo(Current.amperes(27.5));
        assertThat(string.withMaximumInputCurrent(Current.amperes(40))
                        .resolved()
                        .maximumShortCircuitCurrent())
                .isEqualTo(Current.amperes(50));
        assertThat(micro.resolved().maximumShortCircuitCurrent()).isEqualTo(Current.amperes(15));
        assertThat(micro.withMaximumInputCurrent(Current.amperes(16)).resolved().maximumShortCircuitCurrent())
                .isEqualTo(Current.amperes(20));
    }

    @Test
    void noNeedIsAbsurd() {
        outOfRange(() -> NEED.withElevation(Length.metres(1e308)), "/elevation");
        outOfRange(() -> NEED.withElevation(Length.metres(-501)), "/elevation");
        outOfRange(() -> NEED.withStartDuration(TimeSpan.hours(1000)), "/startDuration");
        outOfRange(() -> NEED.withHighestBankVoltage(Voltage.volts(1e12)), "/highestBankVoltage");
        refused(() -> DETAILED.withHourlyPeaks(withGap(EVENINGS.hourlyPeaks())), "/hourlyPeaks/0", ProblemCode.MISSING);
        inconsistent(() -> NEED.withHighestBankVoltage(Voltage.volts(47)), "/highestBankVoltage");
        outOfRange(() -> NEED.withNominalVoltage(Voltage.volts(49)), "/nominalVoltage");
        outOfRange(() -> NEED.withBankCurrentLimit(Current.amperes(-5)), "/bankCurrentLimit");
        outOfRange(() -> NEED.withHottestAir(Temperature.celsius(81)), "/hottestAir");
        outOfRange(() -> NEED.withHourlyPeaks(Collections.nCopies(23, Power.ZERO)), "/hourlyPeaks");
        outOfRange(() -> NEED.withHourlyPeaks(Collections.nCopies(25, Power.ZERO)), "/hourlyPeaks");
        refused(
                () -> NEED.withFunctions(Arrays.asList(InverterFunction.ASSIST, null)),
                "/functions/1",
                ProblemCode.MISSING);
        refused(() -> NEED.withSineLoads(Arrays.asList("clock", null)), "/sineLoads/1", ProblemCode.MISSING);
        assertThatCode(() -> NEED.withElevation(Length.metres(9000)).withHighestBankVoltage(Voltage.volts(48)))
                .doesNotThrowAnyException();
    }

    @Test
    void noAcSourceIsAbsurd() {
        outOfRange(() -> SOURCE.withCurrent(Current.amperes(-5)), "/current");
        outOfRange(() -> SOURCE.withLongestTransfer(TimeSpan.hours(1000)), "/longestTransfer");
        inconsistent(() -> SOURCE.withChargingCurrent(Current.amperes(51)), "/chargingCurrent");
        outOfRange(() -> SOURCE.withMaximumChargeCurrent(Current.amperes(1e9)), "/maximumChargeCurrent");
        assertThatCode(() -> SOURCE.withChargingCurrent(Current.amperes(50))).doesNotThrowAnyException();
    }

    @Test
    void noServiceIsAbsurd() {
        outOfRange(() -> InverterSheets.service(1e4, Phases.SINGLE), "/voltage");
        outOfRange(() -> new Service(null, Frequency.hertz(400), null), "/frequency");
        outOfRange(() -> new GridService(null, Temperature.celsius(500)), "/hottestAir");
    }

    @Test
    void noDataSheetIsAbsurd() {
        outOfRange(() -> INVERTER.withPrice(Money.of("-1", "EUR")), "/price");
        outOfRange(() -> INVERTER.withOutputVoltage(Voltage.volts(10_000)), "/outputVoltage");
        outOfRange(() -> INVERTER.withTransferTime(TimeSpan.hours(1000)), "/transferTime");
        outOfRange(() -> INVERTER.withTransferCurrent(Current.amperes(-5)), "/transferCurrent");
        outOfRange(() -> INVERTER.withDerating(TemperatureCoefficient.percentPerKelvin(1)), "/derating");
        outOfRange(() -> INVERTER.withHighestInput(Voltage.volts(1e12)), "/highestInput");
        inconsistent(() -> INVERTER.withHighestInput(Voltage.volts(45)), "/highestInput");
        inconsistent(() -> INVERTER.withApparentPower(ApparentPower.voltAmperes(1999)), "/apparentPower");
        inconsistent(() -> INVERTER.withFullLoadEfficiency(Ratio.of(0.95)), "/fullLoadEfficiency");
        inconsistent(() -> INVERTER.withChargeCurrent(Current.amperes(4)), "/leastChargeCurrent");
        refused(() -> INVERTER.withFrequencies(List.of()), "/frequencies", ProblemCode.MISSING);
        refused(() -> INVERTER.withFrequencies(Collections.singletonList(null)), "/frequencies/0", ProblemCode.MISSING);
        refused(
                () -> INVERTER.withStackedServices(Arrays.asList(Phases.SPLIT, null)),
                "/stackedServices/1",
                ProblemCode.MISSING);
        assertThatCode(() -> INVERTER.withPrice(Money.of("0", "JPY"))).doesNotThrowAnyException();
    }

    @Test
    void noSurgeIsAbsurd() {
        outOfRange(() -> new SurgeRating.Point(TimeSpan.hours(1000), ApparentPower.voltAmperes(6000)), "/duration");
        outOfRange(() -> new SurgeRating.Point(TimeSpan.seconds(5), ApparentPower.ZERO), "/power");
        refused(() -> new SurgeRating(Collections.singletonList(null)), "/points/0", ProblemCode.MISSING);
    }

    @Test
    void aPolicyTakesTheDefaultOfWhatIsLeftOut() {
        assertThat(GridPolicy.standard().withDcAcRatio(null)).isEqualTo(GridPolicy.standard());
        assertThat(InverterPolicy.standard().withMargin(null)).isEqualTo(InverterPolicy.standard());
    }

    @Test
    void noGridInverterIsAbsurd() {
        StringInverter string = GridSheets.STRING;
        Microinverter micro = GridSheets.MICRO;

        outOfRange(() -> string.withPrice(Money.of("-1", "EUR")), "/price");
        outOfRange(() -> string.withMaximumInputVoltage(Voltage.volts(1501)), "/maximumInputVoltage");
        outOfRange(() -> string.withMaximumArrayPower(Power.watts(1e12)), "/maximumArrayPower");
        outOfRange(() -> string.withMaximumInputCurrent(Current.amperes(-5)), "/maximumInputCurrent");
        inconsistent(() -> string.withMaximumShortCircuitCurrent(Current.amperes(21)), "/maximumShortCircuitCurrent");
        inconsistent(() -> string.withTrackingHighest(Voltage.volts(160)), "/trackingHighest");
        inconsistent(() -> string.withMaximumInputVoltage(Voltage.volts(799)), "/trackingHighest");
        refused(() -> string.withFrequencies(Collections.singletonList(null)), "/frequencies/0", ProblemCode.MISSING);
        outOfRange(() -> micro.withMaximumModulePower(Power.watts(1e6)), "/maximumModulePower");
        outOfRange(() -> micro.withMostOnBranch(0), "/mostOnBranch");
        inconsistent(() -> micro.withTrackingLowest(Voltage.volts(50)), "/trackingHighest");
        outOfRange(() -> GridSheets.array(10_001), "/modules");
        outOfRange(() -> new GridArray(ARRAY.extremes(), ARRAY.modules(), Ratio.ZERO, WALL.sunshine()), "/whenNew");
        outOfRange(() -> new GridArray(GridSheets.EXTREMES, 1, Ratio.of(1.1), GridSheets.SUNSHINE), "/whenNew");
        inconsistent(() -> GridPolicy.standard().withDcAcRatio(Ratio.of(1.5)), "/dcAcRatio");
    }
}
