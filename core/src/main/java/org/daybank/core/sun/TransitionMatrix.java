package org.daybank.core.sun;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.working.Table;

/**
 * How the clearness of a day follows that of the day before, in months of one mean clearness (Aguiar, Collares-Pereira and
 * Conde 1988; numbers in {@code aguiar-1988.csv}).
 */
final class TransitionMatrix {
    static final int STATES = 10;
    static final List<TransitionMatrix> PUBLISHED = read();

    /** Greatest monthly mean for which it stands. */
    private final double upper;

    /** Clearness at the lower end of the first state. */
    final double least;

    /** Clearness at the upper end of the last state. */
    final double most;

    /** Chances of tomorrow's states by today's. */
    private final double[][] chances;

    private TransitionMatrix(double upper, double least, double most, double[][] chances) {
        this.upper = upper;
        this.least = least;
        this.most = most;
        this.chances = chances;
    }

    private static List<TransitionMatrix> read() {
        List<Table.Row> rows =
                Table.resource(TransitionMatrix.class, "aguiar-1988.csv").rows();
        List<TransitionMatrix> matrices = new ArrayList<>();
        for (int first = 0; first < rows.size(); first += STATES) {
            Table.Row row = rows.get(first);
            double[][] chances = new double[STATES][];
            for (int state = 0; state < STATES; state++) {
                chances[state] = normalised(rows.get(first + state));
            }
            matrices.add(new TransitionMatrix(
                    row.optionalValue(Double.class, "upper").orElse(Double.POSITIVE_INFINITY),
                    row.value(Double.class, "least"),
                    row.value(Double.class, "most"),
                    chances));
        }
        return List.copyOf(matrices);
    }

    private static double[] normalised(Table.Row row) {
        double[] chances = new double[STATES];
        double sum = 0;
        for (int i = 0; i < STATES; i++) {
            chances[i] = row.value(Double.class, "p" + i);
            sum += chances[i];
        }
        for (int i = 0; i < STATES; i++) {
            chances[i] /= sum;
        }
        return chances;
    }

    /** The matrix for months of a mean clearness. */
    static TransitionMatrix of(double meanClearness) {
        int i = 0;
        while (meanClearness > PUBLISHED.get(i).upper) {
            i++;
        }
        return PUBLISHED.get(i);
    }

    /** The chance that one state follows another. */
    double chance(int today, int tomorrow) {
        return chances[today][tomorrow];
    }

    /**
     * Tomorrow's clearness.
     *
     * @param today its clearness; outside of the states, the nearest one counts
     * @param draw between 0 and 1: which state comes
     * @param place between 0 and 1: where in the state
     */
    double next(double today, double draw, double place) {
        double width = (most - least) / STATES;
        int state = (int) Math.max(0, Math.min(STATES - 1, (today - least) / width));
        int tomorrow = 0;
        double passed = chances[state][0];
        while (passed <= draw && tomorrow < STATES - 1) {
            tomorrow++;
            passed += chances[state][tomorrow];
        }
        return least + (tomorrow + place) * width;
    }
}
