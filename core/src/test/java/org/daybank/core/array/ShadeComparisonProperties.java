package org.daybank.core.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;

/** Whatever the modules and the shade. */
class ShadeComparisonProperties {
    private static final ShadePolicy POLICY = ShadePolicy.standard();

    /** The fit and the search for a peak are good to about 1e-9; powers here are up to tens of kilowatts. */
    private static final double WATTS = 1e-4;

    @Provide
    Arbitrary<List<ModuleInSun>> strings() {
        Arbitrary<Double> light =
                Arbitraries.oneOf(Arbitraries.doubles().between(1, 1200), Arbitraries.of(0.0, 200.0, 1000.0));
        return Combinators.combine(
                        SheetArbitraries.sheets(),
                        light.list().ofMinSize(1).ofMaxSize(6),
                        Arbitraries.integers().between(1, 8).list().ofSize(6),
                        Arbitraries.doubles().between(-20, 70))
                .as((sheet, lights, counts, celsius) -> {
                    PvModule module = sheet.module();
                    List<ModuleInSun> groups = new ArrayList<>();
                    for (int i = 0; i < lights.size(); i++) {
                        groups.add(new ModuleInSun(
                                "group " + i,
                                module,
                                Irradiance.wattsPerSquareMetre(lights.get(i)),
                                Temperature.celsius(celsius),
                                counts.get(i)));
                    }
                    return groups;
                });
    }

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void theStringNeverGivesMoreThanItsModulesOneByOne(@ForAll("strings") List<ModuleInSun> groups) {
        ShadeComparison comparison = compare(groups);

        assertThat(comparison.stringPower().watts())
                .isLessThanOrEqualTo(comparison.moduleLevelPower().watts() + WATTS);
        assertThat(comparison.shareLost().fraction()).isBetween(0.0, 1.0);
    }

    /** An independent search: the power at every one of many currents. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void noCurrentGivesMore(@ForAll("strings") List<ModuleInSun> groups) {
        ShadeComparison comparison = compare(groups);
        List<IvCurve> curves = groups.stream()
                .map(group -> SingleDiode.of(group.module()).at(group.irradiance(), group.cell()))
                .toList();
        double most = curves.stream()
                .mapToDouble(curve -> curve.shortCircuitCurrent().amperes())
                .max()
                .orElse(0);
        for (int step = 1; step < 40; step++) {
            double amperes = most * step / 40;
            double volts = 0;
            for (int i = 0; i < groups.size(); i++) {
                volts += groups.get(i).count() * voltsAt(curves.get(i), amperes);
            }
            assertThat(amperes * volts)
                    .isLessThanOrEqualTo(comparison.stringPower().watts() + WATTS);
        }
    }

    /** The voltage at a current by halving the interval, from the current at a voltage. */
    private static double voltsAt(IvCurve curve, double amperes) {
        if (amperes >= curve.shortCircuitCurrent().amperes()) {
            // somewhere between the drop of the diodes and zero: the least is safe for a bound
            return -POLICY.bypassVoltage().volts();
        }
        double low = 0;
        double high = curve.openCircuitVoltage().volts();
        for (int step = 0; step < 50; step++) {
            double middle = (low + high) / 2;
            if (curve.current(Voltage.volts(middle)).amperes() > amperes) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void orderDoesNotMatter(@ForAll("strings") List<ModuleInSun> groups) {
        List<ModuleInSun> reversed = new ArrayList<>(groups);
        Collections.reverse(reversed);
        assertThat(compare(reversed).stringPower().watts())
                .isCloseTo(compare(groups).stringPower().watts(), within(WATTS));
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void moreLightNeverGivesLess(
            @ForAll("strings") List<ModuleInSun> groups, @ForAll @DoubleRange(min = 1, max = 300) double more) {
        List<ModuleInSun> brighter = new ArrayList<>(groups);
        ModuleInSun first = groups.get(0);
        brighter.set(
                0,
                first.withIrradiance(
                        Irradiance.wattsPerSquareMetre(first.irradiance().wattsPerSquareMetre() + more)));
        assertThat(compare(brighter).stringPower().watts())
                .isGreaterThanOrEqualTo(compare(groups).stringPower().watts() - WATTS);
    }

    private static ShadeComparison compare(List<ModuleInSun> groups) {
        return ShadeComparison.of(new StringInSun(groups), POLICY);
    }
}
