package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.daybank.api.http.Calculation;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Json;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.RecordSchema;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What an answer repeats under {@code given} is what was said: changed in one member, or without it, it is the same request
 * as the body with that change, for every example and every member.
 */
class GivenLawsTest {
    private static final Schemas SCHEMAS = new Schemas();

    /** Members of values that are one thing: they are changed as a whole. */
    private static final Set<String> PARTS_OF_VALUES = Set.of("value", "unit", "amount", "currency", "values");

    @TestFactory
    Stream<DynamicTest> givenWithOneChangeIsTheBodyWithThatChange() {
        return Routes.CALCULATIONS.stream()
                .flatMap(calculation -> examples(calculation)
                        .map(name -> DynamicTest.dynamicTest(
                                calculation.path() + " " + name, () -> holds(calculation, name))));
    }

    private static void holds(Calculation<?, ?> calculation, String example) throws Exception {
        ObjectNode body =
                (ObjectNode) Json.read(Files.readString(Path.of("..", "openapi", "examples", example + ".request.json"))
                        .getBytes(StandardCharsets.UTF_8));
        ObjectNode given = Binder.bind(calculation.request(), body).said();
        assertThat(outcome(calculation, given)).isEqualTo(outcome(calculation, body));
        List<JsonPointer> members = new ArrayList<>();
        collect(given, body, JsonPointer.empty(), members);
        assertThat(members).isNotEmpty();
        int changes = 0;
        for (JsonPointer member : members) {
            for (JsonNode other : others(given.at(member))) {
                assertThat(outcome(calculation, changed(given, member, other)))
                        .as("%s changed to %s", member, other)
                        .isEqualTo(outcome(calculation, changed(body, member, other)));
                changes++;
            }
            assertThat(outcome(calculation, changed(given, member, null)))
                    .as("without %s", member)
                    .isEqualTo(outcome(calculation, changed(body, member, null)));
            changes++;
        }
        System.out.printf(
                "Laws of given: %s %s, %d changes of %d members%n",
                calculation.path(), example, changes, members.size());
    }

    /** The request with every default, which decides what is calculated; or everything that is wrong with it. */
    private static Object outcome(Calculation<?, ?> calculation, ObjectNode tree) {
        try {
            return RecordSchema.explicit(
                    Binder.bind(calculation.request(), tree).value());
        } catch (InvalidInput refused) {
            return refused.problems();
        }
    }

    /** The members of what was said, down to where the body writes a value in a shorter form. */
    private static void collect(JsonNode node, JsonNode said, JsonPointer at, List<JsonPointer> members) {
        JsonNode body = said.isArray() && node.isObject() && said.size() == 1 ? said.get(0) : said;
        if (!body.isContainerNode()) {
            return;
        }
        if (node instanceof ObjectNode object
                && object.properties().stream().noneMatch(entry -> PARTS_OF_VALUES.contains(entry.getKey()))) {
            object.properties().forEach(entry -> {
                JsonPointer member = at.appendProperty(entry.getKey());
                members.add(member);
                collect(entry.getValue(), body.path(entry.getKey()), member, members);
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < Math.min(3, array.size()); i++) {
                if (array.get(i).isObject()) {
                    collect(array.get(i), body.path(i), at.appendIndex(i), members);
                }
            }
        }
    }

    /** Values beside one that is a number, a quantity or a flag. */
    private static List<JsonNode> others(JsonNode value) {
        if (value.isNumber()) {
            return List.of(DoubleNode.valueOf(value.doubleValue() * 1.1), DoubleNode.valueOf(value.doubleValue() * 2));
        }
        if (value.isBoolean()) {
            return List.of(BooleanNode.valueOf(!value.booleanValue()));
        }
        if (value.path("value").isNumber()) {
            ObjectNode more = value.deepCopy();
            more.put("value", value.path("value").doubleValue() * 1.1);
            ObjectNode twice = value.deepCopy();
            twice.put("value", value.path("value").doubleValue() * 2);
            return List.of(more, twice);
        }
        return List.of();
    }

    private static ObjectNode changed(ObjectNode tree, JsonPointer member, @Nullable JsonNode other) {
        ObjectNode copy = tree.deepCopy();
        ObjectNode holder = (ObjectNode) holder(copy, member.head());
        String name = member.last().getMatchingProperty();
        if (other == null) {
            holder.remove(name);
        } else {
            holder.set(name, other);
        }
        return copy;
    }

    /** The object at a pointer; an array of one element may stand for the element. */
    private static JsonNode holder(JsonNode tree, JsonPointer at) {
        JsonNode node = tree;
        for (JsonPointer rest = at; !rest.matches(); rest = rest.tail()) {
            node = node.isArray() && !rest.mayMatchElement() ? node.get(0) : node;
            node = rest.mayMatchElement() && node.isArray()
                    ? node.get(rest.getMatchingIndex())
                    : node.get(rest.getMatchingProperty());
        }
        return node;
    }

    private static Stream<String> examples(Calculation<?, ?> calculation) {
        return SCHEMAS
                .contract()
                .path("paths")
                .path(calculation.path())
                .at("/post/requestBody/content/application~1json/examples")
                .properties()
                .stream()
                .map(Map.Entry::getKey);
    }
}
