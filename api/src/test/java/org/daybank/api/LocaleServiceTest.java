package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The service answers every example of the contract alike whatever the locale of its machine: digits, commas, dotless i. */
class LocaleServiceTest {
    private static final Locale BEFORE = Locale.getDefault();
    private static final Map<String, String> EXPECTED = new LinkedHashMap<>();

    /** One design goes through the code of all; these take most of the time. */
    private static final Set<String> OTHER_DESIGNS =
            Set.of("system-design", "tern-bus", "maple-street-clinic", "quarry-lane-workshop");

    /** Requests beside the examples: windows of time, refusals, figures, tables. */
    private static final List<String> QUERIES = List.of(
            "/v1/energy-budget?name=lamp&power=10W&windows=08:05-23:00",
            "/v1/energy-budget?name=lamp&power=10W&windows=8-23",
            "/v1/bank-capacity.csv?dailyEnergy=1234567.5Wh&nominalVoltage=24V&chemistry=agm&lowest=10Cel",
            "/v1/bank-capacity/requiredCapacity.txt?dailyEnergy=1234567.5Wh&nominalVoltage=24V&chemistry=agm&lowest=10Cel",
            "/v1/bank-capacity?dailyEnergy=0.1Wh&nominalVoltage=2400V&chemistry=AGM&lowest=1000Cel",
            "/v1/typical-loads",
            "/v1/catalog");

    @BeforeAll
    static void inEnglish() throws IOException {
        EXPECTED.putAll(answers("en-US"));
        Locale.setDefault(BEFORE);
    }

    @AfterAll
    static void restoreLocale() {
        Locale.setDefault(BEFORE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "ne-NP"})
    void answersAreTheSame(String tag) throws IOException {
        try {
            assertThat(answers(tag)).containsExactlyEntriesOf(EXPECTED);
        } finally {
            Locale.setDefault(BEFORE);
        }
    }

    /** What was given, as it is answered, can be sent back. */
    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "ne-NP"})
    void whatWasGivenCanBeSentBack(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        try (RunningService service = new RunningService()) {
            String body = """
                    {"loads": [{"name": "lamp", "power": "10 W", "windows": ["08:05-23:00"]}]}
                    """;
            String first = service.post("/v1/energy-budget", body).body();
            assertThat(first).contains("08:05-23:00");
            String given = RunningService.json(first).path("given").toString();
            String second = service.post("/v1/energy-budget", given).body();
            assertThat(RunningService.json(second).path("result"))
                    .isEqualTo(RunningService.json(first).path("result"));
        } finally {
            Locale.setDefault(BEFORE);
        }
    }

    /** The text of an answer; that it is by the contract is for other tests. */
    private static String sent(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(request.build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private static Map<String, String> answers(String tag) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(tag));
        Map<String, String> answers = new LinkedHashMap<>();
        try (RunningService service = new RunningService()) {
            for (var example : RunningService.json(
                            sent(service.request("/v1/examples").GET()))
                    .path("examples")) {
                String name = example.path("name").asText();
                if (OTHER_DESIGNS.contains(name)) {
                    continue;
                }
                String body = Files.readString(Path.of("../openapi/examples/" + name + ".request.json"));
                answers.put(
                        name,
                        sent(service.request(example.path("postTo").asText(), "Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(body))));
            }
            for (String query : QUERIES) {
                answers.put(query, sent(service.request(query).GET()));
            }
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        return answers;
    }
}
