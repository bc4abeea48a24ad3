package org.daybank.core.design;

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
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.Site;
import org.jspecify.annotations.Nullable;

/** What a brief asks of each kind of part. */
final class Needs {
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

    Needs(DesignBrief brief, LoadProfile loads) {
        this.brief = brief;
        this.site = brief.resolved().site();
        this.loads = loads;
        this.stated = loads.budget();
        this.largestLoad = PeakLoad.ofLargest(brief.loads());
        this.hourlyPeaks = PeakLoad.hourly(brief.loads());
        this.lowest = brief.bank()
                .lowest(
                        site.months().coldestMonth(),
                        site.recordLow(),
                        brief.policy().system().coldSpell());
    }

    /** Whether there is any AC load. */
    boolean needsInverter() {
        return loads.needsInverter();
    }

    /** What every system asks of its bank and array at the least: an inverter gives no more than it draws. */
    Reckoning least(Voltage voltage, Chemistry chemistry, boolean heated) {
        EnergyBudget budget = loads.needsInverter()
                ? loads.budget(LOSSLESS, standing(heated, Power.ZERO))
                : loads.budget(standing(heated, Power.ZERO));
        BankNeed need = bank(voltage, chemistry, null, budget)
                .withRunningPower(Power.ZERO)
                .withSurgePower(budget.dcPeak()
                        .plus(loads.needsInverter() ? budget.peak().surge() : Power.ZERO));
        return new Reckoning(Power.ZERO, budget, need, array(voltage, chemistry, budget));
    }

    /** What is asked behind an inverter with what controllers draw. */
    Reckoning reckoning(
            Voltage voltage, Chemistry chemistry, @Nullable InverterFit inverter, boolean heated, Power counted) {
        EnergyBudget budget = budget(inverter, heated, counted);
        return new Reckoning(
                counted, budget, bank(voltage, chemistry, inverter, budget), array(voltage, chemistry, budget));
    }

    /** Whether a battery's own heater has work to do around the bank. */
    boolean runsHeated(Battery battery) {
        return battery.heater() != null && lowest.compareTo(brief.bank().heaterSetPoint()) < 0;
    }

    /** What loads and the system's own parts draw behind an inverter; a heater where the bank is heated. */
    EnergyBudget budget(@Nullable InverterFit inverter, boolean heated, Power controllerDraw) {
        StandingDraw standing = standing(heated, controllerDraw);
        return inverter == null ? loads.budget(standing) : loads.budget(inverter.curve(), standing);
    }

    /** Controllers draw all year; a heater by how cold it is around the bank, in the worst run as much colder as the coldest spell is. */
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
        for (Temperature air : site.months().meanAir()) {
            meanDay.add(controllerDraw.plus(heater(brief.bank().around(air))));
            worstRun.add(controllerDraw.plus(heater(brief.bank().around(air.minus(spell)))));
        }
        return new StandingDraw(meanDay, worstRun);
    }

    private Power heater(Temperature around) {
        Temperature setPoint = brief.bank().heaterSetPoint();
        return around.compareTo(setPoint) >= 0
                ? Power.ZERO
                : brief.bank().heatLoss().times(setPoint.minus(around));
    }

    /** What a bank must carry, at its terminals. */
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

    /**
     * The cable between bank and inverter, as thin as its drop at the inverter's rating allows; one of more than the limit feeds
     * no inverter.
     */
    private Resistance cable(Voltage voltage, Chemistry chemistry, InverterFit inverter) {
        Resistance thinnest = chemistry
                .trueNominal(voltage)
                .times(brief.policy().wiring().bankDrop().fraction())
                .dividedBy(inverter.currentAtRating());
        return thinnest.compareTo(BankNeed.MOST_CABLE) < 0 ? thinnest : BankNeed.MOST_CABLE;
    }

    /** What is asked of inverters on a bank. */
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

    /** Shore power gives no more than it has, the same on each line; the grid gives what is asked. */
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

    /** The charging set-points of a bank at the site. */
    ChargeSettings settings(Voltage voltage, Chemistry chemistry) {
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

    /** What an alternator brings spares the array: it counts as if it were drawn less. */
    ArrayNeed array(Voltage voltage, Chemistry chemistry, EnergyBudget budget) {
        Alternator alternator = brief.alternator();
        Energy brought = alternator == null ? Energy.ZERO : alternator.daily().times(chemistry.trueNominal(voltage));
        return new ArrayNeed(
                budget.months().stream()
                        .map(month -> less(month.dailyEnergy(), brought))
                        .toList(),
                budget.months().stream().map(MonthBudget::afterDark).toList(),
                chemistry);
    }

    private static Energy less(Energy drawn, Energy brought) {
        return drawn.compareTo(brought) <= 0 ? Energy.ZERO : drawn.minus(brought);
    }

    /** What a controller must do for a bank; without a bank, its charging limits stay open. */
    ChargerNeed charger(Voltage voltage, Chemistry chemistry, @Nullable BankLayout bank) {
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
