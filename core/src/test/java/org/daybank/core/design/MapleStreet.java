package org.daybank.core.design;

import static java.util.Arrays.stream;

import java.util.List;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** The standing scenario of backup: a clinic on a split-phase grid, with a panel of the loads that must not fail. */
final class MapleStreet {
    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(38.6))
            .elevation(Length.metres(210))
            .recordLow(Temperature.celsius(-18))
            .recordHigh(Temperature.celsius(41))
            .months(MonthlyClimateBuilder.builder()
                    .dailyIrradiation(
                            stream(new double[] {2.31, 3.12, 4.18, 5.35, 6.11, 6.62, 6.54, 5.86, 4.77, 3.58, 2.46, 2.02
                                    })
                                    .mapToObj(Irradiation::kilowattHoursPerSquareMetre)
                                    .toList())
                    .meanAir(stream(new double[] {-0.8, 1.6, 7.1, 13.4, 18.6, 23.5, 25.7, 24.8, 20.6, 14.1, 7.4, 1.3})
                            .mapToObj(Temperature::celsius)
                            .toList())
                    .build())
            .build();

    static final List<Load> LOADS = List.of(
            load("vaccine fridge", LoadKind.COMPRESSOR, 140)
                    .count(2)
                    .hoursPerDay(24.0)
                    .dutyCycle(Ratio.of(0.45))
                    .essential(true)
                    .build(),
            load("emergency light", LoadKind.LIGHTING, 11)
                    .count(8)
                    .windows(List.of(TimeWindow.parse("17:00-23:00")))
                    .essential(true)
                    .build(),
            load("network rack", LoadKind.ELECTRONICS, 95)
                    .hoursPerDay(24.0)
                    .essential(true)
                    .build(),
            load("treatment room light", LoadKind.LIGHTING, 36)
                    .count(14)
                    .windows(List.of(TimeWindow.parse("07:30-18:30")))
                    .daysPerWeek(5.0)
                    .build(),
            load("steriliser", LoadKind.RESISTIVE, 2200)
                    .hoursPerDay(2.0)
                    .daysPerWeek(5.0)
                    .build(),
            load("air handler", LoadKind.INDUCTION_MOTOR, 900)
                    .windows(List.of(TimeWindow.parse("07:00-18:00")))
                    .dutyCycle(Ratio.of(0.5))
                    .daysPerWeek(5.0)
                    .build(),
            load("workstation", LoadKind.ELECTRONICS, 110)
                    .count(5)
                    .windows(List.of(TimeWindow.parse("07:30-18:00")))
                    .daysPerWeek(5.0)
                    .build());

    static final DesignBrief BRIEF = DesignBriefBuilder.builder()
            .name("Maple Street Clinic")
            .kind(SystemKind.GRID_BACKUP)
            .site(SITE)
            .loads(LOADS)
            .service(new Service(Voltage.volts(120), Frequency.hertz(60), Phases.SPLIT))
            .array(new ArrayWish(Angle.degrees(30), Angle.degrees(180), Length.metres(25)))
            .bank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(12), null, null))
            .policy(DesignPolicy.standard()
                    .withBank(DesignPolicy.standard().bank().withAutonomy(TimeSpan.days(1)))
                    .withArray(DesignPolicy.standard().array().withArrayToLoadRatio(Ratio.of(1.1))))
            .build();

    private MapleStreet() {}

    private static LoadBuilder load(String name, LoadKind kind, double watts) {
        return LoadBuilder.builder().name(name).kind(kind).supply(Supply.AC).power(Power.watts(watts));
    }
}
