package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import net.jqwik.api.statistics.Statistics;

/**
 * Whatever is sent, the service answers by its contract: no failure of its own, nothing that hangs, every refusal a problem
 * document about fields that exist. {@code -Ddaybank.fuzz.requests=100000} sends so many requests instead of a few.
 */
class RequestsProperties {
    private static final int TRIES = 20;
    private static final int REQUESTS = Math.max(1, Integer.getInteger("daybank.fuzz.requests", 600) / TRIES);
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    /** Answers longer than this are held against the schema only now and then. */
    private static final int LONG_ANSWER = 20_000;

    private static final Schemas SCHEMAS = new Schemas();
    private static final List<Operation> OPERATIONS = operations();
    private static final Set<String> NAMES = names(SCHEMAS.contract(), new TreeSet<>());

    private static RunningService service;

    /** One method on one path of the contract. */
    private record Operation(String path, String method, JsonNode told) {
        JsonNode bodySchema() {
            return SCHEMAS.resolved(told.at("/requestBody/content/application~1json/schema"));
        }

        List<String> exampleNames() {
            List<String> names = new ArrayList<>();
            told.at("/requestBody/content/application~1json/examples")
                    .fieldNames()
                    .forEachRemaining(names::add);
            return names;
        }

        JsonNode querySchema() {
            for (JsonNode parameter : told.path("parameters")) {
                JsonNode schema = SCHEMAS.resolved(SCHEMAS.resolved(parameter).path("schema"));
                if (schema.path("type").asText().equals("object")) {
                    return schema;
                }
            }
            return SCHEMAS.contract().path("nothing");
        }
    }

    @BeforeContainer
    static void start() {
        service = new RunningService();
    }

    @AfterContainer
    static void stop() {
        service.close();
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void everyRequestIsAnsweredByTheContract(@ForAll long seed) {
        Statistics.label("seeds").collect(seed);
        Random random = new Random(seed);
        RequestMaker maker = new RequestMaker(SCHEMAS.contract(), random);
        for (int i = 0; i < REQUESTS; i++) {
            Operation operation = OPERATIONS.get(random.nextInt(OPERATIONS.size()));
            if (operation.method().equals("get")) {
                ask(operation, maker, random);
            } else {
                post(operation, maker, random);
            }
        }
    }

    private static void post(Operation operation, RequestMaker maker, Random random) {
        List<String> examples = operation.exampleNames();
        JsonNode example =
                RunningService.json(service.get("/v1/examples/" + examples.get(random.nextInt(examples.size()))));
        String body = switch (random.nextInt(6)) {
            case 0 -> maker.bySchema(operation.bodySchema(), 3).toString();
            case 1, 5 -> maker.nearExample(example).toString();
            case 2, 3 -> maker.spoilt(example).toString();
            default -> maker.hostile(example.toString());
        };
        HttpResponse<String> answer = service.send(service.request(operation.path(), "Content-Type", "application/json")
                .timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofString(body)));
        judge(operation, answer, body, random);
    }

    private static void ask(Operation operation, RequestMaker maker, Random random) {
        Map<String, List<String>> parameters = maker.query(operation.querySchema());
        String query = parameters.entrySet().stream()
                .flatMap(part -> part.getValue().stream().map(value -> encoded(part.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&", "?", ""));
        String path = operation
                .path()
                .replace(
                        "{figure}",
                        List.of("x", "months.0.month", "requiredCapacity", "cells", "fits")
                                .get(random.nextInt(5)));
        HttpResponse<String> answer =
                service.send(service.request(path + query).timeout(PATIENCE).GET());
        judge(operation, answer, query, random);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static void judge(Operation operation, HttpResponse<String> answer, String sent, Random random) {
        Statistics.label("status").collect(answer.statusCode());
        String what = "%s %s\n%s\n→ %d %s"
                .formatted(operation.method(), operation.path(), sent, answer.statusCode(), start(answer.body()));
        assertThat(answer.statusCode()).as(what).isLessThan(500);
        String type = answer.headers().firstValue("Content-Type").orElse("");
        if (answer.statusCode() != 200) {
            assertThat(List.of(400, 404, 414)).as(what).contains(answer.statusCode());
            JsonNode problem = Refusal.document(answer, answer.statusCode());
            assertThat(problem.path("detail").asText()).as(what).isNotBlank();
            problem.path("errors")
                    .forEach(error -> assertThat(isKnown(error, sent))
                            .as("%s\nnames a field that exists: %s", what, error)
                            .isTrue());
        } else if (type.startsWith("application/json")
                && (answer.body().length() < LONG_ANSWER || random.nextInt(20) == 0)) {
            assertThat(SCHEMAS.faults(
                            operation.path(), operation.method(), 200, "application/json", RunningService.json(answer)))
                    .as(what)
                    .isEmpty();
        } else {
            // as a number, that is; a load may be called so
            assertThat(answer.body()).as(what).doesNotContainPattern("[:,\\[](NaN|-?Infinity)[,}\\]\n]");
        }
    }

    /** Whether an error names something that stands in the request or in the contract. */
    private static boolean isKnown(JsonNode error, String sent) {
        if (error.has("parameter")) {
            String name = error.path("parameter").asText();
            return NAMES.contains(name) || sent.contains(encoded(name.replace("…", "")));
        }
        for (String name : error.path("pointer").asText().split("/", -1)) {
            String plain = name.replace("~1", "/").replace("~0", "~").replace("…", "");
            boolean known = plain.isEmpty() || plain.matches("\\d+") || NAMES.contains(plain);
            if (!known && !sent.contains(RunningService.quoted(plain))) {
                return false;
            }
        }
        return true;
    }

    private static String start(String text) {
        return text.length() > 2000 ? text.substring(0, 2000) + "…" : text;
    }

    private static List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        SCHEMAS.contract()
                .path("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(method -> {
                    Operation operation = new Operation(path.getKey(), method.getKey(), method.getValue());
                    boolean calculates = operation.method().equals("get")
                            ? !operation.querySchema().isMissingNode()
                            : !operation.exampleNames().isEmpty();
                    if (calculates) {
                        operations.add(operation);
                    }
                }));
        return operations;
    }

    /** Every name of a member or a parameter in the contract. */
    private static Set<String> names(JsonNode node, Set<String> found) {
        node.path("properties").fieldNames().forEachRemaining(found::add);
        if (node.path("name").isTextual()) {
            found.add(node.path("name").asText());
        }
        node.forEach(part -> names(part, found));
        return found;
    }
}
