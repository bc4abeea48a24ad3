package org.daybank.api.http;

import java.util.List;
import java.util.function.Function;

/**
 * How a calculation that answers GET is asked in query parameters and told in rows.
 *
 * @param element the list of the request whose only element the parameters describe; empty when they describe the whole
 * @param row type of what one row tells
 * @param rows of a result
 */
public record FlatAnswer<R extends Record, T extends Record>(String element, Class<T> row, Function<R, List<T>> rows) {
    /** The rows of a result as CSV. */
    byte[] csv(R result) {
        return CsvTable.write(row, rows.apply(result));
    }
}
