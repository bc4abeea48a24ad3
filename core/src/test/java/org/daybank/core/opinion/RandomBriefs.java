package org.daybank.core.opinion;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.YieldModel;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.ChargePolicy;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.RatioByFamily;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.charger.ControllerFunction;
import org.daybank.core.design.ArrayWish;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignBriefBuilder;
import org.daybank.core.design.DesignPolicy;
import org.daybank.core.design.SystemPolicy;
import org.daybank.core.design.Wishes;
import org.daybank.core.inverter.InverterFunction;
import org.daybank.core.inverter.InverterPolicy;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.CoincidentStarts;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.LoadKind;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.quantity.VoltageCoefficient;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.SkyModel;
import org.daybank.core.sun.SunPolicy;

/** Briefs of all sorts, the same for the same seed: what a planner might meet, and some that nothing can serve. */
final class RandomBriefs {
    private final SplittableRandom dice;
    private final YieldModel model;

    RandomBriefs(long seed, YieldModel model) {
        dice = new SplittableRandom(seed);
        this.model = model;
    }

    DesignBrief next() {
        List<Load> loads = loads();
        return DesignBriefBuilder.builder()
                .name("random")
                .site(site())
                .loads(loads)
                .service(service())
                .array(array())
                .bank(housing())
                .wishes(wishes())
                .policy(policy())
                .build();
    }

    private Site site() {
        double latitude = between(-60, 60);
        double mean = 27 - 0.35 * Math.abs(latitude) + between(-6, 4);
        double swing = Math.abs(latitude) * between(0.1, 0.35);
        double winter = latitude >= 0 ? 0.5 : 6.5;
        List<Ratio> clearness = new ArrayList<>();
        List<Temperature> air = new ArrayList<>();
        List<Ratio> albedo = new ArrayList<>();
        List<Ratio> snow = new ArrayList<>();
        double clear = between(0.32, 0.62);
        double season = between(-0.08, 0.12);
        boolean snowy = odds(0.3);
        for (int m = 0; m < 12; m++) {
            double summer = -Math.cos(2 * Math.PI * (m - winter) / 12);
            clearness.add(Ratio.of(clear + season * summer + between(-0.05, 0.05)));
            double degrees = mean + swing * summer + between(-1.5, 1.5);
            air.add(Temperature.celsius(degrees));
            albedo.add(Ratio.of(snowy && degrees < 0 ? between(0.3, 0.7) : 0.2));
            snow.add(Ratio.of(snowy && degrees < 0 ? between(0, 0.4) : 0));
        }
        MonthlyClimateBuilder months = MonthlyClimateBuilder.builder().meanAir(air);
        if (odds(0.5)) {
            months.clearness(clearness);
        } else {
            months.dailyIrradiation(irradiation(latitude, clearness));
        }
        if (snowy) {
            months.albedo(albedo).snowLoss(snow);
        }
        return site(latitude, months.build());
    }

    private Site site(double latitude, MonthlyClimate months) {
        double coldest = 99;
        double warmest = -99;
        for (Temperature air : months.meanAir()) {
            coldest = Math.min(coldest, air.celsius());
            warmest = Math.max(warmest, air.celsius());
        }
        SiteBuilder site = SiteBuilder.builder()
                .latitude(Latitude.degrees(latitude))
                .recordLow(Temperature.celsius(coldest - between(2, 25)))
                .months(months);
        if (odds(0.7)) {
            site.elevation(Length.metres(between(0, 3500)));
        }
        if (odds(0.7)) {
            site.recordHigh(Temperature.celsius(Math.min(60, warmest + between(6, 20))));
        }
        return site.build();
    }

    private static List<Irradiation> irradiation(double latitude, List<Ratio> clearness) {
        Ask flat = new Ask();
        flat.latitude = latitude;
        flat.solarConstant = 1361;
        SunOpinion.Month[] sun = SunOpinion.meanDays(flat);
        List<Irradiation> all = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            all.add(Irradiation.wattHoursPerSquareMetre(clearness.get(m).fraction() * sun[m].extraterrestrial));
        }
        return all;
    }

    private List<Load> loads() {
        int count = 1 + dice.nextInt(7);
        double dcShare = dice.nextInt(3) / 2.0;
        double size = odds(0.2) ? 4 : odds(0.5) ? 1 : 0.2;
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            loads.add(load("load " + i, odds(dcShare * 0.8), size));
        }
        return loads;
    }

    private Load load(String name, boolean dc, double size) {
        LoadKind kind = pick(LoadKind.values());
        double watts = size * Math.exp(between(Math.log(5), Math.log(400)));
        LoadBuilder load = LoadBuilder.builder()
                .name(name)
                .kind(kind)
                .supply(dc ? Supply.DC : Supply.AC)
                .power(Power.watts(watts));
        hours(load);
        if (odds(0.3)) {
            load.count(1 + dice.nextInt(5));
        }
        if (odds(0.4)) {
            load.dutyCycle(Ratio.of(between(0.2, 1)));
        }
        if (odds(0.3)) {
            load.daysPerWeek(odds(0.7) ? 1.0 + dice.nextInt(7) : between(0.5, 7));
        }
        if (odds(0.25)) {
            load.monthsOfUse(someMonths());
        }
        if (odds(0.25)) {
            load.standby(Power.watts(between(0, Math.min(8, watts / 2))));
        }
        if (odds(0.4)) {
            load.powerFactor(Ratio.of(between(0.5, 1)));
        }
        if (odds(0.3)) {
            load.startingMultiple(Ratio.of(odds(0.2) ? 1 : between(1, 6)));
        }
        if (odds(0.2)) {
            load.startPowerFactor(Ratio.of(between(0.3, 0.9)));
        }
        if (odds(0.2)) {
            load.selfSwitching(odds(0.5));
        }
        return load.build();
    }

    private void hours(LoadBuilder load) {
        switch (dice.nextInt(3)) {
            case 0 -> load.hoursPerDay(odds(0.2) ? 24.0 : between(0.1, 12));
            case 1 -> {
                List<Ratio> shares = new ArrayList<>();
                for (int h = 0; h < 24; h++) {
                    shares.add(Ratio.of(odds(0.6) ? 0 : odds(0.5) ? 1 : between(0, 1)));
                }
                load.hourlyFractions(shares);
            }
            default -> {
                List<TimeWindow> windows = new ArrayList<>();
                for (int i = 0; i <= dice.nextInt(2); i++) {
                    int from = dice.nextInt(96) * 15;
                    windows.add(new TimeWindow(from, (from + 15 + dice.nextInt(600)) % 1440));
                }
                load.windows(windows);
            }
        }
    }

    private List<Month> someMonths() {
        int from = dice.nextInt(12);
        int length = 1 + dice.nextInt(11);
        List<Month> months = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            months.add(Month.of((from + i) % 12 + 1));
        }
        return months;
    }

    private Service service() {
        return odds(0.85)
                ? Service.standard()
                : odds(0.5)
                        ? new Service(Voltage.volts(120), Frequency.hertz(60), null)
                        : new Service(Voltage.volts(between(215, 245)), Frequency.hertz(60), null);
    }

    private ArrayWish array() {
        boolean fixed = odds(0.4);
        return new ArrayWish(
                fixed ? Angle.degrees(between(0, 90)) : null,
                odds(0.3) ? Angle.degrees(between(0, 359)) : null,
                Length.metres(between(1, 100)));
    }

    private BankHousing housing() {
        return new BankHousing(
                odds(0.5) ? BankLocation.OUTDOORS : BankLocation.INDOORS,
                Temperature.celsius(between(-8, 25)),
                ThermalConductance.wattsPerKelvin(between(0.3, 4)),
                Temperature.celsius(between(0, 15)));
    }

    private Wishes wishes() {
        List<Chemistry> chemistries = odds(0.6) ? null : List.of(pick(Chemistry.values()), Chemistry.AGM);
        return new Wishes(
                odds(0.8) ? null : Voltage.volts(12 << dice.nextInt(3)),
                chemistries == null ? null : chemistries.stream().distinct().toList(),
                odds(0.8)
                        ? null
                        : List.of(pick(new ControllerFunction[] {
                            ControllerFunction.DISPLAY,
                            ControllerFunction.LOAD_OUTPUT,
                            ControllerFunction.DIVERSION_CONTROL
                        })),
                odds(0.9) ? null : List.of(odds(0.5) ? InverterFunction.REMOTE_PANEL : InverterFunction.CHARGER),
                null,
                null);
    }

    private DesignPolicy policy() {
        LoadPolicy load = LoadPolicy.standard()
                .withCoincidentStarts(odds(0.5) ? CoincidentStarts.SELF_SWITCHING : pick(CoincidentStarts.values()))
                .withStartDuration(TimeSpan.seconds(odds(0.6) ? 3 : between(0.5, 70) > 60 ? 59 : between(0.5, 10)))
                .withDcWiringEfficiency(Ratio.of(between(0.95, 0.99)))
                .withInverterAlwaysOn(odds(0.6));
        BankPolicy bank = new BankPolicy(
                TimeSpan.days(odds(0.6) ? 1 + dice.nextInt(10) : between(0.5, 14)),
                new RatioByFamily(Ratio.of(between(0.4, 0.8)), Ratio.of(between(0.7, 0.9))),
                new RatioByFamily(Ratio.of(between(0.15, 0.3)), Ratio.of(between(0.5, 0.9))),
                new RatioByFamily(Ratio.of(between(0.5, 2)), Ratio.of(between(0.5, 2))),
                new RatioByFamily(Ratio.of(between(0.9, 1)), Ratio.of(between(0.8, 1))),
                3,
                Ratio.of(between(1, 4)),
                Ratio.of(between(0.7, 0.8)),
                odds(0.3),
                Ratio.of(between(0, 0.25)));
        ChargePolicy charge = ChargePolicy.standard()
                .withLeadAcidCompensation(VoltageCoefficient.voltsPerKelvin(between(-0.005, -0.003)));
        SunPolicy sun = SunPolicy.standard()
                .withSolarConstant(Irradiance.wattsPerSquareMetre(odds(0.7) ? 1361 : 1367))
                .withMonthlySkyModel(odds(0.8) ? SkyModel.HAY_DAVIES : SkyModel.ISOTROPIC)
                .withDaytimeOverMeanAir(TemperatureDifference.kelvins(between(2, 5)));
        ArrayPolicy array = ArrayPolicy.standard()
                .withArrayToLoadRatio(Ratio.of(between(1.1, 1.4)))
                .withSoilingFactor(Ratio.of(between(0.92, 0.98)))
                .withMismatchFactor(Ratio.of(between(0.95, 1)))
                .withWiringFactor(Ratio.of(between(0.95, 1)))
                .withAgeingFactor(Ratio.of(between(0.92, 0.98)))
                .withVoltageAgeingFactor(Ratio.of(between(0.95, 1)))
                .withYieldModel(model);
        return DesignPolicy.standard()
                .withLoad(load)
                .withBank(bank)
                .withCharge(charge)
                .withSun(sun)
                .withArray(array)
                .withCharger(new ChargerPolicy(
                        Ratio.of(between(0, 0.05)),
                        Ratio.of(1.25),
                        Ratio.of(between(0, 0.05)),
                        Ratio.of(between(1.1, 2))))
                .withInverter(InverterPolicy.standard().withMargin(Ratio.of(between(0.1, 0.5))))
                .withSystem(SystemPolicy.standard()
                        .withSimulatedYears(0)
                        .withBankCurrent(Current.amperes(between(100, 250)))
                        .withColdSpell(Ratio.of(between(0.3, 0.8))));
    }

    private double between(double low, double high) {
        return dice.nextDouble(low, high);
    }

    private boolean odds(double share) {
        return dice.nextDouble() < share;
    }

    private <T> T pick(T[] all) {
        return all[dice.nextInt(all.length)];
    }
}
