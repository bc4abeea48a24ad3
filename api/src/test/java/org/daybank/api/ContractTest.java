package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.api.http.Calculation;
import org.daybank.api.http.Contract;
import org.daybank.api.http.HeavyWork;
import org.daybank.api.http.Metrics;
import org.daybank.api.http.Readiness;
import org.daybank.api.wire.FlatForm;
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
        Set<String> served = Routes.all(
                        new Contract(),
                        Catalog::sample,
                        new HeavyWork(1, Duration.ofSeconds(1)),
                        new Metrics(false),
                        new Readiness())
                .stream()
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
    Stream<DynamicTest> everyQueryHasTheNamesOfItsSchema() {
        return flat().map(calculation -> DynamicTest.dynamicTest(calculation.path(), () -> {
            JsonNode schema = querySchema(calculation);
            assertThat(schema.path("properties").fieldNames())
                    .toIterable()
                    .containsExactlyInAnyOrderElementsOf(form(calculation).names());
            JsonNode refusal = Refusal.document(service.get(calculation.path()), 400);
            assertThat(schema.path("required").valueStream().map(JsonNode::asText))
                    .isSubsetOf(refusal.path("errors").findValuesAsText("parameter"));
        }));
    }

    @TestFactory
    Stream<DynamicTest> everyFlatExampleGivesEveryFigure() {
        return flat().map(calculation -> DynamicTest.dynamicTest(calculation.path(), () -> {
            String query = flatExample(calculation);
            JsonNode answer = RunningService.json(service.get(calculation.path() + query));
            assertThat(SCHEMAS.faults(calculation.path(), "get", 200, "application/json", answer))
                    .isEmpty();
            assertEveryFigure(calculation.path(), "", answer.path("result"), query);
        }));
    }

    /** Every value within an answer can be asked for by the way to it; what holds several cannot. */
    private static void assertEveryFigure(String path, String way, JsonNode holder, String query) {
        if (!way.isEmpty()) {
            Refusal.document(service.get(path + "/" + way + ".txt" + query), 404);
        }
        String before = way.isEmpty() ? "" : way + ".";
        if (holder.isArray()) {
            // the first and the last stand for all
            for (int i : new int[] {0, holder.size() - 1}) {
                assertFigure(path, before + i, holder.get(i), query);
            }
        } else {
            holder.properties().forEach(part -> assertFigure(path, before + part.getKey(), part.getValue(), query));
        }
    }

    private static void assertFigure(String path, String way, JsonNode part, String query) {
        JsonNode value = part.has("currency") ? part.path("amount") : part.has("unit") ? part.path("value") : part;
        if (value.isValueNode()) {
            assertThat(service.get(path + "/" + way + ".txt" + query).body())
                    .as(way)
                    .isEqualTo(value.asText());
        } else if (!value.isEmpty() && !value.path(0).has("rule") && !way.contains("rejected")) {
            assertEveryFigure(path, way, value, query);
        }
    }

    @TestFactory
    Stream<DynamicTest> everyTableHoldsTheFiguresOfTheAnswer() {
        return flat().map(calculation -> DynamicTest.dynamicTest(calculation.path(), () -> {
            String query = flatExample(calculation);
            List<String> lines = service.get(calculation.path() + ".csv" + query)
                    .body()
                    .lines()
                    .toList();
            List<String> columns = List.of(lines.get(0).split(",", -1));
            JsonNode result =
                    RunningService.json(service.get(calculation.path() + query)).path("result");
            JsonNode rows = Stream.of("months", "arrays", "circuits")
                    .map(result::path)
                    .filter(JsonNode::isArray)
                    .findFirst()
                    .orElse(JsonNodeFactory.instance.arrayNode().add(result));
            assertThat(lines).hasSize(rows.size() + 1);
            for (int row = 0; row < rows.size(); row++) {
                List<String> cells = List.of(lines.get(row + 1).split(",", -1));
                assertThat(cells).hasSameSizeAs(columns);
                for (int i = 0; i < cells.size(); i++) {
                    String name = columns.get(i).replaceFirst("_[^_]+$", "");
                    JsonNode part = rows.get(row).at("/" + name.replace('.', '/'));
                    JsonNode value = part.has("currency") ? part.path("amount") : part.path("value");
                    assertThat(cells.get(i))
                            .as("%s of row %d", columns.get(i), row)
                            .isEqualTo(part.isValueNode() ? part.asText() : value.asText());
                }
            }
        }));
    }

    private static Stream<Calculation<?, ?>> flat() {
        return Routes.CALCULATIONS.stream().filter(calculation -> calculation.flat() != null);
    }

    private static FlatForm<?> form(Calculation<?, ?> calculation) {
        return new FlatForm<>(calculation.request(), calculation.flat().element());
    }

    private static JsonNode querySchema(Calculation<?, ?> calculation) {
        for (JsonNode reference :
                SCHEMAS.contract().path("paths").path(calculation.path()).at("/get/parameters")) {
            JsonNode schema = SCHEMAS.resolved(SCHEMAS.resolved(reference).path("schema"));
            if (schema.path("type").asText().equals("object")) {
                return schema;
            }
        }
        throw new AssertionError("no query in the contract for " + calculation.path());
    }

    /** The example of the query that the contract shows. */
    private static String flatExample(Calculation<?, ?> calculation) {
        JsonNode example = querySchema(calculation).at("/examples/0");
        return example.properties().stream()
                .flatMap(entry -> Stream.concat(
                                Stream.of(entry.getValue()), entry.getValue().valueStream())
                        .filter(JsonNode::isValueNode)
                        .map(value -> entry.getKey() + "=" + URLEncoder.encode(value.asText(), StandardCharsets.UTF_8)))
                .collect(Collectors.joining("&", "?", ""));
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
        assertThat(again.path("hazards")).isEqualTo(answer.path("hazards"));
        assertThat(again.path("working")).isEqualTo(answer.path("working"));
        JsonNode explicit = RunningService.json(service.post(calculation.path() + "?resolved=true", body))
                .path("given");
        assertThat(answer(calculation, explicit.toString()).path("result"))
                .as("given with every default, posted back")
                .isEqualTo(answer.path("result"));
        for (JsonNode assumption : answer.path("assumptions")) {
            assertThat(explicit.at(assumption.path("path").asText()))
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
