package org.daybank.core.design;

import static java.util.Arrays.stream;

import java.time.Month;
import java.util.List;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** The standing mobile scenario: a library in a bus, on shore power at night, with its alternator twice a day. */
final class TernBus {
    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(53.2))
            .elevation(Length.metres(15))
            .recordLow(Temperature.celsius(-12))
            .recordHigh(Temperature.celsius(33))
            .months(MonthlyClimateBuilder.builder()
                    .dailyIrradiation(
                            stream(new double[] {0.62, 1.21, 2.38, 3.87, 4.86, 5.03, 4.81, 4.11, 2.94, 1.62, 0.78, 0.49
                                    })
                                    .mapToObj(Irradiation::kilowattHoursPerSquareMetre)
                                    .toList())
                    .meanAir(stream(new double[] {4.1, 4.3, 6, 8.4, 11.6, 14.3, 16.2, 16.1, 14, 10.7, 7.2, 4.8})
                            .mapToObj(Temperature::celsius)
                            .toList())
                    .build())
            .build();

    static final List<Load> LOADS = List.of(
            load("reading lights", LoadKind.LIGHTING, Supply.DC, 9)
                    .count(6)
                    .windows(List.of(TimeWindow.parse("09:00-11:00"), TimeWindow.parse("14:00-18:00")))
                    .daysPerWeek(5.0)
                    .build(),
            load("roof fan", LoadKind.INDUCTION_MOTOR, Supply.DC, 28)
                    .hoursPerDay(4.0)
                    .monthsOfUse(List.of(Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER))
                    .build(),
            load("lending laptop", LoadKind.ELECTRONICS, Supply.AC, 45)
                    .count(3)
                    .windows(List.of(TimeWindow.parse("09:00-17:00")))
                    .dutyCycle(Ratio.of(0.6))
                    .daysPerWeek(5.0)
                    .build(),
            load("label printer", LoadKind.ELECTRONICS, Supply.AC, 60)
                    .hoursPerDay(0.5)
                    .daysPerWeek(5.0)
                    .build(),
            load("kettle of the crew", LoadKind.RESISTIVE, Supply.AC, 750)
                    .hoursPerDay(0.2)
                    .daysPerWeek(5.0)
                    .build());

    static final DesignBrief BRIEF = DesignBriefBuilder.builder()
            .name("Tern Bus")
            .kind(SystemKind.MOBILE)
            .site(SITE)
            .loads(LOADS)
            .array(new ArrayWish(Angle.ZERO, Angle.degrees(180), Length.metres(6)))
            .bank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(5), null, null))
            .shore(new ShorePower(Power.kilowatts(2.3), List.of(TimeWindow.parse("18:30-07:30")), null))
            .alternator(new Alternator(
                    Current.amperes(30), List.of(TimeWindow.parse("08:15-08:55"), TimeWindow.parse("17:20-18:00"))))
            .policy(DesignPolicy.standard()
                    .withBank(DesignPolicy.standard().bank().withAutonomy(TimeSpan.days(1.5))))
            .build();

    private TernBus() {}

    private static LoadBuilder load(String name, LoadKind kind, Supply supply, double watts) {
        return LoadBuilder.builder().name(name).kind(kind).supply(supply).power(Power.watts(watts));
    }
}
