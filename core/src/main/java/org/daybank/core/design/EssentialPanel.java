package org.daybank.core.design;

import java.util.List;
import org.daybank.core.grid.BackupHours;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * What it spares to back up a panel of the essential loads in place of the whole house.
 *
 * @param loads names of the loads on the panel
 * @param bank rated energy of the bank for the panel
 * @param array power of its array
 * @param price of its parts
 * @param wholeBank rated energy of the bank for the whole house; absent when the catalogue has no system for it
 * @param wholeArray power of its array
 * @param wholePrice of its parts
 * @param bankSpared share of the bank that the panel spares
 * @param arraySpared share of the array that it spares
 * @param backup how long the full bank carries the panel in an outage without any sun, from any hour of the year
 */
public record EssentialPanel(
        List<String> loads,
        Energy bank,
        Power array,
        Money price,
        @Nullable Energy wholeBank,
        @Nullable Power wholeArray,
        @Nullable Money wholePrice,
        @Nullable Ratio bankSpared,
        @Nullable Ratio arraySpared,
        BackupHours backup) {
    /** Keeps a copy. */
    public EssentialPanel {
        loads = List.copyOf(loads);
    }
}
