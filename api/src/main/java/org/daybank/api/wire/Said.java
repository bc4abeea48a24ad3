package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a request said, in the forms of an answer: the members that were given, and no default in place of the others. */
final class Said {
    private Said() {}

    /**
     * Returns the members of a value that were given.
     *
     * @param value what was read
     * @param given what it was read from
     */
    static JsonNode of(Object value, JsonNode given) {
        if (value instanceof Optional<?> optional) {
            return of(optional.orElseThrow(), given);
        }
        JsonNode node = !(value instanceof List<?>) && given.isArray() && given.size() == 1 ? given.get(0) : given;
        if (value instanceof Record record
                && Form.of(record.getClass()) == Form.OBJECT
                && node instanceof ObjectNode members) {
            ObjectNode said = JsonNodeFactory.instance.objectNode();
            put(said, record, members);
            return said;
        }
        if (value instanceof List<?> list && node instanceof ArrayNode elements && elements.size() == list.size()) {
            ArrayNode said = JsonNodeFactory.instance.arrayNode(list.size());
            for (int i = 0; i < list.size(); i++) {
                said.add(of(list.get(i), elements.get(i)));
            }
            return said;
        }
        return RecordWriter.value(value);
    }

    private static void put(ObjectNode said, Record record, ObjectNode members) {
        for (Shape.Part part : Shape.of(record.getClass()).parts()) {
            if (part.inline()) {
                put(said, (Record) Objects.requireNonNull(part.in(record)), members);
            } else if (members.hasNonNull(part.name())) {
                said.set(part.name(), of(Objects.requireNonNull(part.in(record)), members.get(part.name())));
            }
        }
    }
}
