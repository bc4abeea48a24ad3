package org.daybank.core.sweep;

/**
 * One column of the rows of a sweep.
 *
 * @param name path or name under which it was asked for
 * @param unit symbol of the unit of its numbers, in plain letters; empty when they have none or it holds text
 * @param numeric whether its cells are numbers
 */
public record Column(String name, String unit, boolean numeric) {
    /** The name with the unit behind it: {@code requiredCapacity_Ah}. */
    public String heading() {
        return unit.isEmpty() ? name : name + "_" + unit;
    }
}
