package org.daybank.core.charger;

import java.util.Collections;
import java.util.List;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.PvModuleBuilder;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;

/** A module, controllers and needs with round figures. */
final class ChargerSheets {
    static final Site SITE = SiteBuilder.builder()
            .latitude(Latitude.degrees(40))
            .recordLow(Temperature.celsius(-15))
            .recordHigh(Temperature.celsius(35))
            .months(MonthlyClimateBuilder.builder()
                    .clearness(List.of(Ratio.of(0.5)))
                    .meanAir(Collections.nCopies(12, Temperature.celsius(10)))
                    .build())
            .build();

    static final IrradianceDistribution SUNSHINE =
            IrradianceDistribution.of(SITE, new Plane(Angle.degrees(40), Angle.degrees(180)), SunPolicy.standard());

    /** 400 W: 40 V · 10 A. */
    static final PvModule MODULE = PvModuleBuilder.builder()
            .model("M400")
            .power(Power.watts(400))
            .openCircuitVoltage(Voltage.volts(50))
            .shortCircuitCurrent(Current.amperes(10.4))
            .maximumPowerVoltage(Voltage.volts(40))
            .maximumPowerCurrent(Current.amperes(10))
            .cellsInSeries(72)
            .systemVoltage(Voltage.volts(1000))
            .seriesFuse(Current.amperes(20))
            .price(Money.of("100", "EUR"))
            .build();

    /** 160 W for 12 V banks: 16 V · 10 A. */
    static final PvModule TWELVE = PvModuleBuilder.builder(MODULE)
            .model("M160")
            .power(Power.watts(160))
            .openCircuitVoltage(Voltage.volts(21))
            .maximumPowerVoltage(Voltage.volts(16))
            .cellsInSeries(36)
            .nominalGroup(Voltage.volts(12))
            .build();

    static final ChargeController TRACKING = ChargeControllerBuilder.builder()
            .model("T60")
            .kind(ControllerKind.STEP_DOWN_MPPT)
            .busVoltages(List.of(Voltage.volts(12), Voltage.volts(24)))
            .maximumInputVoltage(Voltage.volts(150))
            .headroom(Voltage.volts(4))
            .maximumInputCurrent(Current.amperes(30))
            .outputCurrent(Current.amperes(60))
            .efficiency(Ratio.of(0.95))
            .chemistries(List.of(Chemistry.values()))
            .mostInParallel(2)
            .functions(List.of(ControllerFunction.DISPLAY))
            .price(Money.of("200", "EUR"))
            .build();

    static final ChargeController DIRECT = TRACKING.withModel("P40")
            .withKind(ControllerKind.PWM)
            .withHeadroom(Voltage.volts(1))
            .withMaximumInputCurrent(Current.amperes(40))
            .withOutputCurrent(Current.amperes(40))
            .withEfficiency(Ratio.ONE)
            .withPrice(Money.of("50", "EUR"));

    /** Lithium on 24 V: charged at 8 · 3.5 V = 28 V, in truth 8 · 3.2 V = 25.6 V. */
    static final ChargerNeed NEED = ChargerNeedBuilder.builder()
            .nominalVoltage(Voltage.volts(24))
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .hottestAir(Temperature.celsius(30))
            .build();

    private ChargerSheets() {}

    /**
     * 56 V on the coldest morning and 32.1 V in the hottest sun; 90 % of a new array's power arrives. A module brings 600 kWh in
     * a year at its best point and 450 kWh at the bank's own voltage.
     */
    static ArrayOffer offer(PvModule module, double exactTracking, int modulesDirect) {
        return offer(module, 56, 32.1, exactTracking, modulesDirect);
    }

    static ArrayOffer offer(
            PvModule module, double coldestVolts, double hottestVolts, double exactTracking, int modulesDirect) {
        ModuleExtremes extremes = new ModuleExtremes(
                module,
                Temperature.celsius(-15),
                Temperature.celsius(70),
                Voltage.volts(coldestVolts),
                Voltage.volts(hottestVolts));
        return new ArrayOffer(
                extremes,
                Ratio.of(exactTracking),
                modulesDirect,
                Ratio.of(0.9),
                SUNSHINE,
                Energy.kilowattHours(600),
                Energy.kilowattHours(450));
    }

    /** The same on a 12 V bank of vented cells, charged at 6 · 2.45 V = 14.7 V. */
    static ChargerNeed twelveVolts() {
        return ChargerNeedBuilder.builder()
                .nominalVoltage(Voltage.volts(12))
                .chemistry(Chemistry.VENTED_LEAD_ACID)
                .hottestAir(Temperature.celsius(30))
                .build();
    }
}
