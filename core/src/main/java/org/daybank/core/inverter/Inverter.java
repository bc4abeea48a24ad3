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
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
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

        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

        @Bounds(minimum = "5 V", maximum = "60 V") Voltage lowestInput,

        @Bounds(minimum = "10 V", maximum = "100 V") Voltage highestInput,

        Waveform waveform,

        @Bounds(exclusiveMinimum = "0 W", maximum = "1000 kW", sensible = "100 W to 20 kW")
        Power power,

        @Bounds(exclusiveMinimum = "0 VA", maximum = "2000 kVA")
        @Assumed(source = "equal to power, at unity power factor")
        @Nullable
        ApparentPower apparentPower,

        SurgeRating surge,

        @Bounds(minimum = "90 V", maximum = "400 V", sensible = "120 V or 230 V")
        Voltage outputVoltage,

        @Bounds(minimum = "45 Hz", maximum = "65 Hz", minimumItems = 1, maximumItems = 10)
        List<Frequency> frequencies,

        @Bounds(minimum = "0 W", maximum = "10 kW", sensible = "0.5–2 % of power")
        Power idle,

        @Bounds(minimum = "0.5", maximum = "0.999", sensible = "0.88–0.96")
        Ratio peakEfficiency,

        @Bounds(minimum = "0.5", maximum = "0.999", sensible = "0.82–0.94")
        Ratio fullLoadEfficiency,

        @Bounds(minimum = "0 Cel", maximum = "80 Cel", sensible = "25–45 °C")
        @Assumed(value = "25 Cel", source = "ratings are commonly given at 25 °C")
        Temperature fullPowerUpTo,

        @Bounds(minimum = "-20 %/K", maximum = "0 %/K") @Assumed(value = "-1 %/K", source = "typical data sheets")
        TemperatureCoefficient derating,

        @Assumed(value = "single", source = "most units make one phase")
        Phases phases,

        @Bounds(minimum = "1", maximum = "16") @Assumed(value = "1", source = "no stacking stated")
        Integer mostInParallel,

        @Bounds(maximumItems = 2) @Assumed(source = "none stated")
        List<Phases> stackedServices,

        @Bounds(minimum = "1", maximum = "48")
        @Assumed(value = "48", source = "no limit stated beyond that on each line")
        Integer mostUnits,

        @Assumed(value = "false", source = "no sleep of followers stated")
        Boolean followerSleep,

        @Bounds(maximumItems = 6) @Assumed(source = "none stated")
        List<InverterFunction> functions,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Nullable
        Current chargeCurrent,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Nullable
        Current leastChargeCurrent,

        @Bounds(minimum = "0.5", maximum = "1", sensible = "0.85–0.94")
        @Assumed(value = "0.9", source = "typical data sheets")
        Ratio chargerEfficiency,

        @Bounds(minimum = "0.3", maximum = "1", sensible = "0.7 plain, 0.95 or more with correction")
        @Assumed(value = "0.95", source = "chargers with power factor correction")
        Ratio chargerPowerFactor,

        @Bounds(exclusiveMinimum = "0 A", maximum = "10 kA") @Nullable
        Current transferCurrent,

        @Bounds(minimum = "0 s", maximum = "1 h", sensible = "5–30 ms") @Nullable
        TimeSpan transferTime,

        @Bounds(minimum = "0", maximum = "10000000000") Money price)
        implements InverterBuilder.With, Resolvable<Inverter.Resolved> {
    /**
     * The components whose defaults follow from others.
     *
     * @param apparentPower continuous apparent power at 25 °C
     */
    public record Resolved(ApparentPower apparentPower) {}

    /**
     * Validates the data sheet.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public Inverter {
        kind = Defaults.otherwise(kind, Inverter.class, "kind");
        fullPowerUpTo = Defaults.otherwise(fullPowerUpTo, Inverter.class, "fullPowerUpTo");
        derating = Defaults.otherwise(derating, Inverter.class, "derating");
        mostInParallel = Defaults.otherwise(mostInParallel, Inverter.class, "mostInParallel");
        phases = Defaults.otherwise(phases, Inverter.class, "phases");
        stackedServices = Objects.requireNonNullElse(stackedServices, List.of());
        mostUnits = Defaults.otherwise(mostUnits, Inverter.class, "mostUnits");
        followerSleep = Defaults.otherwise(followerSleep, Inverter.class, "followerSleep");
        chargerEfficiency = Defaults.otherwise(chargerEfficiency, Inverter.class, "chargerEfficiency");
        chargerPowerFactor = Defaults.otherwise(chargerPowerFactor, Inverter.class, "chargerPowerFactor");
        functions = Objects.requireNonNullElse(functions, List.of());
        Validation.of(
                        Inverter.class,
                        model,
                        kind,
                        nominalVoltage,
                        lowestInput,
                        highestInput,
                        waveform,
                        power,
                        apparentPower,
                        surge,
                        outputVoltage,
                        frequencies,
                        idle,
                        peakEfficiency,
                        fullLoadEfficiency,
                        fullPowerUpTo,
                        derating,
                        phases,
                        mostInParallel,
                        stackedServices,
                        mostUnits,
                        followerSleep,
                        functions,
                        chargeCurrent,
                        leastChargeCurrent,
                        chargerEfficiency,
                        chargerPowerFactor,
                        transferCurrent,
                        transferTime,
                        price)
                .exceeds("highestInput", highestInput, "lowestInput", lowestInput)
                .notBelow("highestInput", highestInput, "nominalVoltage", nominalVoltage)
                .that(
                        lowestInput == null || nominalVoltage == null || lowestInput.compareTo(nominalVoltage) < 0,
                        "lowestInput",
                        ProblemCode.INCONSISTENT,
                        () -> "lowestInput must be below nominalVoltage %s, but was %s."
                                .formatted(nominalVoltage, lowestInput))
                .that(
                        apparentPower == null || power == null || apparentPower.voltAmperes() >= power.watts(),
                        "apparentPower",
                        ProblemCode.INCONSISTENT,
                        () -> "apparentPower must be at least power %s, but was %s.".formatted(power, apparentPower))
                .notAbove("fullLoadEfficiency", fullLoadEfficiency, "peakEfficiency", peakEfficiency)
                .that(
                        phases == Phases.SINGLE || stackedServices.isEmpty(),
                        "stackedServices",
                        ProblemCode.INCONSISTENT,
                        "stackedServices must be empty where one unit gives several lines by itself.")
                .that(
                        stackedServices.stream().noneMatch(Phases.SINGLE::equals),
                        "stackedServices",
                        ProblemCode.INCONSISTENT,
                        "stackedServices must be split or three: units that feed one line are limited by mostInParallel.")
                .that(
                        leastChargeCurrent == null || chargeCurrent != null,
                        "leastChargeCurrent",
                        ProblemCode.INCONSISTENT,
                        "leastChargeCurrent must be left out where chargeCurrent is left out.")
                .notAbove("leastChargeCurrent", leastChargeCurrent, "chargeCurrent", chargeCurrent)
                .done();
        stackedServices = List.copyOf(stackedServices);
        functions = List.copyOf(functions);
        frequencies = List.copyOf(frequencies);
        // refuses an idle draw that does not go with the efficiencies
        InverterCurve.fit(power, idle, peakEfficiency, fullLoadEfficiency);
    }

    @Override
    public Resolved resolved() {
        return new Resolved(apparentPower == null ? ApparentPower.voltAmperes(power.watts()) : apparentPower);
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
