package org.daybank.core.design;

import java.util.Arrays;
import java.util.List;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** The standing scenario: a hydrology field station on a northern ridge, whose worst season is winter. */
final class LarkspurRidge {
    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(46.87))
            .elevation(Length.metres(1340))
            .recordLow(Temperature.celsius(-29))
            .recordHigh(Temperature.celsius(34))
            .months(MonthlyClimateBuilder.builder()
                    .dailyIrradiation(
                            irradiation(1.32, 2.18, 3.45, 4.51, 5.47, 6.02, 6.18, 5.29, 3.94, 2.46, 1.44, 1.09))
                    .meanAir(celsius(-6.1, -4.4, -0.8, 3.7, 8.6, 12.4, 15.9, 15.3, 10.8, 4.9, -1.7, -5.8))
                    .build())
            .build();

    static final List<Load> LOADS = List.of(
            load("sample freezer", LoadKind.COMPRESSOR, Supply.AC, 118)
                    .hoursPerDay(24.0)
                    .dutyCycle(Ratio.of(0.42))
                    .essential(true)
                    .build(),
            load("telemetry radio", LoadKind.ELECTRONICS, Supply.DC, 13)
                    .hoursPerDay(24.0)
                    .essential(true)
                    .build(),
            load("data logger", LoadKind.ELECTRONICS, Supply.DC, 3.5)
                    .count(3)
                    .hoursPerDay(24.0)
                    .essential(true)
                    .build(),
            load("task light", LoadKind.LIGHTING, Supply.AC, 7.5)
                    .count(6)
                    .windows(List.of(TimeWindow.parse("16:30-22:30")))
                    .build(),
            load("borehole pump", LoadKind.INDUCTION_MOTOR, Supply.AC, 730)
                    .hoursPerDay(0.6)
                    .startingMultiple(Ratio.of(4.5))
                    .powerFactor(Ratio.of(0.78))
                    .build(),
            load("workbench drill", LoadKind.UNIVERSAL_MOTOR, Supply.AC, 620)
                    .hoursPerDay(0.4)
                    .daysPerWeek(3.0)
                    .build(),
            load("laptop", LoadKind.ELECTRONICS, Supply.AC, 42)
                    .count(2)
                    .hoursPerDay(5.0)
                    .build());

    static final DesignBrief BRIEF = DesignBriefBuilder.builder()
            .name("Larkspur Ridge")
            .site(SITE)
            .loads(LOADS)
            .array(new ArrayWish(Angle.degrees(60), Angle.degrees(180), Length.metres(38)))
            .build();

    private LarkspurRidge() {}

    private static LoadBuilder load(String name, LoadKind kind, Supply supply, double watts) {
        return LoadBuilder.builder().name(name).kind(kind).supply(supply).power(Power.watts(watts));
    }

    private static List<Irradiation> irradiation(double... kilowattHours) {
        return Arrays.stream(kilowattHours)
                .mapToObj(Irradiation::kilowattHoursPerSquareMetre)
                .toList();
    }

    private static List<Temperature> celsius(double... degrees) {
        return Arrays.stream(degrees).mapToObj(Temperature::celsius).toList();
    }
}
