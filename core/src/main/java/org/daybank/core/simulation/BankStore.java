package org.daybank.core.simulation;

import org.jspecify.annotations.Nullable;

/**
 * What a bank holds, in Wh at its terminals' nominal voltage: in one well, or in the two of Manwell and McGowan (1993). One
 * hour is one step of constant power.
 */
final class BankStore {
    private final double capacity;
    private final boolean twoWells;

    /** c and k of the paper. */
    private final double width;

    private final double rate;

    /** e^(−k·t) and the factor (k·t − 1 + e^(−k·t)) / k for t = 1 h. */
    private final double decay;

    private final double lag;

    private double available;
    private double bound;

    BankStore(double capacityWattHours, @Nullable KineticWells wells) {
        capacity = capacityWattHours;
        twoWells = wells != null;
        width = wells == null ? 1 : wells.availableShare().fraction();
        rate = wells == null ? 1 : wells.perHour();
        decay = Math.exp(-rate);
        lag = (rate - 1 + decay) / rate;
    }

    /** Puts a share of the capacity into it, the wells at one level. */
    void fill(double share) {
        available = width * capacity * share;
        bound = (1 - width) * capacity * share;
    }

    /** What it holds. */
    double level() {
        return available + bound;
    }

    /** Takes a share of what is left, from both wells alike, and tells how much that was. */
    double leak(double share) {
        double lost = level() * share;
        available -= available * share;
        bound -= bound * share;
        return lost;
    }

    /** Most that the well at hand gives in an hour of constant power; the paper's equation for the largest discharge current. */
    double mostOut() {
        if (!twoWells) {
            return available;
        }
        double rested = rate * available * decay + (available + bound) * rate * width * (1 - decay);
        return Math.max(0, Math.min(level(), rested / (1 - decay + width * (rate - 1 + decay))));
    }

    /** Most that the well at hand takes in an hour of constant power; the same with the well full at its end. */
    double mostIn() {
        if (!twoWells) {
            return Math.max(0, capacity - available);
        }
        double rested = rate * available * decay + (available + bound) * rate * width * (1 - decay);
        double full = rate * width * capacity;
        return Math.max(0, Math.min(capacity - level(), (full - rested) / (1 - decay + width * (rate - 1 + decay))));
    }

    /** Moves so many Wh out (or in, when below zero) over an hour; the paper's equations for the two wells. */
    void move(double out) {
        if (!twoWells) {
            available -= out;
            return;
        }
        double held = available + bound;
        double after = available * decay + (held * rate * width - out) * (1 - decay) / rate - out * width * lag;
        available = after;
        bound = held - out - after;
    }
}
