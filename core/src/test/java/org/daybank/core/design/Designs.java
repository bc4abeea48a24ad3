package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.bank.BankSelection;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.InverterSelection;

/** Takes an outcome for the kind that a test expects, and fails where it is another. */
public final class Designs {
    private Designs() {}

    /** Whether it is a design. */
    public static boolean isDesign(DesignOutcome outcome) {
        return !(outcome instanceof NoDesign);
    }

    public static GridDesign grid(DesignOutcome outcome) {
        return (GridDesign) outcome;
    }

    public static BackupDesign backup(DesignOutcome outcome) {
        return (BackupDesign) outcome;
    }

    public static NoDesign none(DesignOutcome outcome) {
        return (NoDesign) outcome;
    }

    /** The parts of a system on a bank. */
    public static BatterySystem system(DesignOutcome outcome) {
        return outcome.batterySystem().orElseThrow();
    }

    public static EnergyBalance energy(DesignOutcome outcome) {
        return outcome instanceof BackupDesign backup ? backup.energy() : ((StandAloneDesign) outcome).energy();
    }

    public static DesignEvidence evidence(DesignOutcome outcome) {
        return outcome instanceof BackupDesign backup ? backup.evidence() : ((StandAloneDesign) outcome).evidence();
    }

    public static DesignAlternatives alternatives(DesignOutcome outcome) {
        return outcome instanceof BackupDesign backup
                ? backup.alternatives()
                : ((StandAloneDesign) outcome).alternatives();
    }

    private static Optional<ProductSelections> selections(DesignOutcome outcome) {
        return outcome.fold(
                standAlone -> Optional.of(standAlone.rejected()),
                backup -> Optional.of(backup.rejected()),
                grid -> Optional.empty(),
                none -> Optional.empty());
    }

    public static List<RejectedVoltage> rejectedVoltages(DesignOutcome outcome) {
        return selections(outcome)
                .map(ProductSelections::rejectedVoltages)
                .orElseGet(() -> none(outcome).rejected().rejectedVoltages());
    }

    public static BankSelection batteries(DesignOutcome outcome) {
        return selections(outcome)
                .map(ProductSelections::batteries)
                .orElseGet(() -> none(outcome).rejected().batteries().orElseThrow());
    }

    public static ChargerSelection controllers(DesignOutcome outcome) {
        return selections(outcome)
                .map(ProductSelections::chargeControllers)
                .orElseGet(() -> none(outcome).rejected().chargeControllers().orElseThrow());
    }

    /** Absent where every load is DC. */
    public static Optional<InverterSelection> inverters(DesignOutcome outcome) {
        return selections(outcome)
                .map(ProductSelections::inverters)
                .orElseGet(() -> none(outcome).rejected().inverters());
    }

    /** Absent where nothing was evaluated, and for a system on a bank. */
    public static Optional<GridInverterSelection> gridInverters(DesignOutcome outcome) {
        return outcome.fold(
                standAlone -> Optional.empty(),
                backup -> Optional.empty(),
                grid -> Optional.of(grid.rejected().inverters()),
                none -> none.rejected().gridInverters());
    }

    /** Absent where nothing was evaluated. */
    public static Optional<ModuleSelection> modules(DesignOutcome outcome) {
        return outcome.fold(
                standAlone -> Optional.of(standAlone.rejected().modules()),
                backup -> Optional.of(backup.rejected().modules()),
                grid -> Optional.of(grid.rejected().modules()),
                none -> none.rejected().modules());
    }
}
