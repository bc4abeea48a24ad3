package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RainflowTest {
    /** ASTM E1049-85, figure 6: −2, 1, −3, 5, −1, 3, −4, 4, −2 has ranges 3 (½), 4 (1½), 6 (½), 8 (1) and 9 (½). */
    @Test
    void countsTheExampleOfTheStandard() {
        double[] course = {0.2, 0.5, 0.1, 0.9, 0.3, 0.7, 0.0, 0.8, 0.2};

        assertThat(Rainflow.byTenth(course)).containsExactly(0, 0, 0.5, 1.5, 0, 0.5, 0, 1, 0.5, 0);
    }

    @Test
    void pointsOnTheWayAndRestsChangeNothing() {
        double[] course = {0.2, 0.3, 0.5, 0.5, 0.1, 0.4, 0.9, 0.9, 0.6, 0.3, 0.7, 0.7, 0.7, 0.0, 0.5, 0.8, 0.2, 0.2};

        assertThat(Rainflow.byTenth(course)).containsExactly(0, 0, 0.5, 1.5, 0, 0.5, 0, 1, 0.5, 0);
    }

    @Test
    void aDayOfHalfDepthAfterAnotherIsOneCycleEach() {
        double[] course = new double[2 * 365 + 1];
        for (int i = 0; i < course.length; i++) {
            course[i] = i % 2 == 0 ? 1 : 0.45;
        }

        assertThat(Rainflow.byTenth(course)[5]).isEqualTo(365);
    }

    @Test
    void aBankAtRestHasNoCycle() {
        assertThat(Arrays.stream(Rainflow.byTenth(new double[8760])).sum()).isZero();
    }
}
