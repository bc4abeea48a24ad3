package org.daybank.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.daybank.core.quantity.Angle;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;

class HorizonTest {
    static final Horizon HILLS = Horizon.parse("90 deg: 10 deg; 180 deg: 5 deg; 270 deg: 1 deg");

    private static double at(Horizon horizon, double azimuth) {
        return horizon.elevation(Angle.degrees(azimuth)).degrees();
    }

    @Test
    void linesRunBetweenThePoints() {
        Horizon horizon = Horizon.parse("90 deg: 10 deg; 180 deg: 20 deg; 270 deg: 0 deg");

        assertThat(at(horizon, 90)).isEqualTo(10);
        // half way from 10° to 20°
        assertThat(at(horizon, 135)).isCloseTo(15, within(1e-12));
        // a third of the way through north, from 0° at 270° to 10° at 90°, 180° further
        assertThat(at(horizon, 330)).isCloseTo(10.0 / 3, within(1e-12));
        assertThat(at(horizon, 30)).isCloseTo(20.0 / 3, within(1e-12));
    }

    @Test
    void onePointIsAllRound() {
        assertThat(at(Horizon.parse("200 deg: 7 deg"), 10)).isEqualTo(7);
    }

    @Test
    void textGoesBothWays() {
        Horizon horizon = Horizon.parse("180 deg: 20 deg; 90 deg: 10 deg");

        assertThat(Horizon.parse(horizon.toString())).isEqualTo(horizon);
        assertThat(Horizon.parse("open")).isEqualTo(Horizon.OPEN);
        assertThat(Horizon.OPEN).hasToString("open");
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> Horizon.parse("90 deg"))
                .hasMessageContaining("'90 deg' is not a point of a horizon")
                .hasMessageContaining("'90 deg: 5 deg; 180 deg: 12 deg'");
        assertThatThrownBy(() -> Horizon.parse("90 deg: 95 deg; 400 deg: 5 deg"))
                .hasMessageContaining("points/0/elevation must be from 0 ° to 90 °, but was 95 °.")
                .hasMessageContaining("points/1/azimuth must be from 0 ° to 360 °, but was 400 °.");
        assertThatThrownBy(() -> Horizon.parse("90 deg: 5 deg; 90 deg: 6 deg"))
                .hasMessageContaining("two elevations at azimuth 90 °");
    }

    @Test
    void aHorizonOfNoHeightIsOpen() {
        assertThat(Horizon.OPEN.open()).isTrue();
        assertThat(Horizon.parse("90 deg: 0 deg; 180 deg: 0 deg").open()).isTrue();
        assertThat(Horizon.parse("90 deg: 0 deg; 180 deg: 1 deg").open()).isFalse();
    }

    @Test
    void whatIsMissingIsNamed() {
        assertThatThrownBy(() -> new Horizon(
                        Arrays.asList(Horizon.parse("90 deg: 5 deg").points().get(0), null)))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("points/1 is required.");
        assertThatThrownBy(() -> new Horizon.Point(null, null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("azimuth is required. elevation is required.");
        assertThatThrownBy(() -> new Horizon(null))
                .isInstanceOf(InvalidInput.class)
                .hasMessage("points is required.");
        String forty = "x".repeat(40);
        assertThatThrownBy(() -> Horizon.parse(forty)).hasMessageStartingWith("'" + forty + "' is not a point");
        assertThatThrownBy(() -> Horizon.parse(forty + "x")).hasMessageStartingWith("'" + forty + "…' is not a point");
    }
}
