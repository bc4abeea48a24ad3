package org.daybank.core.array;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.array.kernel.DiodeCurve;
import org.daybank.core.array.kernel.StringCurve;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What modules in unlike light give in one string, through a common tracker, against what each gives at its own best point, as
 * behind a microinverter. In the string one current flows through all; a module that cannot carry it is passed by at the drop of
 * its bypass diodes; the tracker is taken to find the highest of the string's peaks. A module counts as evenly lit: shade on a
 * part of it is rendered by the irradiance that leaves it the same current.
 *
 * @param stringCurrent where the power of the string is largest
 * @param stringVoltage there
 * @param stringPower there
 * @param moduleLevelPower sum of the modules' own largest powers
 * @param shareLost what the string loses of it: {@code 1 − P_string / ΣP_max}; zero in the dark
 * @param limiting the modules that hold the current of the string down, by name: of those that carry it, the ones whose own best
 *     current is the least; absent when all that carry it are alike
 * @param bypassed those that the current passes by, by name
 * @param modules each group at its own best point and in the string
 */
public record ShadeComparison(
        Current stringCurrent,
        Voltage stringVoltage,
        Power stringPower,
        Power moduleLevelPower,
        Ratio shareLost,
        @Nullable String limiting,
        List<String> bypassed,
        List<Share> modules) {
    private static final String SOURCE = "single diode, De Soto et al. 2006; modules in series carry one current";

    /** Best currents that differ by less than this share are alike: the solver's own tolerance, far below any data sheet's. */
    private static final double ALIKE = 1e-6;

    /**
     * One group of modules.
     *
     * @param name of the group
     * @param count of its modules
     * @param maximumPower of one at its own best point
     * @param maximumPowerCurrent there
     * @param powerInString what one gives in the string; negative when it is passed by
     */
    public record Share(String name, int count, Power maximumPower, Current maximumPowerCurrent, Power powerInString) {}

    /** Keeps copies. */
    public ShadeComparison {
        bypassed = List.copyOf(bypassed);
        modules = List.copyOf(modules);
    }

    /**
     * Compares.
     *
     * @throws org.daybank.core.schema.InvalidInput when no circuit fits the data sheet of a module
     */
    public static ShadeComparison of(StringInSun string, ShadePolicy policy) {
        List<ModuleInSun> groups = string.modules();
        List<IvCurve> curves = groups.stream().map(ShadeComparison::curve).toList();
        int[] lit = IntStream.range(0, groups.size())
                .filter(i -> groups.get(i).irradiance().compareTo(Irradiance.ZERO) > 0)
                .toArray();
        int all = groups.stream().mapToInt(ModuleInSun::count).sum();
        int[] counts = IntStream.of(lit).map(i -> groups.get(i).count()).toArray();
        double bypassVolts = policy.bypassVoltage().volts();
        StringCurve inSeries = new StringCurve(
                IntStream.of(lit).mapToObj(i -> diode(curves.get(i))).toArray(DiodeCurve[]::new),
                counts,
                all - IntStream.of(counts).sum(),
                bypassVolts);
        double amperes = inSeries.bestAmperes();

        List<String> bypassed = new ArrayList<>();
        List<Share> shares = new ArrayList<>();
        List<Share> carrying = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < groups.size(); i++) {
            ModuleInSun group = groups.get(i);
            boolean isLit = next < lit.length && lit[next] == i;
            boolean carries = isLit && amperes <= inSeries.carriedAmperes(next);
            double volts = isLit ? inSeries.groupVolts(next, amperes) : -bypassVolts;
            next += isLit ? 1 : 0;
            Share share = new Share(
                    group.name(),
                    group.count(),
                    curves.get(i).maximumPower(),
                    curves.get(i).maximumPowerCurrent(),
                    Power.watts(amperes * volts));
            shares.add(share);
            if (carries) {
                carrying.add(share);
            } else {
                bypassed.add(group.name());
            }
        }
        Voltage voltage = Voltage.volts(amperes > 0 ? inSeries.volts(amperes) : 0);
        Power power = voltage.times(Current.amperes(amperes));
        Power each = shares.stream()
                .map(share -> share.maximumPower().times(share.count()))
                .reduce(Power.ZERO, Power::plus);
        return new ShadeComparison(
                Current.amperes(amperes),
                voltage,
                power,
                each,
                Ratio.of(each.watts() > 0 ? Math.max(0, 1 - power.dividedBy(each)) : 0),
                limiting(carrying),
                bypassed,
                shares);
    }

    private static IvCurve curve(ModuleInSun group) {
        return SingleDiode.of(group.module()).at(group.irradiance(), group.cell());
    }

    private static DiodeCurve diode(IvCurve curve) {
        return curve.diode()
                .kernel()
                .at(curve.irradiance().wattsPerSquareMetre(), curve.cell().celsius());
    }

    private static @Nullable String limiting(List<Share> carrying) {
        if (carrying.isEmpty()) {
            return null;
        }
        Comparator<Share> byCurrent = Comparator.comparing(Share::maximumPowerCurrent);
        Share least = carrying.stream().min(byCurrent).orElseThrow();
        Share most = carrying.stream().max(byCurrent).orElseThrow();
        return most.maximumPowerCurrent().dividedBy(least.maximumPowerCurrent()) - 1 > ALIKE ? least.name() : null;
    }

    /** The steps, as one would write them on paper. */
    public Working working() {
        Working.Builder steps = Working.builder();
        for (Share share : modules) {
            steps.step(
                    "largest power of " + share.name(),
                    "P = V_mp · I_mp",
                    SOURCE,
                    share.maximumPower(),
                    "at %s",
                    share.maximumPowerCurrent());
        }
        return steps.step(
                        "power of the string",
                        "P = I · ΣV(I), at the best I",
                        SOURCE,
                        stringPower,
                        "%s · %s",
                        stringCurrent,
                        stringVoltage)
                .step(
                        "share lost",
                        "1 − P_string / ΣP_max",
                        SOURCE,
                        shareLost,
                        "1 − %s / %s",
                        stringPower,
                        moduleLevelPower)
                .build();
    }
}
