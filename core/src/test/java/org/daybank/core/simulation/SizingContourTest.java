package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

/** Contours over both sizes against the whole grid, and storage without loss by hand. */
class SizingContourTest {
    private static final List<Power> ARRAYS =
            IntStream.range(1, 40).mapToObj(i -> Power.watts(150 * i)).toList();
    private static final List<Energy> BANKS =
            IntStream.range(1, 50).mapToObj(i -> Energy.wattHours(400 * i)).toList();
    private static final List<Ratio> ASKED = List.of(Ratio.ZERO, Ratio.of(0.001), Ratio.of(0.02), Ratio.of(0.3));

    private final ManyDesigns many = ManyDesignsTest.many(
            ManyDesignsTest.cabin(4, 100).build(), ManyDesignsTest.madeUp(2), ManyDesignsTest.NEVER_CUT_OFF);
    private final DesignGrid grid = many.run(ARRAYS, BANKS);

    private double loss(int array, int bank) {
        return grid.at(array, bank).lossOfLoadProbability().fraction();
    }

    @Test
    void theLeastBankIsTheFirstOfTheGridThatDoes() {
        List<SizingContour> contours = many.leastBanks(ARRAYS, BANKS, ASKED);

        assertThat(contours).extracting(SizingContour::asked).isEqualTo(ASKED);
        for (SizingContour contour : contours) {
            double asked = contour.asked().fraction();
            for (int array = 0; array < ARRAYS.size(); array++) {
                int i = array;
                int first = IntStream.range(0, BANKS.size())
                        .filter(bank -> loss(i, bank) <= asked)
                        .findFirst()
                        .orElse(-1);
                assertThat(contour.points().get(array))
                        .isEqualTo(
                                first < 0
                                        ? new SizingContour.Point(ARRAYS.get(array), null, null)
                                        : new SizingContour.Point(
                                                ARRAYS.get(array), BANKS.get(first), Ratio.of(loss(array, first))));
            }
        }
        // both kinds occur, or this would say little
        assertThat(contours.get(0).points()).anyMatch(point -> point.bank() == null);
        assertThat(contours.get(0).points()).anyMatch(point -> point.bank() != null);
    }

    @Test
    void theLeastArrayIsTheFirstOfTheGridThatDoes() {
        for (SizingContour contour : many.leastArrays(ARRAYS, BANKS, ASKED)) {
            for (int bank = 0; bank < BANKS.size(); bank++) {
                int j = bank;
                int first = IntStream.range(0, ARRAYS.size())
                        .filter(array -> loss(array, j) <= contour.asked().fraction())
                        .findFirst()
                        .orElse(-1);
                assertThat(contour.points().get(bank).array()).isEqualTo(first < 0 ? null : ARRAYS.get(first));
            }
        }
    }

    /**
     * 1000 W/m² from 8 to 16 o'clock every day, when four modules bring far more than the 120 W and fill the bank. The 120 W of
     * the 16 hours between are 1920 Wh; at a depth of 0.8: 2400 Wh. Ten watts of modules never carry 120 W.
     */
    @Test
    void withoutLossABankLastsTheNight() {
        SimulatedSystem system =
                ManyDesignsTest.cabin(4, 100).housing(Systems.WARM_ROOM).build();
        ManyDesigns sunny = ManyDesignsTest.many(
                system, Systems.sky(1, hour -> hour >= 8 && hour < 16 ? 1000 : 0), ManyDesignsTest.NEVER_CUT_OFF);

        List<ZeroLossBank> found = sunny.zeroLossBanks(List.of(Power.watts(10), Power.watts(1640)));

        assertThat(found.get(0).sustained()).isFalse();
        assertThat(found.get(1).sustained()).isTrue();
        assertThat(found.get(1).bank().wattHours()).isCloseTo(2400, within(1e-6));
    }

    @Test
    void whatIsWrongWithTheSizesIsSaidAtOnce() {
        assertThatThrownBy(() -> many.leastBanks(
                        ARRAYS, List.of(Energy.wattHours(2), Energy.wattHours(2)), List.of(Ratio.of(1.5))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("bankSizes/1")
                .hasMessageContaining("lossOfLoadProbabilities/0");
    }
}
