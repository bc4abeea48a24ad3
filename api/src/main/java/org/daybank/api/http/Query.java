package org.daybank.api.http;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;

/**
 * The query of a request, decoded strictly: a percent sign without two hexadecimal digits, or bytes that are not UTF-8, are
 * refused and never dropped, since a default would silently take the place of what was written.
 */
final class Query {
    private static final char REPLACEMENT = '\uFFFD';

    private final Map<String, List<String>> parameters = new LinkedHashMap<>();
    private final Problems problems = new Problems();

    private Query() {}

    /**
     * Decodes a query.
     *
     * @param text as it stands after the question mark; empty when there is none
     */
    static Query of(String text) {
        Query query = new Query();
        for (String pair : text.split("&", -1)) {
            if (!pair.isEmpty()) {
                int equals = pair.indexOf('=');
                query.add(equals < 0 ? pair : pair.substring(0, equals), equals < 0 ? "" : pair.substring(equals + 1));
            }
        }
        return query;
    }

    /** Returns the values by name, in the order of the query; those that cannot be decoded are not among them. */
    Map<String, List<String>> parameters() {
        return parameters;
    }

    /**
     * Refuses a query that cannot be decoded.
     *
     * @throws InvalidInput naming each parameter
     */
    void check() {
        problems.throwIfAny();
    }

    private void add(String rawName, String rawValue) {
        String name;
        try {
            name = decoded(rawName);
        } catch (CharacterCodingException malformed) {
            String shown = Problem.shortened(rawName);
            problems.add(shown, ProblemCode.MALFORMED, complaint("the name of a query parameter", rawName));
            return;
        }
        try {
            String value = decoded(rawValue);
            parameters.computeIfAbsent(name, first -> new ArrayList<>()).add(value);
        } catch (CharacterCodingException malformed) {
            String shown = Problem.shortened(name);
            problems.add(shown, ProblemCode.MALFORMED, complaint(shown, rawValue));
        }
    }

    private static String complaint(String what, String raw) {
        return "%s must be percent-encoded UTF-8, but was '%s'; write the percent sign itself as %%25"
                .formatted(what, Problem.shortened(raw));
    }

    private static String decoded(String raw) throws CharacterCodingException {
        if (raw.indexOf(REPLACEMENT) >= 0) {
            throw new CharacterCodingException();
        }
        ByteBuffer encoded = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(raw));
        ByteBuffer bytes = ByteBuffer.allocate(encoded.remaining());
        while (encoded.hasRemaining()) {
            byte next = encoded.get();
            bytes.put(next == '%' ? escaped(encoded) : next == '+' ? (byte) ' ' : next);
        }
        return StandardCharsets.UTF_8.newDecoder().decode(bytes.flip()).toString();
    }

    private static byte escaped(ByteBuffer encoded) throws CharacterCodingException {
        if (encoded.remaining() < 2) {
            throw new CharacterCodingException();
        }
        int high = Character.digit(encoded.get(), 16);
        int low = Character.digit(encoded.get(), 16);
        if (high < 0 || low < 0) {
            throw new CharacterCodingException();
        }
        return (byte) (high << 4 | low);
    }
}
