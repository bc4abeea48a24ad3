package org.daybank.core.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.design.search.GridCandidate;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.MicroinverterFit;
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

/** The circuits of a design, sized by the rules of the policy. */
final class DesignWiring {
    private static final Current MINIMUM_CURRENT = Current.milliamperes(1);

    private final DesignBrief brief;
    private final CableRuns cables;

    DesignWiring(DesignBrief brief) {
        this.brief = brief;
        this.cables = brief.cables();
    }

    /** The circuits of a system on a bank. */
    WiringPlan onBank(CandidateSystem system, ChargerFit charger, ModuleExtremes extremes, ChargeSettings settings) {
        List<Circuit> circuits = new ArrayList<>();
        ArrayLayout array = charger.array();
        BankCircuits onBank = new BankCircuits(system.layout(), settings.absorptionWhenCold());
        Set<Integer> unlike = new LinkedHashSet<>(array.stringsOnEach());
        for (int strings : unlike) {
            String of = unlike.size() == 1 ? "" : " of %s strings".formatted(strings);
            circuits.addAll(arrayCircuits(
                    extremes,
                    array.series(),
                    strings,
                    "array to controller" + of,
                    yearlyYield(system.size(), array, strings)));
        }
        circuits.add(onBank.controller(charger));
        InverterFit inverter = system.inverter();
        if (inverter != null) {
            circuits.add(onBank.inverter(inverter));
            Service service = brief.service();
            Current line = inverter.rating().dividedBy(service.phases().lines()).dividedBy(service.voltage());
            circuits.add(ac("AC output", CircuitKind.AC_OUTPUT, line));
        }
        Power dcPeak = system.budget().dcPeak();
        if (dcPeak.watts() > 0) {
            Current peak = dcPeak.dividedBy(system.layout().disconnectVoltage());
            circuits.add(onBank.circuit("DC loads", CircuitKind.DC_LOADS, peak, cables.dcLoads())
                    .build());
        }
        return plan(circuits);
    }

    /** The circuits of an array that feeds the grid. */
    WiringPlan forGrid(GridCandidate pair) {
        List<Circuit> circuits = new ArrayList<>();
        StringInverterFit strings = pair.string();
        MicroinverterFit units = pair.micro();
        if (strings != null) {
            UnitStrings fullest = strings.units().get(0);
            circuits.addAll(arrayCircuits(
                    pair.array().extremes(), fullest.longest(), fullest.mostStrings(), "array to inverter", null));
            circuits.add(ac(grid(strings.inverter(), strings.count()), CircuitKind.GRID, strings.lineCurrent()));
        } else if (units != null) {
            circuits.add(ac(
                    "branch circuit of microinverters, each of %s".formatted(units.branches()),
                    CircuitKind.GRID,
                    units.branchCurrent()));
        }
        return plan(circuits);
    }

    private WiringPlan plan(List<Circuit> circuits) {
        return WiringPlan.of(circuits, brief.policy().wiring());
    }

    private List<Circuit> arrayCircuits(
            ModuleExtremes extremes, int series, int strings, String name, @Nullable Energy yearlyEnergy) {
        List<Circuit> circuits = new ArrayList<>();
        PvModule module = extremes.module();
        Current shortCircuit =
                module.shortCircuitCurrent().times(module.bifacialGain().onePlus());
        CircuitBuilder run = CircuitBuilder.builder()
                .operatingVoltage(module.maximumPowerVoltage().times(series))
                .highestVoltage(extremes.coldestOpenCircuit(series))
                .ambient(brief.resolved().site().resolved().recordHigh());
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
                .length(brief.array().cableLength())
                .strings(null)
                .yearlyEnergy(yearlyEnergy)
                .build());
        return circuits;
    }

    private static Energy yearlyYield(ArraySize size, ArrayLayout array, int strings) {
        double daily = size.months().stream()
                .mapToDouble(month -> month.yield().wattHours())
                .average()
                .orElse(0);
        return Energy.wattHours(daily * 365.25 * strings / array.strings());
    }

    /** Circuits at the voltage of a bank, which feeds a fault in them. */
    private final class BankCircuits {
        private final BankLayout bank;
        private final Voltage highest;

        BankCircuits(BankLayout bank, Voltage highest) {
            this.bank = bank;
            this.highest = highest;
        }

        CircuitBuilder circuit(String name, CircuitKind kind, Current current, Length length) {
            Current carried = current.compareTo(MINIMUM_CURRENT) < 0 ? MINIMUM_CURRENT : current;
            return CircuitBuilder.builder()
                    .name(name)
                    .kind(kind)
                    .operatingVoltage(bank.trueNominal())
                    .operatingCurrent(carried)
                    .designCurrent(carried)
                    .length(length)
                    .highestVoltage(highest)
                    .faultCurrent(bank.shortCircuitCurrent());
        }

        Circuit controller(ChargerFit charger) {
            Current output = charger.controller().outputCurrent();
            Current each = charger.chargingCurrent().dividedBy(charger.count());
            return circuit(
                            "controller to bank",
                            CircuitKind.CONTROLLER_TO_BANK,
                            each.compareTo(output) < 0 ? each : output,
                            cables.controllerToBank())
                    .designCurrent(output)
                    .build();
        }

        Circuit inverter(InverterFit inverter) {
            Current rated = inverter.currentAtRating().dividedBy(inverter.count());
            String of = inverter.count() == 1 ? "" : ", each of %s".formatted(inverter.count());
            return circuit("bank to inverter" + of, CircuitKind.BANK_TO_INVERTER, rated, cables.bankToInverter())
                    .build();
        }
    }

    private Circuit ac(String name, CircuitKind kind, Current line) {
        Service service = brief.service();
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

    private static String grid(GridInverter inverter, int count) {
        return count == 1 ? inverter.model() + " to grid" : "%s to grid, each of %s".formatted(inverter.model(), count);
    }

    /** The same array at higher string voltages, and the controllers of the catalogue that permit each. */
    StringVoltages stringVoltages(ArrayLayout array, ModuleExtremes extremes, Voltage nominalVoltage, Catalog catalog) {
        PvModule module = array.module();
        DesignPolicy policy = brief.policy();
        Length stated = brief.array().cableLength();
        return StringVoltages.of(
                ArrayRunsBuilder.builder()
                        .modules(array.modules())
                        .moduleVoltage(module.maximumPowerVoltage())
                        .moduleCurrent(module.maximumPowerCurrent())
                        .moduleShortCircuitCurrent(module.shortCircuitCurrent()
                                .times(module.bifacialGain().onePlus()))
                        .moduleColdestVoltage(extremes.coldestOpenCircuit())
                        .moduleSystemVoltage(module.systemVoltage())
                        .lengths(List.of(
                                atLeastMinimum(stated),
                                atLeastMinimum(stated.times(2)),
                                atLeastMinimum(stated.times(4))))
                        .controllers(catalog.controllers().stream()
                                .filter(controller -> controller.busVoltages().contains(nominalVoltage))
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

    private static Length atLeastMinimum(Length length) {
        Length minimum = Length.metres(0.1);
        return length.compareTo(minimum) < 0 ? minimum : length;
    }
}
