package org.daybank.core.design;

import java.util.List;
import org.daybank.core.quantity.Money;

/**
 * The parts list. Cable, protection, mounting and work are not in it.
 *
 * @param lines one for each product
 * @param total of all lines
 */
public record BillOfMaterials(List<BillLine> lines, Money total) {
    /** Keeps a copy. */
    public BillOfMaterials {
        lines = List.copyOf(lines);
    }

    static BillOfMaterials of(List<BillLine> lines) {
        return new BillOfMaterials(
                lines, lines.stream().map(BillLine::price).reduce(Money::plus).orElseThrow());
    }
}
