package org.daybank.core.quantity;

/** Thrown when a number is outside the range of a quantity: not finite, below zero where that is impossible, or too large. */
public final class QuantityRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    QuantityRangeException(String message) {
        super(message);
    }
}
