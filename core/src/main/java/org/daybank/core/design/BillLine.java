package org.daybank.core.design;

import org.daybank.core.quantity.Money;

/**
 * One line of the bill of materials.
 *
 * @param part what it is for: {@code battery}, {@code module}, {@code chargeController}, {@code inverter}, {@code stringInverter},
 *     {@code microinverter}
 * @param product its model
 * @param count how many
 * @param unitPrice of one
 * @param price of all
 */
public record BillLine(String part, String product, int count, Money unitPrice, Money price) {
    static BillLine of(String part, String product, int count, Money unitPrice) {
        return new BillLine(part, product, count, unitPrice, unitPrice.times(count));
    }
}
