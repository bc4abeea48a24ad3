package org.daybank.core.design;

import java.util.Optional;
import org.daybank.core.quantity.Money;

/**
 * Other designs of an array that feeds the grid.
 *
 * @param otherInverterKind price of the selected modules with inverters of the kind that was not selected; empty when none of
 *     that kind fits
 */
public record GridAlternatives(Optional<Money> otherInverterKind) {}
