package org.daybank.core.schema;

/**
 * A value that a calculation stood on and that a planner may argue with.
 *
 * @param path where it stands in the request, as a JSON pointer
 * @param value the value used
 * @param assumed true when it was left out and the default was taken, false when it was given
 * @param source where the default comes from
 */
public record Assumption(String path, Object value, boolean assumed, String source) {}
