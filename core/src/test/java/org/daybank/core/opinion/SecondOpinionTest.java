package org.daybank.core.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.energy;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.system;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.YieldModel;
import org.daybank.core.bank.BankCapacity;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.NoDesign;
import org.daybank.core.design.SystemDesigner;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.sun.SunMonth;
import org.junit.jupiter.api.Test;

/**
 * Random briefs designed by {@code core} and by the second opinion, held against each other stage by stage and in
 * the whole selection, for which the second opinion tries every combination at every voltage.
 */
class SecondOpinionTest {
    /** A build takes a sample; a thousand, or any other number, with the system property {@code daybank.opinion.briefs}. */
    private static final int BRIEFS = Integer.getInteger("daybank.opinion.briefs", 200);

    private static final Catalog CATALOG = Catalog.sample();
    private static final SecondOpinion.Offer OFFER = Plain.offer(CATALOG);

    /** The same method in another order of operations. */
    private static final double SAME = 1e-9;

    /** How far a limit is moved to see whether a different choice was but a matter of rounding; as wide as the classes do. */
    private static final double EDGE = 1e-3;

    /** One brief, and what both make of it. */
    private record Case(int number, DesignBrief brief, DesignOutcome design, Ask ask, SecondOpinion opinion) {
        static Case of(int number, DesignBrief brief) {
            DesignOutcome design = SystemDesigner.design(brief, CATALOG);
            Ask ask = Plain.ask(brief, design.sun().plane());
            return new Case(number, brief, design, ask, new SecondOpinion(ask, OFFER));
        }
    }

    @Test
    void bothComeToTheSame() {
        RandomBriefs briefs = new RandomBriefs(20_240_611, YieldModel.PROPORTIONAL);
        List<DesignBrief> all =
                IntStream.range(0, BRIEFS).mapToObj(i -> briefs.next()).toList();
        List<Choice> choices = IntStream.range(0, BRIEFS)
                .parallel()
                .mapToObj(i -> compare(Case.of(i, all.get(i))))
                .toList();

        // no comparison without both: most briefs can be served, some cannot
        assertThat(choices.stream().filter(Choice::complete).count()).isBetween(BRIEFS / 2L, BRIEFS * 19L / 20);
        // a choice that turns on the last digits of a limit is an excuse that must stay rare
        assertThat(choices.stream().filter(Choice::onTheEdge).count()).isLessThanOrEqualTo(Math.max(1, BRIEFS / 200));
    }

    /** How the selections compare. */
    private record Choice(boolean complete, boolean onTheEdge) {}

    private static Choice compare(Case c) {
        sun(c);
        tilt(c);
        peaks(c);
        if (isDesign(c.design)) {
            stages(c);
        }
        boolean same = sameChoice(c, c.opinion.best());
        boolean edge = !same && (movedAgrees(c, 1 + EDGE) || movedAgrees(c, 1 - EDGE));
        assertThat(same || edge)
                .as("brief %s: core chose %s, the opinion %s", c.number, told(c.design), told(c.opinion.best()))
                .isTrue();
        return new Choice(isDesign(c.design), edge);
    }

    private static boolean sameChoice(Case c, SecondOpinion.Whole whole) {
        if (whole == null || !isDesign(c.design)) {
            return whole == null && !isDesign(c.design);
        }
        return whole.volts() == system(c.design).nominalVoltage().volts()
                && whole.price()
                        == c.design.billOfMaterials().orElseThrow().total().minorUnits();
    }

    /** Whether the opinion agrees once array and clipping, which stand on the classes, are moved a little. */
    private static boolean movedAgrees(Case c, double factor) {
        Ask ask = Plain.ask(c.brief, c.design.sun().plane());
        ask.arrayToLoadRatio *= factor;
        ask.clippingLimit += factor - 1;
        return sameChoice(c, new SecondOpinion(ask, OFFER).best());
    }

    private static void sun(Case c) {
        for (int m = 0; m < 12; m++) {
            SunMonth core = c.design.sun().months().get(m);
            SunOpinion.Month own = c.opinion.sun[m];
            double whole = own.extraterrestrial;
            near(c, "declination", Math.toRadians(core.declination().degrees()), own.declination, 1);
            near(c, "sunset", core.sunsetHourAngle().radians(), own.sunset, 1);
            near(c, "extraterrestrial", core.extraterrestrial().wattHoursPerSquareMetre(), whole, whole);
            near(c, "clearness", core.clearness().fraction(), own.clearness, 1);
            near(c, "diffuse fraction", core.diffuseFraction().fraction(), own.diffuseFraction, 1);
            near(c, "beam", core.beam().wattHoursPerSquareMetre(), own.beam, whole);
            near(c, "sky", core.skyDiffuse().wattHoursPerSquareMetre(), own.sky, whole);
            near(c, "ground", core.ground().wattHoursPerSquareMetre(), own.ground, whole);
            near(c, "plane of array", core.planeOfArray().wattHoursPerSquareMetre(), own.planeOfArray(), whole);
        }
    }

    /** Where no tilt is fixed, none makes the hardest month easier: the one with the most need for its sun. */
    private static void tilt(Case c) {
        if (c.brief.array().tilt() != null) {
            return;
        }
        LoadOpinion.Month[] loads =
                LoadOpinion.months(c.ask, LoadOpinion.Curve.stated(c.ask, c.opinion.peak), c.opinion.sun);
        double chosen = hardest(loads, c.opinion.sun);
        Ask other = Plain.ask(c.brief, c.design.sun().plane());
        for (int tilt = 0; tilt <= 90; tilt += 3) {
            other.tilt = tilt;
            // found to a hundredth of a degree, around a corner between two months at worst: 1e-4 of a radian and more
            assertThat(hardest(loads, SunOpinion.meanDays(other)))
                    .as("hardest month at a tilt of %s° in brief %s", tilt, c.number)
                    .isGreaterThanOrEqualTo(chosen * (1 - 2e-4));
        }
    }

    private static double hardest(LoadOpinion.Month[] loads, SunOpinion.Month[] sun) {
        double hardest = 0;
        for (int m = 0; m < 12; m++) {
            hardest = Math.max(hardest, loads[m].daily / sun[m].planeOfArray());
        }
        return hardest;
    }

    private static void peaks(Case c) {
        EnergyBudget core = c.design.budget();
        LoadOpinion.Peak own = c.opinion.peak;
        near(c, "peak", core.peak().running().watts(), own.watts, own.watts);
        near(c, "peak VA", core.peak().runningApparent().voltAmperes(), own.voltAmps, own.voltAmps);
        near(c, "surge", core.peak().surge().watts(), own.surgeWatts, own.surgeWatts);
        near(c, "surge VA", core.peak().surgeApparent().voltAmperes(), own.surgeVoltAmps, own.surgeVoltAmps);
        near(c, "DC peak", core.dcPeak().watts(), own.dcWatts, own.dcWatts);
    }

    /** Each stage for the parts that core chose. */
    private static void stages(Case c) {
        Goods.Battery battery = named(OFFER.batteries(), system(c.design).bank().product(), Goods.Battery::model);
        ChargerFit charger = system(c.design).chargeController();
        Goods.Controller controller = named(OFFER.controllers(), charger.product(), Goods.Controller::model);
        Goods.Inverter inverter = null;
        LoadOpinion.Curve curve = LoadOpinion.Curve.NONE;
        var chosen = system(c.design).inverter().orElse(null);
        if (chosen != null) {
            inverter = named(OFFER.inverters(), chosen.product(), Goods.Inverter::model);
            curve = LoadOpinion.Curve.of(inverter, chosen.count());
            assertThat(chosen.count())
                    .as("inverters in brief %s", c.number)
                    .isEqualTo(c.opinion.inverters(
                            inverter, system(c.design).nominalVoltage().volts()));
        }
        BankOpinion.Bank bank = BankOpinion.placed(
                c.ask, battery, system(c.design).nominalVoltage().volts());
        LoadOpinion.Month[] own =
                c.opinion.withOwnDraw(LoadOpinion.months(c.ask, curve, c.opinion.sun), bank, counted(c, bank));
        assertThat(counted(c, bank))
                .as("what the controllers draw is counted in brief %s", c.number)
                .isGreaterThanOrEqualTo(controller.selfWatts() * charger.count() * (1 - SAME) - SAME);
        budget(c, own);
        BankOpinion.size(
                c.ask,
                bank,
                BankOpinion.Need.of(
                        c.ask, c.opinion.peak, inverter, chosen == null ? 0 : chosen.count(), curve, List.of(own)));
        bank(c, bank);
        array(c, own, bank, controller);
    }

    /** What core counted for controllers: the standing draw without the heater. */
    private static double counted(Case c, BankOpinion.Bank bank) {
        return c.design.budget().months().get(0).standingEnergy().wattHours() / 24
                - BankOpinion.heaterWatts(c.ask, bank, 0, false);
    }

    private static void budget(Case c, LoadOpinion.Month[] own) {
        for (int m = 0; m < 12; m++) {
            MonthBudget core = c.design.budget().months().get(m);
            // losses are differences: they are as exact as what they are taken from
            double whole = own[m].daily;
            near(c, "AC", core.acEnergy().wattHours(), own[m].ac, whole);
            near(c, "DC", core.dcEnergy().wattHours(), own[m].dc, whole);
            near(c, "inverter loss", core.inverterLoss().wattHours(), own[m].inverterLoss, whole);
            near(c, "wiring loss", core.wiringLoss().wattHours(), own[m].wiringLoss, whole);
            near(c, "daily energy", core.dailyEnergy().wattHours(), own[m].daily, whole);
            near(c, "worst run", core.worstDailyEnergy().wattHours(), own[m].worst, own[m].worst);
            near(c, "after dark", core.afterDark().fraction(), own[m].dark, 1);
            near(c, "running power", core.runningPower().watts(), own[m].running, own[m].running);
        }
    }

    private static void bank(Case c, BankOpinion.Bank own) {
        BankCapacity core = part(system(c.design).bank().capacity());
        near(c, "cells", system(c.design).bank().temperature().celsius(), own.temperature, 1);
        near(c, "autonomy", core.autonomyCharge().ampereHours(), own.autonomyCharge, own.autonomyCharge);
        near(c, "by depth", core.byDepth().ampereHours(), own.byDepth, own.byDepth);
        near(c, "by daily depth", core.byDailyDepth().ampereHours(), own.byDailyDepth, own.byDailyDepth);
        near(c, "by surge", core.bySurge().ampereHours(), own.bySurge, own.bySurge);
        near(c, "cold", core.temperatureFactor().fraction(), own.factor, 1);
        near(c, "capacity", core.requiredCapacity().ampereHours(), own.required, own.required);
        near(c, "hours", core.dischargeTime().hours(), own.hours, own.hours);
        var layout = system(c.design).bankLayout();
        assertThat(layout.series()).as("series in brief %s", c.number).isEqualTo(own.series);
        // an array may ask for more strings than the loads; then fewer must not take its current
        double current = system(c.design).chargeController().chargingCurrent().amperes();
        assertThat(layout.parallel())
                .as("strings in brief %s", c.number)
                .isGreaterThanOrEqualTo(own.parallel)
                .matches(strings -> strings == own.parallel || own.mostChargeAmps(c.ask, strings - 1) < current);
    }

    private static void array(Case c, LoadOpinion.Month[] own, BankOpinion.Bank bank, Goods.Controller controller) {
        ArraySize core = energy(c.design).monthlyBalance();
        Goods.Module module = named(OFFER.modules(), core.product(), Goods.Module::model);
        Goods.Cells cells = bank.battery.cells();
        boolean passesOn = controller.kind().equals("pwm");
        double factor = passesOn ? bank.trueNominal / system(c.design).array().series() : controller.efficiency();
        double efficiency = passesOn ? cells.chargeEfficiency() : cells.energyEfficiency();
        double[] yields = passesOn
                ? YieldOpinion.passedOn(c.ask, module, c.opinion.sun)
                : YieldOpinion.tracked(c.ask, module, c.opinion.sun);
        double[] more = new double[12];
        for (int m = 0; m < 12; m++) {
            double need = YieldOpinion.need(own[m], efficiency);
            near(c, "need", core.months().get(m).need().wattHours(), need, need);
            double brought = yields[m] * factor;
            more[m] = yields[m] + (passesOn ? 0 : YieldOpinion.classError(module, c.opinion.sun[m]));
            assertThat(core.months().get(m).moduleYield().wattHours())
                    .as("yield of brief %s in month %s", c.number, m)
                    .isBetween(brought * (1 - SAME), more[m] * factor * (1 + SAME));
        }
        double most = YieldOpinion.modules(c.ask, List.of(own), yields, factor, efficiency);
        double least = YieldOpinion.modules(c.ask, List.of(own), more, factor, efficiency);
        assertThat(core.exactModules().fraction())
                .as("modules of brief %s", c.number)
                .isBetween(least * (1 - SAME), most * (1 + SAME));
        assertThat(system(c.design).array().modules())
                .as("whole modules of brief %s", c.number)
                .isGreaterThanOrEqualTo((int) Math.ceil(least - SAME));
    }

    private static void near(Case c, String what, double core, double own, double scale) {
        assertThat(Math.abs(core - own))
                .as("%s in brief %s: core has %s, the opinion %s", what, c.number, core, own)
                .isLessThanOrEqualTo(SAME * Math.abs(scale));
    }

    private static <T> T named(List<T> products, String model, Function<T, String> name) {
        return products.stream()
                .filter(product -> name.apply(product).equals(model))
                .findFirst()
                .orElseThrow();
    }

    private static <T> T part(T part) {
        return Objects.requireNonNull(part);
    }

    private static String told(DesignOutcome design) {
        return isDesign(design)
                ? design.billOfMaterials().orElseThrow().lines().toString()
                : ((NoDesign) design).failedChecks().toString();
    }

    private static String told(SecondOpinion.Whole whole) {
        return whole == null
                ? "nothing"
                : whole.volts() + " V, " + whole.array() + " of "
                        + whole.module().model() + " on "
                        + whole.controller().model() + ", " + whole.bankStrings() + " strings of "
                        + whole.bank().battery.model() + ", " + whole.inverters() + " inverters, " + whole.price();
    }
}
