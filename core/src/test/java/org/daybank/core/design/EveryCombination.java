package org.daybank.core.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleOutput;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.bank.BankNeedBuilder;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerNeedBuilder;
import org.daybank.core.charger.ControllerKind;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterNeed;
import org.daybank.core.inverter.InverterNeedBuilder;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.LoadProfile;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.load.PeakLoad;
import org.daybank.core.load.StandingDraw;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.jspecify.annotations.Nullable;

/**
 * Every combination of products, strings and controllers counted, each held against the rules by the public functions of its
 * kind: what the search has to find, without any of its bounds. For briefs that fix tilt and azimuth and know no source but the
 * sun, and for small catalogues only.
 */
final class EveryCombination {
    private final DesignBrief brief;
    private final Catalog catalog;
    private final LoadProfile loads;
    private final IrradianceDistribution sunshine;
    private final Temperature lowest;
    private final List<Found> found = new ArrayList<>();

    /** A whole that keeps every rule. */
    record Found(double volts, boolean shunt, long minorUnits) {}

    private EveryCombination(DesignBrief brief, Catalog catalog) {
        this.brief = brief;
        this.catalog = catalog;
        this.loads = brief.profile();
        Plane plane = new Plane(
                Objects.requireNonNull(brief.array().tilt()),
                Objects.requireNonNull(brief.array().azimuth()));
        this.sunshine = IrradianceDistribution.of(
                brief.resolved().site(), plane, brief.policy().sun());
        this.lowest = brief.bank()
                .lowest(
                        brief.resolved().site().months().coldestMonth(),
                        brief.resolved().site().recordLow(),
                        brief.policy().system().coldSpell());
    }

    /** All that keep every rule. */
    static List<Found> of(DesignBrief brief, Catalog catalog) {
        EveryCombination all = new EveryCombination(brief, catalog);
        for (Voltage voltage : brief.wishes().voltages()) {
            for (Chemistry chemistry : brief.wishes().chemistries()) {
                all.look(voltage, chemistry);
            }
        }
        return all.found;
    }

    private void look(Voltage voltage, Chemistry chemistry) {
        if (!loads.needsInverter()) {
            look(voltage, chemistry, null);
            return;
        }
        for (Inverter inverter : catalog.inverters()) {
            InverterFit fit = InverterFit.of(
                    inverterNeed(voltage, chemistry), inverter, brief.policy().inverter());
            if (fit.fits()) {
                look(voltage, chemistry, fit);
            }
        }
    }

    private void look(Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter) {
        for (Battery battery : catalog.batteries()) {
            if (battery.chemistry() == chemistry) {
                for (ChargeController controller : catalog.controllers()) {
                    for (int count = 1; count <= controller.mostInParallel(); count++) {
                        look(voltage, inverter, battery, controller, count);
                    }
                }
            }
        }
    }

    /** With what so many controllers draw in the budget. */
    private void look(
            Voltage voltage,
            @Nullable InverterFit inverter,
            Battery battery,
            ChargeController controller,
            int controllers) {
        Power draw = controller.selfConsumption().times(controllers);
        StandingDraw standing = standing(battery, draw);
        EnergyBudget budget = inverter == null ? loads.budget(standing) : loads.budget(inverter.curve(), standing);
        BankNeed need = bankNeed(voltage, battery.chemistry(), inverter, budget);
        BankFit bank = BankFit.of(need, battery, brief.policy().bank());
        while (bank.fits()) {
            BankLayout layout = Objects.requireNonNull(bank.layout());
            for (PvModule module : catalog.modules()) {
                ArrayOffer offer = offer(voltage, battery.chemistry(), module, budget);
                ChargerFit fit = ChargerFit.of(
                        chargerNeed(voltage, layout),
                        offer,
                        controller,
                        brief.policy().charger());
                if (fit.fits() && fit.count() <= controllers) {
                    found.add(new Found(
                            voltage.volts(),
                            controller.kind() == ControllerKind.SHUNT,
                            fit.priceWithArray().minorUnits()
                                    + layout.price().minorUnits()
                                    + (inverter == null ? 0 : inverter.price().minorUnits())));
                }
            }
            bank = BankFit.of(need, battery, brief.policy().bank(), layout.parallel() + 1);
        }
    }

    private StandingDraw standing(Battery battery, Power draw) {
        Temperature setPoint = brief.bank().heaterSetPoint();
        if (battery.heater() == null || lowest.compareTo(setPoint) >= 0) {
            return StandingDraw.steady(draw);
        }
        TemperatureDifference spell = brief.resolved()
                .site()
                .months()
                .coldestMonth()
                .minus(brief.resolved().site().recordLow())
                .times(brief.policy().system().coldSpell());
        List<Power> mean = new ArrayList<>();
        List<Power> worst = new ArrayList<>();
        for (Temperature air : brief.resolved().site().months().meanAir()) {
            mean.add(draw.plus(heater(air, setPoint)));
            worst.add(draw.plus(heater(air.minus(spell), setPoint)));
        }
        return new StandingDraw(mean, worst);
    }

    private Power heater(Temperature outside, Temperature setPoint) {
        boolean indoors = brief.bank().location() == BankLocation.INDOORS;
        Temperature around = indoors && outside.compareTo(brief.bank().indoorLowest()) < 0
                ? brief.bank().indoorLowest()
                : outside;
        double kelvins = Math.max(0, setPoint.celsius() - around.celsius());
        return Power.watts(brief.bank().heatLoss().wattsPerKelvin() * kelvins);
    }

    private BankNeed bankNeed(
            Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, EnergyBudget budget) {
        MonthBudget run = budget.heaviestRun();
        Power continuous = budget.dcPeak();
        Power surge = budget.dcPeak();
        BankNeedBuilder need = BankNeedBuilder.builder();
        if (inverter != null) {
            Voltage drop = chemistry
                    .trueNominal(voltage)
                    .times(brief.policy().wiring().bankDrop().fraction());
            need.cutOffVoltage(inverter.inverter().lowestInput())
                    .cableResistance(Resistance.ohms(Math.min(
                            1, drop.volts() / inverter.currentAtRating().amperes())));
            continuous = continuous.plus(inverter.curve().drawFor(budget.peak().running()));
            surge = surge.plus(budget.peak()
                    .surge()
                    .dividedBy(inverter.inverter().fullLoadEfficiency().fraction()));
        }
        return need.dailyEnergy(budget.heaviestMonth().dailyEnergy())
                .worstDailyEnergy(run.worstDailyEnergy())
                .nominalVoltage(voltage)
                .lowest(lowest)
                .runningPower(run.runningPower())
                .continuousPower(continuous)
                .surgePower(surge)
                .heatLoss(brief.bank().heatLoss())
                .heaterSetPoint(brief.bank().heaterSetPoint())
                .build();
    }

    private ChargeSettings settings(Voltage voltage, Chemistry chemistry) {
        Temperature warmest = brief.bank().location() == BankLocation.INDOORS
                ? brief.resolved().site().months().warmestMonth()
                : brief.resolved().site().resolved().recordHigh();
        return ChargeSettings.of(
                new ChargeSettings.Facts(chemistry, voltage, lowest, warmest.compareTo(lowest) > 0 ? warmest : lowest),
                brief.policy().charge());
    }

    private InverterNeed inverterNeed(Voltage voltage, Chemistry chemistry) {
        return InverterNeedBuilder.builder()
                .peak(loads.peak())
                .largestLoad(PeakLoad.ofLargest(brief.loads()))
                .startDuration(brief.policy().load().startDuration())
                .sineLoads(loads.budget().sineLoads())
                .service(brief.service())
                .nominalVoltage(voltage)
                .bankCurrentLimit(brief.policy().system().bankCurrent())
                .highestBankVoltage(settings(voltage, chemistry).absorptionWhenCold())
                .hottestAir(brief.resolved().site().resolved().recordHigh())
                .elevation(brief.resolved().site().elevation())
                .functions(brief.wishes().inverterFunctions())
                .build();
    }

    private ChargerNeed chargerNeed(Voltage voltage, BankLayout bank) {
        Chemistry chemistry = bank.battery().chemistry();
        return ChargerNeedBuilder.builder()
                .nominalVoltage(voltage)
                .chemistry(chemistry)
                .chargingVoltage(settings(voltage, chemistry).absorptionWhenHot())
                .hottestAir(brief.resolved().site().resolved().recordHigh())
                .maximumChargeCurrent(bank.maximumChargeCurrent())
                .dcLoadCurrent(loads.budget().dcPeak().dividedBy(bank.disconnectVoltage()))
                .functions(brief.wishes().controllerFunctions())
                .build();
    }

    private ArrayOffer offer(Voltage voltage, Chemistry chemistry, PvModule module, EnergyBudget budget) {
        ArrayPolicy policy = brief.policy().array();
        ArrayNeed need = new ArrayNeed(
                budget.months().stream().map(MonthBudget::dailyEnergy).toList(),
                budget.months().stream().map(MonthBudget::afterDark).toList(),
                chemistry);
        ModuleOutput output = ModuleOutput.of(module, policy.yieldModel());
        ModuleYield tracked = ModuleYield.tracking(
                output, brief.resolved().site(), sunshine, policy.withChargerEfficiency(Ratio.ONE));
        ArraySize tracking = ArraySize.of(need, tracked, policy);
        int direct = tracking.modules();
        Energy directYearly = null;
        Voltage group = module.nominalGroup();
        if (group != null) {
            Voltage trueNominal = chemistry.trueNominal(voltage);
            Voltage charging =
                    trueNominal.plus(settings(voltage, chemistry).absorption()).dividedBy(2);
            int series = (int) Math.max(1, Math.rint(voltage.dividedBy(group)));
            ModuleYield passedOn = ModuleYield.direct(
                    output, series, trueNominal, charging, brief.resolved().site(), sunshine, policy);
            direct = ArraySize.of(need, passedOn, policy).modules();
            directYearly = passedOn.yearly();
        }
        return new ArrayOffer(
                ModuleExtremes.of(module, brief.resolved().site(), policy),
                tracking.exactModules(),
                direct,
                policy.whenNew(),
                sunshine,
                tracked.yearly(),
                directYearly);
    }
}
