package org.daybank.core.design.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BankLocation;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.bank.BankNeedBuilder;
import org.daybank.core.bank.Battery;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerNeedBuilder;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.SystemKind;
import org.daybank.core.inverter.AcSource;
import org.daybank.core.inverter.AcSourceBuilder;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterNeed;
import org.daybank.core.inverter.InverterNeedBuilder;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.InverterCurve;
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
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.Site;
import org.jspecify.annotations.Nullable;

/** The requirements that a brief sets for each kind of part. */
public final class Requirements {
    private static final InverterCurve LOSSLESS = new InverterCurve(Power.watts(1), Ratio.ZERO, Ratio.ZERO, Ratio.ZERO);

    private final DesignBrief brief;
    private final Site site;
    private final LoadProfile loads;
    private final EnergyBudget stated;
    private final PeakLoad largestLoad;
    private final List<Power> hourlyPeaks;
    private final Map<Bus, ChargerNeed> chargers = new HashMap<>();
    private final Temperature lowest;

    /** What the set-points of a bank depend on. */
    private record Bus(Voltage voltage, Chemistry chemistry) {}

    /**
     * Creates the requirements.
     *
     * @param loads of the brief, by the hours
     * @throws org.daybank.core.schema.InvalidInput when it is colder around the bank than any battery is evaluated for
     */
    public Requirements(DesignBrief brief, LoadProfile loads) {
        this.brief = brief;
        this.site = brief.resolved().site();
        this.loads = loads;
        this.stated = loads.budget();
        this.largestLoad = PeakLoad.ofLargest(brief.loads());
        this.hourlyPeaks = PeakLoad.hourly(brief.loads());
        this.lowest = lowest(brief);
    }

    /** The lowest mean temperature around the bank over the days of autonomy; refused where no battery is evaluated for it. */
    private static Temperature lowest(DesignBrief brief) {
        Temperature recordLow = brief.resolved().site().recordLow();
        Temperature lowest = brief.bank()
                .lowest(
                        brief.resolved().site().months().coldestMonth(),
                        recordLow,
                        brief.policy().system().coldSpell());
        new Validation()
                .that(
                        lowest.compareTo(BankNeed.MINIMUM_TEMPERATURE) >= 0,
                        "site/recordLow",
                        ProblemCode.OUT_OF_RANGE,
                        () ->
                                "site.recordLow must keep the lowest mean temperature around the bank at %s or above, but was %s, which lowers it to %s. Example: bank.location indoors."
                                        .formatted(BankNeed.MINIMUM_TEMPERATURE, recordLow, lowest))
                .done();
        return lowest;
    }

    /** Returns whether there is any AC load. */
    public boolean needsInverter() {
        return loads.needsInverter();
    }

    /** The lower bound of the requirements of bank and array with any inverter: one without losses. */
    PartRequirements minimum(Voltage voltage, Chemistry chemistry, boolean heated) {
        EnergyBudget budget = loads.needsInverter()
                ? loads.budget(LOSSLESS, standing(heated, Power.ZERO))
                : loads.budget(standing(heated, Power.ZERO));
        BankNeed need = bank(voltage, chemistry, null, budget)
                .withRunningPower(Power.ZERO)
                .withSurgePower(budget.dcPeak()
                        .plus(loads.needsInverter() ? budget.peak().surge() : Power.ZERO));
        return new PartRequirements(Power.ZERO, budget, need, array(voltage, chemistry, budget));
    }

    /** The requirements of bank and array with an inverter and the power drawn by controllers. */
    PartRequirements parts(
            Voltage voltage,
            Chemistry chemistry,
            @Nullable InverterFit inverter,
            boolean heated,
            Power controllerDraw) {
        EnergyBudget budget = budget(inverter, heated, controllerDraw);
        return new PartRequirements(
                controllerDraw, budget, bank(voltage, chemistry, inverter, budget), array(voltage, chemistry, budget));
    }

    /** Whether a battery has a heater that the temperature around the bank calls for. */
    boolean usesHeater(Battery battery) {
        return battery.heater() != null && lowest.compareTo(brief.bank().heaterSetPoint()) < 0;
    }

    /** The energy that leaves the bank with an inverter: of the loads, of the controllers, of the heater where one is used. */
    EnergyBudget budget(@Nullable InverterFit inverter, boolean heated, Power controllerDraw) {
        StandingDraw standing = standing(heated, controllerDraw);
        return inverter == null ? loads.budget(standing) : loads.budget(inverter.curve(), standing);
    }

    /** Controllers draw the same all year; a heater by the temperature around the bank, which in the worst run is lower. */
    private StandingDraw standing(boolean heated, Power controllerDraw) {
        if (!heated) {
            return StandingDraw.steady(controllerDraw);
        }
        TemperatureDifference spell = site.months()
                .coldestMonth()
                .minus(site.recordLow())
                .times(brief.policy().system().coldSpell());
        List<Power> meanDay = new ArrayList<>();
        List<Power> worstRun = new ArrayList<>();
        for (Temperature air : brief.resolved().site().months().meanAir()) {
            meanDay.add(controllerDraw.plus(heaterPower(brief.bank().around(air))));
            worstRun.add(controllerDraw.plus(heaterPower(brief.bank().around(air.minus(spell)))));
        }
        return new StandingDraw(meanDay, worstRun);
    }

    private Power heaterPower(Temperature around) {
        Temperature setPoint = brief.bank().heaterSetPoint();
        return around.compareTo(setPoint) >= 0
                ? Power.ZERO
                : brief.bank().heatLoss().times(setPoint.minus(around));
    }

    /** The requirements of the bank at its terminals. */
    BankNeed bank(Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, EnergyBudget budget) {
        MonthBudget run = budget.heaviestRun();
        Power continuous = budget.dcPeak();
        Power surge = budget.dcPeak();
        BankNeedBuilder need = BankNeedBuilder.builder();
        if (inverter != null) {
            need.cutOffVoltage(inverter.inverter().lowestInput()).cableResistance(cable(voltage, chemistry, inverter));
            double efficiency = inverter.inverter().fullLoadEfficiency().fraction();
            continuous = continuous.plus(inverter.curve().drawFor(budget.peak().running()));
            surge = surge.plus(budget.peak().surge().dividedBy(efficiency));
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

    /** The cable between bank and inverter, as thin as the permitted drop at the inverter's rating allows. */
    private Resistance cable(Voltage voltage, Chemistry chemistry, InverterFit inverter) {
        Resistance thinnest = chemistry
                .trueNominal(voltage)
                .times(brief.policy().wiring().bankDrop().fraction())
                .dividedBy(inverter.currentAtRating());
        return thinnest.compareTo(BankNeed.MOST_CABLE) < 0 ? thinnest : BankNeed.MOST_CABLE;
    }

    /** The requirements of the inverters on a bank. */
    InverterNeed inverter(Voltage voltage, Chemistry chemistry) {
        return InverterNeedBuilder.builder()
                .peak(loads.peak())
                .largestLoad(largestLoad)
                .hourlyPeaks(hourlyPeaks)
                .startDuration(brief.policy().load().startDuration())
                .sineLoads(stated.sineLoads())
                .service(brief.service())
                .nominalVoltage(voltage)
                .bankCurrentLimit(brief.policy().system().bankCurrent())
                .highestBankVoltage(settings(voltage, chemistry).absorptionWhenCold())
                .hottestAir(site.resolved().recordHigh())
                .elevation(site.elevation())
                .functions(brief.wishes().inverterFunctions())
                .acSource(acSource())
                .build();
    }

    /** Shore power is limited, the same on each line; the grid is not. */
    private @Nullable AcSource acSource() {
        ShorePower shore = brief.shore();
        if (shore != null) {
            return AcSourceBuilder.builder()
                    .current(shore.power()
                            .dividedBy(brief.service().phases().lines())
                            .dividedBy(brief.service().voltage()))
                    .build();
        }
        return brief.kind() == SystemKind.GRID_BACKUP
                ? AcSourceBuilder.builder().build()
                : null;
    }

    /** Returns the charging set-points of a bank at the site. */
    public ChargeSettings settings(Voltage voltage, Chemistry chemistry) {
        boolean indoors = brief.bank().location() == BankLocation.INDOORS;
        Temperature hottest = indoors
                ? warmer(site.months().warmestMonth(), lowest)
                : warmer(site.resolved().recordHigh(), lowest);
        return ChargeSettings.of(
                new ChargeSettings.Facts(chemistry, voltage, lowest, hottest),
                brief.policy().charge());
    }

    private static Temperature warmer(Temperature a, Temperature b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** The requirements of the array: the energy that leaves the bank less that of an alternator. */
    ArrayNeed array(Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        Alternator alternator = brief.alternator();
        Energy charged = alternator == null ? Energy.ZERO : alternator.daily().times(chemistry.trueNominal(voltage));
        return new ArrayNeed(
                budget.months().stream()
                        .map(month -> less(month.dailyEnergy(), charged))
                        .toList(),
                budget.months().stream().map(MonthBudget::afterDark).toList(),
                chemistry);
    }

    private static Energy less(Energy drawn, Energy charged) {
        return drawn.compareTo(charged) <= 0 ? Energy.ZERO : drawn.minus(charged);
    }

    /** The requirements of the charge controllers for a bank; without a bank, its charging limit is left open. */
    ChargerNeed chargeController(Voltage voltage, Chemistry chemistry, @Nullable BankLayout bank) {
        ChargerNeed open = chargers.computeIfAbsent(new Bus(voltage, chemistry), this::openNeed);
        return bank == null ? open : open.withMaximumChargeCurrent(bank.maximumChargeCurrent());
    }

    private ChargerNeed openNeed(Bus bus) {
        ChargeSettings settings = settings(bus.voltage(), bus.chemistry());
        return ChargerNeedBuilder.builder()
                .nominalVoltage(bus.voltage())
                .chemistry(bus.chemistry())
                .chargingVoltage(settings.absorptionWhenHot())
                .hottestAir(site.resolved().recordHigh())
                .dcLoadCurrent(stated.dcPeak().dividedBy(settings.disconnect()))
                .functions(brief.wishes().controllerFunctions())
                .build();
    }
}
