package org.daybank.core.design;

import java.util.List;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.bank.BankFit;
import org.daybank.core.bank.BankNeed;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.quantity.Power;
import org.jspecify.annotations.Nullable;

/** What is asked of bank and array behind one inverter once what the controllers draw is counted. */
final class Reckoning {
    private final Power counted;
    private final EnergyBudget budget;
    private final BankNeed bank;
    private final ArrayNeed array;
    private @Nullable List<BankFit> banks;

    /**
     * What is asked.
     *
     * @param counted what the controllers draw
     * @param budget with it
     */
    Reckoning(Power counted, EnergyBudget budget, BankNeed bank, ArrayNeed array) {
        this.counted = counted;
        this.budget = budget;
        this.bank = bank;
        this.array = array;
    }

    Power counted() {
        return counted;
    }

    EnergyBudget budget() {
        return budget;
    }

    BankNeed bank() {
        return bank;
    }

    ArrayNeed array() {
        return array;
    }

    /** The banks that carry it, cheapest first; the first limit holds for all later calls, so ask with the highest first. */
    List<BankFit> banks(BankChoices choices, long limit) {
        if (banks == null) {
            banks = choices.under(bank, limit);
        }
        return banks;
    }
}
