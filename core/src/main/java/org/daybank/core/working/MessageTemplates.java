package org.daybank.core.working;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * The templates of one language: UTF-8 lines {@code key = text with {placeholders}}; lines that begin with {@code #} are
 * comments.
 */
final class MessageTemplates {
    static final MessageTemplates ENGLISH = read("messages.en.txt");

    private static final int DIGITS = 3;
    private static final Set<String> ABBREVIATIONS = Set.of("AC", "AGM", "DC", "MPPT", "PWM");

    private final Map<String, List<Part>> templates;

    private MessageTemplates(Map<String, List<Part>> templates) {
        this.templates = templates;
    }

    /** A piece of a template: literal text, or the name of a placeholder. */
    private record Part(String text, boolean placeholder) {}

    static MessageTemplates read(String resource) {
        try (InputStream in = MessageTemplates.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("No resource " + resource);
            }
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Reads templates.
     *
     * @throws IllegalStateException when a line has no key, a key occurs twice or a brace is not closed
     */
    static MessageTemplates parse(String text) {
        Map<String, List<Part>> templates = new HashMap<>();
        for (String line : text.split("\n", -1)) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            int equals = line.indexOf(" = ");
            if (equals < 0 || templates.put(line.substring(0, equals), parts(line.substring(equals + 3))) != null) {
                throw new IllegalStateException("A line without a key, or a key that occurs twice: " + line);
            }
        }
        return new MessageTemplates(templates);
    }

    private static List<Part> parts(String template) {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        for (int open = template.indexOf('{'); open >= 0; open = template.indexOf('{', from)) {
            int close = template.indexOf('}', open);
            if (close < 0) {
                throw new IllegalStateException("A brace is not closed: " + template);
            }
            parts.add(new Part(template.substring(from, open), false));
            parts.add(new Part(template.substring(open + 1, close), true));
            from = close + 1;
        }
        parts.add(new Part(template.substring(from), false));
        return parts;
    }

    /** Returns every key. */
    Set<String> keys() {
        return templates.keySet();
    }

    /** Returns the names of the placeholders of a template. */
    Set<String> placeholders(String key) {
        return template(key).stream().filter(Part::placeholder).map(Part::text).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Returns a message in words.
     *
     * @throws IllegalStateException when there is no such template, or a placeholder has no value
     */
    String format(Message message) {
        StringBuilder words = new StringBuilder();
        for (Part part : template(message.key())) {
            words.append(part.placeholder() ? shown(value(message, part.text())) : part.text());
        }
        return words.toString();
    }

    private List<Part> template(String key) {
        List<Part> template = templates.get(key);
        if (template == null) {
            throw new IllegalStateException("No message " + key);
        }
        return template;
    }

    private static Object value(Message message, String name) {
        for (Message.Value value : message.values()) {
            if (value.name().equals(name)) {
                return value.value();
            }
        }
        throw new IllegalStateException("The message %s has no value for {%s}".formatted(message.key(), name));
    }

    private static Object shown(@Nullable Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.rounded(DIGITS);
        }
        if (value instanceof Ratio ratio) {
            return ratio.rounded();
        }
        if (value instanceof Enum<?> constant) {
            return words(constant);
        }
        if (value instanceof Collection<?> list) {
            return list.stream()
                    .map(MessageTemplates::shown)
                    .map(Object::toString)
                    .collect(Collectors.joining(", "));
        }
        return String.valueOf(value);
    }

    /** The name of a constant as words: {@code modified sine}; the trade's abbreviations stay in capitals. */
    private static String words(Enum<?> constant) {
        return Arrays.stream(constant.name().split("_", -1))
                .map(word -> ABBREVIATIONS.contains(word) ? word : word.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }
}
