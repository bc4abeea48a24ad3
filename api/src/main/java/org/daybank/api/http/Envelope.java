package org.daybank.api.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.RecordWriter;
import org.daybank.api.wire.Shape;

/** The one form of every JSON answer: {@code {given, result, assumptions, cautions, working?}}. */
final class Envelope {
    private Envelope() {}

    /** Writes an answer. */
    static <Q extends Record, R extends Record> ObjectNode write(
            Calculation<Q, R> calculation, Bound<Q> asked, R found, boolean withWorking) {
        ObjectNode envelope = JsonNodeFactory.instance.objectNode();
        envelope.set("given", RecordWriter.write(asked.value()));
        envelope.set("result", RecordWriter.write(found));
        envelope.set("assumptions", list(asked.assumptions()));
        envelope.set("cautions", list(calculation.cautions().apply(found)));
        if (withWorking) {
            envelope.set("working", RecordWriter.write(calculation.working().apply(found)));
        }
        return envelope;
    }

    /** The components of a result that can be asked for one by one: those that are one value. */
    static List<String> figures(Calculation<?, ?> calculation) {
        return figures(Shape.of(calculation.result())).toList();
    }

    private static Stream<String> figures(Shape shape) {
        return shape.parts().stream()
                .filter(part -> !part.untold())
                .flatMap(part -> part.inline()
                        ? figures(Shape.of(part.raw()))
                        : Stream.of(part.name())
                                .filter(name -> part.form() != Form.LIST && part.form() != Form.OBJECT));
    }

    private static ArrayNode list(List<? extends Record> records) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode(records.size());
        records.forEach(record -> list.add(RecordWriter.write(record)));
        return list;
    }
}
