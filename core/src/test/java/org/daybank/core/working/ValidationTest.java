package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.junit.jupiter.api.Test;

class ValidationTest {
    private static final Power LEAST = Power.watts(1);
    private static final Power MOST = Power.kilowatts(1);

    @Test
    void everythingIsGatheredInTheOrderOfTheFields() {
        InvalidInput invalid = refused(new Validation()
                .required("name", "  ")
                .required("power", null)
                .within("margin", Ratio.of(2), Ratio.ZERO, Ratio.ONE)
                .atLeast("idle", Power.watts(-1), Power.ZERO)
                .atMost("peak", Power.kilowatts(2), MOST)
                .above("rated", Power.ZERO, Power.ZERO)
                .that(false, "", "conflict", "the whole does not add up"));

        assertThat(invalid.problems())
                .containsExactly(
                        new Problem("/name", "missing", "name must not be blank"),
                        new Problem("/power", "missing", "power is missing"),
                        new Problem("/margin", "outOfRange", "margin must be from 0 to 1 but is 2"),
                        new Problem("/idle", "outOfRange", "idle must be at least 0 W but is -1 W"),
                        new Problem("/peak", "outOfRange", "peak must be at most 1 kW but is 2 kW"),
                        new Problem("/rated", "outOfRange", "rated must be above 0 W but is 0 W"),
                        new Problem("", "conflict", "the whole does not add up"));
        assertThat(invalid)
                .hasMessage(
                        "name must not be blank; power is missing; margin must be from 0 to 1 but is 2; idle must be at least 0 W but is -1 W; "
                                + "peak must be at most 1 kW but is 2 kW; rated must be above 0 W but is 0 W; the whole does not add up");
    }

    @Test
    void theEndsOfARangeBelongToIt() {
        assertThatCode(() -> new Validation()
                        .within("power", LEAST, LEAST, MOST)
                        .within("power", MOST, LEAST, MOST)
                        .atLeast("power", LEAST, LEAST)
                        .atMost("power", MOST, MOST)
                        .above("power", MOST, LEAST)
                        .required("name", "x")
                        .done())
                .doesNotThrowAnyException();
    }

    @Test
    void whatIsMissingIsToldOnceByRequired() {
        assertThatCode(() -> new Validation()
                        .within("power", (Power) null, LEAST, MOST)
                        .atLeast("power", (Power) null, LEAST)
                        .atMost("power", (Power) null, MOST)
                        .above("power", (Power) null, LEAST)
                        .eachWithin("months", (List<Power>) null, LEAST, MOST)
                        .length("months", null, 12)
                        .done())
                .doesNotThrowAnyException();
        assertThat(refused(new Validation().notEmpty("months", null)).problems())
                .hasSize(1);
    }

    @Test
    void listsAreCheckedByElement() {
        InvalidInput invalid = refused(new Validation()
                .eachWithin("months", Arrays.asList(LEAST, null, Power.kilowatts(3)), LEAST, MOST)
                .length("months", List.of(1, 2, 3), 12)
                .notEmpty("loads", List.of()));

        assertThat(invalid.problems())
                .containsExactly(
                        new Problem("/months/1", "missing", "months/1 is missing"),
                        new Problem("/months/2", "outOfRange", "months/2 must be from 1 W to 1 kW but is 3 kW"),
                        new Problem("/months", "outOfRange", "months must have 12 values but has 3"),
                        new Problem("/loads", "missing", "loads must not be empty"));
    }

    @Test
    void aProblemCanBeSeenFromTheRecordAbove() {
        assertThat(new Problem("/power", "missing", "power is missing").under("/loads/3"))
                .isEqualTo(new Problem("/loads/3/power", "missing", "power is missing"));
    }

    @Test
    void theProblemsOfAnInputAreACopyThatCannotBeChanged() {
        InvalidInput invalid = refused(new Validation().required("power", null));
        assertThatThrownBy(() -> invalid.problems().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    private static InvalidInput refused(Validation checks) {
        InvalidInput invalid = catchThrowableOfType(InvalidInput.class, checks::done);
        assertThat(invalid).isNotNull();
        return invalid;
    }

    @Test
    void wholeNumbersAreShownWithoutDecimals() {
        assertThatThrownBy(
                        () -> new Validation().within("hours", 25.0, 0.0, 24.0).done())
                .hasMessage("hours must be from 0 to 24 but is 25");
        assertThatThrownBy(
                        () -> new Validation().within("hours", -0.5, 0.5, 24.0).done())
                .hasMessage("hours must be from 0.5 to 24 but is -0.5");
        // up to where a double still counts by ones and a person still reads the digits
        assertThatThrownBy(() -> new Validation().atMost("seed", 1e15, 9e14).done())
                .hasMessage("seed must be at most 900000000000000 but is 1.0E15");
    }
}
