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
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Policies;
import org.daybank.core.working.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Something that must run. When it runs is said in exactly one of three ways: hours a day at no particular time, 24 hourly
 * fractions, or windows of time.
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
        Power power,
        @Assumed(value = "1", source = "no count stated") Integer count,
        @Nullable Double hoursPerDay,
        @Nullable List<Ratio> hourlyFractions,
        @Nullable List<TimeWindow> windows,
        @Assumed(source = "typical of the kind of load") Ratio dutyCycle,
        @Assumed(value = "7", source = "used every day") Double daysPerWeek,
        @Assumed(source = "used in every month") List<Month> monthsOfUse,

        @Assumed(value = "0 W", source = "switched off at the plug when not in use")
        Power standby,

        @Assumed(source = "typical of the kind of load") Ratio powerFactor,
        @Assumed(source = "typical of the kind of load") Ratio startingMultiple,

        @Assumed(value = "0.4", source = "locked-rotor power factors of small motors are 0.3 to 0.5")
        Ratio startPowerFactor,

        @Assumed(source = "typical of the kind of load") Boolean selfSwitching,
        @Assumed(source = "typical of the kind of load") Waveform waveform,

        @Assumed(value = "false", source = "not marked as essential")
        Boolean essential,

        @Nullable Voltage lowestSupply,
        @Nullable Voltage highestSupply)
        implements LoadBuilder.With {
    private static final int MOST = 10_000;

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.working.InvalidInput when something is missing or can never be right
     */
    public Load {
        kind = Policies.otherwise(kind, Load.class, "kind");
        supply = Policies.otherwise(supply, Load.class, "supply");
        count = Policies.otherwise(count, Load.class, "count");
        daysPerWeek = Policies.otherwise(daysPerWeek, Load.class, "daysPerWeek");
        standby = Policies.otherwise(standby, Load.class, "standby");
        startPowerFactor = Policies.otherwise(startPowerFactor, Load.class, "startPowerFactor");
        essential = Policies.otherwise(essential, Load.class, "essential");
        LoadKind.Traits typical = kind.traits();
        dutyCycle = Objects.requireNonNullElse(dutyCycle, typical.dutyCycle());
        powerFactor = Objects.requireNonNullElse(powerFactor, typical.powerFactor());
        startingMultiple = Objects.requireNonNullElse(startingMultiple, typical.startingMultiple());
        selfSwitching = Objects.requireNonNullElse(selfSwitching, typical.selfSwitching());
        waveform = Objects.requireNonNullElse(waveform, typical.waveform());
        monthsOfUse = monthsOfUse == null ? List.of(Month.values()) : List.copyOf(monthsOfUse);
        windows = windows == null ? null : List.copyOf(windows);
        long ways = Stream.of(hoursPerDay != null, hourlyFractions != null, windows != null)
                .filter(given -> given)
                .count();
        new Validation()
                .required("name", name)
                .required("power", power)
                .within("power", power, Power.ZERO, Power.kilowatts(1000))
                .within("count", count, 0, MOST)
                .that(
                        ways == 1,
                        "",
                        ways == 0 ? "missing" : "conflict",
                        "exactly one of hoursPerDay, hourlyFractions and windows must be given but %s are"
                                .formatted(ways))
                .within("hoursPerDay", hoursPerDay, 0.0, 24.0)
                .length("hourlyFractions", hourlyFractions, 24)
                .eachWithin("hourlyFractions", hourlyFractions, Ratio.ZERO, Ratio.ONE)
                .that(windows == null || !windows.isEmpty(), "windows", "missing", "windows must not be empty")
                .within("dutyCycle", dutyCycle, Ratio.ZERO, Ratio.ONE)
                .above("daysPerWeek", daysPerWeek, 0.0)
                .atMost("daysPerWeek", daysPerWeek, 7.0)
                .notEmpty("monthsOfUse", monthsOfUse)
                .within("standby", standby, Power.ZERO, Power.kilowatts(1000))
                .within("powerFactor", powerFactor, Ratio.of(0.1), Ratio.ONE)
                .within("startingMultiple", startingMultiple, Ratio.ONE, Ratio.of(20))
                .within("startPowerFactor", startPowerFactor, Ratio.of(0.05), Ratio.ONE)
                .that(
                        lowestSupply == null || highestSupply == null || lowestSupply.compareTo(highestSupply) < 0,
                        "highestSupply",
                        "inconsistent",
                        "highestSupply must be above lowestSupply %s but is %s".formatted(lowestSupply, highestSupply))
                .done();
        hourlyFractions = hourlyFractions == null ? null : List.copyOf(hourlyFractions);
    }

    /** What all of it draws when running. */
    public Power runningPower() {
        return power.times(count);
    }

    /** What all of it draws when running, in volt-amperes. */
    public ApparentPower runningApparent() {
        return runningPower().atPowerFactor(powerFactor);
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
