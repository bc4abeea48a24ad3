package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PathComparison;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.bank.Ventilation;
import org.daybank.core.charger.ArrayLayout;
import org.daybank.core.charger.ChargerFit;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.InverterFit;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.NotRepeated;
import org.daybank.core.simulation.Reliability;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.wiring.StringVoltages;
import org.daybank.core.wiring.WiringPlan;
import org.daybank.core.working.Check;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Solvable;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A complete design, or what is missing for one. The parts are absent when nothing in the catalogue makes a whole.
 *
 * @param brief what was asked, every default filled in
 * @param complete whether every part was found
 * @param missing what stood in the way, when it is not complete: for each voltage the rules that the nearest product breaks
 * @param sun sunshine on the array
 * @param energyBudget what leaves the bank
 * @param nominalVoltage what the bus is called, and why
 * @param bank the batteries
 * @param array modules and strings
 * @param moduleExtremes coldest and hottest voltages of one module
 * @param charger the charge controllers
 * @param inverter the inverters; absent when every load is DC
 * @param monthlyBalance need and yield by month
 * @param trackingGain what tracking the module's best point gains over charging at the bank's own voltage, by month
 * @param recovery time to refill the bank from its deepest discharge in the design month; absent when the array has no
 *     surplus then
 * @param chargeSettings set-points
 * @param batteryLife how long the bank lasts in this use, and what a kilowatt-hour out of it costs; absent when its data sheet
 *     does not say
 * @param ventilation air for the bank; absent for lithium
 * @param billOfMaterials parts and prices
 * @param parts by their model codes: what a simulation of the same system asks for
 * @param availability what the hours of one or many years show; absent when none were run
 * @param frontier of the designs simulated for an availability that was asked for, those that no cheaper one is as available as
 * @param generator an engine for the hours in which sun and bank are not enough; absent when there are none, or none were run
 * @param grid an array that feeds the grid without a bank
 * @param gridInverters every string inverter and microinverter of the catalogue, with the module chosen or the one that came
 *     nearest: ranked or rejected
 * @param essentialPanel what backing up the essential loads alone spares
 * @param wiring every circuit: conductors, devices, disconnects
 * @param stringVoltages the same array at higher string voltages: what its copper costs, and which controllers allow it
 * @param checks rules across parts that do not rule a design out but should be known
 * @param alternatives other complete designs
 * @param autonomyPrices what a shorter or longer autonomy costs; none without a bank
 * @param modules every module of the catalogue, with the controller or inverter chosen: ranked or rejected
 * @param batteries every battery of the catalogue: ranked or rejected; in a design that is not complete, at the voltage and
 *     with the chemistry that came nearest, and so the controllers and inverters
 * @param controllers every controller of the catalogue, with the module chosen or the one that came nearest: ranked or rejected
 * @param inverters every inverter of the catalogue: ranked or rejected; absent when every load is DC
 */
@RecordBuilder
public record SystemDesign(
        @NotRepeated DesignBrief brief,
        boolean complete,
        List<NominalVoltage.PassedOver> missing,
        MonthlySun sun,
        EnergyBudget energyBudget,
        @Nullable NominalVoltage nominalVoltage,
        @Nullable BankFit bank,
        @Nullable ArrayLayout array,
        @Nullable ModuleExtremes moduleExtremes,
        @Nullable ChargerFit charger,
        @Nullable InverterFit inverter,
        @Nullable ArraySize monthlyBalance,
        @Nullable PathComparison trackingGain,
        @Nullable TimeSpan recovery,
        @Nullable ChargeSettings chargeSettings,
        @Nullable BatteryLife batteryLife,
        @Nullable Ventilation ventilation,
        @Nullable BillOfMaterials billOfMaterials,
        @Nullable SystemParts parts,
        @Nullable Reliability availability,
        List<FrontierPoint> frontier,
        @Nullable EngineBackup generator,
        @Nullable GridFeed grid,
        @Nullable GridInverterSelection gridInverters,
        @Nullable EssentialPanel essentialPanel,
        @Nullable WiringPlan wiring,
        @Nullable StringVoltages stringVoltages,
        List<Check> checks,
        List<Alternative> alternatives,
        List<AutonomyPoint> autonomyPrices,
        @Nullable ModuleSelection modules,
        @Nullable BankSelection batteries,
        @Nullable ChargerSelection controllers,
        @Nullable InverterSelection inverters)
        implements SystemDesignBuilder.With, Solvable {
    /** Keeps copies. */
    public SystemDesign {
        missing = List.copyOf(missing);
        frontier = List.copyOf(frontier);
        checks = List.copyOf(checks);
        alternatives = List.copyOf(alternatives);
        autonomyPrices = List.copyOf(autonomyPrices);
    }

    /** Everything that can hurt someone or something in this design. */
    public List<Hazard> hazards() {
        return Hazards.of(this);
    }

    /** The steps behind the numbers, in the order in which they were taken. */
    public Working working() {
        Working.Builder working = Working.builder().all(energyBudget.working());
        if (bank != null && bank.capacity() != null) {
            working.all(bank.capacity().working());
        }
        if (batteryLife != null) {
            working.all(batteryLife.working());
        }
        if (moduleExtremes != null && monthlyBalance != null) {
            working.all(monthlyBalance.working()).all(moduleExtremes.working());
        }
        if (gridInverters != null) {
            working.all(gridInverters.working());
        }
        if (chargeSettings != null) {
            working.all(chargeSettings.working());
        }
        if (generator != null) {
            working.all(generator.working());
        }
        if (wiring != null) {
            working.all(wiring.working());
        }
        return working.build();
    }

    @Override
    public Optional<String> unsolvedReason() {
        return complete ? Optional.empty() : Optional.of(NOTHING_FITS);
    }

    @Override
    public String unsolvedStatus() {
        return "noDesign";
    }

    /** A part of a complete design. */
    static <T> T part(@Nullable T part) {
        return Objects.requireNonNull(part, "the design is not complete");
    }
}
