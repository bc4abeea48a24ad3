package org.daybank.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.RecordWriter;
import org.daybank.api.wire.Shape;
import org.daybank.core.bank.BankRule;
import org.daybank.core.charger.ControllerRule;
import org.daybank.core.design.DesignRule;
import org.daybank.core.generator.GeneratorRule;
import org.daybank.core.grid.GridRule;
import org.daybank.core.inverter.GridInverterRule;
import org.daybank.core.inverter.InverterRule;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Scalars;
import org.daybank.core.simulation.SimulationRule;
import org.daybank.core.wiring.WiringRule;
import org.daybank.core.working.Rule;

/** Holds record types against the schemas of the contract, the records within them included. */
final class SchemaComparison {
    private final Schemas schemas;
    private final List<String> differences = new ArrayList<>();
    private final Set<List<Object>> compared = new HashSet<>();

    SchemaComparison(Schemas schemas) {
        this.schemas = schemas;
    }

    List<String> differences() {
        return differences;
    }

    /** Compares a record type with the schema at a pointer. */
    void compare(Class<?> record, String pointer) {
        if (!compared.add(List.of(record, pointer))) {
            return;
        }
        JsonNode schema = schemas.contract().at(pointer.substring(1));
        List<Shape.Part> parts =
                flattened(Shape.of(record)).filter(part -> !part.notRepeated()).toList();
        String where = record.getSimpleName() + " and " + pointer;
        expect(where + " members", names(parts, part -> true), fieldNames(schema.path("properties")));
        expect(where + " required", names(parts, part -> !part.mayBeAbsent()), texts(schema.path("required")));
        expect(
                where + " additionalProperties",
                "false",
                schema.path("additionalProperties").asText("allowed"));
        for (Shape.Part part : parts) {
            JsonNode property = schema.path("properties").path(part.name());
            compareType(where + ", " + part.name(), part.type(), property);
            compareDefault(where + ", " + part.name(), part, property);
            if (parts.stream()
                    .anyMatch(one -> one.component().bounds().declared().isPresent())) {
                compareBounds(where + ", " + part.name(), part, property);
            }
        }
    }

    private void compareType(String where, Type type, JsonNode property) {
        Class<?> raw = raw(type);
        if (raw == Optional.class) {
            compareType(where, argument(type), property);
            return;
        }
        JsonNode schema = schemas.resolved(property);
        switch (Form.of(raw)) {
            case QUANTITY -> {
                if (raw != Quantity.class) {
                    expect(
                            where,
                            "#/components/schemas/" + raw.getSimpleName(),
                            property.path("$ref").asText());
                }
            }
            case NUMBER ->
                expect(
                        where + " takes a number",
                        true,
                        types(schema).contains("number") || types(schema).contains("integer"));
            case SERIES ->
                expect(
                        where,
                        "#/components/schemas/HourlySeries",
                        property.path("$ref").asText());
            case MONEY ->
                expect(
                        where,
                        "#/components/schemas/Money",
                        property.path("$ref").asText());
            case NAME ->
                expect(
                        where + " names",
                        constants(raw)
                                .map(constant -> Scalars.name((Enum<?>) constant))
                                .collect(Collectors.toCollection(TreeSet::new)),
                        texts(schema.path("enum")));
            case FLAG -> expect(where + " type", Set.of("boolean"), types(schema));
            case TEXT -> expect(where + " type", Set.of("string"), types(schema));
            case LIST -> {
                expect(where + " type", Set.of("array"), types(schema));
                compareType(where + " items", argument(type), schema.path("items"));
            }
            case TREE -> expect(where + " takes anything", Set.of(), types(schema));
            case OBJECT -> {
                expect(where + " is a reference", true, property.has("$ref"));
                compare(raw, property.path("$ref").asText());
            }
        }
    }

    private void compareDefault(String where, Shape.Part part, JsonNode property) {
        String assumed = part.assumed().map(Assumed::value).orElse("");
        JsonNode written = property.path("default");
        if (assumed.isEmpty()) {
            expect(where + " default", true, written.isMissingNode());
        } else {
            JsonNode expected = RecordWriter.value(Scalars.parse(part.raw(), assumed));
            JsonNode read = written.isTextual() && !part.raw().isEnum()
                    ? RecordWriter.value(Scalars.parse(part.raw(), written.asText()))
                    : written;
            expect(where + " default", normal(expected), normal(read));
        }
    }

    /**
     * The bounds of a number as JSON Schema has them, those of quantities and money as text under the same names after
     * {@code x-}; of a list those of its elements stand there, and its length beside it.
     */
    private void compareBounds(String where, Shape.Part part, JsonNode property) {
        Bounds bounds = part.component().bounds().declared().orElse(null);
        boolean list = part.raw() == List.class;
        JsonNode holder = list ? property.path("items") : property;
        boolean number = Form.of(part.component().elementType()) == Form.NUMBER;
        compareBound(where, "minimum", bounds == null ? "" : bounds.minimum(), number, holder);
        compareBound(where, "exclusiveMinimum", bounds == null ? "" : bounds.exclusiveMinimum(), number, holder);
        compareBound(where, "maximum", bounds == null ? "" : bounds.maximum(), number, holder);
        compareBound(where, "exclusiveMaximum", bounds == null ? "" : bounds.exclusiveMaximum(), number, holder);
        if (list && bounds != null) {
            expect(
                    where + " minItems",
                    bounds.minimumItems(),
                    property.path("minItems").asInt(0));
            expect(
                    where + " maxItems",
                    bounds.maximumItems(),
                    property.path("maxItems").asInt(Integer.MAX_VALUE));
        }
    }

    private void compareBound(String where, String keyword, String bound, boolean number, JsonNode holder) {
        JsonNode written = holder.path(number ? keyword : "x-" + keyword);
        String key = where + " " + (number ? keyword : "x-" + keyword);
        if (number && !bound.isEmpty() && written.isNumber()) {
            expect(key, Double.parseDouble(bound), written.doubleValue());
        } else {
            expect(key, bound, written.asText(""));
        }
    }

    /** The same JSON whichever kind of number it was made of. */
    private static String normal(JsonNode node) {
        if (node instanceof ObjectNode members) {
            ObjectNode sorted = JsonNodeFactory.instance.objectNode();
            fieldNames(members).forEach(name -> sorted.put(name, normal(members.path(name))));
            return sorted.toString();
        }
        return node.isNumber() ? RecordWriter.number(node.doubleValue()).toString() : node.toString();
    }

    private void expect(String what, Object expected, Object found) {
        if (!expected.equals(found)) {
            differences.add("%s: the library says %s, the contract says %s".formatted(what, expected, found));
        }
    }

    private static Stream<Shape.Part> flattened(Shape shape) {
        return shape.parts().stream()
                .flatMap(part -> part.inline() ? flattened(Shape.of(part.raw())) : Stream.of(part));
    }

    private static Set<String> names(List<Shape.Part> parts, Predicate<Shape.Part> which) {
        return parts.stream().filter(which).map(Shape.Part::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> fieldNames(JsonNode object) {
        return object.properties().stream().map(Map.Entry::getKey).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> types(JsonNode schema) {
        JsonNode type = schema.path("type");
        return type.isTextual() ? Set.of(type.asText()) : texts(type);
    }

    private static Set<String> texts(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Class<?> raw(Type type) {
        return type instanceof ParameterizedType generic ? raw(generic.getRawType()) : (Class<?>) type;
    }

    private static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    /** The constants of an enum; of the rules, those of every family. */
    private static Stream<?> constants(Class<?> type) {
        return type == Rule.class
                ? Stream.of(
                                BankRule.values(),
                                ControllerRule.values(),
                                InverterRule.values(),
                                GridInverterRule.values(),
                                WiringRule.values(),
                                GeneratorRule.values(),
                                GridRule.values(),
                                SimulationRule.values(),
                                DesignRule.values())
                        .flatMap(Arrays::stream)
                : Arrays.stream(type.getEnumConstants());
    }
}
