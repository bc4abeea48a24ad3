package org.daybank.core.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.Battery;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.Phases;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.load.Supply;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.site.Site;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SkyModel;

/** Turns briefs and catalogues of {@code core} into the bare numbers of the second opinion. */
final class Plain {
    static Ask ask(DesignBrief brief, Plane plane) {
        Ask ask = new Ask();
        site(ask, brief.resolved().site(), brief.policy().sun().solarConstant().wattsPerSquareMetre());
        ask.tilt = plane.tilt().degrees();
        ask.azimuth = plane.azimuth().degrees();
        ask.loads = brief.loads().stream().map(Plain::load).toList();
        ask.serviceVolts = brief.service().voltage().volts();
        ask.serviceHertz = brief.service().frequency().hertz();
        ask.singlePhase = brief.service().phases().lines() == 1;
        ask.lines = brief.service().phases().lines();
        ask.inverterFunctions = names(brief.wishes().inverterFunctions());
        ask.controllerFunctions = names(brief.wishes().controllerFunctions());
        ask.chemistries = names(brief.wishes().chemistries());
        Voltage wished = brief.wishes().nominalVoltage();
        ask.wishedVolts = wished == null ? 0 : wished.volts();
        ask.indoors = camel(brief.bank().location()).equals("indoors");
        ask.indoorLowest = brief.bank().indoorLowest().celsius();
        ask.heatLoss = brief.bank().heatLoss().wattsPerKelvin();
        ask.heaterSetPoint = brief.bank().heaterSetPoint().celsius();
        sources(ask, brief);
        policies(ask, brief);
        PlainGrid.wishes(ask, brief);
        return ask;
    }

    private static void sources(Ask ask, DesignBrief brief) {
        ShorePower shore = brief.shore();
        String kind = camel(brief.kind());
        ask.takesAc = shore != null || kind.equals("gridBackup");
        ask.sourceWatts =
                shore == null ? Double.POSITIVE_INFINITY : shore.power().watts();
        Alternator alternator = brief.alternator();
        if (alternator != null) {
            ask.alternatorAmps = alternator.current().amperes();
            for (int minute = 0; minute < 24 * 60; minute++) {
                ask.alternatorHours += within(alternator.windows(), minute) ? 1 / 60.0 : 0;
            }
        }
    }

    private static void site(Ask ask, Site site, double solarConstant) {
        ask.latitude = site.latitude().degrees();
        ask.solarConstant = solarConstant;
        ask.elevation = site.elevation().metres();
        ask.recordLow = site.recordLow().celsius();
        ask.recordHigh = site.resolved().recordHigh().celsius();
        SunOpinion.Month[] outside = SunOpinion.meanDays(ask);
        for (int m = 0; m < 12; m++) {
            var clearness = site.months().clearness();
            var irradiation = site.months().dailyIrradiation();
            ask.horizontalWattHours[m] = clearness == null
                    ? 1000 * irradiation.get(m).kilowattHoursPerSquareMetre()
                    : clearness.get(m).fraction() * outside[m].extraterrestrial;
            ask.meanAir[m] = site.months().meanAir().get(m).celsius();
            ask.albedo[m] = site.months().albedo().get(m).fraction();
            ask.snowLoss[m] = site.months().snowLoss().get(m).fraction();
        }
    }

    private static void policies(Ask ask, DesignBrief brief) {
        LoadPolicy load = brief.policy().load();
        ask.coincidentStarts = camel(load.coincidentStarts());
        ask.startSeconds = load.startDuration().hours() * 3600;
        ask.dcWiringEfficiency = load.dcWiringEfficiency().fraction();
        ask.inverterAlwaysOn = load.inverterAlwaysOn();
        ask.statedEfficiency = load.inverterEfficiency().fraction();
        ask.statedIdle = load.inverterIdle().fraction();
        ask.statedMargin = load.inverterMargin().fraction();
        BankPolicy bank = brief.policy().bank();
        ask.autonomyDays = bank.autonomy().hours() / 24;
        ask.depthLeadAcid = bank.depthOfDischarge().leadAcid().fraction();
        ask.depthLithium = bank.depthOfDischarge().lithium().fraction();
        ask.dailyDepthLeadAcid = bank.dailyDepthOfDischarge().leadAcid().fraction();
        ask.dailyDepthLithium = bank.dailyDepthOfDischarge().lithium().fraction();
        ask.surgeRateLeadAcid = bank.surgeRate().leadAcid().fraction();
        ask.surgeRateLithium = bank.surgeRate().lithium().fraction();
        ask.parallelLeadAcid = bank.parallelFactor().leadAcid().fraction();
        ask.parallelLithium = bank.parallelFactor().lithium().fraction();
        ask.resistanceFactor = bank.resistanceFactor().fraction();
        ask.bankDrop = brief.policy().wiring().bankDrop().fraction();
        ask.endOfLifeFraction = bank.endOfLifeFraction().fraction();
        ask.wornBankCarriesAutonomy = bank.wornBankCarriesAutonomy();
        ask.designMargin = bank.designMargin().fraction();
        ask.leadAcidCompensation =
                brief.policy().charge().leadAcidCompensation().voltsPerKelvin();
        ask.coldestCompensated = brief.policy().charge().coldestCompensated().celsius();
        ask.warmestCompensated = brief.policy().charge().warmestCompensated().celsius();
        ask.isotropic = brief.policy().sun().monthlySkyModel() == SkyModel.ISOTROPIC;
        ask.daytimeOverMeanAir = brief.policy().sun().daytimeOverMeanAir().kelvins();
        ArrayPolicy array = brief.policy().array();
        ask.arrayToLoadRatio = array.arrayToLoadRatio().fraction();
        ask.soiling = array.soilingFactor().fraction();
        ask.mismatch = array.mismatchFactor().fraction();
        ask.arrayWiring = array.wiringFactor().fraction();
        ask.ageing = array.ageingFactor().fraction();
        ask.voltageAgeing = array.voltageAgeingFactor().fraction();
        ChargerPolicy charger = brief.policy().charger();
        ask.openCircuitReserve = charger.openCircuitReserve().fraction();
        ask.shortCircuitFactor = charger.shortCircuitFactor().fraction();
        ask.diversionFactor = charger.diversionFactor().fraction();
        ask.clippingLimit = charger.clippingLimit().fraction();
        ask.inverterMargin = brief.policy().inverter().margin().fraction();
        ask.voltageTolerance = brief.policy().inverter().voltageTolerance().fraction();
        ask.altitudeWithoutDerating =
                brief.policy().inverter().altitudeWithoutDerating().metres();
        ask.altitudeDerating = brief.policy().inverter().altitudeDerating().fraction();
        ask.bankCurrent = brief.policy().system().bankCurrent().amperes();
        ask.coldSpell = brief.policy().system().coldSpell().fraction();
    }

    private static Ask.Load load(Load load) {
        List<Integer> months = new ArrayList<>();
        load.monthsOfUse().forEach(month -> months.add(month.getValue() - 1));
        return new Ask.Load(
                load.supply() == Supply.AC,
                load.power().watts(),
                load.count(),
                load.hoursPerDay() == null ? 0 : load.hoursPerDay(),
                fractions(load),
                load.resolved().dutyCycle().fraction(),
                load.daysPerWeek(),
                months,
                load.standby().watts(),
                load.resolved().powerFactor().fraction(),
                load.resolved().startingMultiple().fraction(),
                load.startPowerFactor().fraction(),
                load.resolved().selfSwitching(),
                load.resolved().waveform() == Waveform.SINE);
    }

    private static List<Double> fractions(Load load) {
        List<Double> fractions = new ArrayList<>();
        if (load.hourlyFractions() != null) {
            load.hourlyFractions().forEach(share -> fractions.add(share.fraction()));
        }
        if (load.windows() != null) {
            for (int h = 0; h < 24; h++) {
                int minutes = 0;
                for (int minute = 60 * h; minute < 60 * h + 60; minute++) {
                    minutes += within(load.windows(), minute) ? 1 : 0;
                }
                fractions.add(minutes / 60.0);
            }
        }
        return fractions;
    }

    private static boolean within(List<TimeWindow> windows, int minute) {
        for (TimeWindow window : windows) {
            int from = window.fromMinute();
            int to = window.toMinute();
            if (from < to ? minute >= from && minute < to : minute >= from || minute < to) {
                return true;
            }
        }
        return false;
    }

    static SecondOpinion.Offer offer(Catalog catalog) {
        return new SecondOpinion.Offer(
                catalog.modules().stream().map(Plain::module).toList(),
                catalog.batteries().stream().map(Plain::battery).toList(),
                catalog.controllers().stream().map(Plain::controller).toList(),
                // every brief has a service of one phase, which a unit made for two lines does not give
                catalog.inverters().stream()
                        .filter(inverter -> inverter.phases() == Phases.SINGLE)
                        .map(Plain::inverter)
                        .toList());
    }

    private static Goods.Module module(PvModule module) {
        Voltage group = module.nominalGroup();
        return new Goods.Module(
                module.model(),
                module.power().watts(),
                module.openCircuitVoltage().volts(),
                module.shortCircuitCurrent().amperes(),
                module.maximumPowerVoltage().volts(),
                module.maximumPowerCurrent().amperes(),
                module.openCircuitVoltageCoefficient().perKelvin(),
                module.shortCircuitCurrentCoefficient().perKelvin(),
                module.powerCoefficient().perKelvin(),
                module.nominalOperatingCellTemperature().celsius(),
                module.cellsInSeries(),
                module.systemVoltage().volts(),
                module.seriesFuse().amperes(),
                group == null ? 0 : group.volts(),
                module.bifacialGain().fraction(),
                module.price().minorUnits());
    }

    private static Goods.Battery battery(Battery battery) {
        TreeMap<Double, Double> capacity = new TreeMap<>();
        battery.capacity()
                .points()
                .forEach(point ->
                        capacity.put(point.over().hours(), point.capacity().ampereHours()));
        TreeMap<Double, Double> byTemperature = new TreeMap<>();
        battery.resolved()
                .capacityByTemperature()
                .points()
                .forEach(point -> byTemperature.put(
                        point.temperature().celsius(), point.share().fraction()));
        var heater = battery.heater();
        return new Goods.Battery(
                battery.model(),
                Objects.requireNonNull(
                        Goods.CELLS.get(camel(battery.chemistry())),
                        () -> "Goods.CELLS has no figures of " + battery.chemistry()),
                battery.nominalVoltage().volts(),
                capacity,
                battery.resistance().ohms(),
                battery.resolved().maximumChargeCurrent().amperes(),
                battery.resolved().maximumDischargeCurrent().amperes(),
                battery.resolved().peakDischargeCurrent().amperes(),
                battery.resolved().mostInSeries(),
                battery.mostInParallel(),
                byTemperature,
                battery.resolved().coldestCharge().celsius(),
                heater == null ? 0 : heater.watts(),
                battery.price().minorUnits());
    }

    private static Goods.Controller controller(ChargeController controller) {
        var inputPower = controller.maximumInputPower();
        return new Goods.Controller(
                controller.model(),
                camel(controller.kind()),
                controller.busVoltages().stream().map(Voltage::volts).toList(),
                controller.maximumInputVoltage().volts(),
                controller.minimumInputVoltage().volts(),
                controller.headroom().volts(),
                controller.resolved().maximumInputCurrent().amperes(),
                inputPower == null ? Double.POSITIVE_INFINITY : inputPower.watts(),
                controller.outputCurrent().amperes(),
                controller.efficiency().fraction(),
                controller.selfConsumption().watts(),
                names(controller.chemistries()),
                controller.fullOutputUpTo().celsius(),
                controller.derating().perKelvin(),
                controller.mostInParallel(),
                controller.resolved().loadOutputCurrent().amperes(),
                names(controller.functions()),
                controller.price().minorUnits());
    }

    static Goods.Inverter inverter(Inverter inverter) {
        TreeMap<Double, Double> surge = new TreeMap<>();
        inverter.surge()
                .points()
                .forEach(point ->
                        surge.put(point.duration().hours() * 3600, point.power().voltAmperes()));
        return new Goods.Inverter(
                inverter.model(),
                inverter.nominalVoltage().volts(),
                inverter.lowestInput().volts(),
                inverter.highestInput().volts(),
                inverter.waveform() == Waveform.SINE,
                inverter.power().watts(),
                inverter.resolved().apparentPower().voltAmperes(),
                surge,
                inverter.outputVoltage().volts(),
                inverter.frequencies().stream().map(Frequency::hertz).toList(),
                inverter.idle().watts(),
                inverter.peakEfficiency().fraction(),
                inverter.fullLoadEfficiency().fraction(),
                inverter.fullPowerUpTo().celsius(),
                inverter.derating().perKelvin(),
                inverter.phases().lines(),
                inverter.stackedServices().stream().map(Phases::lines).toList(),
                inverter.mostInParallel(),
                inverter.mostUnits(),
                inverter.transferCurrent() == null
                        ? 0
                        : inverter.transferCurrent().amperes(),
                names(inverter.functions()),
                inverter.price().minorUnits());
    }

    private static List<String> names(List<? extends Enum<?>> values) {
        return values.stream().map(Plain::camel).toList();
    }

    static String camel(Enum<?> value) {
        String[] words = value.name().toLowerCase(Locale.ROOT).split("_", -1);
        StringBuilder name = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            name.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return name.toString();
    }

    private Plain() {}
}
