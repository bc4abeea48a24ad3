package org.daybank.api.http;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;

/** Takes out of the query what chooses the form of the answer; what is left is what is asked. */
final class QueryOptions {
    private final Map<String, List<String>> left;

    QueryOptions(Context context) {
        this.left = new LinkedHashMap<>(context.queryParamMap());
    }

    /**
     * The text of an option, empty when it is absent.
     *
     * @throws InvalidInput when it stands there several times
     */
    String text(String name) {
        List<String> texts = left.remove(name);
        if (texts != null && texts.size() > 1) {
            throw refused(name, "one value is expected but there are %d".formatted(texts.size()));
        }
        return texts == null ? "" : texts.get(0);
    }

    /**
     * A yes ({@code true}, {@code 1}) or no; absent means no.
     *
     * @throws InvalidInput when it is neither
     */
    boolean flag(String name) {
        String text = text(name);
        try {
            return text.equals("1") || (!text.isEmpty() && (Boolean) Scalars.parse(Boolean.class, text));
        } catch (IllegalArgumentException refused) {
            throw refused(name, String.valueOf(refused.getMessage()));
        }
    }

    /**
     * Whether what goes wrong is to be told as text with status 200, for the cell of a spreadsheet.
     *
     * @throws InvalidInput when {@code errors} is anything but {@code inline}
     */
    boolean errorsInline() {
        String errors = text("errors");
        if (!errors.isEmpty() && !errors.equals("inline")) {
            throw refused("errors", "'inline' is the only choice; left out, errors are problem documents");
        }
        return !errors.isEmpty();
    }

    /** What is left. */
    Map<String, List<String>> others() {
        return left;
    }

    private static InvalidInput refused(String name, String message) {
        return new InvalidInput(List.of(new Problem(name, ProblemCode.UNREADABLE, name + ": " + message)));
    }

    /**
     * Refuses whatever is left.
     *
     * @throws InvalidInput when anything is
     */
    void refuseOthers() {
        if (!left.isEmpty()) {
            throw new InvalidInput(left.keySet().stream()
                    .limit(100)
                    .map(name -> new Problem(
                            name,
                            ProblemCode.UNKNOWN_NAME,
                            "the query parameter '%s' is not known here; what is asked stands in the body"
                                    .formatted(name.length() > 40 ? name.substring(0, 40) + "…" : name)))
                    .toList());
        }
    }
}
