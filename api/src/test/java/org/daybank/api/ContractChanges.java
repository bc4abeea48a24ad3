package org.daybank.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * What in a contract no longer holds that an older one promised: a client written against the older one would be refused, or
 * would get what it does not know how to read. That an answer gains a member or an enumeration in it a name is not among that.
 */
final class ContractChanges {
    private static final Set<String> ANY_TYPE =
            Set.of("null", "boolean", "object", "array", "number", "integer", "string");
    private static final List<String> LEAST =
            List.of("minimum", "exclusiveMinimum", "minLength", "minItems", "minProperties");
    private static final List<String> MOST =
            List.of("maximum", "exclusiveMaximum", "maxLength", "maxItems", "maxProperties");
    private static final List<String> CHOICES = List.of("oneOf", "anyOf");

    private final JsonNode older;
    private final JsonNode newer;
    private final List<String> breaking = new ArrayList<>();
    private final Set<List<Object>> compared = new HashSet<>();

    private ContractChanges(JsonNode older, JsonNode newer) {
        this.older = older;
        this.newer = newer;
    }

    /** Every change from one contract to the next that breaks a client. */
    static List<String> breaking(JsonNode older, JsonNode newer) {
        ContractChanges changes = new ContractChanges(older, newer);
        changes.compareOperations();
        return changes.breaking;
    }

    private void compareOperations() {
        older.path("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(method -> {
                    String name = method.getKey() + " " + path.getKey();
                    JsonNode now = newer.path("paths").path(path.getKey()).path(method.getKey());
                    if (now.isMissingNode()) {
                        breaking.add(name + " is gone");
                    } else {
                        compareOperation(name, method.getValue(), now);
                    }
                }));
    }

    private void compareOperation(String name, JsonNode before, JsonNode now) {
        expectSame(name + " operationId", before.path("operationId"), now.path("operationId"));
        Map<String, JsonNode> parametersNow = parameters(newer, now);
        Map<String, JsonNode> parametersBefore = parameters(older, before);
        parametersBefore.forEach((parameter, then) -> {
            JsonNode found = parametersNow.get(parameter);
            if (found == null) {
                breaking.add(name + " no longer takes the parameter " + parameter);
            } else {
                expectNotNewlyRequired(name + " " + parameter, then, found);
                compareSchema(name + " " + parameter, then.path("schema"), found.path("schema"), true);
            }
        });
        parametersNow.forEach((parameter, found) -> {
            if (!parametersBefore.containsKey(parameter)) {
                expectNotNewlyRequired(name + " " + parameter, MissingNode.getInstance(), found);
            }
        });
        JsonNode bodyBefore = resolved(older, before.path("requestBody"));
        JsonNode bodyNow = resolved(newer, now.path("requestBody"));
        expectNotNewlyRequired(name + " body", bodyBefore, bodyNow);
        compareContent(name + " body", bodyBefore, bodyNow, true);
        before.path("responses").properties().forEach(response -> {
            String where = name + " " + response.getKey();
            JsonNode responseNow = now.path("responses").path(response.getKey());
            if (responseNow.isMissingNode()) {
                breaking.add(where + " is gone");
                return;
            }
            JsonNode described = resolved(newer, responseNow);
            JsonNode then = resolved(older, response.getValue());
            then.path("headers").fieldNames().forEachRemaining(header -> {
                if (!described.path("headers").has(header)) {
                    breaking.add(where + " no longer has the header " + header);
                }
            });
            compareContent(where, then, described, false);
        });
    }

    private void compareContent(String where, JsonNode before, JsonNode now, boolean asked) {
        before.path("content").properties().forEach(media -> {
            JsonNode found = now.path("content").path(media.getKey());
            if (found.isMissingNode()) {
                breaking.add(where + " is no longer " + media.getKey());
            } else {
                compareSchema(where, media.getValue().path("schema"), found.path("schema"), asked);
            }
        });
    }

    /** Compares what is asked, which may only get wider, or what is answered, which may only get narrower or gain members. */
    private void compareSchema(String where, JsonNode schemaBefore, JsonNode schemaNow, boolean asked) {
        if (!compared.add(List.of(schemaBefore, schemaNow, asked))) {
            return;
        }
        JsonNode before = resolved(older, schemaBefore);
        JsonNode now = resolved(newer, schemaNow);
        Set<String> typesBefore = types(before);
        Set<String> typesNow = types(now);
        if (asked) {
            typesBefore.removeAll(typesNow);
            expectNone(where + " is no longer taken as", typesBefore);
            compareBounds(where, before, now);
            expectNone(where + " no longer takes", asked(before, now));
        } else {
            typesNow.removeAll(typesBefore);
            expectNone(where + " may now be", typesNow);
        }
        for (String kept : List.of("const", "default", "format", "pattern", "multipleOf", "uniqueItems")) {
            boolean matters = asked || kept.equals("const") || kept.equals("format");
            boolean lifted = asked && !now.has(kept) && !kept.equals("default");
            if (matters && !lifted) {
                expectSame(where + " " + kept, before.path(kept), now.path(kept));
            }
        }
        compareMembers(where, before, now, asked);
        CHOICES.forEach(choice -> compareChoices(where + " " + choice, before.path(choice), now.path(choice), asked));
        if (before.has("items") || now.has("items")) {
            compareSchema(where + "[]", before.path("items"), now.path("items"), asked);
        }
    }

    private void compareMembers(String where, JsonNode before, JsonNode now, boolean asked) {
        before.path("properties").properties().forEach(member -> {
            JsonNode found = now.path("properties").path(member.getKey());
            if (found.isMissingNode()) {
                breaking.add(where + "/" + member.getKey() + " is gone");
            } else {
                compareSchema(where + "/" + member.getKey(), member.getValue(), found, asked);
            }
        });
        Set<String> requiredBefore = texts(before.path("required"));
        Set<String> requiredNow = texts(now.path("required"));
        if (asked) {
            requiredNow.removeAll(requiredBefore);
            expectNone(where + " now requires", requiredNow);
        } else {
            requiredBefore.removeAll(requiredNow);
            expectNone(where + " may now be without", requiredBefore);
        }
        JsonNode othersBefore = before.path("additionalProperties");
        JsonNode othersNow = now.path("additionalProperties");
        if (othersBefore.isObject() && othersNow.isObject()) {
            compareSchema(where + "/*", othersBefore, othersNow, asked);
        } else if (asked && !othersBefore.isBoolean() && othersNow.isBoolean() && !othersNow.asBoolean()) {
            breaking.add(where + " no longer takes other members");
        }
    }

    /** Members of a choice are the same when they refer to the same schema, else when they stand at the same place. */
    private void compareChoices(String where, JsonNode before, JsonNode now, boolean asked) {
        Map<String, JsonNode> membersBefore = members(before);
        Map<String, JsonNode> membersNow = members(now);
        Set<String> lost = new TreeSet<>((asked ? membersBefore : membersNow).keySet());
        lost.removeAll((asked ? membersNow : membersBefore).keySet());
        boolean choiceLifted = asked ? now.isMissingNode() : before.isMissingNode();
        if (!choiceLifted) {
            expectNone(where + (asked ? " no longer takes" : " may now be"), lost);
        }
        if (asked && before.isMissingNode() && !now.isMissingNode()) {
            breaking.add(where + " is now asked for");
        }
        membersBefore.forEach((name, then) -> {
            if (membersNow.containsKey(name)) {
                compareSchema(where + " " + name, then, membersNow.get(name), asked);
            }
        });
    }

    private void compareBounds(String where, JsonNode before, JsonNode now) {
        for (String bound : LEAST) {
            if (now.has(bound)
                    && (!before.has(bound)
                            || now.path(bound).asDouble() > before.path(bound).asDouble())) {
                breaking.add("%s %s is now %s".formatted(where, bound, now.path(bound)));
            }
        }
        for (String bound : MOST) {
            if (now.has(bound)
                    && (!before.has(bound)
                            || now.path(bound).asDouble() < before.path(bound).asDouble())) {
                breaking.add("%s %s is now %s".formatted(where, bound, now.path(bound)));
            }
        }
    }

    /** The names that a list of names has lost; a list where there was none takes all others. */
    private static Set<String> asked(JsonNode before, JsonNode now) {
        if (!now.has("enum")) {
            return Set.of();
        }
        if (!before.has("enum")) {
            return Set.of("any but " + now.path("enum"));
        }
        Set<String> lost = texts(before.path("enum"));
        lost.removeAll(texts(now.path("enum")));
        return lost;
    }

    private void expectSame(String what, JsonNode before, JsonNode now) {
        if (!before.equals(now)) {
            breaking.add("%s was %s and is %s".formatted(what, words(before), words(now)));
        }
    }

    private void expectNone(String what, Set<String> found) {
        if (!found.isEmpty()) {
            breaking.add(what + " " + String.join(", ", found));
        }
    }

    private void expectNotNewlyRequired(String what, JsonNode before, JsonNode now) {
        if (now.path("required").asBoolean() && !before.path("required").asBoolean()) {
            breaking.add(what + " is now required");
        }
    }

    private static String words(JsonNode node) {
        return node.isMissingNode() ? "not there" : node.toString();
    }

    private static Map<String, JsonNode> parameters(JsonNode contract, JsonNode operation) {
        Map<String, JsonNode> parameters = new LinkedHashMap<>();
        operation.path("parameters").forEach(reference -> {
            JsonNode parameter = resolved(contract, reference);
            parameters.put(
                    parameter.path("in").asText() + " " + parameter.path("name").asText(), parameter);
        });
        return parameters;
    }

    private static Map<String, JsonNode> members(JsonNode choice) {
        Map<String, JsonNode> members = new HashMap<>();
        for (int i = 0; i < choice.size(); i++) {
            members.put(choice.get(i).path("$ref").asText("member " + i), choice.get(i));
        }
        return members;
    }

    private static JsonNode resolved(JsonNode contract, JsonNode node) {
        return node.has("$ref")
                ? resolved(contract, contract.at(node.path("$ref").asText().substring(1)))
                : node;
    }

    /** The types that a schema takes; an integer is a number as well. */
    private static Set<String> types(JsonNode schema) {
        JsonNode type = schema.path("type");
        Set<String> types = type.isMissingNode()
                ? new TreeSet<>(ANY_TYPE)
                : type.isTextual() ? new TreeSet<>(Set.of(type.asText())) : texts(type);
        if (types.contains("number")) {
            types.add("integer");
        }
        return types;
    }

    private static Set<String> texts(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
