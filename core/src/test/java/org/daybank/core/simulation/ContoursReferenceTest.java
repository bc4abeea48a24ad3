package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.Reference;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.DischargeCurve;
import org.daybank.core.quantity.Angle;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.site.EpwReader;
import org.daybank.core.site.WeatherYear;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published regularity (Egido and Lorenzo 1992, Solar Energy Materials and Solar Cells 27:379–390, and others): the
 * loss-of-load probability falls with the array and with the storage, steeply at first; lines of the same probability are convex.
 */
class ContoursReferenceTest {
    /** 120 W around the clock: 2880 Wh a day. */
    private static final double DAILY = 2880;

    /** Hours count whole: the same lack of energy may fall into a few more of them. */
    private static final double WHOLE_HOURS = 9 / 8760.0;

    private static double lossOfLoad(ArrayYears array, int modules, double days) {
        String capacity = "20 h: %s Ah".formatted(days * DAILY / 0.8 / 51.2);
        SimulatedSystem system = Systems.lithium(1, Systems.steady(0, DAILY / 24))
                .array(Systems.modules(1, modules))
                .bank(BankLayout.of(
                        Systems.battery("BK-L48-280H")
                                .withCapacity(DischargeCurve.parse(capacity))
                                .withHeater(null),
                        Voltage.volts(48),
                        1,
                        1))
                .controller(Systems.controller("HN-T80X").withOutputCurrent(Current.amperes(500)))
                .build();
        return Simulator.run(
                        system,
                        array,
                        Systems.NO_SNOW,
                        Systems.LOSSLESS,
                        SimulationPolicy.standard().withReconnectRise(Ratio.ZERO))
                .reliability()
                .lossOfLoadProbability()
                .mean()
                .fraction();
    }

    @ParameterizedTest
    @ValueSource(strings = {"golden-tmy3.epw", "atlanta-tmy3.epw"})
    void lossOfLoadFallsWithArrayAndStorageSteeplyAtFirst(String file) {
        WeatherYear weather = EpwReader.read(Reference.text("weather/" + file));
        Plane plane = new Plane(Angle.degrees(50), Angle.degrees(180));
        SunnyYears sun =
                SunnyYears.of(List.of(weather), SunnyYears.exposure(weather.site(), plane), SunPolicy.standard());
        SimulatedSystem one = Systems.lithium(1, Systems.steady(0, DAILY / 24)).build();
        ArrayYears array = ArrayYears.of(one, sun, Systems.LOSSLESS);
        int[] modules = {1, 2, 3, 4, 6, 9, 14, 20};
        double[] days = {0.25, 0.5, 1, 2, 4, 8};
        double[][] loss = new double[modules.length][days.length];
        for (int i = 0; i < modules.length; i++) {
            for (int j = 0; j < days.length; j++) {
                loss[i][j] = lossOfLoad(array, modules[i], days[j]);
                if (i > 0) {
                    assertThat(loss[i][j]).isLessThanOrEqualTo(loss[i - 1][j] + WHOLE_HOURS);
                }
                // a bank that the array never fills only leaks the more, the larger it is
                if (j > 0 && loss[i][j - 1] < 0.4) {
                    assertThat(loss[i][j]).isLessThanOrEqualTo(loss[i][j - 1] + WHOLE_HOURS);
                }
            }
        }
        // steeply at first: the first module more takes away more than the next, and so does the first half day
        assertThat(loss[0][3] - loss[1][3]).isGreaterThan(loss[1][3] - loss[2][3]);
        assertThat(loss[4][0] - loss[4][1]).isGreaterThan(loss[4][1] - loss[4][2]);
        // the storage for one probability, against the array: falling and convex
        for (double probability : new double[] {0.01, 0.05}) {
            List<Double> needed = IntStream.rangeClosed(4, 10)
                    .mapToObj(count -> storageFor(array, count, probability))
                    .toList();
            for (int i = 1; i + 1 < needed.size(); i++) {
                assertThat(needed.get(i)).isLessThanOrEqualTo(needed.get(i - 1));
                double straight = (needed.get(i - 1) + needed.get(i + 1)) / 2;
                assertThat(needed.get(i))
                        .as("%s modules for %s in %s", i + 4, probability, needed)
                        .isLessThanOrEqualTo(straight * 1.01);
            }
        }
    }

    /** Days of storage for a loss-of-load probability, by bisection. */
    private static double storageFor(ArrayYears array, int modules, double probability) {
        double low = 0.05;
        double high = 60;
        for (int i = 0; i < 18; i++) {
            double middle = (low + high) / 2;
            if (lossOfLoad(array, modules, middle) > probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
