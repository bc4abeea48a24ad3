package org.daybank.core.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimeWindowTest {
    @ParameterizedTest
    @CsvSource({
        // minutes = 60 · hours + minutes
        "18:00-23:00, 1080, 1380",
        "06:15 - 06:45, 375, 405",
        "18:00–23:30, 1080, 1410",
        "' 00:00-24:00 ', 0, 1440",
        "22:00-06:00, 1320, 360",
        "22:00-00:00, 1320, 0"
    })
    void readsHoursAndMinutes(String text, int from, int to) {
        assertThat(TimeWindow.parse(text)).isEqualTo(new TimeWindow(from, to));
    }

    @ParameterizedTest
    @ValueSource(strings = {"18:00-23:00", "22:00-06:00", "00:00-24:00", "00:01-00:00"})
    void writesWhatItReads(String text) {
        assertThat(TimeWindow.parse(text)).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "18-23",
                "6:00-7:00",
                "25:00-26:00",
                "18:60-19:00",
                "18:00",
                "18:00-24:01",
                "evening",
                "1800-2300"
            })
    void refusesWhatIsNoWindowAndShowsOne(String text) {
        assertThatThrownBy(() -> TimeWindow.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'%s' is not a time window: write hours and minutes, as in '18:00-23:00'".formatted(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"18:00-18:00", "24:00-06:00", "24:00-24:00"})
    void refusesAnEmptyWindowAndOneThatStartsAfterTheDay(String text) {
        assertThatThrownBy(() -> TimeWindow.parse(text))
                .isInstanceOf(InvalidInput.class)
                .hasMessageMatching(
                        ".*(fromMinute must be from 0 to 1439, but was 1440|toMinute must differ from fromMinute).*");
    }

    @Test
    void refusesMinutesOutsideTheDay() {
        assertThatThrownBy(() -> new TimeWindow(-1, 60))
                .hasMessageContaining("fromMinute must be from 0 to 1439, but was -1.");
        assertThatThrownBy(() -> new TimeWindow(60, 1441))
                .hasMessageContaining("toMinute must be from 0 to 1440, but was 1441.");
    }

    @Test
    void theFirstMinuteBelongsToItAndTheLastDoesNot() {
        TimeWindow evening = TimeWindow.parse("18:00-23:00");

        assertThat(evening.covers(1079)).isFalse();
        assertThat(evening.covers(1080)).isTrue();
        assertThat(evening.covers(1379)).isTrue();
        assertThat(evening.covers(1380)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "18:00-23:00, 300",
        // two hours before midnight and six after
        "22:00-06:00, 480",
        "22:00-00:00, 120",
        "22:00-24:00, 120",
        "00:00-24:00, 1440",
        // all but one minute
        "00:01-00:00, 1439"
    })
    void coversAsManyMinutesAsItLasts(String text, int minutes) {
        TimeWindow window = TimeWindow.parse(text);

        assertThat(IntStream.range(0, 1440).filter(window::covers)).hasSize(minutes);
    }

    @Test
    void whatSeveralCoverTogetherCountsOnce() {
        List<TimeWindow> windows = List.of(TimeWindow.parse("18:30-23:00"), TimeWindow.parse("22:00-01:15"));

        assertThat(TimeWindow.share(windows, 17)).isZero();
        assertThat(TimeWindow.share(windows, 18)).isEqualTo(0.5);
        assertThat(TimeWindow.share(windows, 22)).isEqualTo(1);
        assertThat(TimeWindow.share(windows, 1)).isEqualTo(0.25);
        // from half past six to a quarter past one
        assertThat(TimeWindow.daily(windows)).isEqualTo(TimeSpan.hours(6.75));
    }
}
