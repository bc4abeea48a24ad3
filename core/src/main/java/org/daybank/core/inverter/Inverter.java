package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.load.InverterCurve;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * The data sheet of an inverter that stands on a bank.
 *
 * @param model its code
 * @param kind its family
 * @param nominalVoltage what its bank is called: 12, 24 or 48 V
 * @param lowestInput bank voltage below which it switches off
 * @param highestInput bank voltage that it stands
 * @param waveform what it makes
 * @param power continuous real power at 25 °C
 * @param apparentPower continuous apparent power at 25 °C; left out, the same number as the power
 * @param surge what it gives for a short time
 * @param outputVoltage from line to neutral
 * @param frequencies that it can make
 * @param idle draw when on without load
 * @param peakEfficiency its best
 * @param fullLoadEfficiency at its continuous power
 * @param fullPowerUpTo hottest air at which it gives its continuous power
 * @param derating change of its power for each kelvin above; zero or negative
 * @param phases of the service that one unit gives by itself
 * @param mostInParallel units that may feed the same lines together
 * @param stackedServices services that single-phase units give when they are stacked on several lines: split phase by two
 *     in series, three phase by three
 * @param mostUnits units that may be joined in all
 * @param followerSleep whether all but the first unit of a line sleep until they are needed
 * @param functions what it can do besides
 * @param chargeCurrent into the bank from its AC input; absent when it has no charger
 * @param leastChargeCurrent lowest setting of the charger; absent when it has no setting
 * @param chargerEfficiency of the charger
 * @param chargerPowerFactor real over apparent power that the charger takes
 * @param transferCurrent that its AC input passes on to each line; absent when it has none
 * @param transferTime interruption when the AC input comes or goes; absent when the sheet does not say
 * @param price of one
 */
@RecordBuilder
public record Inverter(
        String model,

        @Assumed(value = "standAlone", source = "no AC input stated")
        InverterKind kind,

        Voltage nominalVoltage,
        Voltage lowestInput,
        Voltage highestInput,
        Waveform waveform,
        Power power,

        @Assumed(source = "equal to power, at unity power factor")
        ApparentPower apparentPower,

        SurgeRating surge,
        Voltage outputVoltage,
        List<Frequency> frequencies,
        Power idle,
        Ratio peakEfficiency,
        Ratio fullLoadEfficiency,

        @Assumed(value = "25 Cel", source = "ratings are commonly given at 25 °C")
        Temperature fullPowerUpTo,

        @Assumed(value = "-1 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Assumed(value = "single", source = "most units make one phase")
        Phases phases,

        @Assumed(value = "1", source = "no stacking stated") Integer mostInParallel,
        @Assumed(source = "none stated") List<Phases> stackedServices,

        @Assumed(value = "48", source = "no limit stated beyond that on each line")
        Integer mostUnits,

        @Assumed(value = "false", source = "no sleep of followers stated")
        Boolean followerSleep,

        @Assumed(source = "none stated") List<InverterFunction> functions,
        @Nullable Current chargeCurrent,
        @Nullable Current leastChargeCurrent,

        @Assumed(value = "0.9", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Assumed(value = "0.95", source = "chargers with power factor correction")
        Ratio chargerPowerFactor,

        @Nullable Current transferCurrent,
        @Nullable TimeSpan transferTime,
        Money price)
        implements InverterBuilder.With {
    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing or the sheet contradicts itself
     */
    public Inverter {
        kind = Defaults.otherwise(kind, Inverter.class, "kind");
        fullPowerUpTo = Defaults.otherwise(fullPowerUpTo, Inverter.class, "fullPowerUpTo");
        derating = Defaults.otherwise(derating, Inverter.class, "derating");
        mostInParallel = Defaults.otherwise(mostInParallel, Inverter.class, "mostInParallel");
        phases = Defaults.otherwise(phases, Inverter.class, "phases");
        stackedServices = List.copyOf(Objects.requireNonNullElse(stackedServices, List.of()));
        mostUnits = Defaults.otherwise(mostUnits, Inverter.class, "mostUnits");
        followerSleep = Defaults.otherwise(followerSleep, Inverter.class, "followerSleep");
        chargerEfficiency = Defaults.otherwise(chargerEfficiency, Inverter.class, "chargerEfficiency");
        chargerPowerFactor = Defaults.otherwise(chargerPowerFactor, Inverter.class, "chargerPowerFactor");
        functions = List.copyOf(Objects.requireNonNullElse(functions, List.of()));
        new Validation()
                .required("model", model)
                .required("nominalVoltage", nominalVoltage)
                .within("nominalVoltage", nominalVoltage, Voltage.volts(12), Voltage.volts(48))
                .required("lowestInput", lowestInput)
                .required("highestInput", highestInput)
                .that(
                        lowestInput == null || highestInput == null || lowestInput.compareTo(highestInput) < 0,
                        "highestInput",
                        ProblemCode.INCONSISTENT,
                        "highestInput must be above lowestInput %s, but was %s.".formatted(lowestInput, highestInput))
                .that(
                        lowestInput == null || nominalVoltage == null || lowestInput.compareTo(nominalVoltage) < 0,
                        "lowestInput",
                        ProblemCode.INCONSISTENT,
                        "lowestInput must be below nominalVoltage %s, but was %s."
                                .formatted(nominalVoltage, lowestInput))
                .required("waveform", waveform)
                .required("power", power)
                .above("power", power, Power.ZERO)
                .required("surge", surge)
                .required("outputVoltage", outputVoltage)
                .notEmpty("frequencies", frequencies)
                .required("idle", idle)
                .atLeast("idle", idle, Power.ZERO)
                .required("peakEfficiency", peakEfficiency)
                .within("peakEfficiency", peakEfficiency, Ratio.of(0.5), Ratio.of(0.999))
                .required("fullLoadEfficiency", fullLoadEfficiency)
                .within("fullLoadEfficiency", fullLoadEfficiency, Ratio.of(0.5), Ratio.of(0.999))
                .that(
                        peakEfficiency == null
                                || fullLoadEfficiency == null
                                || fullLoadEfficiency.compareTo(peakEfficiency) <= 0,
                        "fullLoadEfficiency",
                        ProblemCode.INCONSISTENT,
                        "fullLoadEfficiency %s must not be above peakEfficiency %s"
                                .formatted(fullLoadEfficiency, peakEfficiency))
                .within("fullPowerUpTo", fullPowerUpTo, Temperature.celsius(0), Temperature.celsius(80))
                .atMost("derating", derating, TemperatureCoefficient.ZERO)
                .within("mostInParallel", mostInParallel, 1, 16)
                .that(
                        phases == Phases.SINGLE || stackedServices.isEmpty(),
                        "stackedServices",
                        ProblemCode.INCONSISTENT,
                        "stackedServices must be empty where one unit gives several lines by itself")
                .that(
                        !stackedServices.contains(Phases.SINGLE),
                        "stackedServices",
                        ProblemCode.INCONSISTENT,
                        "stackedServices takes split and three; how many feed one line is said by mostInParallel")
                .within("mostUnits", mostUnits, 1, 48)
                .above("chargeCurrent", chargeCurrent, Current.ZERO)
                .above("leastChargeCurrent", leastChargeCurrent, Current.ZERO)
                .that(
                        leastChargeCurrent == null
                                || (chargeCurrent != null && leastChargeCurrent.compareTo(chargeCurrent) <= 0),
                        "leastChargeCurrent",
                        ProblemCode.INCONSISTENT,
                        () -> "leastChargeCurrent must be at most chargeCurrent, which is %s,, but was %s."
                                .formatted(chargeCurrent == null ? "absent" : chargeCurrent, leastChargeCurrent))
                .within("chargerEfficiency", chargerEfficiency, Ratio.of(0.5), Ratio.ONE)
                .within("chargerPowerFactor", chargerPowerFactor, Ratio.of(0.3), Ratio.ONE)
                .above("transferCurrent", transferCurrent, Current.ZERO)
                .atLeast("transferTime", transferTime, TimeSpan.ZERO)
                .required("price", price)
                .done();
        frequencies = List.copyOf(frequencies);
        apparentPower = apparentPower == null ? ApparentPower.voltAmperes(power.watts()) : apparentPower;
        // refuses an idle draw that does not go with the efficiencies
        InverterCurve.fit(power, idle, peakEfficiency, fullLoadEfficiency);
    }

    /** What one draws from the bank for what it gives. */
    public InverterCurve curve() {
        return InverterCurve.fit(power, idle, peakEfficiency, fullLoadEfficiency);
    }

    /** Share of its continuous power that it gives in air this hot. */
    public Ratio heatFactor(Temperature air) {
        TemperatureDifference above =
                air.compareTo(fullPowerUpTo) > 0 ? air.minus(fullPowerUpTo) : TemperatureDifference.ZERO;
        return Ratio.of(Math.max(0, 1 + derating.times(above).fraction()));
    }
}
