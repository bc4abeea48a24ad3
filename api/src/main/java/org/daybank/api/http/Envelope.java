package org.daybank.api.http;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.Form;
import org.daybank.api.wire.Json;
import org.daybank.api.wire.RecordWriter;
import org.daybank.api.wire.Shape;
import org.daybank.core.schema.RecordSchema;

/** The one form of every JSON answer: {@code {given, result, assumptions, hazards, working?}}. */
final class Envelope {
    private Envelope() {}

    /**
     * Writes an answer.
     *
     * @param resolved whether {@code given} holds every default beside what was said
     */
    static <Q extends Record, R extends Record> byte[] write(
            Calculation<Q, R> calculation, Bound<Q> asked, R found, boolean resolved, boolean withWorking) {
        return Json.bytes(out -> {
            out.writeStartObject();
            member(out, "given", resolved ? RecordSchema.explicit(asked.value()) : asked.said());
            member(out, "result", found);
            member(out, "assumptions", asked.assumptions());
            member(out, "hazards", calculation.hazards().apply(found));
            if (withWorking) {
                member(out, "working", calculation.working().apply(found));
            }
            out.writeEndObject();
        });
    }

    private static void member(JsonGenerator out, String name, Object value) throws IOException {
        out.writeFieldName(name);
        RecordWriter.write(out, value);
    }

    /** The components of a result that can be asked for one by one: those that are one value. */
    static List<String> figures(Calculation<?, ?> calculation) {
        return figures(Shape.of(calculation.result())).toList();
    }

    private static Stream<String> figures(Shape shape) {
        return shape.parts().stream()
                .filter(part -> !part.notRepeated())
                .flatMap(part -> part.inline()
                        ? figures(Shape.of(part.raw()))
                        : Stream.of(part.name())
                                .filter(name -> part.form() != Form.LIST && part.form() != Form.OBJECT));
    }
}
