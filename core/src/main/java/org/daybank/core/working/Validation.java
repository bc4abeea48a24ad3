package org.daybank.core.working;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Gathers what is wrong with the arguments of a constructor and throws it all at once.
 *
 * <pre>{@code
 * new Validation()
 *         .required("power", power)
 *         .within("power", power, Power.ZERO, Power.kilowatts(1000))
 *         .done();
 * }</pre>
 *
 * <p>A range is only checked of a value that is there: what is missing is told once, by {@link #required}.
 */
public final class Validation {
    private final Problems problems = new Problems();

    /** Validation with nothing refused yet. */
    public Validation() {}

    /** Refuses an absent value. */
    public Validation required(String field, @Nullable Object value) {
        if (value == null) {
            problems.add("/" + field, "missing", field + " is missing");
        } else if (value instanceof String text && text.isBlank()) {
            problems.add("/" + field, "missing", field + " must not be blank");
        }
        return this;
    }

    /** Refuses a value outside a closed range. */
    public <T extends Comparable<? super T>> Validation within(String field, @Nullable T value, T least, T most) {
        return that(
                value == null || (value.compareTo(least) >= 0 && value.compareTo(most) <= 0),
                field,
                "outOfRange",
                () -> "%s must be from %s to %s but is %s".formatted(field, shown(least), shown(most), shown(value)));
    }

    /** Refuses a value below a limit. */
    public <T extends Comparable<? super T>> Validation atLeast(String field, @Nullable T value, T least) {
        return that(
                value == null || value.compareTo(least) >= 0,
                field,
                "outOfRange",
                () -> "%s must be at least %s but is %s".formatted(field, shown(least), shown(value)));
    }

    /** Refuses a value above a limit. */
    public <T extends Comparable<? super T>> Validation atMost(String field, @Nullable T value, T most) {
        return that(
                value == null || value.compareTo(most) <= 0,
                field,
                "outOfRange",
                () -> "%s must be at most %s but is %s".formatted(field, shown(most), shown(value)));
    }

    /** Refuses a value that is not above a limit. */
    public <T extends Comparable<? super T>> Validation above(String field, @Nullable T value, T limit) {
        return that(
                value == null || value.compareTo(limit) > 0,
                field,
                "outOfRange",
                () -> "%s must be above %s but is %s".formatted(field, shown(limit), shown(value)));
    }

    /** Refuses each value of a list outside a closed range, and a value that is missing from the list. */
    public <T extends Comparable<? super T>> Validation eachWithin(
            String field, @Nullable List<? extends @Nullable T> values, T least, T most) {
        if (values != null) {
            for (int i = 0; i < values.size(); i++) {
                String element = field + "/" + i;
                required(element, values.get(i)).within(element, values.get(i), least, most);
            }
        }
        return this;
    }

    /** Refuses a list of another length. */
    public Validation length(String field, @Nullable List<?> values, int length) {
        return that(
                values == null || values.size() == length,
                field,
                "outOfRange",
                () -> "%s must have %s values but has %s".formatted(field, length, values == null ? 0 : values.size()));
    }

    /** Refuses an empty list. */
    public Validation notEmpty(String field, @Nullable List<?> values) {
        return required(field, values)
                .that(values == null || !values.isEmpty(), field, "missing", field + " must not be empty");
    }

    /** Refuses when a condition does not hold, with a message of the caller's. */
    public Validation that(boolean holds, String field, String code, String message) {
        return that(holds, field, code, () -> message);
    }

    /** Refuses when a condition does not hold, with a message that is only written then. */
    public Validation that(boolean holds, String field, String code, Supplier<String> message) {
        if (!holds) {
            problems.add(field.isEmpty() ? "" : "/" + field, code, problems.isFull() ? "" : message.get());
        }
        return this;
    }

    /** Returns whether nothing was refused yet. */
    boolean isClean() {
        return problems.isEmpty();
    }

    /**
     * Ends the checks.
     *
     * @throws InvalidInput when anything was refused
     */
    public void done() {
        problems.throwIfAny();
    }

    /** A whole number without the decimals that Java gives it. */
    private static Object shown(@Nullable Object value) {
        return value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15
                ? (Object) number.longValue()
                : String.valueOf(value);
    }
}
