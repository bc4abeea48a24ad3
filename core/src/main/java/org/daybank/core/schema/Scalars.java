package org.daybank.core.schema;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.daybank.core.quantity.QuantityFormatException;
import org.daybank.core.quantity.Ratio;

/**
 * Values that are one piece of text, read by their type: quantities and everything else with a static {@code parse}, enum
 * constants, numbers, booleans.
 */
public final class Scalars {
    private static final ClassValue<Optional<Method>> PARSE = new ClassValue<>() {
        @Override
        protected Optional<Method> computeValue(Class<?> type) {
            try {
                return Optional.of(type.getMethod("parse", CharSequence.class));
            } catch (NoSuchMethodException none) {
                return Optional.empty();
            }
        }
    };

    /** The names of the constants of an enum. */
    private static final ClassValue<Map<Object, String>> NAMES = new ClassValue<>() {
        @Override
        protected Map<Object, String> computeValue(Class<?> type) {
            return Arrays.stream(type.getEnumConstants())
                    .collect(Collectors.toUnmodifiableMap(
                            constant -> constant, constant -> camelCase(((Enum<?>) constant).name())));
        }
    };

    private Scalars() {}

    /** Whether {@link #parse} can read this type. */
    public static boolean readable(Class<?> type) {
        return type.isEnum()
                || type == String.class
                || type == double.class
                || type == Double.class
                || type == int.class
                || type == Integer.class
                || type == boolean.class
                || type == Boolean.class
                || PARSE.get(type).isPresent();
    }

    /**
     * Reads text as a value of the type.
     *
     * @throws IllegalArgumentException when the text is no such value; the message says what would be
     */
    public static Object parse(Class<?> type, String text) {
        if (type == String.class) {
            return text;
        }
        if (type.isEnum()) {
            return constant(type, text);
        }
        if (type == boolean.class || type == Boolean.class) {
            return bool(text);
        }
        if (type == int.class || type == Integer.class) {
            return whole(text);
        }
        if (type == double.class || type == Double.class) {
            return number(text);
        }
        return invoke(
                PARSE.get(type)
                        .orElseThrow(() -> new IllegalArgumentException(type.getSimpleName() + " is not a scalar")),
                text);
    }

    /** The name under which an enum constant crosses the wire: {@code STEP_DOWN_MPPT} is {@code stepDownMppt}. */
    public static String name(Enum<?> constant) {
        return Objects.requireNonNull(NAMES.get(constant.getDeclaringClass()).get(constant));
    }

    private static String camelCase(String constant) {
        String[] words = constant.toLowerCase(Locale.ROOT).split("_", -1);
        return words[0]
                + Arrays.stream(words, 1, words.length)
                        .map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1))
                        .collect(Collectors.joining());
    }

    private static Object constant(Class<?> type, String text) {
        Object[] constants = type.getEnumConstants();
        for (Object constant : constants) {
            if (name((Enum<?>) constant).equals(text)) {
                return constant;
            }
        }
        throw new IllegalArgumentException("'%s' is not one of %s"
                .formatted(
                        Problem.shortened(text),
                        Arrays.stream(constants)
                                .map(constant -> name((Enum<?>) constant))
                                .collect(Collectors.joining(", "))));
    }

    private static Boolean bool(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "true" -> true;
            case "false" -> false;
            default ->
                throw new IllegalArgumentException("'%s' is neither true nor false".formatted(Problem.shortened(text)));
        };
    }

    /** A bare number: its name carries its unit, so that a percentage would be a mistake. */
    private static double number(String text) {
        try {
            if (!text.contains("%")) {
                return Ratio.parse(text).fraction();
            }
        } catch (QuantityFormatException notANumber) {
            // told below: the caller asked for a number, not for a ratio
        }
        throw new IllegalArgumentException(
                "'%s' is not a number: write digits with a point as the decimal sign, as in '12.5'"
                        .formatted(Problem.shortened(text)));
    }

    private static Integer whole(String text) {
        double number = number(text);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw new IllegalArgumentException(
                    "'%s' is not a whole number up to 2147483647".formatted(Problem.shortened(text)));
        }
        return (int) number;
    }

    private static Object invoke(Method parse, String text) {
        try {
            return parse.invoke(null, text);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(refused);
        } catch (IllegalAccessException hidden) {
            throw new IllegalStateException(hidden);
        }
    }
}
