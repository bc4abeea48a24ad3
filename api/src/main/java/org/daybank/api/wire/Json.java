package org.daybank.api.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;

/** JSON text to trees and back, with limits on what is read. */
public final class Json {
    /** Deepest nesting of objects and arrays that is read. */
    public static final int MAX_DEPTH = 32;

    /** Longest number, in characters, that is read. */
    public static final int MAX_NUMBER_LENGTH = 60;

    private static final int SHORT_ANSWER = 16_384;

    private static final Pattern DIGIT_FOR_NAME =
            Pattern.compile("Unexpected character \\('\\d'.*was expecting double-quote to start field name.*");

    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MAX_DEPTH)
                            .maxNumberLength(MAX_NUMBER_LENGTH)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .build())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Json() {}

    /**
     * Reads one JSON value.
     *
     * @throws InvalidInput when the bytes are not exactly one JSON value within the limits; the message says where
     */
    public static JsonNode read(byte[] bytes) {
        try (JsonParser parser = MAPPER.createParser(bytes)) {
            try {
                JsonNode tree = MAPPER.readTree(parser);
                if (tree == null || tree.isMissingNode()) {
                    throw malformed("", "the body is empty; a JSON object is expected");
                }
                return tree;
            } catch (JsonProcessingException broken) {
                throw malformed(parser.getParsingContext().pathAsPointer().toString(), sentence(broken));
            }
        } catch (IOException broken) {
            throw malformed("", "the body is not JSON in UTF-8");
        }
    }

    /** Writes a tree as UTF-8. */
    public static byte[] write(JsonNode tree) {
        try {
            return MAPPER.writeValueAsBytes(tree);
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Writes JSON as it is made. */
    public interface Writer {
        /** Writes one value. */
        void writeTo(JsonGenerator out) throws IOException;
    }

    /** The bytes of what a writer writes, in UTF-8. */
    public static byte[] bytes(Writer writer) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(SHORT_ANSWER);
        try (JsonGenerator out = MAPPER.createGenerator(bytes)) {
            writer.writeTo(out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** The tree of what was written. */
    static JsonNode tree(TokenBuffer tokens) throws IOException {
        try (JsonParser parser = tokens.asParser(MAPPER)) {
            return MAPPER.readTree(parser);
        }
    }

    private static InvalidInput malformed(String pointer, String message) {
        return new InvalidInput(List.of(new Problem(pointer, ProblemCode.MALFORMED, message)));
    }

    private static String sentence(JsonProcessingException broken) {
        String reason = broken.getOriginalMessage().replaceAll("\\s+", " ");
        String where = broken.getLocation() == null
                ? ""
                : "line %s, column %s: "
                        .formatted(
                                broken.getLocation().getLineNr(),
                                broken.getLocation().getColumnNr());
        String hint = "";
        if (DIGIT_FOR_NAME.matcher(reason).matches()) {
            hint = " (the decimal sign is a point, not a comma)";
        } else if (reason.contains("nesting depth")) {
            return where + "the body is nested deeper than " + MAX_DEPTH + " levels";
        } else if (reason.contains("Number value length")) {
            return where + "a number has more than " + MAX_NUMBER_LENGTH + " characters";
        }
        return where + "the body is not JSON: "
                + reason.replaceAll("\\(`[^)]*\\)", "").strip() + hint;
    }
}
