package org.daybank.core.grid;

import java.time.Month;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Money;

/**
 * A month's bill.
 *
 * @param year in which it lies, counted from 0
 * @param month which
 * @param imported from the grid
 * @param exported to the grid
 * @param credited imports that credits paid for
 * @param creditsLeft at its end
 * @param creditsExpired at its end
 * @param withoutSystem what would have been due without the array
 * @param withSystem what is due; below zero when the operator pays
 */
public record BillMonth(
        int year,
        Month month,
        Energy imported,
        Energy exported,
        Energy credited,
        Energy creditsLeft,
        Energy creditsExpired,
        Money withoutSystem,
        Money withSystem) {}
