package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.daybank.api.wire.RecordWriter;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.load.TypicalLoad;

/** What is on offer: products and typical loads. */
public final class Offers {
    private static final Once<JsonNode> TYPICAL_LOADS = new Once<>(Offers::typicalLoads);

    private final Once<JsonNode> products;

    /** Offers the products of a catalogue. */
    public Offers(Supplier<Catalog> catalog) {
        this.products = new Once<>(() -> RecordWriter.write(catalog.get()));
    }

    /** Answers every product. */
    public void catalog(Context context) {
        Answers.json(context, products.get());
    }

    /** Answers the products of one kind. */
    public void kind(Context context) {
        String kind = context.pathParam("kind");
        JsonNode found = products.get().get(kind);
        if (found == null) {
            List<String> kinds = new ArrayList<>();
            products.get().fieldNames().forEachRemaining(kinds::add);
            throw new NotFoundResponse("No such kind of product; there are " + String.join(", ", kinds));
        }
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.set(kind, found);
        Answers.json(context, answer);
    }

    /** Answers what planners meet, lamp to pump. */
    public static void typicalLoads(Context context) {
        Answers.json(context, TYPICAL_LOADS.get());
    }

    private static JsonNode typicalLoads() {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        var list = answer.putArray("typicalLoads");
        TypicalLoad.list().forEach(load -> list.add(RecordWriter.write(load)));
        return answer;
    }
}
