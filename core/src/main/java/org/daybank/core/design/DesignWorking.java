package org.daybank.core.design;

import org.daybank.core.bank.BankCapacity;
import org.daybank.core.working.Working;

/** The steps behind the numbers of a system on a bank, in the order of the calculation. */
final class DesignWorking {
    private DesignWorking() {}

    static Working of(BatterySystem system, EnergyBalance energy, DesignEvidence evidence) {
        Working.Builder working = Working.builder().all(energy.budget().working());
        BankCapacity capacity = system.bank().capacity();
        if (capacity != null) {
            working.all(capacity.working());
        }
        evidence.batteryLife().ifPresent(life -> working.all(life.working()));
        working.all(energy.monthlyBalance().working())
                .all(system.moduleExtremes().working())
                .all(system.chargeSettings().working());
        system.generator().ifPresent(generator -> working.all(generator.working()));
        return working.all(system.wiring().working()).build();
    }
}
