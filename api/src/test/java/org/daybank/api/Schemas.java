package org.daybank.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.daybank.api.http.Contract;

/** The contract, to look things up in and to hold answers against. */
final class Schemas {
    private static final String ID = "https://contract.test/openapi.json";

    private static final String PROBLEM = "#/components/schemas/Problem";

    /** Headers with a meaning of their own in an API; an answer that bears one must be described with it. */
    private static final List<String> DESCRIBED = List.of(
            "X-Request-Id", "ETag", "Cache-Control", "Allow", "Retry-After", "Location", "Content-Security-Policy");

    private final JsonNode contract = new Contract().tree();
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(
            Dialects.getOpenApi31(), builder -> builder.schemas(Map.of(ID, contract.toString())));

    JsonNode contract() {
        return contract;
    }

    /** What a node refers to, or the node itself. */
    JsonNode resolved(JsonNode node) {
        return node.has("$ref")
                ? resolved(contract.at(node.path("$ref").asText().substring(1)))
                : node;
    }

    /** What is wrong with an answer by the contract; empty when nothing is. */
    List<String> faults(String path, String method, int status, String mediaType, JsonNode answer) {
        JsonNode operation = contract.path("paths").path(path).path(method);
        JsonNode response = resolved(operation.path("responses").path(String.valueOf(status)));
        JsonNode schema = response.path("content").path(mediaType).path("schema");
        if (!schema.has("$ref")) {
            return List.of("%s %s %d %s has no named schema".formatted(method, path, status, mediaType));
        }
        return faults(schema.path("$ref").asText(), answer);
    }

    /**
     * What is wrong with an answer by the contract: a status, a media type, a header or a body that it does not describe. What
     * is refused because the contract has no such path or method must be a problem document.
     */
    List<String> faults(HttpResponse<String> answer) {
        String mediaType =
                answer.headers().firstValue("Content-Type").orElse("").replaceFirst(";.*", "");
        String method = answer.request().method().toLowerCase(Locale.ROOT);
        JsonNode responses = operation(answer.request().uri().getRawPath(), method.replace("head", "get"))
                .path("responses");
        if (responses.isMissingNode()) {
            return method.equals("options") ? List.of() : faults(PROBLEM, RunningService.json(answer));
        }
        JsonNode response = resolved(
                responses.path(responses.has(text(answer.statusCode())) ? text(answer.statusCode()) : "default"));
        List<String> faults = new ArrayList<>();
        for (String header : DESCRIBED) {
            if (answer.headers().firstValue(header).isPresent()
                    && !response.path("headers").has(header)) {
                faults.add("has no header " + header);
            }
        }
        JsonNode schema = response.path("content").path(mediaType).path("schema");
        if (schema.isMissingNode()) {
            if (!mediaType.isEmpty() && !answer.body().isEmpty()) {
                faults.add("has no media type " + mediaType);
            }
        } else if ((mediaType.endsWith("/json") || mediaType.endsWith("+json")) && !method.equals("head")) {
            JsonNode body = RunningService.json(answer);
            faults.addAll(schema.has("$ref") ? faults(schema.path("$ref").asText(), body) : List.of());
        }
        return faults.stream()
                .map(fault -> "%s %s %d: %s".formatted(method, answer.request().uri(), answer.statusCode(), fault))
                .toList();
    }

    /** The operation behind a path; a path without parameters goes before one with. */
    private JsonNode operation(String path, String method) {
        return contract.path("paths").properties().stream()
                .filter(template ->
                        path.matches(template.getKey().replace(".", "\\.").replaceAll("\\{\\w+}", "[^/]+")))
                .min(Comparator.comparing(template -> template.getKey().contains("{")))
                .map(template -> template.getValue().path(method))
                .orElse(MissingNode.getInstance());
    }

    private static String text(int status) {
        return String.valueOf(status);
    }

    /** What is wrong with a value by a schema of the contract. */
    List<String> faults(String pointer, JsonNode value) {
        Schema schema = registry.getSchema(SchemaLocation.of(ID + pointer));
        return schema.validate(value).stream()
                .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
                .toList();
    }
}
