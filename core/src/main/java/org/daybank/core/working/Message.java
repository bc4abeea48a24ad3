package org.daybank.core.working;

import java.util.ArrayList;
import java.util.List;

/**
 * A sentence with named values, put into words only when it is read: a search checks thousands of products and shows a few.
 *
 * @param key of the template in the message resource
 * @param values by the names of the placeholders
 */
public record Message(String key, List<Value> values) implements CharSequence {
    /** Keeps a copy of the values. */
    public Message {
        values = List.copyOf(values);
    }

    /**
     * The value of one placeholder.
     *
     * @param name of the placeholder
     * @param value a quantity (shown to three digits), a ratio (as a percentage), an enum constant (as words), a list of
     *     these, another message, or text
     */
    public record Value(String name, Object value) {}

    /** Returns a message with these values. */
    public static Message of(String key, Value... values) {
        return new Message(key, List.of(values));
    }

    /** Returns the value of a placeholder. */
    public static Value value(String name, Object value) {
        return new Value(name, value);
    }

    /** Returns the same values under another template, whose key ends with a suffix. */
    Message variant(String suffix) {
        return new Message(key + "." + suffix, values);
    }

    /** Returns the same message with more values. */
    Message with(List<Value> more) {
        List<Value> all = new ArrayList<>(values);
        all.addAll(more);
        return new Message(key, all);
    }

    @Override
    public int length() {
        return toString().length();
    }

    @Override
    public char charAt(int index) {
        return toString().charAt(index);
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return toString().subSequence(start, end);
    }

    /**
     * Returns the sentence in English.
     *
     * @throws IllegalStateException when there is no such template, or a placeholder has no value
     */
    @Override
    public String toString() {
        return MessageTemplates.ENGLISH.format(this);
    }
}
