package org.daybank.core.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.MicroinverterFit;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.Service;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.inverter.UnitStrings;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.wiring.ArrayRunsBuilder;
import org.daybank.core.wiring.Circuit;
import org.daybank.core.wiring.CircuitBuilder;
import org.daybank.core.wiring.CircuitKind;
import org.daybank.core.wiring.ControllerLimit;
import org.daybank.core.wiring.ParallelStrings;
import org.daybank.core.wiring.StringVoltages;
import org.daybank.core.wiring.WiringPlan;
import org.jspecify.annotations.Nullable;

/** Every circuit of a finished design, to be wired by the rules of the policy. */
final class DesignWiring {
    private static final Current LEAST = Current.milliamperes(1);

    private final SystemDesign design;
    private final CableRuns cables;
    private final List<Circuit> circuits = new ArrayList<>();

    private DesignWiring(SystemDesign design) {
        this.design = design;
        this.cables = design.brief().cables();
    }

    /** The design with its circuits, where it is complete. */
    static SystemDesign wired(SystemDesign design, Catalog catalog) {
        if (!design.complete()) {
            return design;
        }
        DesignWiring wiring = new DesignWiring(design);
        GridFeed feed = design.grid();
        if (feed == null) {
            wiring.onBank();
        } else {
            wiring.feed(feed);
        }
        return design.withWiring(
                        WiringPlan.of(wiring.circuits, design.brief().policy().wiring()))
                .withStringVoltages(feed == null ? wiring.stringVoltages(catalog) : null);
    }

    private void onBank() {
        ArrayLayout array = SystemDesign.part(design.array());
        ChargerFit charger = SystemDesign.part(design.charger());
        BankLayout bank = SystemDesign.part(SystemDesign.part(design.bank()).layout());
        Set<Integer> unlike = new LinkedHashSet<>(array.stringsOnEach());
        for (int strings : unlike) {
            String of = unlike.size() == 1 ? "" : " of %s strings".formatted(strings);
            arrayCircuits(
                    array.module(), array.series(), strings, "array to controller" + of, yearlyYield(array, strings));
        }
        toBank(bank, charger);
        InverterFit inverter = design.inverter();
        if (inverter != null) {
            toInverter(bank, inverter);
        }
        Power dcPeak = design.energyBudget().dcPeak();
        if (dcPeak.watts() > 0) {
            Current peak = dcPeak.dividedBy(bank.disconnectVoltage());
            circuits.add(busCircuit("DC loads", CircuitKind.DC_LOADS, bank, peak, cables.dcLoads())
                    .build());
        }
    }

    private void arrayCircuits(PvModule module, int series, int strings, String name, @Nullable Energy yearlyEnergy) {
        ModuleExtremes extremes = SystemDesign.part(design.moduleExtremes());
        Current shortCircuit =
                module.shortCircuitCurrent().times(module.bifacialGain().onePlus());
        CircuitBuilder run = CircuitBuilder.builder()
                .operatingVoltage(module.maximumPowerVoltage().times(series))
                .highestVoltage(extremes.coldestOpenCircuit(series))
                .ambient(design.brief().resolved().site().resolved().recordHigh());
        if (strings > 1) {
            circuits.add(run.name("string on " + name)
                    .kind(CircuitKind.STRING)
                    .operatingCurrent(module.maximumPowerCurrent())
                    .designCurrent(shortCircuit)
                    .length(cables.string())
                    .strings(new ParallelStrings(strings, module.seriesFuse(), Current.ZERO))
                    .build());
        }
        circuits.add(run.name(name)
                .kind(CircuitKind.ARRAY_TO_CONTROLLER)
                .operatingCurrent(module.maximumPowerCurrent().times(strings))
                .designCurrent(shortCircuit.times(strings))
                .length(design.brief().array().cableLength())
                .strings(null)
                .yearlyEnergy(yearlyEnergy)
                .build());
    }

    private Energy yearlyYield(ArrayLayout array, int strings) {
        double daily = SystemDesign.part(design.monthlyBalance()).months().stream()
                .mapToDouble(month -> month.yield().wattHours())
                .average()
                .orElse(0);
        return Energy.wattHours(daily * 365.25 * strings / array.strings());
    }

    /** A circuit at the bank's voltage: the bank feeds a fault in it. */
    private CircuitBuilder busCircuit(String name, CircuitKind kind, BankLayout bank, Current current, Length length) {
        Current carried = current.compareTo(LEAST) < 0 ? LEAST : current;
        return CircuitBuilder.builder()
                .name(name)
                .kind(kind)
                .operatingVoltage(bank.trueNominal())
                .operatingCurrent(carried)
                .designCurrent(carried)
                .length(length)
                .highestVoltage(SystemDesign.part(design.chargeSettings()).absorptionWhenCold())
                .faultCurrent(bank.shortCircuitCurrent());
    }

    private void toBank(BankLayout bank, ChargerFit charger) {
        Current output = charger.controller().outputCurrent();
        Current each = charger.chargingCurrent().dividedBy(charger.count());
        circuits.add(busCircuit(
                        "controller to bank",
                        CircuitKind.CONTROLLER_TO_BANK,
                        bank,
                        each.compareTo(output) < 0 ? each : output,
                        cables.controllerToBank())
                .designCurrent(output)
                .build());
    }

    private void toInverter(BankLayout bank, InverterFit inverter) {
        Current rated = inverter.currentAtRating().dividedBy(inverter.count());
        String of = inverter.count() == 1 ? "" : ", each of %s".formatted(inverter.count());
        circuits.add(
                busCircuit("bank to inverter" + of, CircuitKind.BANK_TO_INVERTER, bank, rated, cables.bankToInverter())
                        .build());
        Service service = design.brief().service();
        Phases phases = service.phases();
        Current line = inverter.rating().dividedBy(phases.lines()).dividedBy(service.voltage());
        circuits.add(ac("AC output", CircuitKind.AC_OUTPUT, line));
    }

    private Circuit ac(String name, CircuitKind kind, Current line) {
        Service service = design.brief().service();
        Voltage between = switch (service.phases()) {
            case SINGLE -> service.voltage();
            case SPLIT -> service.voltage().times(2);
            case THREE -> service.voltage().times(Math.sqrt(3));
        };
        return CircuitBuilder.builder()
                .name(name)
                .kind(kind)
                .operatingVoltage(between)
                .operatingCurrent(line)
                .phases(service.phases())
                .length(cables.acOutput())
                .build();
    }

    private void feed(GridFeed feed) {
        StringInverterFit strings = feed.stringInverters();
        MicroinverterFit units = feed.microinverters();
        if (strings != null) {
            UnitStrings fullest = strings.units().get(0);
            arrayCircuits(
                    SystemDesign.part(design.moduleExtremes()).module(),
                    fullest.longest(),
                    fullest.mostStrings(),
                    "array to inverter",
                    null);
            circuits.add(ac(grid(strings.inverter(), strings.count()), CircuitKind.GRID, strings.lineCurrent()));
        } else if (units != null) {
            circuits.add(ac(
                    "branch circuit of microinverters, each of %s".formatted(units.branches()),
                    CircuitKind.GRID,
                    units.branchCurrent()));
        }
    }

    private static String grid(GridInverter inverter, int count) {
        return count == 1 ? inverter.model() + " to grid" : "%s to grid, each of %s".formatted(inverter.model(), count);
    }

    /** The same array at higher string voltages, and which controllers of the catalogue allow each. */
    private StringVoltages stringVoltages(Catalog catalog) {
        ArrayLayout array = SystemDesign.part(design.array());
        PvModule module = array.module();
        DesignPolicy policy = design.brief().policy();
        Length stated = design.brief().array().cableLength();
        return StringVoltages.of(
                ArrayRunsBuilder.builder()
                        .modules(array.modules())
                        .moduleVoltage(module.maximumPowerVoltage())
                        .moduleCurrent(module.maximumPowerCurrent())
                        .moduleShortCircuitCurrent(module.shortCircuitCurrent()
                                .times(module.bifacialGain().onePlus()))
                        .moduleColdestVoltage(
                                SystemDesign.part(design.moduleExtremes()).coldestOpenCircuit())
                        .moduleSystemVoltage(module.systemVoltage())
                        .lengths(List.of(longEnough(stated), longEnough(stated.times(2)), longEnough(stated.times(4))))
                        .controllers(catalog.controllers().stream()
                                .filter(controller -> controller
                                        .busVoltages()
                                        .contains(SystemDesign.part(design.nominalVoltage())
                                                .voltage()))
                                .map(controller -> new ControllerLimit(
                                        controller.model(),
                                        controller
                                                .maximumInputVoltage()
                                                .times(policy.charger()
                                                        .openCircuitReserve()
                                                        .complement())))
                                .toList())
                        .build(),
                policy.wiring());
    }

    private static Length longEnough(Length length) {
        Length least = Length.metres(0.1);
        return length.compareTo(least) < 0 ? least : length;
    }
}
