package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.daybank.api.wire.Json;
import org.jspecify.annotations.Nullable;

/** The contract and its examples, served as they lie in {@code openapi/}. */
public final class Contract {
    private static final String ROOT = "/openapi/";

    private final byte[] yaml;
    private final Once<JsonNode> tree = new Once<>(this::parsed);

    /** Reads the contract. */
    public Contract() {
        byte[] text = resource("openapi.yaml");
        if (text == null) {
            throw new IllegalStateException("The contract is not on the class path");
        }
        this.yaml = text;
    }

    private JsonNode parsed() {
        try {
            return new YAMLMapper().readTree(yaml);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The contract as it was read. */
    public JsonNode tree() {
        return tree.get();
    }

    /** Answers the contract as it was written. */
    public void yaml(Context context) {
        Answers.send(context, "application/yaml; charset=utf-8", yaml);
    }

    /** Answers the contract as JSON. */
    public void json(Context context) {
        Answers.json(context, tree());
    }

    /** Answers the names of the examples, each with the path it can be posted to. */
    public void examples(Context context) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        tree().path("components")
                .path("examples")
                .properties()
                .forEach(example -> list.addObject()
                        .put("name", example.getKey())
                        .put("summary", example.getValue().path("summary").asText())
                        .put("postTo", pathThatShows(example.getKey())));
        Answers.json(context, JsonNodeFactory.instance.objectNode().set("examples", list));
    }

    /** Answers one example: a request body, ready to be posted. */
    public void example(Context context) {
        String name = context.pathParam("name");
        if (!tree().path("components").path("examples").has(name)) {
            throw new NotFoundResponse("No such example; GET /v1/examples lists them");
        }
        byte[] body = resource("examples/" + name + ".request.json");
        if (body == null) {
            throw new IllegalStateException("The contract names an example that is not there: " + name);
        }
        Answers.json(context, body);
    }

    private String pathThatShows(String example) {
        for (var path : tree().path("paths").properties()) {
            JsonNode media = path.getValue().at("/post/requestBody/content/application~1json/examples");
            if (media.has(example)) {
                return path.getKey();
            }
        }
        return "";
    }

    private static byte @Nullable [] resource(String name) {
        try (InputStream in = Json.class.getResourceAsStream(ROOT + name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
