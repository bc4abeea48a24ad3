package org.daybank.core.inverter;

import java.util.Collections;
import java.util.List;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.PvModuleBuilder;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;

/** A module, a string inverter, a microinverter and a grid with round figures. */
final class GridSheets {
    private static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(50))
            .recordLow(Temperature.celsius(-15))
            .recordHigh(Temperature.celsius(35))
            .months(MonthlyClimateBuilder.builder()
                    .clearness(List.of(Ratio.of(0.45)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(10)))
                    .build())
            .build();

    static final IrradianceDistribution SUNSHINE =
            IrradianceDistribution.of(SITE, new Plane(Angle.degrees(30), Angle.degrees(180)), SunPolicy.standard());

    /** The same year on a wall. */
    static final IrradianceDistribution WALL =
            IrradianceDistribution.of(SITE, new Plane(Angle.degrees(90), Angle.degrees(180)), SunPolicy.standard());

    /** 400 W: 40 V · 10 A; γ − α = −0.45 %/K. */
    static final PvModule MODULE = PvModuleBuilder.builder()
            .model("M400")
            .power(Power.watts(400))
            .openCircuitVoltage(Voltage.volts(50))
            .shortCircuitCurrent(Current.amperes(10.4))
            .maximumPowerVoltage(Voltage.volts(40))
            .maximumPowerCurrent(Current.amperes(10))
            .shortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(0.05))
            .powerCoefficient(TemperatureCoefficient.percentPerKelvin(-0.40))
            .cellsInSeries(72)
            .systemVoltage(Voltage.volts(1000))
            .seriesFuse(Current.amperes(20))
            .price(Money.of("100", "EUR"))
            .build();

    /** 56 V open on the coldest morning of −15 °C and 32 V in the hottest sun. */
    static final ModuleExtremes EXTREMES = extremes(MODULE);

    /** 10 kW on three lines; two trackers from 160 V to 800 V, each for two strings. */
    static final StringInverter STRING = StringInverterBuilder.builder()
            .model("S10")
            .power(Power.kilowatts(10))
            .phases(Phases.THREE)
            .maximumInputVoltage(Voltage.volts(1000))
            .trackingLowest(Voltage.volts(160))
            .trackingHighest(Voltage.volts(800))
            .trackers(2)
            .maximumInputCurrent(Current.amperes(22))
            .maximumShortCircuitCurrent(Current.amperes(30))
            .maximumArrayPower(Power.kilowatts(15))
            .efficiency(Ratio.of(0.98))
            .price(Money.of("1500", "EUR"))
            .build();

    /** 350 W on one line. */
    static final Microinverter MICRO = MicroinverterBuilder.builder()
            .model("U350")
            .power(Power.watts(345))
            .maximumModulePower(Power.watts(450))
            .maximumInputVoltage(Voltage.volts(60))
            .trackingLowest(Voltage.volts(25))
            .trackingHighest(Voltage.volts(50))
            .maximumInputCurrent(Current.amperes(12))
            .maximumShortCircuitCurrent(Current.amperes(15))
            .mostOnBranch(12)
            .efficiency(Ratio.of(0.96))
            .price(Money.of("120", "EUR"))
            .build();

    static final GridService THREE_PHASE =
            new GridService(InverterSheets.service(230, Phases.THREE), Temperature.celsius(40));

    static final GridService SINGLE_PHASE =
            new GridService(InverterSheets.service(230, Phases.SINGLE), Temperature.celsius(40));

    private GridSheets() {}

    static ModuleExtremes extremes(PvModule module) {
        return new ModuleExtremes(
                module, Temperature.celsius(-15), Temperature.celsius(70), Voltage.volts(56), Voltage.volts(32));
    }

    /** 90 % of a new array's power arrives. */
    static GridArray array(int modules) {
        return new GridArray(EXTREMES, modules, Ratio.of(0.9), SUNSHINE);
    }
}
