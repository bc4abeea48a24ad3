package org.daybank.core.sweep.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class SobolTest {
    /**
     * The first points in three dimensions, in the order of the Gray code, as the program published with the direction numbers
     * of Joe and Kuo 2008 prints them, and as Bratley and Fox 1988 (Algorithm 659) have them in the first two dimensions.
     */
    private static final double[][] PUBLISHED = {
        {0, 0, 0},
        {0.5, 0.5, 0.5},
        {0.75, 0.25, 0.25},
        {0.25, 0.75, 0.75},
        {0.375, 0.375, 0.625},
        {0.875, 0.875, 0.125},
        {0.625, 0.125, 0.875},
        {0.125, 0.625, 0.375},
    };

    @Test
    void itBeginsAsPublished() {
        for (int row = 0; row < PUBLISHED.length; row++) {
            for (int dimension = 0; dimension < 3; dimension++) {
                assertThat(Sobol.coordinate(row, dimension))
                        .as("point %s, dimension %s", row, dimension)
                        .isEqualTo(PUBLISHED[row][dimension]);
            }
        }
    }

    /**
     * Dimension 5 of the table has the polynomial x³ + x² + 1 and starts from m = 1, 1, 1; by the recurrence of Bratley and Fox
     * 1988, in hand arithmetic, m₄ = 2·m₃ ⊕ 8·m₁ ⊕ m₁ = 2 ⊕ 8 ⊕ 1 = 11.
     */
    @Test
    void theRecurrenceOfADimensionIsThatOfItsPolynomial() {
        // points 8 and 7 differ by v₄ alone: their Gray codes 12 and 4 differ in the fourth bit
        double eleven = 11 / 16.0;
        assertThat(exclusiveOr(Sobol.coordinate(8, 4), Sobol.coordinate(7, 4))).isEqualTo(eleven);
    }

    @Test
    void everyDimensionFillsEveryStratumOnce() {
        int points = 1 << 10;
        for (int dimension = 0; dimension < Sobol.dimensions(); dimension++) {
            int d = dimension;
            assertThat(IntStream.range(0, points)
                            .map(row -> (int) (Sobol.coordinate(row, d) * points))
                            .distinct()
                            .count())
                    .as("dimension %s", dimension)
                    .isEqualTo(points);
            assertThat(IntStream.range(0, points)
                            .map(row -> (int) (Sobol.shifted(row, d, 99) * points))
                            .distinct()
                            .count())
                    .isEqualTo(points);
        }
    }

    /** Of a (0, 2)-sequence in base 2, as its first two dimensions are, any 256 points have one in each box of area 1/256. */
    @Test
    void theFirstTwoDimensionsFillEveryElementaryBoxOnce() {
        for (int across = 0; across <= 8; across++) {
            int columns = 1 << across;
            int rows = 256 / columns;
            assertThat(LongStream.range(512, 768)
                            .map(row -> ((long) (Sobol.coordinate(row, 0) * columns)) * rows
                                    + (long) (Sobol.coordinate(row, 1) * rows))
                            .distinct()
                            .count())
                    .isEqualTo(256);
        }
    }

    @Test
    void aFewDozenDimensionsAreThere() {
        assertThat(Sobol.dimensions()).isEqualTo(64);
    }

    private static double exclusiveOr(double a, double b) {
        return ((long) (a * 0x1p52) ^ (long) (b * 0x1p52)) * 0x1p-52;
    }
}
