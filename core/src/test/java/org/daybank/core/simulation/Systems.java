package org.daybank.core.simulation;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.YieldModel;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.load.EnergyDemandBuilder;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;
import org.daybank.core.sun.ExposureBuilder;
import org.daybank.core.sun.HourlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;

/** Systems and skies simple enough to reckon by hand. */
final class Systems {
    static final List<Ratio> NO_SNOW = Collections.nCopies(12, Ratio.ZERO);

    /** No losses before the controller, power in proportion to irradiance. */
    static final ArrayPolicy LOSSLESS = ArrayPolicy.standard()
            .withSoilingFactor(Ratio.ONE)
            .withMismatchFactor(Ratio.ONE)
            .withWiringFactor(Ratio.ONE)
            .withAgeingFactor(Ratio.ONE)
            .withYieldModel(YieldModel.PROPORTIONAL);

    /** 25 °C all year. */
    static final BankHousing WARM_ROOM = new BankHousing(BankLocation.INDOORS, Temperature.celsius(25), null, null);

    private Systems() {}

    /** DC loads that draw so many watts at the bank around the clock. */
    static LoadProfile steady(double essentialWatts, double otherWatts) {
        return LoadProfile.of(
                EnergyDemandBuilder.builder()
                        .loads(List.of(
                                load("kept", essentialWatts).essential(true).build(),
                                load("other", otherWatts).build()))
                        .latitude(Latitude.degrees(45))
                        .autonomy(TimeSpan.days(3))
                        .build(),
                LoadPolicy.standard().withDcWiringEfficiency(Ratio.ONE));
    }

    private static LoadBuilder load(String name, double watts) {
        return LoadBuilder.builder()
                .name(name)
                .kind(LoadKind.ELECTRONICS)
                .supply(Supply.DC)
                .power(Power.watts(Math.max(watts, 1e-6)))
                .hoursPerDay(watts > 0 ? 24.0 : 0.0);
    }

    static Battery battery(String model) {
        return Catalog.sample().batteries().stream()
                .filter(battery -> battery.model().equals(model))
                .findFirst()
                .orElseThrow();
    }

    static ChargeController controller(String model) {
        return Catalog.sample().controllers().stream()
                .filter(controller -> controller.model().equals(model))
                .findFirst()
                .orElseThrow()
                .withSelfConsumption(Power.ZERO);
    }

    static ArrayLayout modules(int series, int strings) {
        return ArrayLayout.shared(
                Catalog.sample().modules().stream()
                        .filter(module -> module.model().equals("PL-410"))
                        .findFirst()
                        .orElseThrow(),
                series,
                strings,
                1);
    }

    /** Lithium, 51.2 V · 280 Ah = 14336 Wh for each string, three modules of 410 W, a tracking controller. */
    static SimulatedSystemBuilder lithium(int parallel, LoadProfile loads) {
        return SimulatedSystemBuilder.builder()
                .loads(loads)
                .array(modules(3, 1))
                .controller(controller("HN-T60"))
                .bank(BankLayout.of(battery("BK-L48-280H"), Voltage.volts(48), 1, parallel))
                .housing(WARM_ROOM)
                .depthOfDischarge(Ratio.of(0.8));
    }

    /** Years of the same irradiance in the same hours of every day, air as warm as makes cells of 25 °C by Ross. */
    static SunnyYears sky(int years, IntToDoubleFunction byHourOfDay) {
        double[] watts = new double[HourCalendar.COMMON];
        double[] air = new double[HourCalendar.COMMON];
        for (int hour = 0; hour < watts.length; hour++) {
            watts[hour] = byHourOfDay.applyAsDouble(hour % 24);
            // 44 °C nominal: 24 K at 800 W/m²
            air[hour] = 25 - 24 * watts[hour] / 800;
        }
        HourlySeries sun = HourlySeries.wattsPerSquareMetre(watts);
        HourlySeries none = HourlySeries.wattsPerSquareMetre(new double[watts.length]);
        SunnyYears.Year year = new SunnyYears.Year(
                new HourlySun(
                        ExposureBuilder.builder()
                                .plane(new Plane(Angle.ZERO, Angle.degrees(180)))
                                .build(),
                        SunPolicy.standard(),
                        new HourCalendar(2001, HourCalendar.COMMON),
                        sun,
                        none,
                        none,
                        sun,
                        sun),
                HourlySeries.celsius(air));
        SunnyYears.Year[] all = new SunnyYears.Year[years];
        Arrays.fill(all, year);
        return new SunnyYears(List.of(all));
    }

    static SunnyYears darkness() {
        return sky(1, hour -> 0);
    }

    static Simulation run(SimulatedSystem system, SunnyYears sun, SimulationPolicy policy) {
        return Simulator.run(system, sun, NO_SNOW, LOSSLESS, policy);
    }
}
