package org.daybank.api.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.daybank.api.wire.RecordWriter;
import org.daybank.core.catalog.CatalogTables;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Table;

/** Reads the products of one kind from a table and answers them as a request takes them. */
public final class ProductTable {
    private ProductTable() {}

    /** Answers the products of a CSV text. */
    public static void answer(Context context) {
        new QueryOptions(context).refuseOthers();
        String kind = context.pathParam("kind");
        if (!CatalogTables.names().contains(kind)) {
            throw new NotFoundResponse(
                    "No such kind of product; there are " + String.join(", ", CatalogTables.names()));
        }
        String text = new String(Body.read(context), StandardCharsets.UTF_8);
        if (text.isBlank()) {
            throw new InvalidInput(List.of(new Problem(
                    "", ProblemCode.MISSING, "the body is empty: send CSV whose first line names the columns")));
        }
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        ArrayNode products = answer.putArray(kind);
        CatalogTables.rows(kind, Table.parse(text)).forEach(product -> products.add(RecordWriter.write(product)));
        Answers.json(context, answer);
    }
}
