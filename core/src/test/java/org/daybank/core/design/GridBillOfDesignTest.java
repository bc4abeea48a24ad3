package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.design.Designs.backup;
import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.system;

import java.util.Objects;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.grid.EnergyPrice;
import org.daybank.core.grid.GridBill;
import org.daybank.core.grid.GridFlows;
import org.daybank.core.grid.TariffBuilder;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

/** What a grid makes of a design: the bill of an array that feeds it, the hours of a panel when it is away. */
class GridBillOfDesignTest {
    private static final DesignBrief FEEDING =
            LarkspurRidge.BRIEF.withKind(SystemKind.GRID_INTERACTIVE).withWishes(Wishes.none());

    private static DesignBrief billed(Money importPrice, Money exportPrice) {
        return FEEDING.withGrid(new GridWish(
                4,
                null,
                null,
                TariffBuilder.builder()
                        .importPrice(new EnergyPrice(importPrice, null))
                        .exportPrice(new EnergyPrice(exportPrice, null))
                        .build()));
    }

    @Test
    void flowsCloseAndAreThoseOfTheChosenInverter() {
        GridDesign feed = feed(FEEDING);
        GridFlows flows = feed.evidence().flows().orElseThrow();
        assertThat(feed.evidence().bill()).isEmpty();
        assertThat(flows.yearly().selfUse().plus(flows.yearly().imported()).wattHours())
                .isCloseTo(
                        flows.yearly().load().wattHours(),
                        within(1e-6 * flows.yearly().load().wattHours()));
        // hours of made-up years and the monthly path tell of one array: within a fifth of each other
        double yearly = feed.energy().yearlyYield().wattHours();
        assertThat(flows.yearly().selfUse().plus(flows.yearly().exported()).wattHours())
                .isBetween(0.8 * yearly, 1.2 * yearly);
        assertThat(flows.yearly().load().wattHours())
                .isCloseTo(
                        feed.energy().yearlyUse().wattHours(),
                        within(0.01 * feed.energy().yearlyUse().wattHours()));
    }

    @Test
    void theBillIsPricedByTheTariffAndPaysForTheParts() {
        DesignOutcome design =
                SystemDesigner.design(billed(Money.of("0.40", "EUR"), Money.of("0.10", "EUR")), Catalog.sample());
        GridEvidence evidence = grid(design).evidence();
        GridBill bill = evidence.bill().orElseThrow();
        GridFlows flows = evidence.flows().orElseThrow();
        // saved: what is used at once at 0.40, what is sold at 0.10
        double saved = flows.yearly().selfUse().kilowattHours() * 0.40
                + flows.yearly().exported().kilowattHours() * 0.10;
        assertThat(bill.yearlySaving().minorUnits()).isCloseTo(Math.round(saved * 100), within(60L));
        double years = design.billOfMaterials().orElseThrow().total().minorUnits()
                / (double) bill.yearlySaving().minorUnits();
        assertThat(Objects.requireNonNull(bill.payBack()).years()).isCloseTo(years, within(1e-9));
    }

    @Test
    void noYearIsRunWhereNoneIsWanted() {
        DesignBrief unrun = FEEDING.withPolicy(
                FEEDING.policy().withSystem(FEEDING.policy().system().withSimulatedYears(0)));
        assertThat(feed(unrun).evidence().flows()).isEmpty();
    }

    @Test
    void anOutageLastsAsLongAsTheBankHoldsTheEssentials() {
        DesignOutcome design =
                SystemDesigner.design(LarkspurRidge.BRIEF.withKind(SystemKind.GRID_BACKUP), Catalog.sample());
        EssentialPanel panel = backup(design).essentialPanel();
        // the capacity covers three days at the allowed depth, its margin, its losses and whole batteries on top
        assertThat(panel.backup().shortest().days()).isBetween(3.0, 14.0);
        Ratio depth = design.brief()
                .policy()
                .bank()
                .depthOfDischarge()
                .of(system(design).bankLayout().battery().chemistry().family());
        Energy usable = panel.bank().times(depth);
        Power mean = panel.backup().meanLoad();
        assertThat(panel.backup().atMeanLoad().hours())
                .isCloseTo(Math.min(14 * 24, usable.wattHours() / mean.watts()), within(1e-6));
    }

    private static GridDesign feed(DesignBrief brief) {
        return grid(SystemDesigner.design(brief, Catalog.sample()));
    }
}
