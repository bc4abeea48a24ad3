package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A real service, asked well and badly. */
class ServiceTest {
    private static final String PATH = "/v1/bank-capacity";
    private static final String GOOD = """
            {"dailyEnergy": "2.4 kWh", "nominalVoltage": "24 V", "chemistry": "lithiumIronPhosphate", "lowest": "10 Cel",
             "policy": {"autonomy": "3 d", "depthOfDischarge": "80 %"}}""";
    private static final String FLAT =
            "?dailyEnergy=2.4kWh&nominalVoltage=24V&chemistry=lithiumIronPhosphate&lowest=10Cel&autonomy=3d&depthOfDischarge=80%25";

    private static final Schemas SCHEMAS = new Schemas();

    @AutoClose
    private static final RunningService service = new RunningService();

    private static JsonNode refused(String body) {
        return Refusal.document(service.post(PATH, body), 400);
    }

    @Test
    void findsTheCapacityByHand() {
        JsonNode answer = RunningService.json(service.post(PATH, GOOD));
        // 2400 Wh · 3 d / 25.6 V = 281.25 Ah; / 0.8 = 351.5625 Ah; / 0.95 · 1.1 = 407.0723684… Ah
        assertThat(answer.at("/result/autonomyCharge/value").asDouble()).isEqualTo(281.25);
        assertThat(answer.at("/result/byDepth/value").asDouble()).isEqualTo(351.5625);
        assertThat(answer.at("/result/requiredCapacity/unit").asText()).isEqualTo("A.h");
        assertThat(answer.at("/result/requiredCapacity/value").asDouble())
                .isCloseTo(351.5625 / 0.95 * 1.1, within(1e-9));
        assertThat(answer.has("working")).isFalse();
    }

    @Test
    void showsItsWorkingWhenAsked() {
        JsonNode answer = RunningService.json(service.post(PATH + "?working=True", GOOD));
        assertThat(answer.at("/working/steps/0/substituted").asText()).isEqualTo("2.4 kWh · 3 / 25.6 V");
    }

    @Test
    void answersQueryParametersTheSame() {
        JsonNode posted = RunningService.json(service.post(PATH, GOOD));
        HttpResponse<String> asked = service.get(PATH + FLAT);
        assertThat(RunningService.json(asked)).isEqualTo(posted);
        assertThat(SCHEMAS.faults(PATH, "get", 200, "application/json", RunningService.json(asked)))
                .isEmpty();
    }

    @Test
    void answersOneFigureAsABareNumber() {
        HttpResponse<String> base = service.get(PATH + "/autonomyCharge.txt" + FLAT);
        assertThat(base.body()).isEqualTo("281.25");
        assertThat(base.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/plain");
        assertThat(service.get(PATH + "/autonomyCharge.txt" + FLAT + "&in=kA.h").body())
                .isEqualTo("0.28125");
        assertThat(service.get(PATH + "/governing.txt" + FLAT).body()).isEqualTo("depth");
        assertThat(Refusal.document(service.get(PATH + "/autonomyCharge.txt" + FLAT + "&in=V"), 400)
                        .path("detail")
                        .asText())
                .contains("A.h");
        assertThat(Refusal.document(service.get(PATH + "/capacity.txt" + FLAT), 404)
                        .path("detail")
                        .asText())
                .contains("requiredCapacity");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.4 kWh        | 2.4 kQh    | /dailyEnergy         | unknown unit 'kQh'",
                "2.4 kWh        | 2.4 kW     | /dailyEnergy         | kW is a unit of power",
                "2.4 kWh        | -2.4 kWh   | /dailyEnergy         | must be from 0 Wh",
                "2.4 kWh        | 2,4 kWh    | /dailyEnergy         | decimal sign is a point",
                "2.4 kWh        | 2.4        | /dailyEnergy         | the unit is missing",
                "2.4 kWh        | 1e999 kWh  | /dailyEnergy         | too large",
                "'\"2.4 kWh\"'  | 2.4        | /dailyEnergy         | the unit is missing",
                "'\"2.4 kWh\"'  | null       | /dailyEnergy         | dailyEnergy is required.",
                "'\"2.4 kWh\"'  | true       | /dailyEnergy         | a quantity, as in",
                "24 V           | 36 V       | /nominalVoltage      | 12 V, 24 V or 48 V",
                "lithiumIronPhosphate | lithium | /chemistry         | ventedLeadAcid, agm, gel",
                "dailyEnergy    | dailyEnergi | /dailyEnergi        | 'dailyEnergy'",
                "autonomy       | autonomi   | /policy/autonomi     | 'autonomy'",
                "80 %           | 180 %      | /policy/depthOfDischarge/lithium | must be from 0.05 to 1, but was 1.8.",
                "10 Cel         | -40 Cel    | /temperatureFactor   | data sheet",
            })
    void namesWhatIsWrong(String right, String wrong, String pointer, String reason) {
        JsonNode problem = refused(GOOD.replace(right, wrong));
        assertThat(problem.path("errors")).anySatisfy(error -> {
            assertThat(error.path("pointer").asText()).isEqualTo(pointer);
            assertThat(error.path("detail").asText()).contains(reason);
        });
    }

    @Test
    void tellsSeveralProblemsAtOnce() {
        JsonNode problem = refused("{\"dailyEnergy\": 5, \"policy\": {\"autonomy\": \"0 d\", \"x\": 1}}");
        assertThat(problem.path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder(
                        "/dailyEnergy", "/nominalVoltage", "/chemistry", "/lowest", "/policy/autonomy", "/policy/x");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "{",
                "[",
                "nonsense",
                "{\"dailyEnergy\": }",
                "{\"dailyEnergy\": NaN}",
                "{\"dailyEnergy\": True}",
                "{\"a\": 1} trailing",
                "null",
                "5",
                "[]",
                "[1, 2]",
                "\"text\"",
                "{\"\": 1}",
                "{\"a/b~c\": 1}",
                "\u0000",
                "{\"dailyEnergy\": \"\ud83d\ude00\"}"
            })
    void refusesWhatIsNoRequest(String body) {
        JsonNode problem = refused(body);
        assertThat(problem.path("errors")).isNotEmpty();
        assertThat(problem.path("detail").asText()).isNotBlank();
    }

    @Test
    void saysWhereJsonIsBroken() {
        assertThat(refused("{\"policy\": {\"designMargin\": 0,1}}")
                        .path("detail")
                        .asText())
                .contains("line 1, column", "the decimal sign is a point, not a comma");
        assertThat(refused("{\"dailyEnergy\": 1, \"dailyEnergy\": 2}")
                        .path("detail")
                        .asText())
                .contains("'dailyEnergy'");
        assertThat(refused("[".repeat(40) + "]".repeat(40)).path("detail").asText())
                .contains("nested deeper than 32");
        assertThat(refused("[".repeat(100_000)).path("detail").asText()).contains("nested deeper than 32");
        assertThat(refused("{\"dailyEnergy\": {\"value\": 1" + "0".repeat(70) + ", \"unit\": \"Wh\"}}")
                        .path("detail")
                        .asText())
                .contains("more than 60 characters");
    }

    @Test
    void refusesALargeBody() {
        JsonNode problem = Refusal.document(service.post(PATH, "\"" + "x".repeat(10_000_000) + "\""), 413);
        assertThat(problem.path("detail").asText()).contains("1000000 bytes");
    }

    @Test
    void refusesWhatItDoesNotAnswer() {
        Refusal.document(service.get("/nothing"), 404);
        HttpResponse<String> put = service.method("PUT", PATH);
        Refusal.document(put, 405);
        assertThat(put.headers().firstValue("Allow").orElseThrow()).contains("GET", "POST");
        HttpRequest.Builder form = service.request(PATH, "Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("a=1"));
        assertThat(Refusal.document(service.send(form), 415).path("detail").asText())
                .contains("application/json");
        Refusal.document(service.get("/v1/examples", "Accept", "text/html"), 406);
        Refusal.document(service.get("/v1/examples/nothing"), 404);
        assertThat(Refusal.document(service.post(PATH + "?workin=true", GOOD), 400)
                        .at("/errors/0/parameter")
                        .asText())
                .isEqualTo("workin");
        assertThat(Refusal.document(service.get(PATH + FLAT + "&autonomi=2d"), 400)
                        .at("/errors/0/parameter")
                        .asText())
                .isEqualTo("autonomi");
        assertThat(Refusal.document(service.get(PATH + FLAT + "&autonomy=2d"), 400)
                        .at("/errors/0/parameter")
                        .asText())
                .isEqualTo("autonomy");
        assertThat(Refusal.document(service.get(PATH + FLAT + "&working=perhaps"), 400)
                        .at("/errors/0/parameter")
                        .asText())
                .isEqualTo("working");
    }

    @Test
    void refusesWhatIsNotReadableAsHttp() throws IOException {
        HttpResponse<String> large = service.get("/health", "X-Large", "x".repeat(20_000));
        Refusal.document(large, 431);
        assertThat(service.raw("GET /%zz HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400")
                .contains("application/problem+json", "\"status\":400", "X-Request-Id: ");
        assertThat(service.raw("NONSENSE\r\n\r\n")).startsWith("HTTP/1.1 400").contains("application/problem+json");
    }

    @Test
    void answersTheMethodsThatSpreadsheetsTryFirst() {
        HttpResponse<String> options = service.method("OPTIONS", PATH);
        assertThat(options.statusCode()).isEqualTo(204);
        assertThat(options.headers().firstValue("Allow")).hasValue("GET, HEAD, OPTIONS, POST");
        HttpResponse<String> head = service.method("HEAD", PATH + "/governing.txt" + FLAT);
        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.headers().firstValue("ETag"))
                .isEqualTo(service.get(PATH + "/governing.txt" + FLAT).headers().firstValue("ETag"));
        assertThat(service.method("HEAD", PATH).statusCode()).isEqualTo(400);
    }

    @Test
    void sendsNothingTwice() {
        HttpResponse<String> first = service.get(PATH + FLAT);
        String tag = first.headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> again = service.get(PATH + FLAT, "If-None-Match", tag);
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(service.get(PATH + FLAT + "&designMargin=0", "If-None-Match", tag)
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void readsTextAsUtf8() {
        HttpRequest.Builder request = service.request(PATH, "Content-Type", "application/json; charset=utf-8")
                .POST(HttpRequest.BodyPublishers.ofByteArray(
                        GOOD.replace("10 Cel", "10 °C").getBytes(StandardCharsets.UTF_8)));
        assertThat(service.send(request).statusCode()).isEqualTo(200);
        HttpRequest.Builder latin = service.request(PATH, "Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(
                        GOOD.replace("10 Cel", "10 °C").getBytes(StandardCharsets.ISO_8859_1)));
        Refusal.document(service.send(latin), 400);
    }
}
