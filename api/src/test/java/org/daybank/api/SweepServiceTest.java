package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sweeps over HTTP, as a client sees them. */
class SweepServiceTest {
    private static final String BANK = """
            {"calculator": "bank-capacity",
             "base": {"nominalVoltage": "24 V", "chemistry": "lithiumIronPhosphate", "lowest": "10 Cel"},
             "axes": [{"path": "policy.autonomy", "values": ["1 d", "3 d"]},
                      {"path": "dailyEnergy", "from": "1.2 kWh", "to": "2.4 kWh", "count": 2}],
             "outputs": ["requiredCapacity", "governing"]}
            """;

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void rowsComeAsCsvWithTheLastAxisFastest() {
        HttpResponse<String> answer = service.post("/v1/sweep", BANK);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/csv; charset=utf-8");
        assertThat(answer.headers().firstValue("Content-Encoding")).isEmpty();
        // by hand for 2.4 kWh and 3 d: 2400 · 3 / 25.6 = 281.25 Ah; / 0.8 = 351.5625; / 0.95 · 1.1 = 407.0723684…
        assertThat(rounded(answer.body()))
                .containsExactly(
                        "policy.autonomy_d,dailyEnergy_Wh,requiredCapacity_Ah,governing,status,reason,message",
                        "1,1200,67.845,depth,ok,,",
                        "1,2400,135.690,depth,ok,,",
                        "3,1200,203.536,depth,ok,,",
                        "3,2400,407.072,depth,ok,,");
    }

    @Test
    void theFormIsChosenBySuffixOrAccept() {
        HttpResponse<String> bySuffix = service.post("/v1/sweep.ndjson", BANK);
        assertThat(bySuffix.headers().firstValue("Content-Type")).hasValue("application/x-ndjson; charset=utf-8");
        assertThat(accepting("application/x-ndjson").body()).isEqualTo(bySuffix.body());
        assertThat(accepting("text/csv;q=0, application/*").body()).isEqualTo(bySuffix.body());
        assertThat(accepting("*/*").body())
                .isEqualTo(service.post("/v1/sweep.csv", BANK).body());
        JsonNode row = RunningService.json(bySuffix.body().lines().toList().get(3));
        assertThat(row.path("policy.autonomy_d").asDouble()).isEqualTo(3);
        assertThat(row.path("governing").asText()).isEqualTo("depth");
        assertThat(row.path("status").asText()).isEqualTo("ok");
        assertThat(row.path("message").isNull()).isTrue();
        Refusal.document(accepting("image/png"), 406);
    }

    @Test
    void aCaseThatIsRefusedIsToldInItsRow() {
        String body = BANK.replace("\"1 d\"", "\"1 d\", \"90 d\"");
        List<String> rows = service.post("/v1/sweep", body).body().lines().toList();
        assertThat(rows).hasSize(7);
        assertThat(rows.get(3))
                .startsWith("90,1200,,,invalid,outOfRange,")
                .contains("autonomy must be from 2.4 h to 60 d, but was 90 d.");
        assertThat(rows.get(5)).endsWith(",ok,,");
    }

    /** No catalogue has a system for a load of 90 kW. */
    @Test
    void aCaseWithoutADesignIsNotOk() throws IOException {
        String body = """
                {"calculator": "system-design", "base": %s,
                 "axes": [{"path": "loads[4].power", "values": ["40 W", "90 kW"]}], "outputs": ["kind"]}
                """.formatted(Files.readString(Path.of("../openapi/examples/tern-shelter.request.json")));
        assertThat(service.post("/v1/sweep.csv", body).body()).isEqualTo("""
                loads[4].power_W,kind,status,reason,message
                40,standAlone,ok,,
                90000,noDesign,noDesign,nothingFits,"the input is valid, but there is no solution: nothingFits"
                """);
    }

    /** An autonomy even from 30 to 90 days, of which at most 60 are allowed: half of the cases are refused. */
    @Test
    void anUncertaintyCountsCasesWithoutAnAnswer() {
        String body = """
                {"calculator": "bank-capacity", "draws": 64,
                 "base": {"dailyEnergy": "2.4 kWh", "nominalVoltage": "24 V", "chemistry": "agm", "lowest": "10 Cel"},
                 "axes": [{"path": "policy.autonomy", "distribution": {"kind": "uniform", "from": "30 d", "to": "90 d"}}],
                 "outputs": ["requiredCapacity"]}
                """;
        JsonNode result =
                RunningService.json(service.post("/v1/uncertainty", body)).path("result");
        JsonNode output = result.path("outputs").get(0);
        // 64 draws of one input: both points and one crossing
        assertThat(result.path("cases").asInt()).isEqualTo(192);
        assertThat(result.path("unanswered").asInt()).isBetween(90, 102);
        assertThat(output.path("unanswered")).isEqualTo(result.path("unanswered"));
        assertThat(output.path("reasons")).hasSize(1);
        assertThat(output.at("/reasons/0/reason").asText()).isEqualTo("outOfRange");
        // a quarter of the draws has both points below 60 days
        assertThat(output.path("excludedFromPercentiles").asInt()).isBetween(44, 52);
        assertThat(output.path("excludedFromIndices")).isEqualTo(output.path("excludedFromPercentiles"));
    }

    @Test
    void aPartOfTheRowsIsTheSameAsInTheWhole() {
        String drawn = """
                {"calculator": "bank-capacity",
                 "base": {"nominalVoltage": "24 V", "chemistry": "agm", "lowest": "10 Cel"},
                 "axes": [{"path": "dailyEnergy", "distribution": {"kind": "logNormal", "median": "2 kWh", "factor": 1.3}},
                          {"path": "lowest", "distribution": {"kind": "normal", "mean": "5 Cel", "deviation": "2 K"}},
                          {"path": "policy.depthOfDischarge.leadAcid",
                           "distribution": {"kind": "triangular", "from": 0.4, "likeliest": "50 %", "to": 0.8}}],
                 "outputs": ["requiredCapacity"],
                 "sampling": {"method": "latinHypercube", "count": 500, "seed": 3} ROWS}
                """;
        List<String> all = service.post("/v1/sweep", drawn.replace("ROWS", ""))
                .body()
                .lines()
                .toList();
        List<String> part = service.post("/v1/sweep", drawn.replace("ROWS", ", \"rows\": {\"from\": 120, \"to\": 250}"))
                .body()
                .lines()
                .toList();
        assertThat(all).hasSize(501);
        assertThat(part).hasSize(131);
        assertThat(part.subList(1, 131)).isEqualTo(all.subList(121, 251));
    }

    @Test
    void whatTheBaseLeavesOutFollowsWhatVaries() {
        // the worst day is the mean day unless the base says otherwise
        String fixed = BANK.replace("\"lowest\"", "\"worstDailyEnergy\": \"1.2 kWh\", \"lowest\"");
        List<String> rows = rounded(service.post("/v1/sweep", fixed).body());
        assertThat(rows.get(3)).startsWith("3,1200,203.536");
        assertThat(rows.get(4)).startsWith("3,2400,203.536");
    }

    @Test
    void everythingWrongIsToldUnderItsPointer() {
        String body = """
                {"calculator": "bank-capacity",
                 "base": {"nominalVoltage": "24 kg", "chemistry": "lithiumIronPhosphate", "lowest": "10 Cel"},
                 "axes": [{"path": "policy.autonomi", "values": ["1 d"]},
                          {"path": "dailyEnergy", "values": ["1 kWh", "2 kW"]},
                          {"path": "lowest", "from": "1 Cel", "to": "two"}],
                 "outputs": ["requiredCapacit"]}
                """;
        JsonNode problem = Refusal.document(service.post("/v1/sweep", body), 400);
        assertThat(pointers(problem)).isEqualTo(Set.of("/axes/0/path", "/axes/1/values/1", "/axes/2/to", "/outputs/0"));
        assertThat(problem.path("errors").get(0).path("detail").asText()).contains("autonomy");
        JsonNode base = Refusal.document(service.post("/v1/sweep", BANK.replace("\"24 V\"", "\"24 kg\"")), 400);
        assertThat(pointers(base)).isEqualTo(Set.of("/base/nominalVoltage"));
        assertThat(pointers(Refusal.document(service.post("/v1/sweep", BANK.replace("bank-capacity", "bank")), 400)))
                .isEqualTo(Set.of("/calculator"));
        assertThat(pointers(Refusal.document(
                        service.post("/v1/sweep", BANK.replace("\"count\": 2", "\"count\": 2, \"values\": [1]")), 400)))
                .isEqualTo(Set.of("/axes/1"));
        assertThat(pointers(Refusal.document(
                        service.post("/v1/sweep", BANK.replace("\"outputs\"", "\"rows\": {\"to\": 5}, \"outputs\"")),
                        400)))
                .isEqualTo(Set.of("/rows"));
        assertThat(pointers(Refusal.document(
                        service.post(
                                "/v1/sweep",
                                BANK.replace(
                                        "{\"path\": \"policy.autonomy\", \"values\": [\"1 d\", \"3 d\"]}",
                                        "{\"path\": \"policy.autonomy\","
                                                + " \"distribution\": {\"kind\": \"uniform\", \"from\": \"1 d\", \"to\": \"2 d\"}}")),
                        400)))
                .isEqualTo(Set.of("/axes/0"));
    }

    @Test
    void tooManyRowsAreRefusedWithTheWayRound() {
        String body = BANK.replace("\"count\": 2", "\"count\": 1000000")
                .replace(
                        "\"3 d\"",
                        "\"3 d\", \"4 d\", \"5 d\", \"6 d\", \"7 d\", \"8 d\", \"9 d\", \"10 d\", \"11 d\", \"12 d\"");
        JsonNode problem = Refusal.document(service.post("/v1/sweep", body), 400);
        assertThat(problem.path("detail").asText()).contains("10000000", "11000000", "\"from\"");
    }

    @Test
    void rowsAreCompressedOnlyWhenAsked() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        service.request("/v1/sweep", "Content-Type", "application/json", "Accept-Encoding", "gzip")
                                .POST(HttpRequest.BodyPublishers.ofString(BANK))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.headers().firstValue("Content-Encoding")).hasValue("gzip");
        try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(answer.body()))) {
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .isEqualTo(service.post("/v1/sweep", BANK).body());
        }
    }

    @Test
    void closingTheConnectionEndsTheWorkWithinASecond() throws IOException, InterruptedException {
        try (InputStream rows = begun()) {
            assertThat(rows.read()).isEqualTo('p');
            assertThat(workers()).isPositive();
        }
        assertThat(nanosUntilNoWorkerIsLeft()).isLessThan(1_000_000_000L);
    }

    @Test
    void aFifthSweepAtOnceIsAskedToComeAgain() throws IOException, InterruptedException {
        List<InputStream> begun = new ArrayList<>();
        try {
            for (int i = 0; i < 4; i++) {
                begun.add(begun());
            }
            HttpResponse<String> fifth = service.post("/v1/sweep", BANK);
            Refusal.document(fifth, 503);
            assertThat(fifth.headers().firstValue("Retry-After")).hasValue("5");
        } finally {
            for (InputStream rows : begun) {
                rows.close();
            }
        }
        nanosUntilNoWorkerIsLeft();
        assertThat(service.post("/v1/sweep", BANK).statusCode()).isEqualTo(200);
    }

    /** A sweep of ten million cases, batteries chosen for each: it would take many minutes. */
    private static InputStream begun() throws IOException, InterruptedException {
        String body = BANK.replace("\"count\": 2", "\"count\": 1000000")
                .replace("\"3 d\"", "\"2 d\", \"3 d\", \"4 d\", \"5 d\", \"6 d\", \"7 d\", \"8 d\", \"9 d\", \"10 d\"");
        HttpResponse<InputStream> answer = HttpClient.newHttpClient()
                .send(
                        service.request("/v1/sweep", "Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofInputStream());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private static long nanosUntilNoWorkerIsLeft() throws InterruptedException {
        long begin = System.nanoTime();
        while (workers() > 0 && System.nanoTime() - begin < 10_000_000_000L) {
            Thread.sleep(10);
        }
        return System.nanoTime() - begin;
    }

    @TestFactory
    List<DynamicTest> everyCalculatorCanBeSwept() {
        return List.of(
                swept("energy-budget", "loads[1].power", "\"20 W\", \"40 W\"", "months[0].dailyEnergy"),
                swept("sun", "plane.tilt", "\"20 deg\", \"40 deg\"", "months[6].planeOfArray"),
                swept("array-size", "policy.arrayToLoadRatio", "1.1, 1.5", "arrays[0].modules"),
                swept("charge-settings", "coldest", "\"5 Cel\", \"25 Cel\"", "absorptionWhenCold"),
                swept("wiring", "circuits[0].length", "\"5 m\", \"50 m\"", "metalMass"),
                swept(
                        "system-design",
                        "policy.bank.autonomy",
                        "\"2 d\", \"4 d\"",
                        "standAlone.system.billOfMaterials.total"),
                swept("simulation", "loads[0].power", "\"10 W\", \"300 W\"", "reliability.lowestStateOfCharge"));
    }

    private static DynamicTest swept(String calculator, String path, String values, String output) {
        return DynamicTest.dynamicTest(calculator, () -> {
            String body =
                    "{\"calculator\": \"%s\", \"base\": %s, \"axes\": [{\"path\": \"%s\", \"values\": [%s]}], \"outputs\": [\"%s\"]}"
                            .formatted(
                                    calculator,
                                    service.get("/v1/examples/" + calculator).body(),
                                    path,
                                    values,
                                    output);
            HttpResponse<String> answer = service.post("/v1/sweep", body);
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
            List<String> rows = answer.body().lines().toList();
            assertThat(rows).hasSize(3);
            assertThat(rows.get(1)).as("what varies changes what comes out").isNotEqualTo(rows.get(2));
            assertThat(rows.subList(1, 3)).allMatch(row -> row.endsWith(",ok,,") && !row.contains(",,ok"));
        });
    }

    private static long workers() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("sweep"))
                .count();
    }

    private static HttpResponse<String> accepting(String accept) {
        return service.send(service.request("/v1/sweep", "Content-Type", "application/json", "Accept", accept)
                .POST(HttpRequest.BodyPublishers.ofString(BANK)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
                    "kind": "triangular", "from": "1 d", "likeliest": "3 d", "to": "2 d"     | /to
                    "kind": "triangular", "from": "4 d", "likeliest": "3 d", "to": "5 d"     | /likeliest
                    "kind": "uniform", "from": "2 d", "to": "1 d"                            | /to
                    "kind": "normal", "mean": "2 d", "deviation": "-1 d"                     | /deviation
                    "kind": "logNormal", "median": "0 d", "factor": 2                        | /median
                    "kind": "logNormal", "median": "2 d", "factor": 0.5                      | /factor
                    """)
    void namesTheMemberOfADistributionThatIsWrong(String distribution, String member) {
        String request = "{\"calculator\": \"bank-capacity\", \"base\": {\"dailyEnergy\": \"2 kWh\","
                + " \"nominalVoltage\": \"24 V\", \"chemistry\": \"agm\", \"lowest\": \"5 Cel\"},"
                + " \"axes\": [{\"path\": \"policy.autonomy\", \"distribution\": {" + distribution + "}}],"
                + " \"sampling\": {\"method\": \"random\", \"count\": 5}}";

        assertThat(pointers(Refusal.document(service.post("/v1/sweep", request), 400)))
                .isEqualTo(Set.of("/axes/0/distribution" + member));
    }

    private static Set<String> pointers(JsonNode problem) {
        return StreamSupport.stream(problem.path("errors").spliterator(), false)
                .map(error -> error.path("pointer").asText())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Lines with their long decimals cut, not rounded, to three places. */
    private static List<String> rounded(String csv) {
        return csv.lines().map(line -> line.replaceAll("(\\.\\d{3})\\d+", "$1")).toList();
    }
}
