package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.gridInverters;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.none;

import java.util.List;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.MicroinverterBuilder;
import org.daybank.core.inverter.Phases;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

class GridDesignerTest {
    private static final PvModule MODULE = Catalog.sample().modules().stream()
            .filter(module -> module.model().equals("PL-410"))
            .findFirst()
            .orElseThrow();

    /** One module on each, 98 % efficient, 105 EUR. */
    private static final Microinverter SINGLE = unit("single", 400, 1, 0.98, 105);

    /** Four modules on each, 90 % efficient, 400 EUR: cheaper where their number is a multiple of four. */
    private static final Microinverter FOURFOLD = unit("fourfold", 1600, 4, 0.90, 400);

    private static Microinverter unit(String model, double watts, int modules, double efficiency, int price) {
        Microinverter like = Catalog.sample().microinverters().stream()
                .filter(unit -> unit.model().equals("TM-1600T"))
                .findFirst()
                .orElseThrow();
        return MicroinverterBuilder.builder(like)
                .model(model)
                .power(Power.watts(watts))
                .modulesOnEach(modules)
                .phases(Phases.THREE)
                .efficiency(Ratio.of(efficiency))
                .price(Money.of(price + ".00", "EUR"))
                .build();
    }

    private static DesignOutcome design(GridWish wish, Microinverter... units) {
        return SystemDesigner.design(
                QuarryLane.BRIEF.withGrid(wish),
                new Catalog(List.of(MODULE), List.of(), List.of(), List.of(), List.of(), List.of(units), List.of()));
    }

    @Test
    void throughEachInverterAsManyModulesAsItTakes() {
        // What one module brings in a year through the single unit, over 0.98 and over the use: x
        double one = grid(design(new GridWish(1, null, null, null), SINGLE))
                .energy()
                .coverage()
                .orElseThrow()
                .fraction();
        double x = one / 0.98;
        // Wished: 11.712 x. Through 98 % 11.712 / 0.98 = 11.95: 12 modules, 12 · 105 = 1260 EUR of units, 12 · 151 =
        // 1812 EUR of
        // modules: 3072 EUR. Through 90 % 11.712 / 0.90 = 13.01: 14 modules on 4 units, 1600 + 2114 = 3714 EUR. The 12
        // modules
        // of the one on three units of the other for 1200 EUR would be cheaper, but bring 10.8 x.
        GridDesign feed = grid(design(new GridWish(null, null, Ratio.of(11.712 * x), null), SINGLE, FOURFOLD));
        assertThat(feed.system().microinverters().orElseThrow().product()).isEqualTo("single");
        assertThat(feed.system().modules()).isEqualTo(12);
        assertThat(feed.energy().coverage().orElseThrow().fraction()).isGreaterThanOrEqualTo(11.712 * x);
        GridDesign fourfold = grid(design(new GridWish(null, null, Ratio.of(11.712 * x), null), FOURFOLD));
        assertThat(fourfold.system().modules()).isEqualTo(14);
    }

    @Test
    void whereNothingFitsEveryInverterSaysWhy() {
        // 400 W of module on an input for 300 W; and 410 W on a unit of 100 W: a ratio of 4.1
        Microinverter small = MicroinverterBuilder.builder(SINGLE)
                .model("small")
                .maximumModulePower(Power.watts(300))
                .build();
        Microinverter weak = MicroinverterBuilder.builder(small)
                .model("weak")
                .power(Power.watts(100))
                .fullPowerUpTo(Temperature.celsius(60))
                .build();
        DesignOutcome design = design(new GridWish(12, null, null, null), weak, small);

        assertThat(isDesign(design)).isFalse();
        var rejected = gridInverters(design).orElseThrow().microinverters().rejected();
        assertThat(rejected).extracting(Rejection::product).containsExactly("weak", "small");
        assertThat(rejected.get(0).failedChecks())
                .extracting(check -> check.rule().code())
                .contains("modulePower", "dcAcRatio");
        assertThat(rejected.get(1).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("modulePower");
        // the nearest of them is the reason
        assertThat(none(design).failedChecks())
                .extracting(check -> check.rule().code())
                .containsExactly("modulePower");
        assertThat(none(design).failedChecks().get(0).message().toString()).contains("small");
    }
}
