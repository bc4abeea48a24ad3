package org.daybank.core.catalog;

import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * How many of a product are at hand and how soon more come. It stands apart from the data sheet because it changes by the hour.
 *
 * @param model code of the product
 * @param inStock how many are at hand, from 0
 * @param leadTime until more are delivered, up to two years; absent when nobody knows
 */
public record StockLine(
        String model,
        @Bounds(minimum = "0", maximum = "1000000") int inStock,

        @Bounds(minimum = "0 d", maximum = "730 d") @Nullable
        TimeSpan leadTime) {
    /**
     * Validates the line.
     *
     * @throws org.daybank.core.schema.InvalidInput when the model is missing or a value is out of range
     */
    public StockLine {
        Validation.of(StockLine.class, model, inStock, leadTime).done();
    }
}
