package org.daybank.core.bank;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Validation;

/**
 * What a bank goes through in a year.
 *
 * @param cycles discharges of each depth, as counted over a simulated year; a bank in daily use has one a day
 * @param cellTemperatures mean temperature of the cells in equal parts of the year: one figure, or twelve months
 */
@RecordBuilder
public record BankUse(
        List<Cycles> cycles,

        @Assumed(source = "25 °C all year, as data sheets have it")
        List<Temperature> cellTemperatures)
        implements BankUseBuilder.With {
    private static final int DAYS_OF_A_YEAR = 365;
    private static final int MOST_CYCLES = 1_000_000;

    /**
     * Cycles of one depth.
     *
     * @param depth of the discharge as a share of the rated capacity, from 0.001 to 1
     * @param perYear how many in a year, above zero; halves count
     */
    public record Cycles(Ratio depth, double perYear) {
        /** Refuses what is no cycle. */
        public Cycles {
            new Validation()
                    .required("depth", depth)
                    .within("depth", depth, Ratio.of(0.001), Ratio.ONE)
                    .above("perYear", perYear, 0.0)
                    .atMost("perYear", perYear, (double) MOST_CYCLES)
                    .done();
        }
    }

    /**
     * Resolves what was left out and keeps copies.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no cycle, or a temperature can never be right
     */
    public BankUse {
        cellTemperatures = Objects.requireNonNullElse(cellTemperatures, List.of(Temperature.celsius(25)));
        new Validation()
                .notEmpty("cycles", cycles)
                .notEmpty("cellTemperatures", cellTemperatures)
                .eachWithin("cellTemperatures", cellTemperatures, Temperature.celsius(-60), Temperature.celsius(80))
                .done();
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
