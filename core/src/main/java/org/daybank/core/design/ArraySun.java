package org.daybank.core.design;

import java.util.List;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Energy;
import org.daybank.core.simulation.SunnyYears;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.BestTilt;
import org.daybank.core.sun.Exposure;
import org.daybank.core.sun.HourlySky;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;

/** The sunshine on a brief's array. */
final class ArraySun {
    private ArraySun() {}

    static MonthlySun of(DesignBrief brief, LoadProfile loads) {
        Angle wished = brief.array().azimuth();
        Angle azimuth =
                wished == null ? Plane.equatorward(brief.resolved().site().latitude()) : wished;
        Angle tilt = brief.array().tilt();
        if (tilt != null) {
            return PlaneOfArray.monthly(
                    brief.resolved().site(),
                    new Plane(tilt, azimuth),
                    brief.policy().sun());
        }
        List<Energy> need =
                loads.budget().months().stream().map(MonthBudget::dailyEnergy).toList();
        return BestTilt.forNeed(brief.resolved().site(), azimuth, brief.policy().sun(), need);
    }
    /** How the sunshine on the array is spread: by the hours of a weather year where there is one. */
    static IrradianceDistribution spread(DesignBrief brief, Plane plane) {
        WeatherYear weather = brief.weather();
        if (weather == null) {
            return IrradianceDistribution.of(
                    brief.resolved().site(), plane, brief.policy().sun());
        }
        Exposure exposure = SunnyYears.exposure(brief.resolved().site(), plane);
        return IrradianceDistribution.of(
                HourlySky.of(weather, brief.policy().sun()).on(exposure), weather);
    }
}
