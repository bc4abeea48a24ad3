package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RainflowTest {
    private static double[] counts(double[] course) {
        return Rainflow.byTenth(course).stream().mapToDouble(CycleCount::cycles).toArray();
    }

    /** ASTM E1049-85, figure 6: −2, 1, −3, 5, −1, 3, −4, 4, −2 has ranges 3 (½), 4 (1½), 6 (½), 8 (1) and 9 (½). */
    @Test
    void countsTheExampleOfTheStandard() {
        double[] course = {0.2, 0.5, 0.1, 0.9, 0.3, 0.7, 0.0, 0.8, 0.2};

        assertThat(counts(course)).containsExactly(0, 0, 0.5, 1.5, 0, 0.5, 0, 1, 0.5, 0);
    }

    @Test
    void pointsOnTheWayAndRestsChangeNothing() {
        double[] course = {0.2, 0.3, 0.5, 0.5, 0.1, 0.4, 0.9, 0.9, 0.6, 0.3, 0.7, 0.7, 0.7, 0.0, 0.5, 0.8, 0.2, 0.2};

        assertThat(counts(course)).containsExactly(0, 0, 0.5, 1.5, 0, 0.5, 0, 1, 0.5, 0);
    }

    @Test
    void aDayOfHalfDepthAfterAnotherIsOneCycleEach() {
        double[] course = new double[2 * 365 + 1];
        for (int i = 0; i < course.length; i++) {
            course[i] = i % 2 == 0 ? 1 : 0.45;
        }

        assertThat(counts(course)[5]).isEqualTo(365);
    }

    @Test
    void theMeanRangeOfATenth() {
        // three days: from full to 0.75, to 0.78 and to 0.72, full between: three cycles of 0.25, 0.22 and 0.28, of
        // 0.25 in the mean
        double[] course = {1, 0.75, 1, 0.78, 1, 0.72, 1};

        assertThat(Rainflow.byTenth(course).get(2).cycles()).isEqualTo(3);
        assertThat(Rainflow.byTenth(course).get(2).meanRange().fraction()).isCloseTo(0.25, within(1e-12));
        assertThat(Rainflow.byTenth(course).get(3).meanRange().fraction()).isZero();
    }

    @Test
    void aBankAtRestHasNoCycle() {
        assertThat(Arrays.stream(counts(new double[8760])).sum()).isZero();
    }
}
