package org.daybank.core.working;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What {@link Assumed} on the components of a record is good for: the record made of nothing but defaults, the default in
 * place of what was left out, the range checks, and the list of assumptions.
 */
public final class Policies {
    private static final ClassValue<List<Rule>> RULES = new ClassValue<>() {
        @Override
        protected List<Rule> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents()).map(Rule::of).toList();
        }
    };

    /** The components of record types, which Java looks up anew at every call. */
    private static final ClassValue<List<RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> type) {
            return List.of(type.getRecordComponents());
        }
    };

    private Policies() {}

    /**
     * The record in which every component has its default.
     *
     * @param type a record whose components all carry {@link Assumed} with a value, or are such records themselves
     */
    public static <R extends Record> R standard(Class<R> type) {
        List<Rule> rules = RULES.get(type);
        Object[] values = new Object[rules.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = rules.get(i).standard();
        }
        return construct(type, values);
    }

    /**
     * Refuses values outside the accepted range of their component, all at once.
     *
     * @param type the record under construction
     * @param values its components in order; an absent one is refused
     * @throws InvalidInput when any is absent or out of range
     */
    public static void check(Class<? extends Record> type, @Nullable Object... values) {
        Validation checks = new Validation();
        List<Rule> rules = RULES.get(type);
        for (int i = 0; i < values.length; i++) {
            checks.required(rules.get(i).name, values[i]);
            rules.get(i).check(checks, values[i]);
        }
        checks.done();
    }

    /** The default of one component, for a constructor to put in place of what was left out. */
    public static <T> T otherwise(@Nullable T value, Class<? extends Record> type, String component) {
        if (value != null) {
            return value;
        }
        for (Rule rule : RULES.get(type)) {
            if (rule.name.equals(component)) {
                @SuppressWarnings("unchecked")
                T standard = (T) rule.standard();
                return standard;
            }
        }
        throw new IllegalArgumentException(type.getSimpleName() + " has no component " + component);
    }

    /**
     * Lists every component that carries {@link Assumed}, nested records included, as assumptions below a path; a value
     * equal to its default counts as assumed.
     */
    public static List<Assumption> assumptions(String path, Record policy) {
        List<Assumption> found = new ArrayList<>();
        RecordComponent[] components = policy.getClass().getRecordComponents();
        List<Rule> rules = RULES.get(policy.getClass());
        for (int i = 0; i < components.length; i++) {
            Object value = read(components[i], policy);
            String at = path + "/" + components[i].getName();
            Rule rule = rules.get(i);
            if (rule.assumed != null) {
                found.add(new Assumption(at, value, value.equals(rule.defaultValue), rule.assumed.source()));
            } else if (value instanceof Record nested) {
                found.addAll(assumptions(at, nested));
            }
        }
        return found;
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }

    private static <R extends Record> R construct(Class<R> type, Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            throw new IllegalStateException(
                    "The defaults of %s refuse themselves".formatted(type.getSimpleName()), refused.getCause());
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }

    /** What is known of one component; texts are read once. */
    private static final class Rule {
        private final String name;
        private final Class<?> type;
        private final @Nullable Assumed assumed;
        private final @Nullable Object defaultValue;
        private final @Nullable Object least;
        private final @Nullable Object most;

        private Rule(String name, Class<?> type, @Nullable Assumed assumed) {
            this.name = name;
            this.type = type;
            this.assumed = assumed;
            this.defaultValue = assumed == null ? null : value(type, assumed.value());
            this.least = assumed == null ? null : value(type, assumed.least());
            this.most = assumed == null ? null : value(type, assumed.most());
        }

        static Rule of(RecordComponent component) {
            return new Rule(component.getName(), component.getType(), component.getAnnotation(Assumed.class));
        }

        private static @Nullable Object value(Class<?> type, String text) {
            return text.isEmpty() ? null : Scalars.parse(type, text);
        }

        Object standard() {
            if (defaultValue != null) {
                return defaultValue;
            }
            if (assumed == null && type.isRecord() && !Scalars.readable(type)) {
                return Policies.standard(type.asSubclass(Record.class));
            }
            throw new IllegalStateException(name + " has no default");
        }

        void check(Validation checks, @Nullable Object value) {
            within(checks, name, value, least, most);
        }

        /** Compares a value with its bounds; a record without an order is compared component by component. */
        @SuppressWarnings("unchecked")
        private static void within(
                Validation checks,
                String field,
                @Nullable Object value,
                @Nullable Object least,
                @Nullable Object most) {
            if (value instanceof Comparable<?> comparable) {
                if (least != null) {
                    checks.atLeast(field, (Comparable<Object>) comparable, (Comparable<Object>) least);
                }
                if (most != null) {
                    checks.atMost(field, (Comparable<Object>) comparable, (Comparable<Object>) most);
                }
            } else if (value instanceof Record record) {
                for (RecordComponent part : COMPONENTS.get(record.getClass())) {
                    within(
                            checks,
                            field + "/" + part.getName(),
                            read(part, record),
                            least == null ? null : read(part, (Record) least),
                            most == null ? null : read(part, (Record) most));
                }
            }
        }
    }
}
