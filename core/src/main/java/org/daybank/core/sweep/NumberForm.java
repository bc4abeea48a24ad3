package org.daybank.core.sweep;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Longitude;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Unit;
import org.daybank.core.schema.Assumed;
import org.jspecify.annotations.Nullable;

/**
 * A type whose values are each one number: how they are made of it, and in which unit a table shows them.
 *
 * <p>That is the unit in which the default of the component is written, or else the base unit of its dimension.
 */
final class NumberForm {
    private static final Pattern WRITTEN = Pattern.compile("[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?\\s*(\\S+)");

    private final DoubleFunction<Object> maker;
    private final @Nullable Unit shown;
    private final double perShown;
    private final String unit;

    private NumberForm(DoubleFunction<Object> maker, @Nullable Unit shown, double perShown, String unit) {
        this.maker = maker;
        this.shown = shown;
        this.perShown = perShown;
        this.unit = unit;
    }

    /** The form of a type; empty when its values are not each one number. */
    static Optional<NumberForm> of(Class<?> type, @Nullable Assumed assumed, @Nullable Object example) {
        if (Quantity.class.isAssignableFrom(type) && type.isRecord()) {
            return Optional.of(quantity(type, assumed));
        }
        if (type == Money.class) {
            return example instanceof Money money ? Optional.of(money(money.currency())) : Optional.empty();
        }
        DoubleFunction<Object> maker = null;
        if (type == Ratio.class) {
            maker = Ratio::of;
        } else if (type == Latitude.class) {
            maker = Latitude::degrees;
        } else if (type == Longitude.class) {
            maker = Longitude::degrees;
        } else if (type == double.class || type == Double.class) {
            maker = number -> number;
        } else if (type == int.class || type == Integer.class) {
            maker = number -> (int) Math.rint(number);
        } else if (type == long.class || type == Long.class) {
            maker = number -> (long) Math.rint(number);
        }
        return Optional.ofNullable(maker).map(found -> new NumberForm(found, null, 1, ""));
    }

    /** The number that a value is: of base units, of minor units, or itself. */
    static double number(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.baseValue();
        }
        if (value instanceof Ratio ratio) {
            return ratio.fraction();
        }
        if (value instanceof Number number) {
            return number.doubleValue();
        }
        if (value instanceof Money money) {
            return money.minorUnits();
        }
        if (value instanceof Latitude latitude) {
            return latitude.degrees();
        }
        if (value instanceof Longitude longitude) {
            return longitude.degrees();
        }
        throw new IllegalArgumentException("%s is not a number".formatted(value));
    }

    /** Whether {@link #number} knows what to make of a value. */
    static boolean isNumber(Object value) {
        return of(value.getClass(), null, value).isPresent();
    }

    /** The value that is this number. */
    Object value(double number) {
        return maker.apply(number);
    }

    /** The number as a table shows it. */
    double shown(double number) {
        return shown == null ? number / perShown : shown.definition().scale().fromBase(number);
    }

    /** What stands in the name of the column: symbol or UCUM code of the unit, or the currency; empty without one. */
    String unit() {
        return unit;
    }

    private static NumberForm money(Currency currency) {
        double minor = BigDecimal.ONE
                .scaleByPowerOfTen(Math.max(0, currency.getDefaultFractionDigits()))
                .doubleValue();
        return new NumberForm(
                number -> new Money(Math.round(number), currency), null, minor, currency.getCurrencyCode());
    }

    private static NumberForm quantity(Class<?> type, @Nullable Assumed assumed) {
        List<Unit> units = Quantity.units(type);
        Unit unit = units.get(0);
        Matcher written = WRITTEN.matcher(assumed == null ? "" : assumed.value());
        if (written.matches()) {
            String spelling = written.group(1);
            unit = units.stream()
                    .filter(candidate -> candidate.code().equals(spelling)
                            || candidate.symbol().equals(spelling))
                    .findFirst()
                    .orElse(unit);
        }
        return new NumberForm(maker(type), unit.equals(units.get(0)) ? null : unit, 1, unit.plainSymbol());
    }

    private static DoubleFunction<Object> maker(Class<?> quantity) {
        try {
            MethodHandle constructor = MethodHandles.publicLookup()
                    .findConstructor(quantity, MethodType.methodType(void.class, double.class))
                    .asType(MethodType.methodType(Object.class, double.class));
            return number -> {
                try {
                    return constructor.invokeExact(number);
                } catch (Throwable refused) {
                    throw refused instanceof RuntimeException cause ? cause : new IllegalStateException(refused);
                }
            };
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
