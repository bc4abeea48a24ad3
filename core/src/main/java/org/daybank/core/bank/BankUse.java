package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;

/**
 * What a bank goes through in a year.
 *
 * @param cycles discharges of each depth, as counted over a simulated year; a bank in daily use has one a day
 * @param cellTemperatures mean temperature of the cells in equal parts of the year: one figure, or twelve months
 */
@RecordBuilder
public record BankUse(
        @Bounds(minimumItems = 1, maximumItems = 10_000) List<Cycles> cycles,

        @Bounds(minimum = "-60 Cel", maximum = "80 Cel", minimumItems = 1, maximumItems = 8784)
        @Assumed(source = "25 °C all year, as data sheets have it")
        List<Temperature> cellTemperatures)
        implements BankUseBuilder.With {
    private static final int DAYS_OF_A_YEAR = 365;

    /**
     * Cycles of one depth.
     *
     * @param depth of the discharge as a share of the rated capacity, from 0.001 to 1
     * @param perYear how many in a year, above zero; halves count
     */
    public record Cycles(
            @Bounds(minimum = "0.001", maximum = "1") Ratio depth,

            @Bounds(exclusiveMinimum = "0", maximum = "1000000")
            double perYear) {
        /** Refuses what is no cycle. */
        public Cycles {
            Validation.of(Cycles.class, depth, perYear).done();
        }
    }

    /**
     * Resolves what was left out and keeps copies.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no cycle, or a temperature can never be right
     */
    public BankUse {
        cellTemperatures = Objects.requireNonNullElse(cellTemperatures, List.of(Temperature.celsius(25)));
        Validation.of(BankUse.class, cycles, cellTemperatures).done();
        cycles = List.copyOf(cycles);
        cellTemperatures = List.copyOf(cellTemperatures);
    }

    /** One discharge of the same depth each day. */
    public static BankUse daily(Ratio depth) {
        return BankUseBuilder.builder()
                .cycles(List.of(new Cycles(depth, DAYS_OF_A_YEAR)))
                .build();
    }

    /** Discharges of the whole capacity that pass as much charge in a year: {@code Σ n·d}. */
    public double fullCyclesPerYear() {
        return cycles.stream()
                .mapToDouble(cycle -> cycle.perYear() * cycle.depth().fraction())
                .sum();
    }
}
