package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole job asked over HTTP: badly in every way that happens, for the impossible, and with a catalogue of one's own. */
class SystemDesignServiceTest {
    private static final String PATH = "/v1/system-design";
    private static final String VOLTAGES = "/noDesign/rejected/rejectedVoltages";
    private static final Schemas SCHEMAS = new Schemas();
    private static RunningService service;
    private static String larkspurRidge;

    @BeforeAll
    static void start() {
        service = new RunningService();
        larkspurRidge = service.get("/v1/examples/system-design").body();
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    /** The example with one text in it exchanged. */
    private static String with(String right, String wrong) {
        assertThat(larkspurRidge).contains(right);
        return larkspurRidge.replaceFirst(Pattern.quote(right), wrong);
    }

    private static JsonNode refused(String body) {
        return Refusal.document(service.post(PATH, body), 400);
    }

    private static JsonNode design(String body) {
        HttpResponse<String> response = service.post(PATH, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode answer = RunningService.json(response);
        assertThat(SCHEMAS.faults(PATH, "post", 200, "application/json", answer))
                .isEmpty();
        return answer;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "118 W              | 118 Wx         | /loads/0/power       | unknown unit 'Wx'; write it with one of the units W, mW, kW, MW",
                "118 W              | 118 Wh         | /loads/0/power       | Wh is a unit of energy; write it with one of the units W",
                "118 W              | -118 W         | /loads/0/power       | loads.0.power must be from 0 W to 1 MW, but was -118 W.",
                "118 W              | 118,5 W        | /loads/0/power       | the decimal sign is a point, not a comma",
                "'\"118 W\"'        | 118            | /loads/0/power       | the unit is missing",
                "'\"118 W\"'        | null           | /loads/0/power       | loads.0.power is required.",
                "'\"hoursPerDay\": 24, \"dutyCycle\"' | '\"hoursPerDay\": 25, \"dutyCycle\"' | /loads/0/hoursPerDay | loads.0.hoursPerDay must be from 0 to 24, but was 25.",
                "'\"daysPerWeek\": 3' | '\"daysPerWeek\": 8' | /loads/5/daysPerWeek | must be at most 7, but was 8.",
                "dutyCycle          | dutyCicle      | /loads/0/dutyCicle   | the nearest known name is 'dutyCycle'",
                "autonomy           | autonomie      | /policy/bank/autonomie | the nearest known name is 'autonomy'",
                "compressor         | icebox         | /loads/0/kind        | is not one of resistive, lighting",
                "16:30-22:30        | 16h30-22h30    | /loads/3/windows/0   | as in '18:00-23:00'",
                "'\"windows\"'      | '\"hoursPerDay\": 5, \"windows\"' | /loads/3 | exactly one of hoursPerDay, hourlyFractions and windows",
                "46.87              | 91             | /site/latitude       | must be from −90 to 90 degrees, but was 91.",
                "46.87              | '\"46.87 N\"'  | /site/latitude       | a number without quotes",
                "1340 m             | 1340           | /site/elevation      | the unit is missing",
                "'\"1.32 kW.h/m2\", ' | ''           | /site/months/dailyIrradiation | site.months.dailyIrradiation must have at least 12 elements, but has 11.",
                "6.18 kW.h/m2       | 61.8 kW.h/m2   | /site/months/dailyIrradiation/6 | site.months.dailyIrradiation.6 must be from 0 kWh/m² to 14 kWh/m²",
                "46.87              | 89             | /site/months/dailyIrradiation/0 | the sun sends no more than 0 kWh/m² to latitude 89°",
                "-29 Cel            | 10 Cel         | /site/recordLow      | must be at most the coldest month's mean -6.1 °C, but was 10 °C.",
                "180 deg            | south          | /array/azimuth       | with one of the units deg, rad",
                "3 d                | 90 d           | /policy/bank/autonomy | must be from 2.4 h to 60 d, but was 90 d.",
                "'\"service\"'      | '\"catalog\": {\"modules\": []}, \"service\"' | /catalog/batteries | catalog.batteries is required.",
            })
    void namesWhatIsWrong(String right, String wrong, String pointer, String reason) {
        JsonNode problem = refused(with(right, wrong));
        assertThat(problem.path("errors")).anySatisfy(error -> {
            assertThat(error.path("pointer").asText()).isEqualTo(pointer);
            assertThat(error.path("detail").asText()).contains(reason);
        });
        assertThat(problem.path("detail").asText()).contains(reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"16h30-22h30", "25:00-26:00", ""})
    void oneMistakeIsToldOnce(String window) {
        assertThat(refused(with("16:30-22:30", window)).path("errors")).hasSize(1);
    }

    @Test
    void asksForSiteAndLoads() {
        assertThat(refused("{}").path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder("/site", "/loads");
        assertThat(refused(larkspurRidge.replaceAll("(?s)\"loads\": \\[.*?\\n  \\]", "\"loads\": []"))
                        .path("detail")
                        .asText())
                .isEqualTo("loads must not be empty.");
    }

    @Test
    void tellsSeveralProblemsAtOnce() {
        String body = with("46.87", "91")
                .replace("118 W", "-118 W")
                .replace("\"autonomy\": \"3 d\"", "\"autonomy\": \"3 V\"")
                .replace("\"kind\": \"universalMotor\"", "\"sort\": \"universalMotor\"");
        assertThat(refused(body).path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder(
                        "/site/latitude", "/loads/0/power", "/policy/bank/autonomy", "/loads/5/sort");
    }

    @Test
    void refusesWhatIsBrokenOrTooLarge() {
        assertThat(refused(with("46.87", "46,87")).path("detail").asText())
                .contains("line 5, column", "the decimal sign is a point, not a comma");
        assertThat(refused(larkspurRidge.substring(0, 300))
                        .path("errors")
                        .path(0)
                        .path("code")
                        .asText())
                .isEqualTo("malformed");
        String large = with("\"sample freezer\"", "\"" + "x".repeat(10_000_000) + "\"");
        assertThat(Refusal.document(service.post(PATH, large), 413)
                        .path("detail")
                        .asText())
                .contains("1000000 bytes");
    }

    @Test
    void whatNothingSatisfiesIsAnsweredWithReasons() {
        JsonNode result = design(with("730 W", "60 kW")).path("result");
        assertThat(result.path("kind").asText()).isEqualTo("noDesign");
        assertThat(result.fieldNames()).toIterable().containsExactly("kind", "noDesign");
        assertThat(result.at(VOLTAGES)).hasSize(3);
        // 60 kW and the other AC loads, with a margin of a quarter, are more than any inverter of the sample gives
        assertThat(result.at(VOLTAGES))
                .allSatisfy(voltage -> assertThat(voltage.path("failedChecks")).anySatisfy(reason -> {
                    assertThat(reason.path("rule").asText()).isEqualTo("continuousPower");
                    assertThat(reason.at("/value/value").asDouble()).isGreaterThan(60_000 * 1.25);
                    assertThat(reason.path("message").asText()).startsWith("The nearest product, ");
                }));
    }

    @Test
    void theNearestProductIsTheOneThatMissesByTheLeast() {
        // the largest of the sample would also draw more from the bank than is planned for; the next smaller misses
        // less
        JsonNode tooStrong = design(with("730 W", "60 kW")).at("/result" + VOLTAGES + "/2/failedChecks");
        assertThat(tooStrong.findValuesAsText("message"))
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(sentence).contains("5000-48"));
        // two months without sun take more strings in parallel than any battery allows, whatever else is known of it
        JsonNode tooLong = design(with("3 d", "60 d")).at("/result" + VOLTAGES + "/2/failedChecks");
        assertThat(tooLong.findValuesAsText("rule")).contains("parallelStrings").doesNotContain("capacityInTheCold");
    }

    @Test
    void anEmptyCatalogueIsAnsweredWithReasons() {
        String nothing =
                "\"catalog\": {\"modules\": [], \"batteries\": [], \"controllers\": [], \"inverters\": []}, \"service\"";
        JsonNode result = design(with("\"service\"", nothing)).path("result");
        assertThat(result.path("kind").asText()).isEqualTo("noDesign");
        assertThat(result.at("/noDesign/failedChecks").findValuesAsText("message"))
                .containsExactly(
                        "The catalogue has no inverters.",
                        "The catalogue has no batteries.",
                        "The catalogue has no modules.",
                        "The catalogue has no charge controllers.");
    }

    @Test
    void whatTheColdOfThePoleRefusesIsAFieldOfTheRequest() {
        ObjectNode request = (ObjectNode) RunningService.json(larkspurRidge);
        ObjectNode site = request.putObject("site").put("latitude", -90).put("recordLow", "-82.8 Cel");
        ObjectNode months = site.putObject("months");
        months.putArray("clearness").add(0.6);
        ArrayNode air = months.putArray("meanAir");
        for (int celsius : new int[] {-28, -41, -54, -57, -58, -58, -60, -60, -59, -51, -38, -27}) {
            air.add(celsius + " Cel");
        }
        JsonNode errors = refused(request.toString()).path("errors");
        assertThat(errors).hasSize(1);
        String pointer = errors.at("/0/pointer").asText();
        assertThat(pointer).isEqualTo("/site/recordLow");
        assertThat(request.at(pointer).isMissingNode()).isFalse();
    }

    @Test
    void theSampleHandedInGivesTheDesignThatItGivesWhenLeftOut() {
        JsonNode leftOut = design(larkspurRidge);
        assertThat(leftOut.path("given").has("catalog")).isFalse();
        ObjectNode request = (ObjectNode) RunningService.json(larkspurRidge);
        request.set("catalog", RunningService.json(service.get("/v1/catalog")));
        JsonNode handedIn = design(request.toString());
        assertThat(handedIn.path("result")).isEqualTo(leftOut.path("result"));
        assertReproducible(handedIn);
    }

    @Test
    void aCatalogueOfOnesOwnIsAllThatIsOffered() {
        ObjectNode request = (ObjectNode) RunningService.json(larkspurRidge);
        ObjectNode catalog = (ObjectNode) RunningService.json(service.get("/v1/catalog"));
        for (JsonNode module : catalog.path("modules")) {
            ((ObjectNode) module).put("model", "OWN-" + module.path("model").asText());
        }
        // its lines name the modules by what they were called before
        catalog.remove("stock");
        request.set("catalog", catalog);
        JsonNode answer = design(request.toString());
        assertThat(answer.at("/result/standAlone/system/array/product").asText())
                .startsWith("OWN-");
        assertReproducible(answer);
    }

    /** What was given, defaults filled in, gives the same; only the list of what was assumed is shorter then. */
    private static void assertReproducible(JsonNode answer) {
        JsonNode again = design(answer.path("given").toString());
        assertThat(again.path("given")).isEqualTo(answer.path("given"));
        assertThat(again.path("result")).isEqualTo(answer.path("result"));
        assertThat(again.path("hazards")).isEqualTo(answer.path("hazards"));
    }
}
