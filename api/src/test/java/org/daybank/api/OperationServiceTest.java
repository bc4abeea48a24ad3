package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Keys, pages of other origins, health, metrics, bounds and the end. */
class OperationServiceTest {
    private static final String KEY = "open-sesame-0123456789";
    private static final String SETTINGS =
            "/v1/charge-settings?chemistry=agm&nominalVoltage=24V&coldest=0Cel&hottest=30Cel";
    private static final String LONG_UNCERTAINTY = """
            {"calculator": "system-design", "draws": 4096, "outputs": ["standAlone.evidence.availability.availability"],
             "axes": [{"path": "policy.array.soilingFactor",
                       "distribution": {"kind": "uniform", "from": 0.9, "to": 0.99}}],
             "base": %s}""";

    @AutoClose
    private static final RunningService service = new RunningService();

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("..", "openapi", "examples", name + ".request.json"));
    }

    @Test
    void asksForTheKeyWhereThereIsOne(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("key"), KEY);
        try (RunningService locked = new RunningService("--api-key-file", file.toString())) {
            HttpResponse<String> without = locked.get(SETTINGS);
            assertThat(Refusal.document(without, 401).path("detail").asText()).contains("X-API-Key is required.");
            assertThat(without.headers().firstValue("WWW-Authenticate")).hasValue("ApiKey header=\"X-API-Key\"");
            assertThat(Refusal.document(locked.get(SETTINGS, "X-API-Key", KEY + "x"), 401)
                            .path("detail")
                            .asText())
                    .contains("does not hold the key")
                    .doesNotContain(KEY);
            assertThat(locked.get(SETTINGS, "X-API-Key", KEY).statusCode()).isEqualTo(200);
            Refusal.document(locked.post("/v1/system-design", example("tern-shelter")), 401);
            Refusal.document(locked.get("/metrics"), 401);
            for (String open :
                    new String[] {"/", "/docs", "/health", "/health/live", "/health/ready", "/openapi.yaml"}) {
                assertThat(locked.get(open).statusCode()).as(open).isEqualTo(200);
            }
        }
    }

    @Test
    void letsPagesOfListedOriginsCall() {
        try (RunningService shared = new RunningService("--cors-origins", "https://plans.example")) {
            HttpResponse<String> listed = shared.get(SETTINGS, "Origin", "https://plans.example");
            assertThat(listed.headers().firstValue("Access-Control-Allow-Origin"))
                    .hasValue("https://plans.example");
            assertThat(listed.headers()
                            .firstValue("Access-Control-Expose-Headers")
                            .orElseThrow())
                    .contains("ETag", "X-Request-Id", "Retry-After");
            assertThat(listed.headers().allValues("Vary")).contains("Origin", "Accept");
            HttpResponse<String> refused = shared.get("/v1/charge-settings", "Origin", "https://plans.example");
            assertThat(refused.statusCode()).isEqualTo(400);
            assertThat(refused.headers().firstValue("Access-Control-Allow-Origin"))
                    .isPresent();
            HttpResponse<String> stranger = shared.get(SETTINGS, "Origin", "https://elsewhere.example");
            assertThat(stranger.statusCode()).isEqualTo(200);
            assertThat(stranger.headers().firstValue("Access-Control-Allow-Origin"))
                    .isEmpty();
            assertThat(stranger.headers().allValues("Vary")).contains("Origin");
            HttpResponse<String> preflight = shared.method(
                    "OPTIONS",
                    "/v1/system-design",
                    "Origin",
                    "https://plans.example",
                    "Access-Control-Request-Method",
                    "POST",
                    "Access-Control-Request-Headers",
                    "content-type");
            assertThat(preflight.statusCode()).isEqualTo(204);
            assertThat(preflight
                            .headers()
                            .firstValue("Access-Control-Allow-Methods")
                            .orElseThrow())
                    .contains("POST");
            assertThat(preflight
                            .headers()
                            .firstValue("Access-Control-Allow-Headers")
                            .orElseThrow())
                    .contains("Content-Type", "X-API-Key");
            assertThat(preflight.headers().firstValue("Access-Control-Max-Age")).isPresent();
            assertThat(preflight.headers().firstValue("DAV")).isEmpty();
        }
        assertThat(service.get(SETTINGS, "Origin", "https://plans.example")
                        .headers()
                        .map()
                        .keySet())
                .noneMatch(name -> name.startsWith("access-control"));
    }

    @Test
    void countsRequestsByRouteNotByPath() {
        service.get(SETTINGS);
        service.get("/v1/charge-settings/cells.txt" + SETTINGS.substring(SETTINGS.indexOf('?')));
        service.get("/nothing/at/all");
        String metrics = service.get("/metrics").body();
        assertThat(metrics)
                .contains(
                        "http_server_requests_seconds_count{method=\"GET\",path=\"/v1/charge-settings\",status=\"200\"}")
                .contains("path=\"/v1/charge-settings/{figure}.txt\"")
                .contains("path=\"none\",status=\"404\"")
                .contains("jvm_memory_used_bytes", "jvm_threads_live_threads")
                .doesNotContain("/nothing");
    }

    @Test
    void tellsThatItLivesAndIsReady() {
        assertThat(service.get("/health/live").body()).isEqualTo("ok");
        assertThat(service.get("/health/ready").body()).isEqualTo("ready");
    }

    @Test
    void givesUpWhatTakesTooLong() throws IOException {
        try (RunningService hasty = new RunningService("--time-limit", "1")) {
            HttpResponse<String> late =
                    hasty.post("/v1/uncertainty", LONG_UNCERTAINTY.formatted(example("system-design")));
            assertThat(Refusal.document(late, 504).path("detail").asText()).contains("more than 1 s");
        }
    }

    @Test
    void boundsHowManyHeavyRequestsRunAtOnce() throws Exception {
        try (RunningService narrow = new RunningService("--heavy-at-once", "1", "--time-limit", "7")) {
            CompletableFuture<HttpResponse<String>> first = CompletableFuture.supplyAsync(
                    () -> narrow.post("/v1/uncertainty", LONG_UNCERTAINTY.formatted(unchecked("system-design"))));
            Thread.sleep(1000);
            HttpResponse<String> second = narrow.post("/v1/system-design", example("tern-shelter"));
            assertThat(Refusal.document(second, 503).path("detail").asText()).contains("ask again later");
            assertThat(second.headers().firstValue("Retry-After")).hasValue("5");
            assertThat(narrow.get(SETTINGS).statusCode())
                    .as("what is light goes on")
                    .isEqualTo(200);
            assertThat(first.join().statusCode()).isIn(200, 504);
        }
    }

    @Test
    void finishesWhatIsUnderWayWhenItStops() throws Exception {
        RunningService ending = new RunningService();
        CompletableFuture<HttpResponse<String>> underWay =
                CompletableFuture.supplyAsync(() -> ending.post("/v1/simulation", unchecked("simulation")));
        Thread.sleep(30);
        ending.close();
        assertThat(underWay.join().statusCode()).isEqualTo(200);
    }

    @Test
    void saysOfARequestThatIsTooLargeHowLargeItMayBe() {
        HttpResponse<String> large = service.get("/health", "X-Large", "x".repeat(20_000));
        assertThat(Refusal.document(large, 431).path("detail").asText()).contains("at most 8192 bytes");
        HttpRequest.Builder far =
                service.request("/v1/charge-settings?x=" + "y".repeat(20_000)).GET();
        Refusal.document(service.send(far), 414);
    }

    private static String unchecked(String name) {
        try {
            return example(name);
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }

    @Test
    void namesEveryRequestAnew() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 20; i++) {
            String id =
                    service.get("/health").headers().firstValue("X-Request-Id").orElseThrow();
            assertThat(seen.add(id)).as(id).isTrue();
        }
    }
}
