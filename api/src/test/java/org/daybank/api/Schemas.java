package org.daybank.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.util.List;
import java.util.Map;
import org.daybank.api.http.Contract;

/** The contract, to look things up in and to validate answers against. */
final class Schemas {
    private static final String ID = "https://contract.test/openapi.json";

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

    /** What is wrong with a value by a schema of the contract. */
    List<String> faults(String pointer, JsonNode value) {
        Schema schema = registry.getSchema(SchemaLocation.of(ID + pointer));
        return schema.validate(value).stream()
                .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
                .toList();
    }
}
