package org.daybank.core.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.daybank.core.Refused;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

/** Alternator, shore power and engine: what they bring in an hour, and what they refuse to be. */
class BesideTheSunTest {
    /** 30 A into 25.6 V for a quarter of the hour from eight: 192 W; in the two windows 12.5 Ah. */
    @Test
    void anAlternatorBringsItsCurrentWhileOneDrives() {
        Alternator driving = new Alternator(
                Current.amperes(30), List.of(TimeWindow.parse("08:15-08:30"), TimeWindow.parse("17:00-17:10")));
        assertThat(driving.watts(25.6, 8)).isEqualTo(192, within(1e-9));
        assertThat(driving.watts(25.6, 17)).isEqualTo(128, within(1e-9));
        assertThat(driving.watts(25.6, 9)).isZero();
        assertThat(driving.daily().ampereHours()).isEqualTo(12.5, within(1e-9));
        assertThat(new Alternator(Current.amperes(30), null).daily().ampereHours())
                .as("an hour a day where nothing is said")
                .isEqualTo(30, within(1e-9));
    }

    /** 2 kW at 90 %, half of the hour from six in the evening. */
    @Test
    void shorePowerComesThroughItsCharger() {
        ShorePower shore =
                new ShorePower(Power.kilowatts(2), List.of(TimeWindow.parse("18:30-20:00")), Ratio.percent(90));
        assertThat(shore.watts(18)).isEqualTo(900, within(1e-9));
        assertThat(shore.watts(19)).isEqualTo(1800, within(1e-9));
        assertThat(shore.watts(20)).isZero();
        assertThat(new ShorePower(Power.kilowatts(2), null, null).watts(3))
                .as("all day, 90 %, where nothing is said")
                .isEqualTo(1800, within(1e-9));
    }

    @Test
    void whatBringsNothingIsRefused() {
        assertThat(Refused.places(() -> new Alternator(null, null))).containsExactly("/current");
        assertThat(Refused.places(() -> new Alternator(Current.ZERO, null))).containsExactly("/current");
        assertThat(Refused.places(() -> new Alternator(Current.amperes(-5), null)))
                .containsExactly("/current");
        assertThat(Refused.places(() -> new Alternator(Current.amperes(1e6), null)))
                .containsExactly("/current");
        assertThat(Refused.places(() -> new Alternator(Current.amperes(30), List.of())))
                .containsExactly("/windows");
        assertThat(Refused.places(() -> new Alternator(Current.amperes(30), Collections.singletonList(null))))
                .containsExactly("/windows/0");
        assertThat(Refused.places(() -> new ShorePower(Power.watts(1), Collections.singletonList(null), null)))
                .containsExactly("/windows/0");
        assertThat(Refused.places(() -> engine(-455, 0.4, 0.8))).containsExactly("/power");
        assertThat(Refused.places(() -> engine(2e7, 0.4, 0.8))).containsExactly("/power");
        assertThat(Refused.places(() -> new ShorePower(Power.ZERO, null, null))).containsExactly("/power");
        assertThat(Refused.places(() -> new ShorePower(Power.watts(1), null, Ratio.percent(49))))
                .containsExactly("/chargerEfficiency");
        assertThat(Refused.places(() -> engine(0, 0.4, 0.8))).containsExactly("/power");
    }

    @Test
    void anEngineStopsAboveWhereItStarts() {
        assertThat(Refused.places(() -> engine(1000, 0.5, 0.5))).containsExactly("/stopAbove");
        assertThat(Refused.places(() -> engine(1000, 0.96, 1.0))).containsExactly("/startBelow", "/stopAbove");
        assertThatCode(() -> engine(1000, 0.5, 0.51)).doesNotThrowAnyException();
    }

    private static EngineRule engine(double watts, double start, double stop) {
        return new EngineRule(Power.watts(watts), Ratio.of(start), Ratio.of(stop), null, null, null);
    }
}
