package org.daybank.core.load;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Something that must run. When it runs is said in exactly one of three ways: hours a day at no particular time, 24 hourly
 * fractions, or windows of time. What was left out stays null; {@link #resolved()} returns what it follows to.
 *
 * @param name as the customer calls it
 * @param kind its electrical nature
 * @param supply behind the inverter or on the bank's own voltage
 * @param power what one draws when running
 * @param count how many of it
 * @param hoursPerDay hours a day, 0 to 24, spread evenly because no time is known; one of the three ways
 * @param hourlyFractions share of each hour of the day, from midnight, in which it is on; one of the three ways
 * @param windows daily windows in which it is on; one of the three ways
 * @param dutyCycle share of its hours in which it draws its power, as a thermostat makes it
 * @param daysPerWeek days a week on which it is used, above 0 to 7
 * @param monthsOfUse months in which it is used
 * @param standby what one draws in the hours in which it is not on
 * @param powerFactor real over apparent power when running
 * @param startingMultiple starting over running volt-amperes, 1 or more
 * @param startPowerFactor real over apparent power while starting
 * @param selfSwitching whether it starts by itself, as thermostats and pressure switches do
 * @param waveform the least waveform it needs
 * @param essential whether it must run longest
 * @param lowestSupply lowest voltage a DC load runs on; absent when not known
 * @param highestSupply highest voltage a DC load stands; absent when not known
 */
@RecordBuilder
public record Load(
        String name,

        @Assumed(value = "electronics", source = "no kind stated")
        LoadKind kind,

        @Assumed(value = "ac", source = "most loads are AC") Supply supply,

        @Bounds(minimum = "0 kW", maximum = "1000 kW") Power power,

        @Bounds(minimum = "0", maximum = "10000") @Assumed(value = "1", source = "no count stated")
        Integer count,

        @Bounds(minimum = "0", maximum = "24") @Nullable Double hoursPerDay,

        @Bounds(minimum = "0", maximum = "1", minimumItems = 24, maximumItems = 24) @Nullable
        List<Ratio> hourlyFractions,

        @Bounds(minimumItems = 1, maximumItems = 96) @Nullable
        List<TimeWindow> windows,

        @Bounds(minimum = "0", maximum = "1") @Assumed(source = "typical of the kind of load") @Nullable
        Ratio dutyCycle,

        @Bounds(exclusiveMinimum = "0", maximum = "7") @Assumed(value = "7", source = "used every day")
        Double daysPerWeek,

        @Bounds(minimumItems = 1, maximumItems = 12) @Assumed(source = "used in every month")
        List<Month> monthsOfUse,

        @Bounds(minimum = "0 kW", maximum = "1000 kW")
        @Assumed(value = "0 W", source = "switched off at the plug when not in use")
        Power standby,

        @Bounds(minimum = "0.1", maximum = "1") @Assumed(source = "typical of the kind of load") @Nullable
        Ratio powerFactor,

        @Bounds(minimum = "1", maximum = "20") @Assumed(source = "typical of the kind of load") @Nullable
        Ratio startingMultiple,

        @Bounds(minimum = "0.05", maximum = "1")
        @Assumed(value = "0.4", source = "locked-rotor power factors of small motors are 0.3 to 0.5")
        Ratio startPowerFactor,

        @Assumed(source = "typical of the kind of load") @Nullable
        Boolean selfSwitching,

        @Assumed(source = "typical of the kind of load") @Nullable
        Waveform waveform,

        @Assumed(value = "false", source = "not marked as essential")
        Boolean essential,

        @Bounds(minimum = "1 V", maximum = "1500 V") @Nullable
        Voltage lowestSupply,

        @Bounds(minimum = "1 V", maximum = "1500 V") @Nullable
        Voltage highestSupply)
        implements LoadBuilder.With, Resolvable<Load.Resolved> {
    /**
     * The components whose defaults follow from the kind of load: each as given, or else typical of the kind.
     *
     * @param dutyCycle share of its hours in which it draws its power
     * @param powerFactor real over apparent power when running
     * @param startingMultiple starting over running volt-amperes
     * @param selfSwitching whether it starts by itself
     * @param waveform the least waveform it needs
     */
    public record Resolved(
            Ratio dutyCycle, Ratio powerFactor, Ratio startingMultiple, Boolean selfSwitching, Waveform waveform) {}

    /**
     * Validates the components.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, out of range or inconsistent
     */
    public Load {
        kind = Defaults.otherwise(kind, Load.class, "kind");
        supply = Defaults.otherwise(supply, Load.class, "supply");
        count = Defaults.otherwise(count, Load.class, "count");
        daysPerWeek = Defaults.otherwise(daysPerWeek, Load.class, "daysPerWeek");
        standby = Defaults.otherwise(standby, Load.class, "standby");
        startPowerFactor = Defaults.otherwise(startPowerFactor, Load.class, "startPowerFactor");
        essential = Defaults.otherwise(essential, Load.class, "essential");
        monthsOfUse = monthsOfUse == null ? List.of(Month.values()) : monthsOfUse;
        long ways = Stream.of(hoursPerDay != null, hourlyFractions != null, windows != null)
                .filter(given -> given)
                .count();
        Validation.of(
                        Load.class,
                        name,
                        kind,
                        supply,
                        power,
                        count,
                        hoursPerDay,
                        hourlyFractions,
                        windows,
                        dutyCycle,
                        daysPerWeek,
                        monthsOfUse,
                        standby,
                        powerFactor,
                        startingMultiple,
                        startPowerFactor,
                        selfSwitching,
                        waveform,
                        essential,
                        lowestSupply,
                        highestSupply)
                .that(
                        ways == 1,
                        "",
                        ways == 0 ? ProblemCode.MISSING : ProblemCode.CONFLICT,
                        () -> "exactly one of hoursPerDay, hourlyFractions and windows must be given, but %s are."
                                .formatted(ways))
                .exceeds("highestSupply", highestSupply, "lowestSupply", lowestSupply)
                .done();
        hourlyFractions = hourlyFractions == null ? null : List.copyOf(hourlyFractions);
        windows = windows == null ? null : List.copyOf(windows);
        monthsOfUse = List.copyOf(monthsOfUse);
    }

    @Override
    public Resolved resolved() {
        LoadKind.Traits typical = kind.traits();
        return new Resolved(
                Objects.requireNonNullElse(dutyCycle, typical.dutyCycle()),
                Objects.requireNonNullElse(powerFactor, typical.powerFactor()),
                Objects.requireNonNullElse(startingMultiple, typical.startingMultiple()),
                Objects.requireNonNullElse(selfSwitching, typical.selfSwitching()),
                Objects.requireNonNullElse(waveform, typical.waveform()));
    }

    /** What all of it draws when running. */
    public Power runningPower() {
        return power.times(count);
    }

    /** What all of it draws when running, in volt-amperes. */
    public ApparentPower runningApparent() {
        return runningPower().atPowerFactor(resolved().powerFactor());
    }

    /** Whether it is used in a month. */
    public boolean usedIn(Month month) {
        return monthsOfUse.contains(month);
    }

    /** Share of an hour of the day, from 0 to 23, in which it is on; the duty cycle not included. */
    double onShare(int hour) {
        if (hoursPerDay != null) {
            return hoursPerDay / 24;
        }
        if (hourlyFractions != null) {
            return hourlyFractions.get(hour).fraction();
        }
        return TimeWindow.share(Objects.requireNonNull(windows), hour);
    }

    /** Hours a day in which it is on; the duty cycle not included. */
    double onHours() {
        double hours = 0;
        for (int hour = 0; hour < 24; hour++) {
            hours += onShare(hour);
        }
        return hours;
    }

    /**
     * Share of the days of the worst run of so many days on which it may be used: a load used three days a week may fall
     * on all days of a run of three.
     */
    double worstDayShare(double runDays) {
        double weeks = Math.floor(runDays / 7);
        return (weeks * daysPerWeek + Math.min(daysPerWeek, runDays - 7 * weeks)) / runDays;
    }
}
