package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is malformed, empty or unknown is refused by name; no default takes its place, and nothing of it is an error of ours. */
class StrictRequestsServiceTest {
    private static final String BANK = "/v1/bank-capacity";
    private static final String QUERY =
            "?dailyEnergy=2.4kWh&nominalVoltage=24V&chemistry=lithiumIronPhosphate&lowest=10Cel&autonomy=3d";
    private static final String SWEEP = """
            {"calculator": "bank-capacity",
             "base": BASE,
             "axes": [{"path": "PATH", "values": ["1 d"]}],
             "outputs": ["OUTPUT"]}
            """;
    private static final String BASE =
            "{\"dailyEnergy\": \"2.4 kWh\", \"nominalVoltage\": \"24 V\", \"chemistry\": \"agm\", \"lowest\": \"10 Cel\"}";

    @AutoClose
    private static final RunningService service = new RunningService();

    /** The request goes out as it is: clients of Java refuse to send what is malformed. */
    private static JsonNode refused(String path, int status) throws IOException {
        String answer = service.raw("GET " + path + " HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 " + status).contains("application/problem+json");
        JsonNode problem = RunningService.json(answer.substring(answer.indexOf("\r\n\r\n") + 4));
        assertThat(problem.path("status").asInt()).isEqualTo(status);
        return problem;
    }

    @ParameterizedTest
    @CsvSource({
        "depthOfDischarge=50%, depthOfDischarge",
        "depthOfDischarge=50%2, depthOfDischarge",
        "depthOfDischarge=50%zz, depthOfDischarge",
        "working=tru%e, working",
        "errors=inlin%e, errors",
        "x=%C3%28, x",
        "x=%ff, x",
        "x=%ED%A0%80, x",
        "%e, %e",
        "%e=1, %e",
        "%C3%28=1, %C3%28"
    })
    void aMalformedEscapeIsRefusedByTheNameOfItsParameter(String wrong, String parameter) throws IOException {
        JsonNode problem = refused(BANK + QUERY + "&" + wrong, 400);
        assertThat(problem.at("/errors/0/parameter").asText()).isEqualTo(parameter);
        assertThat(problem.at("/errors/0/code").asText()).isEqualTo("malformed");
        assertThat(problem.path("detail").asText()).contains("must be percent-encoded UTF-8", "write the percent sign");
    }

    @Test
    void aPercentSignThatIsWrittenAsOneIsRead() {
        // by hand: 2400 Wh · 3 / 25.6 V = 281.25 Ah; / 0.5 = 562.5; / 0.95 · 1.1 = 651.3157894…
        String figure = service.get(BANK + "/requiredCapacity.txt" + QUERY + "&depthOfDischarge=50%25")
                .body();
        assertThat(Double.parseDouble(figure)).isEqualTo(651.3157894736842, within(1e-9));
        assertThat(service.get(BANK + QUERY.replace("2.4kWh", "2.4+kWh")).statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/docs",
                "/assets/pages.css",
                "/health",
                "/health/live",
                "/health/ready",
                "/metrics",
                "/openapi.yaml",
                "/openapi.json",
                "/v1/examples",
                "/v1/examples/sun",
                "/v1/catalog",
                "/v1/catalog/modules",
                "/v1/typical-loads",
                "/v1/charge-settings?chemistry=agm&nominalVoltage=24V&coldest=0Cel&hottest=30Cel"
            })
    void everyPathRefusesWhatItDoesNotKnow(String path) throws IOException {
        assertThat(service.get(path).statusCode()).as(path).isEqualTo(200);
        String more = path + (path.contains("?") ? "&" : "?");
        JsonNode problem = Refusal.document(service.get(more + "colour=red"), 400);
        assertThat(problem.at("/errors/0/parameter").asText()).isEqualTo("colour");
        assertThat(problem.at("/errors/0/code").asText()).isEqualTo("unknownName");
        refused(more + "%e", 400);
        refused(more + "x=%zz", 400);
        assertThat(service.method("HEAD", more + "colour=red").statusCode()).isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/%zz", "/v1/examples/%C3%28", "/v1/bank-capacity/%ff.txt", "/%", "/v1/catalog/%e"})
    void aMalformedPathIsRefused(String path) throws IOException {
        refused(path, 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/catalog/%25zz", "/v1/examples/50%25", "/assets/%2525"})
    void aPercentSignInAPathLeadsNowhere(String path) throws IOException {
        refused(path, 404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dailyEnergy", "depthOfDischarge", "autonomy", "working", "chemistry", "bom", "in"})
    void anEmptyValueIsRefusedAndIsNoDefault(String parameter) {
        String form = parameter.equals("bom") ? ".csv" : parameter.equals("in") ? "/requiredCapacity.txt" : "";
        String others = QUERY.replaceAll(parameter + "=[^&]*&?", "");
        for (String empty : List.of("=", "", "=%20", "=+")) {
            JsonNode problem = Refusal.document(service.get(BANK + form + others + "&" + parameter + empty), 400);
            assertThat(problem.path("errors")).hasSize(1);
            assertThat(problem.at("/errors/0/parameter").asText()).isEqualTo(parameter);
            assertThat(problem.at("/errors/0/detail").asText()).isEqualTo(parameter + " must not be empty");
        }
    }

    @Test
    void oneEmptyValueOfSeveralIsRefused() {
        Refusal.document(service.get(BANK + QUERY + "&dailyEnergy="), 400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "depthOfDischarge=180%25",
                "depthOfDischarge=50%",
                "dailyEnergy=a%26b%23c%3Fd%25",
                "x=1%26&y=%23&z=%3F"
            })
    void anInlineErrorIsPlainInAQueryAndRefusedAsAValue(String wrong) throws IOException {
        String query = (wrong.startsWith("daily") ? QUERY.replace("dailyEnergy=2.4kWh&", "") : QUERY) + "&" + wrong;
        String answer = service.raw("GET " + BANK + "/requiredCapacity.txt" + query
                + "&errors=inline HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 200");
        String cell = answer.substring(answer.indexOf("\r\n\r\n") + 4);
        assertThat(cell).matches("ERROR: [^#&?%]+");
        // as a sheet joins it into the address of the next cell
        String next = BANK + "/requiredCapacity.txt" + QUERY.replace("2.4kWh", cell.replace(" ", "%20"));
        assertThat(refused(next.replace("…", "%E2%80%A6"), 400)
                        .at("/errors/0/detail")
                        .asText())
                .isEqualTo("dailyEnergy is the error message of an earlier calculation; correct that one first");
        assertThat(service.get(next.replaceAll("ERROR:.*?&", "ERROR:%20none&") + "&errors=inline")
                        .body())
                .isEqualTo("ERROR: dailyEnergy is the error message of an earlier calculation; correct that one first");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nope", "iso-8859-1", "\"utf-16\"", "utf-8, utf-16", ""})
    void aBodyInAnotherEncodingIsRefused(String charset) {
        for (String type : List.of("application/json", "text/csv")) {
            HttpRequest.Builder request = service.request(
                            type.equals("text/csv") ? "/v1/catalog/modules" : BANK,
                            "Content-Type",
                            type + "; charset=" + charset)
                    .POST(HttpRequest.BodyPublishers.ofString("{}"));
            assertThat(Refusal.document(service.send(request), 415)
                            .path("detail")
                            .asText())
                    .contains("UTF-8");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"utf-8", "UTF-8", "\"utf-8\"", "us-ascii"})
    void aBodyInUtf8IsRead(String charset) {
        HttpRequest.Builder request = service.request(BANK, "Content-Type", "application/json;charset=" + charset)
                .POST(HttpRequest.BodyPublishers.ofString(BASE));
        assertThat(service.send(request).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[[]]", "[]", "[1]", "[[[[{}]]]]", "1", "\"x\"", "{\"policy\": []}", "{\"policy\": [[]]}"})
    void aBaseThatIsNoObjectIsRefused(String base) {
        String body =
                SWEEP.replace("BASE", base).replace("PATH", "policy.autonomy").replace("OUTPUT", "governing");
        Refusal.document(service.post("/v1/sweep", body), 400);
    }

    @Test
    void aLongPathIsRefused() throws IOException {
        refused(BANK + "/" + "a.".repeat(3000) + "a.txt" + QUERY, 404);
        refused(BANK + "/" + "months.0".repeat(900) + ".txt" + QUERY, 404);
        for (String path : List.of("a" + ".a".repeat(100_000), "a" + "[0]".repeat(100_000), "a".repeat(500_000))) {
            JsonNode axis = Refusal.document(service.post("/v1/sweep", sweep(path, "governing")), 400);
            assertThat(axis.at("/errors/0/pointer").asText()).isEqualTo("/axes/0/path");
            JsonNode output = Refusal.document(service.post("/v1/sweep", sweep("policy.autonomy", path)), 400);
            assertThat(output.at("/errors/0/pointer").asText()).isEqualTo("/outputs/0");
            assertThat(output.toString()).contains("at most 200 characters").hasSizeLessThan(1000);
        }
    }

    private static String sweep(String path, String output) {
        return SWEEP.replace("BASE", BASE).replace("PATH", path).replace("OUTPUT", output);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e12 V", "1e300 V", "2001 V", "0.5 V", "0 V", "-24 V"})
    void aChargingVoltageOfNoBankIsRefused(String voltage) throws IOException {
        for (String example : List.of("charger-selection", "generator")) {
            String body = Files.readString(Path.of("../openapi/examples/" + example + ".request.json"))
                    .replaceFirst("\\{", "{\"chargingVoltage\": \"" + voltage + "\",");
            HttpResponse<String> answer = service.post("/v1/" + example, body);
            if (example.equals("charger-selection")) {
                JsonNode problem = Refusal.document(answer, 400);
                assertThat(problem.at("/errors/0/pointer").asText()).isEqualTo("/chargingVoltage");
                assertThat(problem.path("detail").asText()).contains("must be from 10 V to 75 V");
            } else {
                Refusal.document(answer, 400);
            }
        }
    }
}
