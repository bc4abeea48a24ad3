package org.daybank.core.schema;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Collects what is wrong with the arguments of a constructor and throws all of it at once.
 *
 * <pre>{@code
 * public Lamp {
 *     Validation.of(Lamp.class, name, power, voltage)
 *             .that(power == null || voltage == null || …, "voltage", ProblemCode.INCONSISTENT, "voltage must be …")
 *             .done();
 * }
 * }</pre>
 *
 * <p>A range is only validated of a value that is there: an absent one is reported once, as missing.
 */
public final class Validation {
    private final Problems problems = new Problems();

    /** Creates a validation without problems. */
    public Validation() {}

    /**
     * Validates the components of a record: each required one must be there, each must be within its {@link Bounds}.
     *
     * @param type the record under construction
     * @param values all of its components, in the order of their declaration
     * @throws IllegalArgumentException when there are more or fewer values than components
     */
    public static Validation of(Class<? extends Record> type, @Nullable Object... values) {
        List<RecordSchema.Component> components = RecordSchema.of(type).components();
        if (values.length != components.size()) {
            throw new IllegalArgumentException("%s has %s components, but %s values were given"
                    .formatted(type.getSimpleName(), components.size(), values.length));
        }
        Validation validation = new Validation();
        for (int i = 0; i < values.length; i++) {
            RecordSchema.Component component = components.get(i);
            if (component.required()) {
                validation.required(component.name(), values[i]);
            }
            component.bounds().validate(validation, component.name(), values[i]);
        }
        return validation;
    }

    /** Refuses an absent value, and blank text. */
    public Validation required(String field, @Nullable Object value) {
        if (value == null) {
            problems.add("/" + field, ProblemCode.MISSING, field + " is required.");
        } else if (value instanceof String text && text.isBlank()) {
            problems.add("/" + field, ProblemCode.MISSING, field + " must not be blank.");
        }
        return this;
    }

    /** Refuses a value outside a closed range. */
    public <T extends Comparable<? super T>> Validation within(String field, @Nullable T value, T minimum, T maximum) {
        return that(
                value == null || (value.compareTo(minimum) >= 0 && value.compareTo(maximum) <= 0),
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must be from %s to %s, but was %s."
                        .formatted(field, shown(minimum), shown(maximum), shown(value)));
    }

    /** Refuses a value below a limit; an absent limit refuses none. */
    public <T extends Comparable<? super T>> Validation atLeast(String field, @Nullable T value, @Nullable T minimum) {
        return that(
                value == null || minimum == null || value.compareTo(minimum) >= 0,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must be at least %s, but was %s.".formatted(field, shown(minimum), shown(value)));
    }

    /** Refuses a value above a limit; an absent limit refuses none. */
    public <T extends Comparable<? super T>> Validation atMost(String field, @Nullable T value, @Nullable T maximum) {
        return that(
                value == null || maximum == null || value.compareTo(maximum) <= 0,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must be at most %s, but was %s.".formatted(field, shown(maximum), shown(value)));
    }

    /** Refuses a value that is not above a limit; an absent limit refuses none. */
    public <T extends Comparable<? super T>> Validation above(String field, @Nullable T value, @Nullable T limit) {
        return that(
                value == null || limit == null || value.compareTo(limit) > 0,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must be above %s, but was %s.".formatted(field, shown(limit), shown(value)));
    }

    /** Refuses a value that is not below a limit; an absent limit refuses none. */
    public <T extends Comparable<? super T>> Validation below(String field, @Nullable T value, @Nullable T limit) {
        return that(
                value == null || limit == null || value.compareTo(limit) < 0,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must be below %s, but was %s.".formatted(field, shown(limit), shown(value)));
    }

    /** Refuses a value that contradicts another component by exceeding it; an absent value contradicts none. */
    public <T extends Comparable<? super T>> Validation notAbove(
            String field, @Nullable T value, String otherField, @Nullable T other) {
        return consistent(
                value == null || other == null || value.compareTo(other) <= 0,
                field,
                value,
                "at most",
                otherField,
                other);
    }

    /** Refuses a value that contradicts another component by being below it; an absent value contradicts none. */
    public <T extends Comparable<? super T>> Validation notBelow(
            String field, @Nullable T value, String otherField, @Nullable T other) {
        return consistent(
                value == null || other == null || value.compareTo(other) >= 0,
                field,
                value,
                "at least",
                otherField,
                other);
    }

    /** Refuses a value that contradicts another component by not exceeding it; an absent value contradicts none. */
    public <T extends Comparable<? super T>> Validation exceeds(
            String field, @Nullable T value, String otherField, @Nullable T other) {
        return consistent(
                value == null || other == null || value.compareTo(other) > 0, field, value, "above", otherField, other);
    }

    private Validation consistent(
            boolean holds,
            String field,
            @Nullable Object value,
            String relation,
            String otherField,
            @Nullable Object other) {
        return that(
                holds,
                field,
                ProblemCode.INCONSISTENT,
                () -> "%s must be %s %s %s, but was %s."
                        .formatted(field, relation, otherField, shown(other), shown(value)));
    }

    /** Refuses each value of a list outside a closed range, and a value that is missing from the list. */
    public <T extends Comparable<? super T>> Validation eachWithin(
            String field, @Nullable List<? extends @Nullable T> values, T minimum, T maximum) {
        if (values != null) {
            for (int i = 0; i < values.size(); i++) {
                String element = field + "/" + i;
                required(element, values.get(i)).within(element, values.get(i), minimum, maximum);
            }
        }
        return this;
    }

    /** Refuses a list of another length. */
    public Validation length(String field, @Nullable List<?> values, int length) {
        return that(
                values == null || values.size() == length,
                field,
                ProblemCode.OUT_OF_RANGE,
                () -> "%s must have %s values, but has %s."
                        .formatted(field, length, values == null ? 0 : values.size()));
    }

    /** Refuses an empty list. */
    public Validation notEmpty(String field, @Nullable List<?> values) {
        return required(field, values)
                .that(values == null || !values.isEmpty(), field, ProblemCode.MISSING, field + " must not be empty.");
    }

    /** Refuses when a condition does not hold, with a message of the caller's. */
    public Validation that(boolean holds, String field, ProblemCode code, String message) {
        return that(holds, field, code, () -> message);
    }

    /** Refuses when a condition does not hold, with a message that is only written then. */
    public Validation that(boolean holds, String field, ProblemCode code, Supplier<String> message) {
        if (!holds) {
            problems.add(field.isEmpty() ? "" : "/" + field, code, problems.isFull() ? "" : message.get());
        }
        return this;
    }

    /**
     * Ends the validation.
     *
     * @throws InvalidInput when anything was refused
     */
    public void done() {
        problems.throwIfAny();
    }

    /** Returns whether nothing was refused yet. */
    public boolean isClean() {
        return problems.isEmpty();
    }

    /** A whole number without the decimals that Java gives it. */
    private static Object shown(@Nullable Object value) {
        return value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15
                ? (Object) number.longValue()
                : String.valueOf(value);
    }
}
