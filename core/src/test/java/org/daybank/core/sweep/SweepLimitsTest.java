package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.daybank.core.Refused;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a sweep takes and what it refuses, on records made for it. */
class SweepLimitsTest {
    record Many(List<Double> numbers) {}

    record Sum(double sum) {}

    record Spot(
            Optional<Place> place,
            boolean shaded,
            Optional<Double> height,
            @Nullable Place spare) {}

    record Place(Latitude latitude, Longitude longitude, Money rent) {}

    private static final Many FORTY =
            new Many(IntStream.range(0, 40).mapToObj(i -> (double) i).toList());
    private static final Spot SPOT = new Spot(
            Optional.of(new Place(Latitude.degrees(50), Longitude.degrees(8), Money.of("12.00", "EUR"))),
            true,
            Optional.of(3.0),
            null);

    private static Sweep numbers() {
        return Sweep.of(
                FORTY,
                many -> new Sum(
                        many.numbers().stream().mapToDouble(Double::doubleValue).sum()));
    }

    @Test
    void asManyAxesAndOutputsAsAreAllowed() {
        Sweep most = numbers();
        for (int i = 0; i < Sweep.MOST_AXES; i++) {
            most = most.vary("numbers[%d]".formatted(i), Axis.of(0.0));
        }
        for (int i = 0; i < Sweep.MOST_OUTPUTS; i++) {
            most = most.output("sum" + i, "sum");
        }
        // 32 + 33 + … + 39
        assertThat(most.rows().findFirst().orElseThrow().number("sum255")).hasValue(284);
        Sweep more = most.vary("numbers[32]", Axis.of(0.0)).output("sum256", "sum");
        assertThat(problems(more::compile))
                .containsExactly(
                        "/axes axes must be at most 32, but were 33.",
                        "/outputs outputs must be at most 256, but were 257.");
    }

    @Test
    void columnsHaveNamesOfTheirOwn() {
        assertThat(problems(
                        numbers().vary("a", "numbers[0]", Axis.of(1.0)).vary("a", "numbers[1]", Axis.of(1.0))::compile))
                .containsExactly("/axes/1/path a is varied by two axes");
        assertThat(problems(numbers()
                        .vary("a", "numbers[0]", Axis.of(1.0))
                        .output("a", "sum")
                        .output("b", "sum")
                        .output("b", "sum")::compile))
                .containsExactly("/outputs/0 a is the name of two columns", "/outputs/2 b is the name of two columns");
    }

    @Test
    void whatTheCalculatorSaysOfTheBaseIsToldOfIt() {
        Sweep refusing = Sweep.of(FORTY, many -> {
                    if (many.numbers().get(0) == 0) {
                        throw new InvalidInput(
                                List.of(new Problem("/numbers", ProblemCode.OUT_OF_RANGE, "nothing at all")));
                    }
                    return new Sum(1);
                })
                .vary("numbers[0]", Axis.of(1.0))
                .output("sum");
        assertThat(problems(refusing::compile)).containsExactly("/base/numbers nothing at all");
        Sweep dividing = Sweep.of(
                        FORTY,
                        many -> new Sum(Math.floorDiv(1, many.numbers().get(0).intValue())))
                .vary("numbers[0]", Axis.of(1.0))
                .output("sum");
        assertThat(problems(dividing::compile)).containsExactly("/base / by zero");
    }

    @Test
    void placesThatAreNotThereAreRefused() {
        assertThat(problems(numbers().vary("numbers[40]", Axis.of(1.0))::compile))
                .containsExactly("/axes/0/path numbers has 40 elements, from [0] to [39]");
        assertThat(problems(numbers().vary("numbers[0]", Axis.of(1.0)).vary("b", "numbers[0]", Axis.of(1.0))::compile))
                .containsExactly("/axes/1/path numbers[0] is varied by two axes, in whole or in part");
        Sweep spots = Sweep.of(SPOT, spot -> spot);
        assertThat(problems(spots.vary("spare.latitude", Axis.of(Latitude.degrees(1)))::compile))
                .containsExactly("/axes/0/path there is no spare in the base, of which a part could be varied");
        assertThat(problems(spots.vary("shaded", Axis.of(true)).output("place")::compile))
                .containsExactly("/outputs/0 place is not one value: name one of its parts, latitude, longitude, rent");
        assertThat(problems(numbers().vary("numbers[0]", Axis.of(1.0)).output("sum[0]")::compile))
                .containsExactly("/outputs/0 [0] stands after what is not a list");
        assertThat(problems(Sweep.of(FORTY, many -> many)
                        .vary("numbers[0]", Axis.of(1.0))
                        .output("numbers")::compile))
                .containsExactly("/outputs/0 numbers is not one value: name one of its elements, as in [0]");
    }

    @Test
    void anAxisTakesOnlyTheKindOfValueOfItsPlace() {
        assertThat(problems(numbers().vary("numbers[0]", Axis.range(Power.watts(1), Power.watts(2), 2))::compile))
                .containsExactly("/axes/0 numbers[0] takes a value of Double, but was given 1 W, a value of Power.");
        assertThat(problems(numbers()
                        .vary("numbers[0]", Axis.drawn(Distribution.uniform(Power.watts(1), Power.watts(2))))
                        .sampled(Sampling.random(3, 1))::compile))
                .containsExactly("/axes/0 numbers[0] takes a value of Double, but was given 1 W, a value of Power.");
        assertThat(problems(numbers().vary("numbers", Axis.of("none"))::compile))
                .containsExactly("/axes/0 numbers takes a value of List, but was given none, a value of String.");
        assertThat(numbers()
                        .vary("numbers", Axis.of(List.of(1.0, 2.0), List.of(7.0)))
                        .output("sum")
                        .rows()
                        .map(row -> row.number("sum").orElseThrow()))
                .containsExactly(3.0, 7.0);
    }

    @Test
    void partsOfWhatIsOptionalAreVariedAndShown() {
        List<Row> rows = Sweep.of(SPOT, spot -> spot)
                .vary("place.latitude", Axis.range(Latitude.degrees(40), Latitude.degrees(44), 3))
                .vary("shaded", Axis.of(true, false))
                .output("lat", "place.latitude")
                .output("lon", "place.longitude")
                .output("rent", "place.rent")
                .output("shade", "shaded")
                .output("height")
                .rows()
                .toList();
        assertThat(rows)
                .extracting(Row::toString)
                .startsWith(
                        "row 0: [40.0, true, 40.0, 8.0, 12.0, true, 3.0]",
                        "row 1: [40.0, false, 40.0, 8.0, 12.0, false, 3.0]",
                        "row 2: [42.0, true, 42.0, 8.0, 12.0, true, 3.0]");
        assertThat(rows.get(0).columns()).contains(new Column("rent", "EUR", true), new Column("shade", "", false));
        assertThat(rows.get(0).text("height")).hasValue("3");
        assertThat(rows.get(5).text("shade")).hasValue("false");
    }

    @Test
    void rowsAreEqualWhenTheirCellsAre() {
        Sweep sweep = numbers().vary("numbers[0]", Axis.of(1.0, 2.0)).output("sum");
        List<Row> once = sweep.rows().toList();
        List<Row> again = sweep.rows().toList();
        assertThat(once).isEqualTo(again);
        assertThat(once.get(0))
                .hasSameHashCodeAs(again.get(0))
                .isNotEqualTo(once.get(1))
                .isNotEqualTo("row");
        assertThat(once.get(0).hashCode()).isNotEqualTo(once.get(1).hashCode());
        Row elsewhere = numbers()
                .vary("other", "numbers[0]", Axis.of(1.0))
                .output("sum")
                .rows()
                .findFirst()
                .orElseThrow();
        assertThat(elsewhere).as("of other columns").isNotEqualTo(once.get(0));
        assertThatThrownBy(() -> once.get(0).number("sun"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("No column sun; there are numbers[0], sum");
    }

    @Test
    void onlyRowsThatThereAreCanBeHad() {
        CompiledSweep three = numbers()
                .vary("numbers[0]", Axis.of(1.0, 2.0, 3.0))
                .output("sum")
                .compile();
        assertThat(three.rows(1, 3).map(Row::number)).containsExactly(1L, 2L);
        assertThat(three.rows(3, 3)).isEmpty();
        assertThatThrownBy(() -> three.rows(-1, 2)).hasMessage("rows from -1 to 2 are not among those from 0 to 3");
        assertThatThrownBy(() -> three.rows(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> three.forEach(0, 4, 1, row -> {})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> three.write(RowFormat.CSV, new ByteArrayOutputStream(), 0, 4, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aWriterIsFlushedAsRowsCome() throws IOException {
        List<Integer> flushed = new ArrayList<>();
        ByteArrayOutputStream out = new ByteArrayOutputStream() {
            @Override
            public void flush() {
                flushed.add(size());
            }
        };
        numbers()
                .vary("numbers[0]", Axis.of(1.0, 2.0, 3.0))
                .output("sum")
                .compile()
                .write(RowFormat.NDJSON, out, 0, 3, 1);
        assertThat(flushed).isNotEmpty().endsWith(out.size());
    }

    @Test
    void anUncertaintyTakesOutputsAndNotTooManyCases() {
        Sweep sweep = numbers().vary("numbers[0]", Axis.range(0.0, 1.0, 2));
        assertThat(problems(() -> Uncertainty.of(sweep, 16, 0))).containsExactly("/outputs outputs must not be empty");
        assertThat(problems(() -> Uncertainty.of(sweep.output("sum"), 16_666_667, 0)))
                .containsExactly(
                        "/sampling/count 16666667 draws of 1 inputs take 50000001 cases; at most 50000000 are asked for");
        Sweep refusing = Sweep.of(FORTY, many -> {
                    if (many.numbers().get(0) != 0) {
                        throw new IllegalArgumentException("refused");
                    }
                    return new Sum(1);
                })
                .vary("numbers[0]", Axis.range(1.0, 2.0, 2))
                .output("sum");
        assertThat(problems(() -> Uncertainty.of(refusing, 16, 0)))
                .containsExactly(
                        "/outputs sum: fewer than two draws have an answer; cases without one: 48 notCalculable");
    }

    /** Place and words of everything that is told. */
    private static List<String> problems(Runnable making) {
        return Refused.problems(making).stream()
                .map(problem -> problem.path() + " " + problem.message())
                .toList();
    }
}
