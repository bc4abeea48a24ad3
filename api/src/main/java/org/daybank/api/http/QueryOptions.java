package org.daybank.api.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.daybank.core.schema.Scalars;

/** Takes out of the query what chooses the form of the answer; what is left is the request. */
final class QueryOptions {
    private final Query query;
    private final Map<String, List<String>> left;

    QueryOptions(Context context) {
        String text = context.queryString();
        this.query = Query.of(text == null ? "" : text);
        this.left = new LinkedHashMap<>(query.parameters());
    }

    /** Answers a request that takes no query parameters. */
    static Handler without(Handler handler) {
        return context -> {
            new QueryOptions(context).refuseOthers();
            handler.handle(context);
        };
    }

    /**
     * The text of an option, empty when it is absent.
     *
     * @throws InvalidInput when it is there several times, or empty
     */
    String text(String name) {
        List<String> texts = left.remove(name);
        if (texts != null && texts.size() > 1) {
            throw refused(name, "one value is expected but there are %s".formatted(texts.size()));
        }
        if (texts != null && texts.get(0).isBlank()) {
            throw new InvalidInput(List.of(new Problem(name, ProblemCode.MISSING, name + " must not be empty")));
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

    /**
     * Returns what is left.
     *
     * @throws InvalidInput when the query cannot be decoded, or a value is the error of an earlier cell
     */
    Map<String, List<String>> others() {
        query.check();
        Problems failed = new Problems();
        left.forEach((name, texts) -> texts.stream()
                .filter(InlineError::isOne)
                .findFirst()
                .ifPresent(text -> failed.add(
                        Problem.shortened(name),
                        ProblemCode.UNREADABLE,
                        "%s is the error message of an earlier calculation; correct that one first"
                                .formatted(Problem.shortened(name)))));
        failed.throwIfAny();
        return left;
    }

    private static InvalidInput refused(String name, String message) {
        return new InvalidInput(List.of(new Problem(name, ProblemCode.UNREADABLE, name + ": " + message)));
    }

    /**
     * Refuses whatever is left.
     *
     * @throws InvalidInput when anything is, or the query cannot be decoded
     */
    void refuseOthers() {
        query.check();
        Problems unknown = new Problems();
        left.keySet().forEach(name -> {
            String shown = Problem.shortened(name);
            unknown.add(
                    shown,
                    ProblemCode.UNKNOWN_NAME,
                    "the query parameter '%s' is not known on this path".formatted(shown));
        });
        unknown.throwIfAny();
    }
}
