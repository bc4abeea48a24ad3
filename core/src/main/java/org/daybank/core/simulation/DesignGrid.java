package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;

/** What came of every array size with every bank size; unchangeable. A million designs take forty megabytes. */
public final class DesignGrid {
    private final List<Power> arraySizes;
    private final List<Energy> bankSizes;
    private final int years;
    private final int hours;
    private final Tallies tallies;

    DesignGrid(List<Power> arraySizes, List<Energy> bankSizes, int years, int hours, Tallies tallies) {
        this.arraySizes = List.copyOf(arraySizes);
        this.bankSizes = List.copyOf(bankSizes);
        this.years = years;
        this.hours = hours;
        this.tallies = tallies;
    }

    /** The arrays, in the order given. */
    public List<Power> arraySizes() {
        return arraySizes;
    }

    /** The banks, in the order given. */
    public List<Energy> bankSizes() {
        return bankSizes;
    }

    /**
     * What came of one design.
     *
     * @param array place of its array among the sizes, from 0
     * @param bank place of its bank among the sizes, from 0
     * @throws IndexOutOfBoundsException when there is no such size
     */
    public SizedSystemResult at(int array, int bank) {
        Power arraySize = arraySizes.get(array);
        Energy bankSize = bankSizes.get(bank);
        int design = array * bankSizes.size() + bank;
        return new SizedSystemResult(
                arraySize,
                bankSize,
                TimeSpan.hours(tallies.lossHours[design] / years),
                Ratio.of(tallies.lossHours[design] / hours),
                Energy.wattHours(tallies.unserved[design] / years),
                Energy.wattHours(tallies.spilled[design] / years),
                Energy.wattHours(tallies.throughput[design] / years),
                Ratio.of(tallies.lowest[design]));
    }
}
