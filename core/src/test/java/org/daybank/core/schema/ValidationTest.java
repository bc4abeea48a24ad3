package org.daybank.core.schema;

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
                .that(false, "", ProblemCode.CONFLICT, "the whole does not add up"));

        assertThat(invalid.problems())
                .containsExactly(
                        new Problem("/name", ProblemCode.MISSING, "name must not be blank."),
                        new Problem("/power", ProblemCode.MISSING, "power is required."),
                        new Problem("/margin", ProblemCode.OUT_OF_RANGE, "margin must be from 0 to 1, but was 2."),
                        new Problem("/idle", ProblemCode.OUT_OF_RANGE, "idle must be at least 0 W, but was -1 W."),
                        new Problem("/peak", ProblemCode.OUT_OF_RANGE, "peak must be at most 1 kW, but was 2 kW."),
                        new Problem("/rated", ProblemCode.OUT_OF_RANGE, "rated must be above 0 W, but was 0 W."),
                        new Problem("", ProblemCode.CONFLICT, "the whole does not add up"));
        assertThat(invalid)
                .hasMessage(
                        "name must not be blank. power is required. margin must be from 0 to 1, but was 2. idle must be at least 0 W,"
                                + " but was -1 W. peak must be at most 1 kW, but was 2 kW. rated must be above 0 W, but was 0 W. the whole"
                                + " does not add up");
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
                        new Problem("/months/1", ProblemCode.MISSING, "months/1 is required."),
                        new Problem(
                                "/months/2",
                                ProblemCode.OUT_OF_RANGE,
                                "months/2 must be from 1 W to 1 kW, but was 3 kW."),
                        new Problem("/months", ProblemCode.OUT_OF_RANGE, "months must have 12 values, but has 3."),
                        new Problem("/loads", ProblemCode.MISSING, "loads must not be empty."));
    }

    @Test
    void aProblemCanBeSeenFromTheRecordAbove() {
        assertThat(new Problem("/power", ProblemCode.MISSING, "power is required.").under("/loads/3"))
                .isEqualTo(new Problem("/loads/3/power", ProblemCode.MISSING, "power is required."));
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
                .hasMessage("hours must be from 0 to 24, but was 25.");
        assertThatThrownBy(
                        () -> new Validation().within("hours", -0.5, 0.5, 24.0).done())
                .hasMessage("hours must be from 0.5 to 24, but was -0.5.");
        // up to where a double still counts by ones and a person still reads the digits
        assertThatThrownBy(() -> new Validation().atMost("seed", 1e15, 9e14).done())
                .hasMessage("seed must be at most 900000000000000, but was 1.0E15.");
    }
}
