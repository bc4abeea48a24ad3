package org.daybank.core.catalog;

import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * How many of a product are at hand and how soon more come. It stands apart from the data sheet because it changes by the hour.
 *
 * @param model code of the product
 * @param inStock how many are at hand, from 0
 * @param leadTime until more are delivered, up to two years; absent when nobody knows
 */
public record StockLine(String model, int inStock, @Nullable TimeSpan leadTime) {
    /**
     * Validation the line.
     *
     * @throws org.daybank.core.schema.InvalidInput when the model is missing or a value is out of range
     */
    public StockLine {
        new Validation()
                .required("model", model)
                .within("inStock", inStock, 0, 1_000_000)
                .within("leadTime", leadTime, TimeSpan.ZERO, TimeSpan.days(730))
                .done();
    }
}
