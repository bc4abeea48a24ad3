package org.daybank.core.design;

import static java.util.Arrays.stream;

import java.util.List;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** The standing grid-interactive scenario: a three-phase workshop without a bank. */
final class QuarryLane {
    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(50.6))
            .elevation(Length.metres(180))
            .recordLow(Temperature.celsius(-22))
            .recordHigh(Temperature.celsius(37))
            .months(MonthlyClimateBuilder.builder()
                    .clearness(
                            stream(new double[] {0.34, 0.38, 0.42, 0.46, 0.47, 0.48, 0.49, 0.48, 0.45, 0.41, 0.35, 0.32
                                    })
                                    .mapToObj(Ratio::of)
                                    .toList())
                    .meanAir(stream(new double[] {0.9, 1.8, 5.4, 9.4, 13.8, 17, 18.9, 18.5, 14.4, 9.9, 5.2, 1.9})
                            .mapToObj(Temperature::celsius)
                            .toList())
                    .build())
            .build();

    static final List<Load> LOADS = List.of(
            load("band saw", LoadKind.INDUCTION_MOTOR, 3000)
                    .windows(List.of(TimeWindow.parse("08:00-12:00"), TimeWindow.parse("13:00-16:30")))
                    .dutyCycle(Ratio.of(0.35))
                    .build(),
            load("dust extraction", LoadKind.INDUCTION_MOTOR, 2200)
                    .windows(List.of(TimeWindow.parse("08:00-12:00"), TimeWindow.parse("13:00-16:30")))
                    .dutyCycle(Ratio.of(0.6))
                    .build(),
            load("bench light", LoadKind.LIGHTING, 40)
                    .count(18)
                    .windows(List.of(TimeWindow.parse("07:30-17:00")))
                    .build(),
            load("compressor", LoadKind.INDUCTION_MOTOR, 4000).hoursPerDay(2.0).build(),
            load("office", LoadKind.ELECTRONICS, 350)
                    .windows(List.of(TimeWindow.parse("07:30-17:30")))
                    .build());

    static final DesignBrief BRIEF = DesignBriefBuilder.builder()
            .name("Quarry Lane Workshop")
            .kind(SystemKind.GRID_INTERACTIVE)
            .site(SITE)
            .loads(LOADS)
            .service(new Service(Voltage.volts(230), Frequency.hertz(50), Phases.THREE))
            .array(new ArrayWish(Angle.degrees(15), Angle.degrees(190), Length.metres(30)))
            .grid(new GridWish(null, null, Ratio.of(0.9), null))
            .build();

    private QuarryLane() {}

    /** Five days a week. */
    private static LoadBuilder load(String name, LoadKind kind, double watts) {
        return LoadBuilder.builder()
                .name(name)
                .kind(kind)
                .supply(Supply.AC)
                .power(Power.watts(watts))
                .daysPerWeek(5.0);
    }
}
