package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The contract keeps what the last released one promised; and a change that breaks a client is noticed as one. */
class ContractChangesTest {
    /** The contract of the last release without its words; DEVELOPERS.md says when it is written anew. */
    private static final Path RELEASED = Path.of("src", "test", "resources", "released", "openapi.json");

    private static final Set<String> WORDS =
            Set.of("description", "summary", "examples", "example", "tags", "title", "servers", "externalValue");
    private static final Set<String> NAMES =
            Set.of("properties", "schemas", "responses", "parameters", "headers", "paths");

    private static final JsonNode CONTRACT = new Schemas().contract();

    @Test
    void theContractKeepsWhatTheLastReleasePromised() throws IOException {
        if (Boolean.getBoolean("daybank.released.write")) {
            Files.writeString(RELEASED, withoutWords(CONTRACT.deepCopy(), false).toString() + "\n");
        }
        JsonNode released = RunningService.json(Files.readString(RELEASED));
        List<String> breaking = ContractChanges.breaking(released, CONTRACT);
        if (!mayBreak(version(released), version(CONTRACT))) {
            assertThat(breaking)
                    .as(
                            "from version %s to %s, which tells clients that nothing breaks",
                            version(released), version(CONTRACT))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("versions")
    void onlyTheFirstNumberThatIsNotZeroMayBreak(String before, String now, boolean may) {
        assertThat(mayBreak(before, now)).isEqualTo(may);
    }

    static Stream<Arguments> versions() {
        return Stream.of(
                Arguments.of("0.1.0", "0.1.0", false),
                Arguments.of("0.1.0", "0.1.1", false),
                Arguments.of("0.1.0", "0.2.0", true),
                Arguments.of("0.9.3", "1.0.0", true),
                Arguments.of("1.2.0", "1.3.0", false),
                Arguments.of("1.2.0", "2.0.0", true));
    }

    @Test
    void sameContractBreaksNothing() {
        assertThat(ContractChanges.breaking(CONTRACT, CONTRACT)).isEmpty();
        assertThat(ContractChanges.breaking(CONTRACT, withoutWords(CONTRACT.deepCopy(), false)))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breakingChanges")
    void findsWhatBreaksAClient(String told, Consumer<JsonNode> change) {
        JsonNode changed = CONTRACT.deepCopy();
        change.accept(changed);
        assertThat(ContractChanges.breaking(CONTRACT, changed)).anyMatch(found -> found.contains(told));
    }

    static Stream<Arguments> breakingChanges() {
        return Stream.of(
                breaks("post /v1/sun is gone", c -> at(c, "/paths").remove("/v1/sun")),
                breaks(
                        "get /v1/bank-capacity is gone",
                        c -> at(c, "/paths/~1v1~1bank-capacity").remove("get")),
                breaks(
                        "post /v1/sun operationId",
                        c -> at(c, "/paths/~1v1~1sun/post").put("operationId", "sunshine")),
                breaks(
                        "no longer takes the parameter query in",
                        c -> removeFrom(
                                c,
                                "/paths/~1v1~1bank-capacity~1{figure}.txt/get/parameters",
                                "#/components/parameters/in")),
                breaks(
                        "query working is now required",
                        c -> at(c, "/components/parameters/working").put("required", true)),
                breaks(
                        "query zone is now required",
                        c -> at(c, "/components/parameters/working")
                                .put("name", "zone")
                                .put("required", true)),
                breaks(
                        "body is no longer text/plain",
                        c -> at(c, "/paths/~1v1~1climate/post/requestBody/content")
                                .remove("text/plain")),
                breaks(
                        "post /v1/sun 400 is gone",
                        c -> at(c, "/paths/~1v1~1sun/post/responses").remove("400")),
                breaks(
                        "no longer has the header ETag",
                        c -> at(c, "/components/responses/Figure/headers").remove("ETag")),
                breaks(
                        "/requiredCapacity is gone",
                        c -> at(c, "/components/schemas/BankCapacity/properties")
                                .remove("requiredCapacity")),
                breaks(
                        "may now be without requiredCapacity",
                        c -> removeFrom(c, "/components/schemas/BankCapacity/required", "requiredCapacity")),
                breaks(
                        "now requires surgeCurrent",
                        c -> array(c, "/components/schemas/BankCapacityRequest/required")
                                .add("surgeCurrent")),
                breaks(
                        "/cutOffVoltage is gone",
                        c -> at(c, "/components/schemas/BankCapacityRequest/properties")
                                .remove("cutOffVoltage")),
                breaks(
                        "no longer takes ventedLeadAcid",
                        c -> removeFrom(c, "/components/schemas/Chemistry/enum", "ventedLeadAcid")),
                breaks(
                        "is no longer taken as string",
                        c -> at(c, "/components/schemas/Energy").put("type", "object")),
                breaks(
                        "may now be null",
                        c -> array(c, "/components/schemas/Energy/type").add("null")),
                breaks("minimum is now 2", c -> at(c, ADVISED).put("minimum", 2)),
                breaks("maximum is now 3", c -> at(c, ADVISED).put("maximum", 3)),
                breaks("exclusiveMinimum is now 0.5", c -> at(c, ADVISED).put("exclusiveMinimum", 0.5)),
                breaks("default was 3 and is 2", c -> at(c, ADVISED).put("default", 2)),
                breaks(
                        "maxItems is now 2",
                        c -> at(c, "/components/schemas/EnergyBudgetRequest/properties/loads")
                                .put("maxItems", 2)),
                breaks("pattern was", c -> at(c, "/components/schemas/Energy").put("pattern", "[0-9]+ Wh")),
                breaks(
                        "const was not there and is \"EUR\"",
                        c -> at(c, "/components/schemas/Money/properties/currency")
                                .put("const", "EUR")));
    }

    @Test
    void findsWhatAChoiceHasLostOrGained() {
        JsonNode two = takingAndAnswering(
                "{'oneOf': [{'$ref': '#/components/schemas/Energy'}, {'$ref': '#/components/schemas/Charge'}]}");
        JsonNode one = takingAndAnswering("{'oneOf': [{'$ref': '#/components/schemas/Energy'}]}");
        assertThat(ContractChanges.breaking(two, one))
                .containsExactly("post /v1/sun body oneOf no longer takes #/components/schemas/Charge");
        assertThat(ContractChanges.breaking(one, two))
                .containsExactly("post /v1/sun 200 oneOf may now be #/components/schemas/Charge");
    }

    /** A contract with one path, which takes and answers by one schema. */
    private static JsonNode takingAndAnswering(String schema) {
        String content = "{'content': {'application/json': {'schema': " + schema + "}}}";
        String paths = "{'paths': {'/v1/sun': {'post': {'requestBody': %1$s, 'responses': {'200': %1$s}}}}}";
        return RunningService.json(paths.formatted(content).replace('\'', '"'));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("compatibleChanges")
    void letsClientsWorkOn(String what, Consumer<JsonNode> change) {
        JsonNode changed = CONTRACT.deepCopy();
        change.accept(changed);
        assertThat(changed).as(what).isNotEqualTo(CONTRACT);
        assertThat(ContractChanges.breaking(CONTRACT, changed)).isEmpty();
    }

    static Stream<Arguments> compatibleChanges() {
        return Stream.of(
                breaks("a new path", c -> at(c, "/paths").set("/v1/moon", CONTRACT.at("/paths/~1v1~1sun"))),
                breaks(
                        "a new answer",
                        c -> at(c, "/paths/~1v1~1sun/post/responses")
                                .set("429", CONTRACT.at("/paths/~1v1~1sun/post/responses/400"))),
                breaks(
                        "a new member of an answer",
                        c -> at(c, "/components/schemas/BankCapacity/properties")
                                .putObject("more")
                                .put("type", "string")),
                breaks(
                        "a new member of a request",
                        c -> at(c, "/components/schemas/BankCapacityRequest/properties")
                                .putObject("more")
                                .put("type", "string")),
                breaks(
                        "a member of a request that may be left out",
                        c -> removeFrom(c, "/components/schemas/SweepRequest/required", "axes")),
                breaks(
                        "a new name",
                        c -> array(c, "/components/schemas/Chemistry/enum").add("saltWater")),
                breaks("wider bounds", c -> at(c, ADVISED).put("maximum", 1000).remove("minimum")),
                breaks("other words", c -> at(c, ADVISED).put("description", "Strings.")));
    }

    private static final String ADVISED = "/components/schemas/BankPolicy/properties/advisedLeadAcidStrings";

    private static Arguments breaks(String told, Consumer<JsonNode> change) {
        return Arguments.of(told, change);
    }

    private static ObjectNode at(JsonNode contract, String pointer) {
        return (ObjectNode) contract.requiredAt(pointer);
    }

    private static ArrayNode array(JsonNode contract, String pointer) {
        return (ArrayNode) contract.requiredAt(pointer);
    }

    private static void removeFrom(JsonNode contract, String pointer, String element) {
        ArrayNode array = array(contract, pointer);
        for (int i = array.size() - 1; i >= 0; i--) {
            if (array.get(i).asText().equals(element)
                    || array.get(i).path("$ref").asText().equals(element)) {
                array.remove(i);
            }
        }
    }

    private static String version(JsonNode contract) {
        return contract.at("/info/version").asText();
    }

    /** Whether a version says that it breaks: its first number is another, or the second while the first is zero. */
    private static boolean mayBreak(String before, String now) {
        String[] then = before.split("\\.", -1);
        String[] numbers = now.split("\\.", -1);
        return !then[0].equals(numbers[0]) || (then[0].equals("0") && !then[1].equals(numbers[1]));
    }

    /** The contract without what only people read. */
    private static JsonNode withoutWords(JsonNode node, boolean names) {
        if (node instanceof ObjectNode object && !names) {
            object.remove(WORDS);
        }
        node.properties().forEach(member -> withoutWords(member.getValue(), NAMES.contains(member.getKey()) && !names));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            withoutWords(node.get(i), false);
        }
        return node;
    }
}
