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
import net.jqwik.api.constraints.IntRange;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Ratio;

/** Whatever is needed and whatever a module brings. */
class ArraySizeProperties {
    private static final ArrayPolicy POLICY = ArrayPolicy.standard();
    private static final PvModule MODULE = Catalog.sample().modules().get(0);

    @Provide
    Arbitrary<ArrayNeed> needs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 20_000).list().ofSize(12),
                        Arbitraries.doubles().between(0, 1).list().ofSize(12),
                        Arbitraries.of(Chemistry.class))
                .as((energies, dark, chemistry) -> new ArrayNeed(
                        energies.stream().map(Energy::wattHours).toList(),
                        dark.stream().map(Ratio::of).toList(),
                        chemistry));
    }

    @Provide
    Arbitrary<ModuleYield> yields() {
        return Combinators.combine(
                        Arbitraries.of(ChargePath.class),
                        Arbitraries.doubles().between(20, 3000).list().ofSize(12))
                .as((path, energies) -> new ModuleYield(
                        MODULE,
                        path,
                        1,
                        energies.stream().map(Energy::wattHours).toList()));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void theArrayCoversEveryMonthAndOneModuleLessDoesNot(
            @ForAll("needs") ArrayNeed need, @ForAll("yields") ModuleYield moduleYield) {
        ArraySize size = ArraySize.of(need, moduleYield, POLICY);

        assertThat(size.months())
                .allSatisfy(month -> assertThat(month.yield().wattHours())
                        .isGreaterThanOrEqualTo(month.need().wattHours() * 1.3 * (1 - 1e-9)));
        ArraySize less = size.withModules(size.modules() - 1);
        assertThat(less.inDesignMonth().yield().wattHours())
                .isLessThan(less.inDesignMonth().need().wattHours() * 1.3);
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void moreNeedNeverTakesFewerModules(
            @ForAll("needs") ArrayNeed need,
            @ForAll("yields") ModuleYield moduleYield,
            @ForAll @IntRange(min = 0, max = 11) int month,
            @ForAll @DoubleRange(min = 0, max = 5000) double more) {
        List<Energy> energies = new ArrayList<>(need.dailyEnergy());
        energies.set(month, energies.get(month).plus(Energy.wattHours(more)));

        assertThat(ArraySize.of(need.withDailyEnergy(energies), moduleYield, POLICY)
                        .modules())
                .isGreaterThanOrEqualTo(ArraySize.of(need, moduleYield, POLICY).modules());
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void moreAfterDarkNeverTakesFewerModules(
            @ForAll("needs") ArrayNeed need, @ForAll("yields") ModuleYield moduleYield) {
        ArrayNeed allNight = need.withAfterDark(Collections.nCopies(12, Ratio.ONE));

        assertThat(ArraySize.of(allNight, moduleYield, POLICY).exactModules())
                .isGreaterThanOrEqualTo(ArraySize.of(need, moduleYield, POLICY).exactModules());
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void needAndYieldScaleTogether(
            @ForAll("needs") ArrayNeed need,
            @ForAll("yields") ModuleYield moduleYield,
            @ForAll @DoubleRange(min = 0.1, max = 4) double scale) {
        ArrayNeed scaledNeed = need.withDailyEnergy(
                need.dailyEnergy().stream().map(energy -> energy.times(scale)).toList());
        ModuleYield scaledYield = new ModuleYield(
                MODULE,
                moduleYield.path(),
                1,
                moduleYield.daily().stream().map(energy -> energy.times(scale)).toList());

        double expected = ArraySize.of(need, moduleYield, POLICY).exactModules().fraction();
        assertThat(ArraySize.of(scaledNeed, scaledYield, POLICY).exactModules().fraction())
                .isCloseTo(expected, within(1e-12 * expected));
        assertThat(ArraySize.of(scaledNeed, moduleYield, POLICY).exactModules().fraction())
                .isCloseTo(expected * scale, within(1e-12 * expected * scale));
    }
}
