package org.daybank.core.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.PvModuleBuilder;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.BatteryBuilder;
import org.daybank.core.bank.BatteryFamily;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.bank.DischargeCurve;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargeControllerBuilder;
import org.daybank.core.charger.ControllerFunction;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.InverterBuilder;
import org.daybank.core.inverter.SurgeRating;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.quantity.Voltage;

/** Invented products in any number, each data sheet consistent in itself; the same seed makes the same catalogue. */
public final class CatalogueGenerator {
    private static final double[] BUSES = {12, 24, 48};

    private final Random dice;

    private CatalogueGenerator(long seed) {
        this.dice = new Random(seed);
    }

    /** A catalogue with so many products of each kind. */
    public static Catalog of(long seed, int each) {
        return of(seed, each, each, each, each);
    }

    /** A catalogue with so many products of the kinds. */
    public static Catalog of(long seed, int modules, int batteries, int controllers, int inverters) {
        CatalogueGenerator maker = new CatalogueGenerator(seed);
        return new Catalog(
                maker.many(modules, maker::module),
                maker.many(batteries, maker::battery),
                maker.many(controllers, maker::controller),
                maker.many(inverters, maker::inverter));
    }

    private <T> List<T> many(int count, IntFunction<T> maker) {
        return new ArrayList<>(IntStream.range(0, count).mapToObj(maker).toList());
    }

    private double between(double least, double most) {
        return least + (most - least) * dice.nextDouble();
    }

    private double one(double... of) {
        return of[dice.nextInt(of.length)];
    }

    /** Rounded as data sheets are. */
    private static double to(int decimals, double value) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }

    private static Money euros(double amount) {
        return Money.of(String.format(Locale.ROOT, "%.2f", Math.max(5, amount)), "EUR");
    }

    private PvModule module(int number) {
        boolean grouped = dice.nextInt(6) == 0;
        int cells = (int) (grouped ? one(36, 72) : one(54, 60, 66, 72));
        double openCircuit = to(1, cells * between(0.61, 0.7));
        double shortCircuit = to(2, grouped ? between(2.5, 10) : between(9, 18.5));
        double maximumVoltage = to(1, openCircuit * between(0.815, 0.84));
        double maximumCurrent = to(2, shortCircuit * between(0.935, 0.955));
        double watts = to(0, maximumVoltage * maximumCurrent);
        double openCircuitCoefficient = to(3, between(-0.31, -0.25));
        return PvModuleBuilder.builder()
                .model("GM-%d".formatted(number))
                .power(Power.watts(watts))
                .openCircuitVoltage(Voltage.volts(openCircuit))
                .shortCircuitCurrent(Current.amperes(shortCircuit))
                .maximumPowerVoltage(Voltage.volts(maximumVoltage))
                .maximumPowerCurrent(Current.amperes(maximumCurrent))
                .openCircuitVoltageCoefficient(TemperatureCoefficient.percentPerKelvin(openCircuitCoefficient))
                .shortCircuitCurrentCoefficient(TemperatureCoefficient.percentPerKelvin(0.045))
                .powerCoefficient(
                        TemperatureCoefficient.percentPerKelvin(to(3, openCircuitCoefficient - between(0.06, 0.1))))
                .cellsInSeries(cells)
                .systemVoltage(Voltage.volts(one(600, 1000, 1500)))
                .seriesFuse(Current.amperes(Math.ceil(shortCircuit * 1.6)))
                .nominalGroup(grouped ? Voltage.volts(cells / 3.0) : null)
                .bifacialGain(dice.nextInt(4) == 0 ? Ratio.of(to(2, between(0.05, 0.12))) : Ratio.ZERO)
                .price(euros(watts * between(0.35, 0.9)))
                .build();
    }

    private Battery battery(int number) {
        Chemistry chemistry = List.of(Chemistry.values()).get(dice.nextInt(Chemistry.values().length));
        boolean lithium = chemistry.family() == BatteryFamily.LITHIUM;
        double volts = lithium ? one(12, 24, 48) : one(2, 6, 12);
        double ampereHours = to(0, between(50, 300) * (volts == 2 ? 5 : 1));
        double perKilowattHour = lithium ? between(220, 420) : between(110, 260);
        double discharge = to(0, ampereHours * (lithium ? between(0.5, 1) : between(0.3, 0.6)));
        boolean heater = lithium && dice.nextBoolean();
        String curve = lithium
                ? "20 h: %.0f Ah".formatted(ampereHours)
                : "5 h: %.0f Ah; 20 h: %.0f Ah; 100 h: %.0f Ah"
                        .formatted(ampereHours * 0.82, ampereHours, ampereHours * 1.1);
        return BatteryBuilder.builder()
                .model("GB-%d".formatted(number))
                .chemistry(chemistry)
                .nominalVoltage(Voltage.volts(volts))
                .capacity(DischargeCurve.parse(curve))
                .resistance(Resistance.ohms(to(5, between(0.2, 0.6) * volts / 12 / ampereHours)))
                .maximumChargeCurrent(
                        Current.amperes(to(0, ampereHours * (lithium ? between(0.3, 1) : between(0.12, 0.25)))))
                .maximumDischargeCurrent(Current.amperes(discharge))
                .peakDischargeCurrent(Current.amperes(discharge * (lithium ? 2 : 8)))
                .mostInParallel((int) (lithium ? one(4, 8, 16) : one(3, 4)))
                .heater(heater ? Power.watts(to(0, volts * between(1.5, 3))) : null)
                .mass(Mass.kilograms(to(0, Math.max(1, ampereHours * volts / (lithium ? 110 : 40)))))
                .price(euros(ampereHours * volts / 1000 * perKilowattHour + (heater ? 60 : 0)))
                .build();
    }

    private ChargeController controller(int number) {
        int kind = dice.nextInt(20);
        if (kind < 5) {
            double amperes = one(10, 20, 30, 45, 60);
            return common(number, kind == 0 ? ControllerKind.SHUNT : ControllerKind.PWM, amperes, 2)
                    .busVoltages(buses(2))
                    .maximumInputVoltage(Voltage.volts(one(50, 100, 140)))
                    .maximumInputCurrent(Current.amperes(amperes))
                    .efficiency(Ratio.ONE)
                    .price(euros(amperes * between(1.8, 3.5)))
                    .build();
        }
        if (kind == 5) {
            double amperes = one(8, 10, 15);
            return common(number, ControllerKind.STEP_UP_MPPT, amperes, 2)
                    .busVoltages(List.of(Voltage.volts(48)))
                    .maximumInputVoltage(Voltage.volts(45))
                    .headroom(Voltage.ZERO)
                    .maximumInputCurrent(Current.amperes(2 * amperes))
                    .efficiency(Ratio.of(0.95))
                    .price(euros(amperes * between(15, 25)))
                    .build();
        }
        double input = one(75, 100, 150, 250, 450);
        double amperes = one(15, 20, 30, 40, 50, 60, 80, 100);
        return common(number, ControllerKind.STEP_DOWN_MPPT, amperes, 8)
                .busVoltages(input > 400 ? List.of(Voltage.volts(48)) : buses(3))
                .maximumInputVoltage(Voltage.volts(input))
                .headroom(Voltage.volts(to(0, between(1, 6))))
                .maximumInputCurrent(Current.amperes(to(0, amperes * between(0.6, 1.2))))
                .efficiency(Ratio.of(to(3, between(0.94, 0.98))))
                .price(euros(30 + amperes * between(4.5, 8) + input * between(0.2, 0.6)))
                .build();
    }

    private ChargeControllerBuilder common(int number, ControllerKind kind, double amperes, int mostInParallel) {
        List<Chemistry> chemistries = new ArrayList<>(List.of(Chemistry.values()));
        if (dice.nextInt(4) == 0) {
            chemistries.remove(Chemistry.LITHIUM_IRON_PHOSPHATE);
        }
        List<ControllerFunction> functions = new ArrayList<>();
        for (ControllerFunction function : ControllerFunction.values()) {
            if (dice.nextInt(3) == 0) {
                functions.add(function);
            }
        }
        return ChargeControllerBuilder.builder()
                .model("GC-%d".formatted(number))
                .kind(kind)
                .outputCurrent(Current.amperes(amperes))
                .selfConsumption(Power.watts(to(2, between(0.1, 0.2) + amperes * between(0.005, 0.03))))
                .chemistries(chemistries)
                .mostInParallel(1 + dice.nextInt(mostInParallel))
                .functions(functions);
    }

    /** Some of the first so many buses, at least one. */
    private List<Voltage> buses(int most) {
        int from = dice.nextInt(most);
        int to = from + 1 + dice.nextInt(BUSES.length - from);
        return IntStream.range(from, to)
                .mapToObj(bus -> Voltage.volts(BUSES[bus]))
                .toList();
    }

    private Inverter inverter(int number) {
        double bus = one(BUSES);
        boolean sine = dice.nextInt(6) > 0;
        double voltAmperes = to(-2, between(300, bus == 48 ? 9000 : bus == 24 ? 4000 : 2000));
        double watts = to(0, voltAmperes * between(0.8, 1));
        double peak = to(3, between(0.9, 0.96));
        return InverterBuilder.builder()
                .model("GI-%d".formatted(number))
                .nominalVoltage(Voltage.volts(bus))
                .lowestInput(Voltage.volts(bus * 0.875))
                .highestInput(Voltage.volts(bus * 4 / 3))
                .waveform(sine ? Waveform.SINE : Waveform.MODIFIED_SINE)
                .power(Power.watts(watts))
                .apparentPower(ApparentPower.voltAmperes(voltAmperes))
                .surge(SurgeRating.parse("5 s: %.0f VA; 60 s: %.0f VA".formatted(voltAmperes * 2, voltAmperes * 1.3)))
                .outputVoltage(Voltage.volts(one(230, 230, 230, 120)))
                .frequencies(List.of(Frequency.hertz(50), Frequency.hertz(60)))
                .idle(Power.watts(to(1, 3 + voltAmperes * between(0.002, 0.005))))
                .peakEfficiency(Ratio.of(peak))
                .fullLoadEfficiency(Ratio.of(to(3, peak - between(0.02, 0.06))))
                .mostInParallel((int) one(1, 1, 3, 6))
                .price(euros(60 + voltAmperes * (sine ? between(0.22, 0.5) : between(0.12, 0.2))))
                .build();
    }
}
