package org.daybank.core.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Components that contradict each other, and bounds on money and on lists. */
class ContradictionTest {
    private static final Power SMALL = Power.watts(100);
    private static final Power LARGE = Power.watts(200);

    /** A price and some deposits that no shop can undercut or exceed. */
    record Offer(
            @Bounds(minimum = "0", maximum = "1000") Money price,

            @Bounds(exclusiveMinimum = "0", minimumItems = 1, maximumItems = 2)
            List<Money> deposits) {
        Offer {
            Validation.of(Offer.class, price, deposits).done();
            deposits = List.copyOf(deposits);
        }
    }

    private static List<Problem> problems(Validation validation) {
        return catchThrowableOfType(InvalidInput.class, validation::done).problems();
    }

    private static List<Problem> refused(@Nullable Money price, List<@Nullable Money> deposits) {
        return catchThrowableOfType(InvalidInput.class, () -> new Offer(price, deposits))
                .problems();
    }

    @Test
    void aContradictionNamesBothComponents() {
        assertThat(problems(new Validation()
                        .notAbove("mean", LARGE, "peak", SMALL)
                        .notBelow("surge", SMALL, "running", LARGE)
                        .exceeds("highest", SMALL, "lowest", SMALL)))
                .containsExactly(
                        new Problem(
                                "/mean", ProblemCode.INCONSISTENT, "mean must be at most peak 100 W, but was 200 W."),
                        new Problem(
                                "/surge",
                                ProblemCode.INCONSISTENT,
                                "surge must be at least running 200 W, but was 100 W."),
                        new Problem(
                                "/highest",
                                ProblemCode.INCONSISTENT,
                                "highest must be above lowest 100 W, but was 100 W."));
    }

    @Test
    void equalValuesContradictOnlyWhereOneMustExceed() {
        assertThatCode(() -> new Validation()
                        .notAbove("mean", SMALL, "peak", SMALL)
                        .notBelow("surge", SMALL, "running", SMALL)
                        .exceeds("highest", LARGE, "lowest", SMALL)
                        .done())
                .doesNotThrowAnyException();
    }

    @Test
    void anAbsentValueContradictsNone() {
        Power absent = null;
        assertThatCode(() -> new Validation()
                        .notAbove("mean", absent, "peak", SMALL)
                        .notAbove("mean", SMALL, "peak", absent)
                        .notBelow("surge", absent, "running", SMALL)
                        .notBelow("surge", SMALL, "running", absent)
                        .exceeds("highest", absent, "lowest", SMALL)
                        .exceeds("highest", SMALL, "lowest", absent)
                        .done())
                .doesNotThrowAnyException();
    }

    @Test
    void moneyIsBoundedByAmountInEveryCurrency() {
        assertThatCode(() -> new Offer(Money.of("1000", "EUR"), List.of(Money.of("0.01", "USD"))))
                .doesNotThrowAnyException();
        assertThatCode(() -> new Offer(Money.of("0", "JPY"), List.of(Money.of("1", "JPY"), Money.of("0.001", "KWD"))))
                .doesNotThrowAnyException();
        assertThat(refused(Money.of("-0.01", "EUR"), List.of(Money.of("0", "JPY"))))
                .containsExactly(
                        new Problem(
                                "/price",
                                ProblemCode.OUT_OF_RANGE,
                                "price must be from 0.00 EUR to 1000.00 EUR, but was -0.01 EUR."),
                        new Problem(
                                "/deposits/0",
                                ProblemCode.OUT_OF_RANGE,
                                "deposits/0 must be above 0 JPY, but was 0 JPY."));
        assertThat(refused(Money.of("1001", "JPY"), List.of(Money.of("1", "EUR"))))
                .extracting(Problem::path)
                .containsExactly("/price");
    }

    @Test
    void aMissingElementIsAProblem() {
        assertThat(refused(Money.of("1", "EUR"), new ArrayList<>(Arrays.asList(Money.of("1", "EUR"), null))))
                .extracting(Problem::path, Problem::code)
                .containsExactly(tuple("/deposits/1", ProblemCode.MISSING));
    }
}
