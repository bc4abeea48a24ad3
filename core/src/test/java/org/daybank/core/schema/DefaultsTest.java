package org.daybank.core.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.TimeSpan;
import org.junit.jupiter.api.Test;

class DefaultsTest {

    /** A pair without an order of its own. */
    public record Pair(Ratio low, Ratio high) {
        public static Pair parse(CharSequence text) {
            String[] parts = text.toString().split("/", 2);
            return new Pair(Ratio.parse(parts[0]), Ratio.parse(parts[parts.length - 1]));
        }
    }

    /** One of each kind of component. */
    public record Policy(
            @Bounds(minimum = "1 d", maximum = "30 d") @Assumed(value = "3 d", source = "a standard")
            TimeSpan autonomy,

            @Bounds(minimum = "0.1", maximum = "0.9") @Assumed(value = "0.2/0.8", source = "a paper")
            Pair depth,

            @Assumed(value = "false", source = "custom") boolean careful,
            Nested nested) {
        public Policy {
            Validation.of(Policy.class, autonomy, depth, careful, nested).done();
        }
    }

    /** A policy within a policy. */
    public record Nested(
            @Bounds(maximum = "25 %") @Assumed(value = "10 %", source = "habit")
            Ratio margin) {
        public Nested {
            Validation.of(Nested.class, margin).done();
        }
    }

    /** Defaults that break their own range. */
    public record Broken(
            @Bounds(maximum = "1") @Assumed(value = "2", source = "a slip")
            Ratio margin) {
        public Broken {
            Validation.of(Broken.class, margin).done();
        }
    }

    /** A component that nothing is assumed of, and one whose default follows from it. */
    public record Facts(
            Power power, @Assumed(source = "equal to power") Power peak) {}

    private static final Policy STANDARD = Defaults.of(Policy.class);

    @Test
    void theStandardHasEveryDefaultAndThatOfNestedRecords() {
        assertThat(STANDARD)
                .isEqualTo(new Policy(
                        TimeSpan.days(3), new Pair(Ratio.of(0.2), Ratio.of(0.8)), false, new Nested(Ratio.of(0.1))));
    }

    @Test
    void rangesAreCheckedAllAtOnceAndPartByPart() {
        assertThatThrownBy(() -> new Policy(TimeSpan.days(31), new Pair(Ratio.of(0.05), Ratio.of(0.95)), true, null))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        invalid -> assertThat(invalid.problems())
                                .containsExactly(
                                        new Problem(
                                                "/autonomy",
                                                ProblemCode.OUT_OF_RANGE,
                                                "autonomy must be from 1 d to 30 d, but was 31 d."),
                                        new Problem(
                                                "/depth/low",
                                                ProblemCode.OUT_OF_RANGE,
                                                "depth/low must be from 0.1 to 0.9, but was 0.05."),
                                        new Problem(
                                                "/depth/high",
                                                ProblemCode.OUT_OF_RANGE,
                                                "depth/high must be from 0.1 to 0.9, but was 0.95."),
                                        new Problem("/nested", ProblemCode.MISSING, "nested is required.")));
    }

    @Test
    void aRangeMayBeOpenOnOneSide() {
        assertThat(new Nested(Ratio.of(-5)).margin()).isEqualTo(Ratio.of(-5));
        assertThatThrownBy(() -> new Nested(Ratio.of(0.3))).hasMessage("margin must be at most 0.25, but was 0.3.");
    }

    @Test
    void otherwiseTakesTheDefaultOnlyWhenNothingIsGiven() {
        Ratio left = Defaults.otherwise(null, Nested.class, "margin");
        assertThat(left).isEqualTo(Ratio.of(0.1));
        assertThat(Defaults.otherwise(Ratio.of(0.2), Nested.class, "margin")).isEqualTo(Ratio.of(0.2));
        assertThatThrownBy(() -> Defaults.otherwise(null, Nested.class, "magrin"))
                .hasMessage("Nested has no component magrin but margin");
        assertThatThrownBy(() -> Defaults.otherwise(null, Facts.class, "power"))
                .hasMessage("power has no constant default");
        assertThatThrownBy(() -> Defaults.otherwise(null, Facts.class, "peak"))
                .hasMessage("peak has no constant default");
    }

    @Test
    void assumptionsTellWhatWasLeftOutAndWhatWasGiven() {
        Policy policy = new Policy(TimeSpan.days(5), STANDARD.depth(), false, STANDARD.nested());

        assertThat(Defaults.assumptions("/policy", policy))
                .containsExactly(
                        new Assumption("/policy/autonomy", TimeSpan.days(5), false, "a standard"),
                        new Assumption("/policy/depth", STANDARD.depth(), true, "a paper"),
                        new Assumption("/policy/careful", false, true, "custom"),
                        new Assumption("/policy/nested/margin", Ratio.of(0.1), true, "habit"));
    }

    @Test
    void factsCarryNoAssumptionButADerivedOneIsListed() {
        assertThat(Defaults.assumptions("", new Facts(Power.watts(5), Power.watts(5))))
                .containsExactly(new Assumption("/peak", Power.watts(5), false, "equal to power"));
        assertThatThrownBy(() -> Defaults.of(Facts.class)).hasMessage("power has no default");
    }

    @Test
    void defaultsThatRefuseThemselvesAreAMistakeOfOurs() {
        assertThatThrownBy(() -> Defaults.of(Broken.class))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("The defaults of Broken are not valid")
                .hasCauseInstanceOf(InvalidInput.class);
    }
}
