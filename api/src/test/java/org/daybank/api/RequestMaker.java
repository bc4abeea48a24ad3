package org.daybank.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Makes requests out of the schemas and examples of the contract: right ones, nearly right ones and hostile ones. */
final class RequestMaker {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Members that decide how much work a request is; they stay small, or beyond every limit. */
    private static final List<String> WORK =
            List.of("count", "draws", "simulatedYears", "rows", "from", "to", "largestParallel", "years", "modules");

    private static final List<String> UNITS = List.of(
            "W", "kW", "W.h", "kWh", "A.h", "V", "A", "Ohm", "mOhm", "Cel", "m", "mm2", "h", "d", "deg", "kW.h/m2",
            "%/K", "V/K", "kg", "L", "", "parsec", "°C", "µ");
    private static final List<String> ODD_TEXTS = List.of(
            "",
            " ",
            "null",
            "NaN",
            "-Infinity",
            "1e999 kWh",
            "2,4 kWh",
            "1.234.567 W",
            "0x10 W",
            "12 ",
            "−5 Cel",
            "../../etc/passwd",
            "%00",
            "<script>alert(1)</script>",
            "'; drop table loads; --",
            "\u0000",
            "\ud83d\ude00 kWh",
            "\u202e42 V",
            "A".repeat(5000),
            "18:00-18:00",
            "25:61-99:99",
            "90 deg: 3 deg; 1 deg",
            "${jndi:x}");

    private final JsonNode contract;
    private final Random random;

    RequestMaker(JsonNode contract, Random random) {
        this.contract = contract;
        this.random = random;
    }

    /** A value as a schema describes it; a good part of them is right. */
    JsonNode bySchema(JsonNode given, int depth) {
        JsonNode schema = resolved(given);
        for (String several : List.of("oneOf", "anyOf")) {
            if (schema.has(several)) {
                return bySchema(pick(schema.path(several)), depth);
            }
        }
        if (schema.has("const")) {
            return schema.path("const");
        }
        if (schema.has("enum")) {
            return pick(schema.path("enum"));
        }
        if (schema.has("examples") && random.nextInt(3) > 0 && !schema.has("properties")) {
            return pick(schema.path("examples"));
        }
        return switch (type(schema)) {
            case "object" -> object(schema, depth);
            case "array" -> array(schema, depth);
            case "integer" -> NODES.numberNode(random.nextInt(4));
            case "number" -> NODES.numberNode(number());
            case "boolean" -> NODES.booleanNode(random.nextBoolean());
            default -> NODES.textNode(schema.has("pattern") ? quantity() : "name " + random.nextInt(100));
        };
    }

    /** An example with a few of its values made others of their kind. */
    JsonNode nearExample(JsonNode example) {
        JsonNode changed = example.deepCopy();
        for (int i = random.nextInt(4); i > 0; i--) {
            change(changed, false);
        }
        return changed;
    }

    /** An example with something wrong in it. */
    JsonNode spoilt(JsonNode example) {
        JsonNode changed = example.deepCopy();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            change(changed, true);
        }
        return changed;
    }

    /** Bytes that are no request, or one that means harm. */
    String hostile(String example) {
        return switch (random.nextInt(9)) {
            case 0 -> example.substring(0, random.nextInt(example.length()));
            case 1 -> flipped(example);
            case 2 -> "[".repeat(1 + random.nextInt(2000));
            case 3 -> "{\"a\":".repeat(1 + random.nextInt(2000));
            case 4 -> "{\"dailyEnergy\": " + "9".repeat(1 + random.nextInt(5000)) + "}";
            case 5 -> "\"" + "x".repeat(random.nextInt(100_000)) + "\"";
            case 6 -> example.replaceFirst("\"(\\w+)\":", "\"$1\": 1, \"$1\":");
            case 7 -> example.replaceAll("(\\d)\\.(\\d)", "$1,$2");
            default -> anything(4).toString();
        };
    }

    /** Query parameters by a schema of a query, right or wrong. */
    Map<String, List<String>> query(JsonNode schema) {
        Map<String, List<String>> parameters = new TreeMap<>();
        resolved(schema).path("properties").properties().forEach(part -> {
            if (random.nextInt(15) == 0) {
                parameters.put(part.getKey(), texts(bySchema(part.getValue(), 2)));
            }
        });
        resolved(schema).at("/examples/0").properties().forEach(part -> {
            if (random.nextInt(30) > 0) {
                parameters.put(part.getKey(), texts(part.getValue()));
            }
        });
        if (random.nextInt(4) == 0 && !parameters.isEmpty()) {
            List<String> names = List.copyOf(parameters.keySet());
            parameters.put(pick(names), List.of(pick(ODD_TEXTS)));
        }
        if (random.nextInt(8) == 0) {
            parameters.put("x" + random.nextInt(1000), List.of(pick(ODD_TEXTS)));
        }
        return parameters;
    }

    private static List<String> texts(JsonNode value) {
        return value.isArray()
                ? value.valueStream().map(JsonNode::asText).toList()
                : List.of(value.isValueNode() ? value.asText() : value.toString());
    }

    private JsonNode resolved(JsonNode schema) {
        return schema.has("$ref")
                ? resolved(contract.at(schema.path("$ref").asText().substring(1)))
                : schema;
    }

    private String type(JsonNode schema) {
        JsonNode type = schema.path("type");
        return type.isArray() ? pick(type).asText() : type.asText();
    }

    private ObjectNode object(JsonNode schema, int depth) {
        ObjectNode members = NODES.objectNode();
        List<String> required =
                schema.path("required").valueStream().map(JsonNode::asText).toList();
        schema.path("properties").properties().forEach(part -> {
            boolean there =
                    required.contains(part.getKey()) ? random.nextInt(40) > 0 : depth > 0 && random.nextInt(5) == 0;
            if (there) {
                members.set(part.getKey(), bySchema(part.getValue(), depth - 1));
            }
        });
        return members;
    }

    private ArrayNode array(JsonNode schema, int depth) {
        int least = schema.path("minItems").asInt(0);
        int count = least + (random.nextInt(3) == 0 ? 12 - Math.min(least, 12) : random.nextInt(3));
        ArrayNode elements = NODES.arrayNode();
        for (int i = 0; i < count; i++) {
            elements.add(bySchema(schema.path("items"), depth - 1));
        }
        return elements;
    }

    /** Changes one value somewhere; one that decides how much work it is stays small. */
    private void change(JsonNode tree, boolean wrong) {
        List<JsonNode> holders = new ArrayList<>();
        gather(tree, holders);
        if (holders.isEmpty()) {
            return;
        }
        JsonNode holder = pick(holders);
        if (holder instanceof ObjectNode members && !members.isEmpty()) {
            List<String> names = new ArrayList<>();
            members.fieldNames().forEachRemaining(names::add);
            String name = pick(names);
            if (wrong && random.nextInt(4) == 0) {
                members.remove(name);
            } else if (wrong && random.nextInt(5) == 0) {
                members.set(name + "s", members.get(name));
            } else {
                members.set(name, WORK.contains(name) ? work() : other(members.get(name), wrong));
            }
        } else if (holder instanceof ArrayNode elements && !elements.isEmpty()) {
            int index = random.nextInt(elements.size());
            if (wrong && random.nextInt(3) == 0) {
                elements.remove(index);
            } else {
                elements.set(index, other(elements.get(index), wrong));
            }
        }
    }

    private static void gather(JsonNode tree, List<JsonNode> holders) {
        if (tree.isContainerNode()) {
            holders.add(tree);
            tree.forEach(part -> gather(part, holders));
        }
    }

    private JsonNode work() {
        return NODES.numberNode(pick(List.of(-1L, 0L, 1L, 2L, 3L, 4_000_000_000L)));
    }

    private JsonNode other(JsonNode value, boolean wrong) {
        if (wrong && random.nextInt(3) == 0) {
            return anything(2);
        }
        if (value.isNumber()) {
            return NODES.numberNode(wrong ? number() * (random.nextBoolean() ? -1 : 1e6) : value.asDouble() * scale());
        }
        if (value.isTextual()) {
            String text = value.textValue();
            if (wrong) {
                return NODES.textNode(random.nextBoolean() ? pick(ODD_TEXTS) : quantity());
            }
            String[] parts = text.split(" ", 2);
            return parts.length == 2 && parts[0].matches("-?[0-9.]+")
                    ? NODES.textNode(Double.parseDouble(parts[0]) * scale() + " " + parts[1])
                    : value;
        }
        return value.isBoolean() ? NODES.booleanNode(random.nextBoolean()) : value;
    }

    private double scale() {
        return Math.exp(random.nextGaussian() * 0.3);
    }

    private double number() {
        return switch (random.nextInt(8)) {
            case 0 -> 0;
            case 1 -> -random.nextDouble() * 100;
            case 2 -> Math.pow(10, random.nextInt(40) - 20);
            case 3 -> random.nextInt(50);
            default -> random.nextDouble() * Math.pow(10, random.nextInt(5));
        };
    }

    private String quantity() {
        return number() + " " + pick(UNITS);
    }

    private JsonNode anything(int depth) {
        return switch (random.nextInt(depth > 0 ? 9 : 7)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(random.nextBoolean());
            case 2 -> NODES.numberNode(random.nextInt());
            case 3 -> NODES.numberNode(number());
            case 4, 5 -> NODES.textNode(pick(ODD_TEXTS));
            case 6 -> NODES.textNode(quantity());
            case 7 -> {
                ArrayNode elements = NODES.arrayNode();
                for (int i = random.nextInt(4); i > 0; i--) {
                    elements.add(anything(depth - 1));
                }
                yield elements;
            }
            default -> {
                ObjectNode members = NODES.objectNode();
                for (int i = random.nextInt(4); i > 0; i--) {
                    members.set(
                            pick(List.of("value", "unit", "a/b~c", "", "policy", "loads", "\ud83d\ude00")),
                            anything(depth - 1));
                }
                yield members;
            }
        };
    }

    private String flipped(String text) {
        StringBuilder changed = new StringBuilder(text);
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            changed.setCharAt(random.nextInt(changed.length()), (char) random.nextInt(0x180));
        }
        return changed.toString();
    }

    private JsonNode pick(JsonNode list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
