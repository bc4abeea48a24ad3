package org.daybank.core.design;

import java.math.BigDecimal;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.design.search.CandidateSystem;
import org.daybank.core.generator.EngineOrModules;
import org.daybank.core.generator.GeneratorNeedBuilder;
import org.daybank.core.generator.GeneratorSize;
import org.daybank.core.generator.MoreModulesBuilder;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.EngineRule;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.simulation.SimulatedMonth;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.site.MonthlyClimate;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;

/**
 * A generator for the hours in which sun and bank do not supply every load. It is a recommendation: the bill of materials does
 * not contain it.
 *
 * @param size the generator; its months are those of the shortfall in the simulation without it
 * @param engineOrModules whether more modules are cheaper; empty where the catalogue's prices are in another currency than
 *     those of the policy, or where the month of the largest shortfall has no sun
 * @param availability what the same years show with it
 */
public record EngineBackup(GeneratorSize size, Optional<EngineOrModules> engineOrModules, Reliability availability) {
    /** For a system whose hours have a shortfall; empty where they have none. */
    static Optional<EngineBackup> of(
            DesignBrief brief,
            CandidateSystem chosen,
            Voltage absorption,
            Simulation without,
            Function<EngineRule, Simulation> with) {
        Reliability alone = without.reliability();
        if (alone.lossOfLoad().hours() == 0) {
            return Optional.empty();
        }
        GeneratorSize size = size(brief, chosen, absorption, alone);
        return Optional.of(new EngineBackup(
                size, compared(chosen, size), with.apply(size.rule()).reliability()));
    }

    private static GeneratorSize size(
            DesignBrief brief, CandidateSystem chosen, Voltage absorption, Reliability alone) {
        Power meanLoads = Power.watts(chosen.budget().months().stream()
                        .map(MonthBudget::acEnergy)
                        .mapToDouble(Energy::wattHours)
                        .max()
                        .orElse(0)
                / 24);
        return GeneratorSize.of(
                GeneratorNeedBuilder.builder()
                        .chargingVoltage(absorption)
                        .maximumChargeCurrent(chargeCurrent(brief, chosen))
                        .concurrentLoads(chosen.budget().peak().running())
                        .meanLoads(meanLoads)
                        .elevation(brief.resolved().site().elevation())
                        .hottestAir(brief.resolved().site().resolved().recordHigh())
                        .monthlyShortfall(shortfall(chosen, alone))
                        .build(),
                brief.policy().generator());
    }

    /** What the bank takes, within the charger of the inverter where it has one, and no faster than is planned. */
    private static Current chargeCurrent(DesignBrief brief, CandidateSystem chosen) {
        BankLayout layout = chosen.layout();
        Current planned =
                layout.ratedCapacity().dividedBy(brief.policy().system().engineFills());
        Current most = smaller(planned, layout.maximumChargeCurrent());
        InverterFit inverter = chosen.inverter();
        Current charger = inverter == null ? null : inverter.chargingCurrent();
        return charger == null ? most : smaller(most, charger);
    }

    private static Current smaller(Current a, Current b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    /** What the loads lacked, as it would have left the bank: with the losses of its month. */
    private static List<Energy> shortfall(CandidateSystem chosen, Reliability alone) {
        List<Energy> missing = new ArrayList<>();
        for (SimulatedMonth month : alone.months()) {
            MonthBudget day = chosen.budget().months().get(month.month().getValue() - 1);
            double atLoads = day.atLoads().wattHours();
            double atBank = day.dailyEnergy().wattHours();
            double lacking = Math.max(0, month.demand().minus(month.served()).wattHours());
            missing.add(Energy.wattHours(atLoads == 0 ? 0 : lacking * atBank / atLoads));
        }
        return missing;
    }

    private static Optional<EngineOrModules> compared(CandidateSystem chosen, GeneratorSize size) {
        ChargerFit charger = chosen.charger();
        Month darkest = size.months().stream()
                .max(Comparator.comparing(month -> month.shortfall().wattHours()))
                .orElseThrow()
                .month();
        Energy monthly =
                chosen.size().months().get(darkest.getValue() - 1).moduleYield().times(MonthlyClimate.daysIn(darkest));
        boolean oneCurrency = charger.price()
                .currency()
                .equals(size.policy().pricePerKilowatt().currency());
        if (!oneCurrency || monthly.wattHours() < 1) {
            return Optional.empty();
        }
        return Optional.of(EngineOrModules.of(
                size,
                MoreModulesBuilder.builder()
                        .pricePerModule(charger.priceWithArray()
                                .times(BigDecimal.valueOf(1.0 / charger.array().modules())))
                        .moduleYield(monthly)
                        .build()));
    }

    /** Returns the hazards of the generator. */
    public List<Hazard> hazards() {
        return size.hazards();
    }

    /** Returns the steps of its size and of the comparison. */
    public Working working() {
        Working.Builder steps = Working.builder().all(size.working());
        engineOrModules.map(EngineOrModules::working).ifPresent(steps::all);
        return steps.build();
    }
}
