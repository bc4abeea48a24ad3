package org.daybank.core.inverter;

import java.util.List;
import java.util.Objects;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.jspecify.annotations.Nullable;

/** An inverter/charger and a need with round figures. */
final class InverterSheets {
    /** 2000 W, 2500 VA, 5000 VA for 5 s; up to four on a line, nine in all, on one, two or three lines. */
    static final Inverter STACKABLE = InverterBuilder.builder()
            .model("C2000")
            .kind(InverterKind.INVERTER_CHARGER)
            .nominalVoltage(Voltage.volts(48))
            .lowestInput(Voltage.volts(42))
            .highestInput(Voltage.volts(64))
            .waveform(Waveform.SINE)
            .power(Power.watts(2000))
            .apparentPower(ApparentPower.voltAmperes(2500))
            .surge(SurgeRating.parse("5 s: 5000 VA"))
            .outputVoltage(Voltage.volts(230))
            .frequencies(List.of(Frequency.hertz(50)))
            .idle(Power.watts(10))
            .peakEfficiency(Ratio.of(0.94))
            .fullLoadEfficiency(Ratio.of(0.9))
            .mostInParallel(4)
            .stackedServices(List.of(Phases.SPLIT, Phases.THREE))
            .mostUnits(9)
            .followerSleep(true)
            .functions(List.of(InverterFunction.AC_INPUT, InverterFunction.CHARGER, InverterFunction.ASSIST))
            .chargeCurrent(Current.amperes(35))
            .leastChargeCurrent(Current.amperes(5))
            .chargerEfficiency(Ratio.of(0.9))
            .chargerPowerFactor(Ratio.of(0.96))
            .transferCurrent(Current.amperes(20))
            .transferTime(TimeSpan.seconds(0.016))
            .price(Money.of("1000", "EUR"))
            .build();

    static final InverterNeed NEED = InverterNeedBuilder.builder()
            .peak(peak(1200, 1500, 2400, 4000))
            .nominalVoltage(Voltage.volts(48))
            .highestBankVoltage(Voltage.volts(60))
            .hottestAir(Temperature.celsius(25))
            .build();

    private InverterSheets() {}

    static PeakLoad peak(double watts, double voltAmperes, double surgeWatts, double surgeVoltAmperes) {
        return new PeakLoad(
                Power.watts(watts),
                ApparentPower.voltAmperes(voltAmperes),
                Power.watts(surgeWatts),
                ApparentPower.voltAmperes(surgeVoltAmperes));
    }

    static Service service(double volts, Phases phases) {
        return new Service(Voltage.volts(volts), Frequency.hertz(50), phases);
    }

    static @Nullable Check check(List<Check> checks, String rule) {
        return checks.stream()
                .filter(limit -> limit.rule().code().equals(rule))
                .findFirst()
                .orElse(null);
    }

    static double margin(List<Check> checks, String rule) {
        return Objects.requireNonNull(check(checks, rule))
                .margin()
                .orElseThrow()
                .fraction();
    }

    static List<String> broken(List<Check> checks) {
        return checks.stream()
                .filter(check -> !check.passed())
                .map(check -> check.rule().code())
                .toList();
    }
}
