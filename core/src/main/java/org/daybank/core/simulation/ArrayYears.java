package org.daybank.core.simulation;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ChargePath;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.HourCalendar;
import org.daybank.core.site.HourlySeries;

/**
 * What one module makes of the sun of some years, before any controller; made once for every array of that module on a bank of
 * that voltage.
 */
public final class ArrayYears {
    private final ChargePath path;
    private final double nominalVolts;
    private final List<ModuleYear> years = new ArrayList<>();

    private ArrayYears(ChargePath path, double nominalVolts) {
        this.path = path;
        this.nominalVolts = nominalVolts;
    }

    /** What one module of a string gives in W at the bank: when the bank is empty and when it is full. Tracked, both are one. */
    private record ModuleYear(HourlySeries whenEmpty, HourlySeries whenFull, HourlySeries air, HourCalendar calendar) {}

    /**
     * The hours of a module.
     *
     * @param output of the module
     * @param path how the controller takes what it gives
     * @param series modules in a string
     * @param nominal true nominal voltage of the bank
     * @param absorption its voltage when nearly full
     * @param sun of the years
     */
    public static ArrayYears of(
            ModuleOutput output, ChargePath path, int series, Voltage nominal, Voltage absorption, SunnyYears sun) {
        ArrayYears years = new ArrayYears(path, nominal.volts());
        years.years.addAll(sun.years().parallelStream()
                .map(year -> switch (path) {
                    case TRACKING -> {
                        HourlySeries best = output.best(year.sun(), year.air());
                        yield new ModuleYear(best, best, year.air(), year.sun().calendar());
                    }
                    case DIRECT ->
                        new ModuleYear(
                                atVoltage(output, nominal, series, nominal, year),
                                atVoltage(output, absorption, series, nominal, year),
                                year.air(),
                                year.sun().calendar());
                })
                .toList());
        return years;
    }

    /** The hours of a system's own module, bank and controller. */
    public static ArrayYears of(SimulatedSystem system, SunnyYears sun, ArrayPolicy policy) {
        return of(
                ModuleOutput.of(system.array().module(), policy.yieldModel()),
                system.controller().kind().path(),
                system.array().series(),
                system.bank().trueNominal(),
                system.resolved().absorption(),
                sun);
    }

    /** Its current counts as charge at the bank's nominal voltage, shared out over the modules of a string. */
    private static HourlySeries atVoltage(
            ModuleOutput output, Voltage held, int series, Voltage nominal, SunnyYears.Year year) {
        HourlySeries amperes = output.current(held.dividedBy(series), year.sun(), year.air());
        double volts = nominal.volts() / series;
        return HourlySeries.watts(
                Arrays.stream(amperes.values()).map(a -> a * volts).toArray());
    }

    /** How many years. */
    int count() {
        return years.size();
    }

    /** Hours of the air of a year. */
    HourlySeries air(int year) {
        return years.get(year).air();
    }

    /** Which day each hour of a year falls on. */
    HourCalendar calendar(int year) {
        return years.get(year).calendar();
    }

    /**
     * What an array of the module brings to the bank in a year: whole array, dirt and age and snow reckoned in, through the
     * controllers' efficiency and no more than they give.
     */
    ArrayHours through(
            int year, ArrayLayout layout, ChargeController controller, List<Ratio> snowLoss, ArrayPolicy policy) {
        ModuleYear module = years.get(year);
        int hours = module.air().size();
        ArrayHours array = new ArrayHours(hours, path == ChargePath.TRACKING);
        double efficiency = controller.efficiency().fraction();
        int[] modulesOnEach = layout.stringsOnEach().stream()
                .mapToInt(strings -> strings * layout.series())
                .toArray();
        for (Month month : Month.values()) {
            double left = left(month, snowLoss, policy);
            int end = module.calendar().endHour(month);
            for (int hour = module.calendar().firstHour(month); hour < end; hour++) {
                double empty = module.whenEmpty().at(hour) * left;
                double full = module.whenFull().at(hour) * left;
                double most = mostAmperes(controller, module.air().at(hour)) * nominalVolts;
                for (int modules : modulesOnEach) {
                    switch (path) {
                        case TRACKING -> array.track(hour, empty * modules, efficiency, most);
                        case DIRECT -> array.pass(hour, empty * modules, full * modules);
                    }
                }
            }
        }
        return array;
    }

    /** What one module brings before the controller in each hour of a year, dirt and age and snow reckoned in. */
    double[] module(int year, List<Ratio> snowLoss, ArrayPolicy policy) {
        ModuleYear module = years.get(year);
        double[] watts = module.whenEmpty().values();
        for (Month month : Month.values()) {
            double left = left(month, snowLoss, policy);
            int end = module.calendar().endHour(month);
            for (int hour = module.calendar().firstHour(month); hour < end; hour++) {
                watts[hour] *= left;
            }
        }
        return watts;
    }

    /** What is left of what the sun would give, once dirt, age and snow have theirs. */
    private static double left(Month month, List<Ratio> snowLoss, ArrayPolicy policy) {
        return policy.whenAged()
                .times(snowLoss.get(month.getValue() - 1).complement())
                .fraction();
    }

    private static double mostAmperes(ChargeController controller, double airCelsius) {
        return airCelsius <= controller.fullOutputUpTo().celsius()
                ? controller.outputCurrent().amperes()
                : controller.outputCurrentIn(Temperature.celsius(airCelsius)).amperes();
    }
}
