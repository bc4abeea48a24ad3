package org.daybank.core.inverter;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Resolvable;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of an inverter.
 *
 * @param peak the most that the AC loads ask at one moment
 * @param largestLoad the peak of the largest single load, which is on one line of a service that has several; absent when
 *     the loads are not known one by one: then everything that starts counts as on one line and the rest as balanced
 * @param hourlyPeaks the most that the AC loads draw in each hour of the day, 24 values: while they are low, units that
 *     follow may sleep; absent when not known
 * @param startDuration how long a start lasts
 * @param sineLoads loads that object to a modified sine, by name
 * @param service that the loads are made for
 * @param nominalVoltage what the bank is called
 * @param bankCurrentLimit most that the current from the bank should be when the inverter gives its rating
 * @param highestBankVoltage charging voltage of the bank on the coldest day
 * @param hottestAir air around the inverter
 * @param elevation of the site
 * @param functions asked for besides
 * @param acSource shore power or a generator to take in; absent when there is none
 */
@RecordBuilder
public record InverterNeed(
        PeakLoad peak,
        @Nullable PeakLoad largestLoad,

        @Bounds(minimum = "0 W", maximum = "10000 kW", minimumItems = 24, maximumItems = 24) @Nullable
        List<Power> hourlyPeaks,

        @Bounds(minimum = "0 s", maximum = "10 min", sensible = "1–10 s")
        @Assumed(value = "3 s", source = "motors under load")
        TimeSpan startDuration,

        @Bounds(maximumItems = 10000) @Assumed(source = "none named")
        List<String> sineLoads,

        @Assumed(source = "IEC 60038: 230 V, 50 Hz, one phase")
        Service service,

        @Bounds(minimum = "12 V", maximum = "48 V") Voltage nominalVoltage,

        @Bounds(exclusiveMinimum = "0 A", maximum = "100 kA", sensible = "100–300 A")
        @Assumed(value = "100 kA", source = "no limit stated")
        Current bankCurrentLimit,

        @Bounds(minimum = "12 V", maximum = "100 V", sensible = "nominalVoltage · 1.15 to nominalVoltage · 1.35")
        @Assumed(source = "nominalVoltage · 1.25, a cold lead-acid bank under charge")
        @Nullable
        Voltage highestBankVoltage,

        @Bounds(minimum = "-40 Cel", maximum = "80 Cel", sensible = "25–50 °C")
        @Assumed(value = "40 Cel", source = "no temperature stated")
        Temperature hottestAir,

        @Bounds(minimum = "-500 m", maximum = "9000 m") @Assumed(value = "0 m", source = "sea level")
        Length elevation,

        @Bounds(maximumItems = 6) @Assumed(source = "none required")
        List<InverterFunction> functions,

        @Nullable AcSource acSource)
        implements InverterNeedBuilder.With, Resolvable<InverterNeed.Resolved> {
    private static final double COLD_LEAD_ACID = 1.25;

    /**
     * The components whose defaults follow from others.
     *
     * @param highestBankVoltage charging voltage of the bank on the coldest day
     */
    public record Resolved(Voltage highestBankVoltage) {}

    /**
     * Validates the need.
     *
     * @throws org.daybank.core.schema.InvalidInput when something is missing, outside its bounds or contradicts itself
     */
    public InverterNeed {
        startDuration = Defaults.otherwise(startDuration, InverterNeed.class, "startDuration");
        sineLoads = Objects.requireNonNullElse(sineLoads, List.of());
        service = Objects.requireNonNullElseGet(service, Service::standard);
        bankCurrentLimit = Defaults.otherwise(bankCurrentLimit, InverterNeed.class, "bankCurrentLimit");
        hottestAir = Defaults.otherwise(hottestAir, InverterNeed.class, "hottestAir");
        elevation = Defaults.otherwise(elevation, InverterNeed.class, "elevation");
        functions = Objects.requireNonNullElse(functions, List.of());
        Validation.of(
                        InverterNeed.class,
                        peak,
                        largestLoad,
                        hourlyPeaks,
                        startDuration,
                        sineLoads,
                        service,
                        nominalVoltage,
                        bankCurrentLimit,
                        highestBankVoltage,
                        hottestAir,
                        elevation,
                        functions,
                        acSource)
                .notBelow("highestBankVoltage", highestBankVoltage, "nominalVoltage", nominalVoltage)
                .done();
        sineLoads = List.copyOf(sineLoads);
        functions = List.copyOf(functions);
        hourlyPeaks = hourlyPeaks == null ? null : List.copyOf(hourlyPeaks);
    }

    @Override
    public Resolved resolved() {
        return new Resolved(highestBankVoltage == null ? nominalVoltage.times(COLD_LEAD_ACID) : highestBankVoltage);
    }
}
