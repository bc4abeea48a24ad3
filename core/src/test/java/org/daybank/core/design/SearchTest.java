package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankHousing;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.SiteBuilder;
import org.junit.jupiter.api.Test;

/** Combinations that only a look at every one of them finds, on shelves of a few parts. */
class SearchTest {
    private static final Catalog SAMPLE = Catalog.sample();
    private static final PvModule MODULE = module("PL-100");

    /** 100 Ah at 12.8 V, all of it at 25 °C. */
    private static final Battery BATTERY = SAMPLE.batteries().stream()
            .filter(battery -> battery.model().equals("BK-L12-100"))
            .findFirst()
            .orElseThrow()
            .withPrice(Money.of("300", "EUR"));

    /** A bright place in the warm; 9.7 W through a wiring of 97 % are 10 W at the bank. */
    private static final DesignBrief BRIEF = DesignBriefBuilder.builder()
            .site(SiteBuilder.builder()
                    .latitude(Latitude.degrees(10))
                    .recordLow(Temperature.celsius(15))
                    .months(MonthlyClimateBuilder.builder()
                            .clearness(List.of(Ratio.of(0.6)))
                            .meanAir(Collections.nCopies(12, Temperature.celsius(25)))
                            .build())
                    .build())
            .loads(List.of(LoadBuilder.builder()
                    .name("radio")
                    .supply(Supply.DC)
                    .power(Power.watts(9.7))
                    .hoursPerDay(24.0)
                    .build()))
            .bank(new BankHousing(BankLocation.INDOORS, Temperature.celsius(25), null, null))
            .build();

    private static PvModule module(String model) {
        return SAMPLE.modules().stream()
                .filter(module -> module.model().equals(model))
                .findFirst()
                .orElseThrow();
    }

    private static ChargeController controller(String name, String price, double selfConsumption) {
        return SAMPLE.controllers().stream()
                .filter(controller -> controller.model().equals("HN-T15"))
                .findFirst()
                .orElseThrow()
                .withModel(name)
                .withPrice(Money.of(price, "EUR"))
                .withSelfConsumption(Power.watts(selfConsumption));
    }

    private static BillOfMaterials bill(DesignBrief brief, Battery battery, ChargeController... controllers) {
        Catalog shelf = new Catalog(List.of(MODULE), List.of(battery), List.of(controllers), List.of());
        return SystemDesigner.design(brief, shelf).billOfMaterials().orElseThrow();
    }

    @Test
    void aFrugalControllerMaySpareABattery() {
        // 3.69 days at 10 W and 0.5 W: 252 Wh · 3.69 / 12.8 V / 0.8 · 1.1 = 99.89 Ah, one battery; at 10 W and 1 W
        // 264 Wh: 104.65 Ah, two. One battery and the dear controller beat two and the cheap one.
        DesignBrief brief = BRIEF.withPolicy(
                DesignPolicy.standard().withBank(DesignPolicy.standard().bank().withAutonomy(TimeSpan.days(3.69))));
        BillOfMaterials bill = bill(brief, BATTERY, controller("cheap", "50", 1), controller("frugal", "60", 0.5));

        assertThat(bill.lines())
                .anyMatch(line -> line.product().equals("frugal") && line.count() == 1)
                .anyMatch(line -> line.product().equals(BATTERY.model()) && line.count() == 1);
    }

    @Test
    void moreStringsTakeMoreOfTheArraysCurrent() {
        // one string would carry the loads, 240 Wh · 3 / 12.8 V / 0.8 · 1.1 = 77 Ah; in full sun each module brings 100
        // W · 0.95
        // · 0.98 · 0.98 · 0.96 = 87.59 W, 6.843 A, and a string takes no more than 5 A
        BillOfMaterials bill =
                bill(BRIEF, BATTERY.withMaximumChargeCurrent(Current.amperes(5)), controller("only", "50", 0.5));

        int modules = bill.lines().get(0).count();
        assertThat(bill.lines())
                .anyMatch(line ->
                        line.product().equals(BATTERY.model()) && line.count() == Math.ceil(modules * 6.843 / 5));
    }
}
