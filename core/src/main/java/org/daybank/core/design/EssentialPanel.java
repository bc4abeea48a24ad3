package org.daybank.core.design;

import java.util.List;
import java.util.Optional;
import org.daybank.core.grid.BackupHours;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;

/**
 * The panel of the essential loads, compared with a backup of the whole house.
 *
 * @param loads names of the loads on the panel
 * @param bank rated energy of the bank for the panel
 * @param array power of its array
 * @param price of its parts
 * @param wholeHouse the system that would supply every load; empty when the catalogue has none
 * @param backup how long the full bank supplies the panel in an outage without sun, from any hour of the year
 */
public record EssentialPanel(
        List<String> loads,
        Energy bank,
        Power array,
        Money price,
        Optional<WholeHouse> wholeHouse,
        BackupHours backup) {
    /** Keeps a copy. */
    public EssentialPanel {
        loads = List.copyOf(loads);
    }

    /**
     * The system that would supply every load.
     *
     * @param bank rated energy of its bank
     * @param array power of its array
     * @param price of its parts
     * @param bankSaved share of the bank that the panel saves
     * @param arraySaved share of the array that it saves
     */
    public record WholeHouse(Energy bank, Power array, Money price, Ratio bankSaved, Ratio arraySaved) {}
}
