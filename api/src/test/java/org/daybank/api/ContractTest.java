package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.api.http.Calculation;
import org.daybank.api.http.Contract;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.TypicalLoad;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The contract and the service say the same, both ways. */
class ContractTest {
    private static final Schemas SCHEMAS = new Schemas();

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void everyRouteStandsInTheContractAndTheOtherWayRound() {
        Set<String> written = new TreeSet<>();
        SCHEMAS.contract()
                .path("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .fieldNames()
                        .forEachRemaining(
                                method -> written.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));
        Set<String> served = Routes.all(new Contract(), Catalog.sample()).stream()
                .map(route -> route.method().name() + " " + route.path())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(served).isEqualTo(written);
    }

    @TestFactory
    Stream<DynamicTest> everyRecordHasTheMembersOfItsSchema() {
        return Routes.CALCULATIONS.stream()
                .map(calculation -> DynamicTest.dynamicTest(calculation.path(), () -> {
                    SchemaComparison comparison = new SchemaComparison(SCHEMAS);
                    comparison.compare(calculation.request(), requestSchema(calculation));
                    comparison.compare(calculation.result(), resultSchema(calculation));
                    assertThat(comparison.differences()).isEmpty();
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyExampleIsAnsweredByTheContract() {
        return Routes.CALCULATIONS.stream()
                .flatMap(calculation -> examples(calculation)
                        .map(name -> DynamicTest.dynamicTest(
                                calculation.path() + " " + name, () -> execute(calculation, name))));
    }

    @TestFactory
    Stream<DynamicTest> everyCalculationHasAnExample() {
        return Routes.CALCULATIONS.stream()
                .map(calculation -> DynamicTest.dynamicTest(
                        calculation.path(),
                        () -> assertThat(examples(calculation)).isNotEmpty()));
    }

    @Test
    void theExamplesOfTheContractAreTheFilesThatAreThere() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "openapi", "examples"))) {
            Set<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".request.json"))
                    .map(name -> name.replace(".request.json", ""))
                    .collect(Collectors.toSet());
            assertThat(SCHEMAS.contract().at("/components/examples").fieldNames())
                    .toIterable()
                    .containsExactlyInAnyOrderElementsOf(there);
        }
    }

    @Test
    void theListOfExamplesFollowsTheContract() {
        JsonNode list = RunningService.json(service.get("/v1/examples"));
        assertThat(SCHEMAS.faults("/v1/examples", "get", 200, "application/json", list))
                .isEmpty();
        for (JsonNode example : list.path("examples")) {
            assertThat(service.get("/v1/examples/" + example.path("name").asText())
                            .statusCode())
                    .isEqualTo(200);
            assertThat(example.path("postTo").asText()).startsWith("/v1/");
        }
    }

    @Test
    void theContractAsJsonIsTheContractAsYaml() throws IOException {
        JsonNode json = RunningService.json(service.get("/openapi.json"));
        assertThat(json).isEqualTo(SCHEMAS.contract());
        assertThat(service.get("/openapi.yaml").body())
                .isEqualTo(Files.readString(Path.of("..", "openapi", "openapi.yaml")));
    }

    @Test
    void everyProductAndEveryTypicalLoadFollowsTheContract() {
        SchemaComparison comparison = new SchemaComparison(SCHEMAS);
        comparison.compare(Catalog.class, "#/components/schemas/Catalog");
        comparison.compare(TypicalLoad.class, "#/components/schemas/TypicalLoad");
        assertThat(comparison.differences()).isEmpty();
        JsonNode catalog = RunningService.json(service.get("/v1/catalog"));
        assertThat(SCHEMAS.faults("/v1/catalog", "get", 200, "application/json", catalog))
                .isEmpty();
        catalog.properties().forEach(kind -> {
            JsonNode products = RunningService.json(service.get("/v1/catalog/" + kind.getKey()));
            assertThat(SCHEMAS.faults("/v1/catalog/{kind}", "get", 200, "application/json", products))
                    .isEmpty();
            assertThat(products.path(kind.getKey())).isEqualTo(kind.getValue());
        });
        assertThat(SCHEMAS.contract()
                        .at("/paths/~1v1~1catalog~1{kind}/get/parameters/0/schema/enum")
                        .valueStream()
                        .map(JsonNode::asText))
                .containsExactlyElementsOf(catalog::fieldNames);
        Refusal.document(service.get("/v1/catalog/lamps"), 404);
        JsonNode loads = RunningService.json(service.get("/v1/typical-loads"));
        assertThat(SCHEMAS.faults("/v1/typical-loads", "get", 200, "application/json", loads))
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyFlatExampleGivesEveryFigure() {
        return Routes.CALCULATIONS.stream()
                .filter(Calculation::flat)
                .map(calculation -> DynamicTest.dynamicTest(calculation.path(), () -> {
                    String query = flatExample(calculation);
                    JsonNode answer = RunningService.json(service.get(calculation.path() + query));
                    assertThat(SCHEMAS.faults(calculation.path(), "get", 200, "application/json", answer))
                            .isEmpty();
                    answer.path("result").properties().forEach(figure -> {
                        HttpResponse<String> text =
                                service.get(calculation.path() + "/" + figure.getKey() + ".txt" + query);
                        JsonNode value = figure.getValue().has("value")
                                ? figure.getValue().path("value")
                                : figure.getValue();
                        if (value.isValueNode()) {
                            assertThat(text.body()).as(figure.getKey()).isEqualTo(value.asText());
                        } else {
                            Refusal.document(text, 404);
                        }
                    });
                }));
    }

    /** The example of the query that the contract shows. */
    private static String flatExample(Calculation<?, ?> calculation) {
        for (JsonNode reference :
                SCHEMAS.contract().path("paths").path(calculation.path()).at("/get/parameters")) {
            JsonNode example = SCHEMAS.resolved(reference).at("/schema/examples/0");
            if (example.isObject()) {
                return example.properties().stream()
                        .map(entry ->
                                entry.getKey() + "=" + entry.getValue().asText().replace("%", "%25"))
                        .collect(Collectors.joining("&", "?", ""));
            }
        }
        throw new AssertionError("no example of a query for " + calculation.path());
    }

    private static void execute(Calculation<?, ?> calculation, String name) {
        String body = service.get("/v1/examples/" + name).body();
        assertThat(SCHEMAS.faults(requestSchema(calculation), RunningService.json(body)))
                .as("the example by its schema")
                .isEmpty();
        JsonNode answer = answer(calculation, body);
        JsonNode again = answer(calculation, answer.path("given").toString());
        assertThat(again.path("result")).as("given, posted back").isEqualTo(answer.path("result"));
        assertThat(again.path("given")).isEqualTo(answer.path("given"));
        assertThat(again.path("cautions")).isEqualTo(answer.path("cautions"));
        assertThat(again.path("working")).isEqualTo(answer.path("working"));
        for (JsonNode assumption : answer.path("assumptions")) {
            assertThat(answer.path("given").at(assumption.path("path").asText()))
                    .as("given at %s", assumption.path("path"))
                    .isEqualTo(assumption.path("value"));
        }
    }

    private static JsonNode answer(Calculation<?, ?> calculation, String body) {
        HttpResponse<String> response = service.post(calculation.path() + "?working=true", body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode answer = RunningService.json(response);
        assertThat(SCHEMAS.faults(calculation.path(), "post", 200, "application/json", answer))
                .as("the answer by its schema")
                .isEmpty();
        return answer;
    }

    private static Stream<String> examples(Calculation<?, ?> calculation) {
        return media(calculation).path("examples").properties().stream().map(Map.Entry::getKey);
    }

    private static String requestSchema(Calculation<?, ?> calculation) {
        return media(calculation).at("/schema/$ref").asText();
    }

    private static String resultSchema(Calculation<?, ?> calculation) {
        JsonNode response = SCHEMAS.resolved(
                SCHEMAS.contract().path("paths").path(calculation.path()).at("/post/responses/200"));
        JsonNode envelope = SCHEMAS.resolved(response.at("/content/application~1json/schema"));
        return envelope.at("/properties/result/$ref").asText();
    }

    private static JsonNode media(Calculation<?, ?> calculation) {
        return SCHEMAS.contract()
                .path("paths")
                .path(calculation.path())
                .at("/post/requestBody/content/application~1json");
    }
}
