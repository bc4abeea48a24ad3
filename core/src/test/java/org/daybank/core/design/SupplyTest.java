package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.batteries;
import static org.daybank.core.design.Designs.isDesign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.catalog.StockLine;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.working.Check;
import org.daybank.core.working.Rejection;
import org.junit.jupiter.api.Test;

/** What the customer cannot wait for is rejected with its reason, and the design is made of the rest. */
class SupplyTest {
    private static final Catalog SAMPLE = Catalog.sample();
    private static final DesignOutcome UNHURRIED = design(SAMPLE, null);
    private static final BillLine BATTERY = line(UNHURRIED, "battery");
    private static final BillLine MODULE = line(UNHURRIED, "module");

    private static DesignOutcome design(Catalog catalog, TimeSpan within) {
        return SystemDesigner.design(
                LarkspurRidge.BRIEF.withWishes(Wishes.none().withDeliveredWithin(within)), catalog);
    }

    private static BillLine line(DesignOutcome design, String part) {
        return design.billOfMaterials().orElseThrow().lines().stream()
                .filter(line -> line.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    /** Plenty of everything but of one model. */
    private static Catalog allButOne(StockLine scarce) {
        return stocked(model -> true, scarce);
    }

    private static Catalog stocked(Predicate<String> known, StockLine... lines) {
        List<StockLine> stock = new ArrayList<>(List.of(lines));
        SAMPLE.stock().stream()
                .map(StockLine::model)
                .filter(known)
                .filter(model -> stock.stream().noneMatch(line -> line.model().equals(model)))
                .forEach(model -> stock.add(new StockLine(model, 1_000, null)));
        return new Catalog(
                SAMPLE.modules(),
                SAMPLE.batteries(),
                SAMPLE.controllers(),
                SAMPLE.inverters(),
                SAMPLE.stringInverters(),
                SAMPLE.microinverters(),
                stock);
    }

    private static Check brokenDelivery(List<Rejection> rejected, String model) {
        return rejected.stream()
                .filter(rejection -> rejection.product().equals(model))
                .flatMap(rejection -> rejection.failedChecks().stream())
                .filter(check -> check.rule().code().equals("delivery"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutTheWishAScarceProductIsSelectedWithAFailedCheck() {
        StockLine none = new StockLine(BATTERY.product(), 0, null);
        DesignOutcome design = design(allButOne(none), null);
        assertThat(design.billOfMaterials()).isEqualTo(UNHURRIED.billOfMaterials());
        assertThat(design.checks())
                .filteredOn(check -> check.rule().code().equals("delivery"))
                .singleElement()
                .satisfies(check -> {
                    assertThat(check.passed()).isFalse();
                    assertThat(check.message().toString())
                            .isEqualTo(
                                    "Required number %s of %s exceeds the stock 0, and the lead time of the others is unknown."
                                            .formatted(BATTERY.count(), BATTERY.product()));
                });
    }

    @Test
    void whatIsInStockOrOnOrderNeedsNoRemark() {
        StockLine onOrder = new StockLine(BATTERY.product(), 0, TimeSpan.days(9));
        assertThat(design(allButOne(onOrder), null).checks())
                .extracting(check -> check.rule().code())
                .doesNotContain("delivery");
        StockLine enough = new StockLine(BATTERY.product(), BATTERY.count(), null);
        assertThat(design(allButOne(enough), null).checks())
                .extracting(check -> check.rule().code())
                .doesNotContain("delivery");
    }

    @Test
    void whatIsOutOfStockWithoutALeadTimeIsNotSelectedWhereATimeIsRequired() {
        StockLine none = new StockLine(BATTERY.product(), 0, null);
        DesignOutcome design = design(allButOne(none), TimeSpan.days(730));
        assertThat(line(design, "battery").product()).isNotEqualTo(BATTERY.product());
        assertThat(brokenDelivery(batteries(design).rejected(), BATTERY.product())
                        .message()
                        .toString())
                .contains("the lead time of the others is unknown");
    }

    @Test
    void oneBatteryTooFewInStockAndAnotherIsChosen() {
        int wanted = BATTERY.count();
        DesignOutcome enough = design(allButOne(new StockLine(BATTERY.product(), wanted, null)), TimeSpan.ZERO);
        assertThat(line(enough, "battery").product()).isEqualTo(BATTERY.product());

        DesignOutcome tooFew =
                design(allButOne(new StockLine(BATTERY.product(), wanted - 1, TimeSpan.days(9))), TimeSpan.ZERO);
        assertThat(line(tooFew, "battery")).isNotEqualTo(BATTERY);
        assertThat(tooFew.billOfMaterials().orElseThrow().total())
                .isGreaterThan(UNHURRIED.billOfMaterials().orElseThrow().total());
        Check check = brokenDelivery(batteries(tooFew).rejected(), BATTERY.product());
        assertThat(check.value().orElseThrow()).isEqualTo(TimeSpan.days(9));
        assertThat(check.limit().orElseThrow()).isEqualTo(TimeSpan.ZERO);
        assertThat(check.message().toString())
                .contains(BATTERY.product())
                .contains("in stock " + (wanted - 1))
                .contains("9 d");
    }

    @Test
    void whatComesInTimeIsTaken() {
        StockLine onOrder = new StockLine(BATTERY.product(), 0, TimeSpan.days(9));
        DesignOutcome patient = design(allButOne(onOrder), TimeSpan.days(9));
        assertThat(line(patient, "battery")).isEqualTo(BATTERY);
    }

    @Test
    void aModuleNobodyKnowsTheStockOfIsNotPromised() {
        DesignOutcome design = design(stocked(model -> !model.equals(MODULE.product())), TimeSpan.days(30));
        assertThat(line(design, "module").product()).isNotEqualTo(MODULE.product());
        assertThat(isDesign(design)).isTrue();
    }
}
