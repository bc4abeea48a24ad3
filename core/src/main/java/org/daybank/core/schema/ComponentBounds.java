package org.daybank.core.schema;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.daybank.core.quantity.Money;
import org.jspecify.annotations.Nullable;

/** The accepted range of one component, read from {@link Bounds}; a component without the annotation accepts every value. */
public final class ComponentBounds {
    private static final ComponentBounds NONE = new ComponentBounds(null, Object.class);

    private final @Nullable Bounds declared;
    private final @Nullable Object minimum;
    private final @Nullable Object exclusiveMinimum;
    private final @Nullable Object maximum;
    private final @Nullable Object exclusiveMaximum;

    private ComponentBounds(@Nullable Bounds declared, Class<?> type) {
        this.declared = declared;
        this.minimum = declared == null ? null : limit(type, declared.minimum());
        this.exclusiveMinimum = declared == null ? null : limit(type, declared.exclusiveMinimum());
        this.maximum = declared == null ? null : limit(type, declared.maximum());
        this.exclusiveMaximum = declared == null ? null : limit(type, declared.exclusiveMaximum());
    }

    static ComponentBounds of(RecordComponent component) {
        Bounds declared = component.getAnnotation(Bounds.class);
        if (declared == null) {
            return NONE;
        }
        Class<?> type = component.getType();
        return new ComponentBounds(
                declared,
                type == List.class
                        ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                        : type);
    }

    private static @Nullable Object limit(Class<?> type, String text) {
        if (text.isEmpty()) {
            return null;
        }
        return type == Money.class ? new BigDecimal(text) : Scalars.parse(type, text);
    }

    /** Returns a limit as a value comparable with a given one: an amount of money takes the currency of that value. */
    private static @Nullable Object comparable(@Nullable Object limit, Object given) {
        return limit instanceof BigDecimal amount && given instanceof Money money
                ? Money.of(amount.toPlainString(), money.currency().getCurrencyCode())
                : limit;
    }

    /** Returns the annotation, if there is one. */
    public Optional<Bounds> declared() {
        return Optional.ofNullable(declared);
    }

    /** Returns the smallest accepted value, if there is one; for money, the amount in any currency. */
    public Optional<Object> minimum() {
        return Optional.ofNullable(minimum);
    }

    /** Returns the value that must be exceeded, if there is one; for money, the amount in any currency. */
    public Optional<Object> exclusiveMinimum() {
        return Optional.ofNullable(exclusiveMinimum);
    }

    /** Returns the largest accepted value, if there is one; for money, the amount in any currency. */
    public Optional<Object> maximum() {
        return Optional.ofNullable(maximum);
    }

    /** Returns the value that must not be reached, if there is one; for money, the amount in any currency. */
    public Optional<Object> exclusiveMaximum() {
        return Optional.ofNullable(exclusiveMaximum);
    }

    /** Adds a problem for each limit that a value violates; an absent value violates none. */
    void validate(Validation validation, String field, @Nullable Object value) {
        if (declared == null || value == null) {
            return;
        }
        if (!(value instanceof List<?> list)) {
            validateOne(validation, field, value);
            return;
        }
        int size = list.size();
        validation
                .that(
                        size >= declared.minimumItems(),
                        field,
                        size == 0 ? ProblemCode.MISSING : ProblemCode.OUT_OF_RANGE,
                        () -> size == 0
                                ? field + " must not be empty."
                                : "%s must have at least %s elements, but has %s."
                                        .formatted(field, declared.minimumItems(), size))
                .that(
                        size <= declared.maximumItems(),
                        field,
                        ProblemCode.OUT_OF_RANGE,
                        () -> "%s must have at most %s elements, but has %s."
                                .formatted(field, declared.maximumItems(), size));
        for (int i = 0; i < Math.min(size, declared.maximumItems()); i++) {
            validation.required(field + "/" + i, list.get(i));
            if (list.get(i) != null) {
                validateOne(validation, field + "/" + i, list.get(i));
            }
        }
    }

    private void validateOne(Validation validation, String field, Object value) {
        if (value instanceof Record record && !(value instanceof Comparable<?>)) {
            // a record without an order, as a ratio for each battery family: limit by limit
            for (RecordSchema.Component part :
                    RecordSchema.of(record.getClass()).components()) {
                within(
                        validation,
                        field + "/" + part.name(),
                        part.value(record),
                        part(part, minimum),
                        part(part, exclusiveMinimum),
                        part(part, maximum),
                        part(part, exclusiveMaximum));
            }
        } else {
            within(
                    validation,
                    field,
                    value,
                    comparable(minimum, value),
                    comparable(exclusiveMinimum, value),
                    comparable(maximum, value),
                    comparable(exclusiveMaximum, value));
        }
    }

    private static @Nullable Object part(RecordSchema.Component part, @Nullable Object limit) {
        return limit == null ? null : part.value(limit);
    }

    @SuppressWarnings("unchecked")
    private static void within(
            Validation validation,
            String field,
            @Nullable Object value,
            @Nullable Object minimum,
            @Nullable Object exclusiveMinimum,
            @Nullable Object maximum,
            @Nullable Object exclusiveMaximum) {
        if (!(value instanceof Comparable<?>)) {
            return;
        }
        Comparable<Object> given = (Comparable<Object>) value;
        if (minimum != null && maximum != null) {
            validation.within(field, given, (Comparable<Object>) minimum, (Comparable<Object>) maximum);
        } else {
            validation.atLeast(field, given, (Comparable<Object>) minimum);
            validation.atMost(field, given, (Comparable<Object>) maximum);
        }
        validation.above(field, given, (Comparable<Object>) exclusiveMinimum);
        validation.below(field, given, (Comparable<Object>) exclusiveMaximum);
    }
}
