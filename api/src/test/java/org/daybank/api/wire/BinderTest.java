package org.daybank.api.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Assumption;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Builds records of every form, and tells everything that is wrong with an input. */
class BinderTest {
    /** How a lamp is switched. */
    public enum Switching {
        BY_HAND,
        AT_DUSK
    }

    /** Everything a planner may argue with about a lamp. */
    public record LampPolicy(
            @Bounds(minimum = "0", maximum = "1") @Assumed(value = "0.1", source = "growth")
            Ratio margin,

            @Assumed(value = "2", source = "pairs") int count,
            @Assumed(value = "false", source = "off by day") boolean byDay) {
        public LampPolicy {
            Validation.of(LampPolicy.class, margin, count, byDay).done();
        }

        public static LampPolicy standard() {
            return Defaults.of(LampPolicy.class);
        }
    }

    /** A lamp. */
    public record Lamp(
            String name,
            Power power,

            @Assumed(source = "as much as the power says in an hour")
            Energy hourly,

            @Nullable Switching switching) {
        public Lamp {
            new Validation()
                    .required("name", name)
                    .required("power", power)
                    .atLeast("power", power, Power.ZERO)
                    .done();
            hourly = hourly == null ? Energy.wattHours(power.watts()) : hourly;
        }
    }

    /** Lamps somewhere. */
    public record Street(
            Latitude latitude,
            List<Lamp> lamps,
            Optional<Money> price,
            @Nullable List<Irradiance> sun,
            double factor) {}

    /** A street with its policy, the street's own components at the top. */
    public record Request(@Inline Street street, LampPolicy policy) {}

    /** A record whose constructor stumbles over what is absent. */
    public record Careless(Power power, Ratio share) {
        public Careless {
            if (power.watts() * share.fraction() < 0) {
                throw new IllegalArgumentException("less than nothing");
            }
        }
    }

    private static final String STREET = """
            {"latitude": -12.5, "lamps": [{"name": "gate", "power": {"value": 1.5, "unit": "kW"}},
             {"name": "pier", "power": "20 W", "switching": "atDusk", "hourly": "5 Wh"}],
             "price": {"amount": "129.00", "currency": "EUR"}, "factor": 2,
             "sun": {"unit": "W/m2", "values": [0, 12.5]}}""";

    private static <R extends Record> Bound<R> bind(Class<R> type, String json) {
        return Binder.bind(type, Json.read(json.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Problem> problems(Class<? extends Record> type, String json) {
        return catchThrowableOfType(InvalidInput.class, () -> bind(type, json)).problems();
    }

    @Test
    void buildsEveryForm() {
        Request request = bind(Request.class, STREET).value();
        assertThat(request.street().latitude()).isEqualTo(Latitude.degrees(-12.5));
        assertThat(request.street().lamps())
                .containsExactly(
                        new Lamp("gate", Power.kilowatts(1.5), Energy.wattHours(1500), null),
                        new Lamp("pier", Power.watts(20), Energy.wattHours(5), Switching.AT_DUSK));
        assertThat(request.street().price()).contains(Money.of("129.00", "EUR"));
        assertThat(request.street().sun())
                .containsExactly(Irradiance.wattsPerSquareMetre(0), Irradiance.wattsPerSquareMetre(12.5));
        assertThat(request.street().factor()).isEqualTo(2);
        assertThat(request.policy()).isEqualTo(LampPolicy.standard());
    }

    @Test
    void remembersWhatWasAssumedAndEveryPolicyValue() {
        String json = STREET.replaceFirst("\\{", "{\"policy\": {\"count\": 3}, ");
        assertThat(bind(Request.class, json).assumptions())
                .containsExactlyInAnyOrder(
                        new Assumption(
                                "/lamps/0/hourly",
                                Energy.wattHours(1500),
                                true,
                                "as much as the power says in an hour"),
                        new Assumption("/policy/margin", Ratio.of(0.1), true, "growth"),
                        new Assumption("/policy/count", 3, false, "pairs"),
                        new Assumption("/policy/byDay", false, true, "off by day"));
    }

    @Test
    void tellsEverythingAtOnceAndKeepsTheRangesOfWhatWasRead() {
        String json = """
                {"latitud": 3, "latitude": 95, "lamps": [{"name": 5, "power": "-1 W"}, {"power": 20}],
                 "factor": "2", "policy": {"margin": 7, "count": 1.5, "byDay": "no"}}""";
        assertThat(problems(Request.class, json))
                .extracting(Problem::path, Problem::code)
                .containsExactlyInAnyOrder(
                        tuple("/latitud", ProblemCode.UNKNOWN_NAME),
                        tuple("/latitude", ProblemCode.UNREADABLE),
                        tuple("/lamps/0/name", ProblemCode.UNREADABLE),
                        tuple("/lamps/0/power", ProblemCode.OUT_OF_RANGE),
                        tuple("/lamps/1/power", ProblemCode.UNREADABLE),
                        tuple("/lamps/1/name", ProblemCode.MISSING),
                        tuple("/factor", ProblemCode.UNREADABLE),
                        tuple("/policy/margin", ProblemCode.OUT_OF_RANGE),
                        tuple("/policy/count", ProblemCode.UNREADABLE),
                        tuple("/policy/byDay", ProblemCode.UNREADABLE));
    }

    @Test
    void tellsWhatIsMissingWhenTheRecordDoesNot() {
        assertThat(problems(Request.class, "{\"lamps\": [], \"latitude\": null}"))
                .extracting(Problem::path, Problem::message)
                .containsExactly(tuple("/latitude", "latitude is required."), tuple("/factor", "factor is required."));
    }

    @Test
    void aConstructorThatStumblesOverAnAbsentPartIsNoAnswer() {
        assertThat(problems(Careless.class, "{\"power\": \"5 W\", \"share\": \"x\"}"))
                .extracting(Problem::path)
                .containsExactly("/share");
        assertThat(problems(Careless.class, "{\"power\": \"5 W\"}"))
                .extracting(Problem::path, Problem::code)
                .containsExactly(tuple("/share", ProblemCode.MISSING));
        // where every part was read, what a constructor throws is our own mistake and no problem of the request
        assertThatThrownBy(() -> bind(Careless.class, "{\"power\": \"-5 W\", \"share\": 1}"))
                .isExactlyInstanceOf(IllegalArgumentException.class)
                .hasMessage("less than nothing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "20                            | the unit is missing; write it with one of the units W",
                "'20'                          | the unit is missing",
                "{'value': 20}                 | power.unit: a unit in quotes is expected but found nothing",
                "{'value': '20', 'unit': 'W'}  | power.value: a number without quotes is expected but found \"20\"",
                "{'value': 20, 'unit': 'V'}    | V is a unit of voltage",
                "{'value': 20, 'unit': 'Q'}    | unknown unit 'Q'",
                "{'valu': 20, 'unit': 'W'}     | nearest known name is 'value'",
                "'2,5 W'                       | the decimal sign is a point, not a comma",
                "{'value': 1e400, 'unit': 'W'} | the number is too large",
                "true                          | a quantity, as in",
                "[1, 2]                        | one value is expected but there are 2",
                "[[['1 W', '2 W']]]            | one value is expected",
            })
    void saysWhyAQuantityIsNone(String power, String reason) {
        String json = "{\"name\": \"gate\", \"power\": " + power.replace('\'', '"') + "}";
        List<Problem> problems = problems(Lamp.class, json);
        assertThat(problems).allSatisfy(problem -> assertThat(problem.path()).startsWith("/power"));
        assertThat(problems)
                .extracting(Problem::message)
                .anySatisfy(message -> assertThat(message).contains(reason));
    }

    @Test
    void oneElementInBracketsIsThatElement() {
        assertThat(bind(Lamp.class, "{\"name\": [\"gate\"], \"power\": {\"value\": [20], \"unit\": [\"W\"]}}")
                        .value()
                        .power())
                .isEqualTo(Power.watts(20));
    }

    @Test
    void aRequestThatIsNoObjectSaysWhatOneHolds() {
        assertThat(problems(Lamp.class, "5"))
                .extracting(Problem::message)
                .containsExactly("the request: an object with name, power, hourly, switching is expected but found 5");
    }

    @Test
    void aFloodOfProblemsIsToldInPart() {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < 5000; i++) {
            json.append("\"x").append(i).append("\": 1, ");
        }
        List<Problem> problems =
                problems(Lamp.class, json.append("\"name\": \"gate\"}").toString());
        assertThat(problems).hasSize(101);
        // 5000 unknown names and the missing power
        assertThat(problems.get(100).message()).isEqualTo("4901 more problems are not listed.");
    }

    @Test
    void flatFormsTakeEveryPartByItsBareName() {
        FlatForm<FlatRequest> form = new FlatForm<>(FlatRequest.class);
        assertThat(form.names()).containsExactly("name", "power", "hourly", "switching", "margin", "count", "byDay");
        FlatRequest bound = form.bind(Map.of(
                        "name", List.of("12"),
                        "power", List.of("20W"),
                        "count", List.of("3"),
                        "margin", List.of("20 %"),
                        "byDay", List.of("TRUE")))
                .value();
        assertThat(bound)
                .isEqualTo(new FlatRequest(
                        new Lamp("12", Power.watts(20), Energy.wattHours(20), null),
                        new LampPolicy(Ratio.of(0.2), 3, true)));
    }

    @Test
    void flatFormsNameTheParameterThatIsWrong() {
        FlatForm<FlatRequest> form = new FlatForm<>(FlatRequest.class);
        List<Problem> problems = catchThrowableOfType(
                        InvalidInput.class,
                        () -> form.bind(
                                Map.of("nam", List.of("gate"), "power", List.of("1 W", "2 W"), "margin", List.of("7"))))
                .problems();
        assertThat(problems).extracting(Problem::path).containsExactlyInAnyOrder("nam", "name", "power", "margin");
    }

    /** A request whose parts all have one value. */
    public record FlatRequest(@Inline Lamp lamp, LampPolicy policy) {}

    @Test
    void whatIsWrittenIsReadBack() {
        Request request = bind(Request.class, STREET).value();
        assertThat(Binder.bind(Request.class, RecordWriter.write(request)).value())
                .isEqualTo(request);
    }
}
