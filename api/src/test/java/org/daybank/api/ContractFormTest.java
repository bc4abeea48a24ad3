package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every part of the contract has to say, whoever wrote it. */
class ContractFormTest {
    private static final Schemas SCHEMAS = new Schemas();
    private static final JsonNode CONTRACT = SCHEMAS.contract();

    /** Answers to requests that are none of the operations; the type of a problem names them. */
    private static final Set<String> OUTSIDE_OPERATIONS =
            Set.of("#/components/responses/MethodNotAllowed", "#/components/responses/Unreadable");

    @Test
    void everyOperationSaysWhatItIsAndHowItCanFail() {
        Set<String> names = new HashSet<>();
        List<String> tags = CONTRACT.path("tags").findValuesAsText("name");
        operations().forEach(operation -> {
            JsonNode said = operation.getValue();
            assertThat(said.path("operationId").asText()).as(operation.getKey()).matches("[a-z][A-Za-z]*");
            assertThat(names.add(said.path("operationId").asText()))
                    .as("%s has a name of its own", operation.getKey())
                    .isTrue();
            assertThat(said.path("summary").asText()).as(operation.getKey()).isNotBlank();
            assertThat(said.path("tags"))
                    .as(operation.getKey())
                    .isNotEmpty()
                    .allSatisfy(tag -> assertThat(tags).contains(tag.asText()));
            List<String> answers = new ArrayList<>();
            said.path("responses").fieldNames().forEachRemaining(answers::add);
            assertThat(answers)
                    .as(operation.getKey())
                    .contains("default")
                    .anyMatch(status -> status.matches("4\\d\\d"));
        });
    }

    @Test
    void everyAnswerSaysWhichHeadersItBears() {
        operations()
                .forEach(operation -> operation.getValue().path("responses").forEach(reference -> {
                    JsonNode response = SCHEMAS.resolved(reference);
                    assertThat(response.path("headers").has("X-Request-Id"))
                            .as(operation.getKey() + " " + reference)
                            .isTrue();
                    response.path("headers")
                            .forEach(header -> assertThat(SCHEMAS.resolved(header)
                                            .path("description")
                                            .asText())
                                    .as(operation.getKey() + " " + header)
                                    .isNotBlank());
                }));
    }

    @Test
    void everyParameterAndPropertyIsDescribed() {
        List<String> silent = new ArrayList<>();
        nodes("#", CONTRACT)
                .filter(node -> node.getKey().matches(".*/(properties|parameters)/[^/]+"))
                .filter(node -> node.getValue().isObject())
                .filter(node -> !node.getKey().contains("/examples/"))
                .filter(node -> node.getValue().path("description").asText().isBlank()
                        && SCHEMAS.resolved(node.getValue())
                                .path("description")
                                .asText()
                                .isBlank())
                .forEach(node -> silent.add(node.getKey()));
        assertThat(silent).isEmpty();
    }

    @Test
    void everyNameOfAListIsExplained() {
        List<String> silent = new ArrayList<>();
        CONTRACT.at("/components/schemas").properties().forEach(schema -> {
            String told = schema.getValue().path("description").asText();
            schema.getValue().path("enum").forEach(name -> {
                if (told.contains("\n- `") && !told.contains("\n- `" + name.asText() + "`:")) {
                    silent.add(schema.getKey() + " " + name.asText());
                }
            });
        });
        assertThat(silent).isEmpty();
    }

    @Test
    void everyQuantityNamesItsUnits() {
        CONTRACT.at("/components/schemas").properties().stream()
                .filter(schema -> schema.getValue().path("properties").has("unit")
                        && schema.getValue().path("properties").has("value"))
                .filter(schema -> !schema.getKey().equals("Quantity"))
                .forEach(schema -> assertThat(
                                schema.getValue().path("description").asText())
                        .as(schema.getKey())
                        .contains("answered in "
                                + schema.getValue()
                                        .at("/properties/unit/examples/0")
                                        .asText()));
    }

    @Test
    void everyComponentIsUsed() {
        Set<String> used = new HashSet<>(CONTRACT.findValuesAsText("$ref"));
        List<String> unused = CONTRACT.path("components").properties().stream()
                .flatMap(kind -> kind.getValue().properties().stream()
                        .map(component -> "#/components/" + kind.getKey() + "/" + component.getKey()))
                .filter(component -> !component.startsWith("#/components/securitySchemes/"))
                .filter(component -> !used.contains(component))
                .toList();
        assertThat(unused).containsExactlyInAnyOrderElementsOf(OUTSIDE_OPERATIONS);
    }

    @Test
    void usesNothingThatTheComparisonOfContractsPassesOver() {
        assertThat(
                        nodes("#/components/schemas", CONTRACT.at("/components/schemas"))
                                .map(Map.Entry::getKey)
                                .filter(
                                        pointer -> pointer.matches(
                                                ".*/(allOf|not|if|dependentSchemas|dependentRequired|patternProperties|prefixItems|contains)")))
                .isEmpty();
    }

    private static Stream<Map.Entry<String, JsonNode>> operations() {
        return CONTRACT.path("paths").properties().stream()
                .flatMap(path -> path.getValue().properties().stream()
                        .map(method -> Map.entry(method.getKey() + " " + path.getKey(), method.getValue())));
    }

    /** Every node below one, by its pointer. */
    private static Stream<Map.Entry<String, JsonNode>> nodes(String pointer, JsonNode node) {
        Stream<Map.Entry<String, JsonNode>> members =
                node.properties().stream().flatMap(member -> nodes(pointer + "/" + member.getKey(), member.getValue()));
        List<Map.Entry<String, JsonNode>> elements = new ArrayList<>();
        for (int i = 0; i < node.size() && node.isArray(); i++) {
            elements.addAll(nodes(pointer + "/" + i, node.get(i)).toList());
        }
        return Stream.of(Stream.of(Map.entry(pointer, node)), members, elements.stream())
                .flatMap(some -> some);
    }
}
