package org.daybank.core.opinion;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.daybank.core.quantity.Quantity;
import org.daybank.core.quantity.Unit;

/** The same facts written down by someone else: every quantity in another unit, as text, and read back. */
final class Restated {
    private final SplittableRandom dice;

    Restated(long seed) {
        dice = new SplittableRandom(seed);
    }

    @SuppressWarnings("unchecked")
    <T> T of(T whole) {
        try {
            return (T) restated(whole);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private Object restated(Object value) throws ReflectiveOperationException {
        if (value instanceof Quantity quantity) {
            return inAnotherUnit(quantity);
        }
        if (value instanceof List<?> list) {
            Object[] all = list.toArray();
            for (int i = 0; i < all.length; i++) {
                all[i] = restated(all[i]);
            }
            return List.of(all);
        }
        return value instanceof Record && value.getClass().getName().startsWith("org.daybank.core.")
                ? rebuilt(value)
                : value;
    }

    private Object rebuilt(Object whole) throws ReflectiveOperationException {
        RecordComponent[] components = whole.getClass().getRecordComponents();
        Object[] parts = new Object[components.length];
        for (int i = 0; i < parts.length; i++) {
            Method accessor = components[i].getAccessor();
            accessor.setAccessible(true);
            Object part = accessor.invoke(whole);
            parts[i] = part == null ? null : restated(part);
        }
        Constructor<?> constructor = whole.getClass()
                .getDeclaredConstructor(
                        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        constructor.setAccessible(true);
        return constructor.newInstance(parts);
    }

    private Object inAnotherUnit(Quantity quantity) throws ReflectiveOperationException {
        Class<?> type = quantity.getClass();
        Method in = Arrays.stream(type.getMethods())
                .filter(method -> method.getName().equals("in"))
                .findFirst()
                .orElseThrow();
        Object[] units = in.getParameterTypes()[0].getEnumConstants();
        Unit unit = (Unit) units[dice.nextInt(units.length)];
        String text = in.invoke(quantity, unit) + " " + unit.code();
        return type.getMethod("parse", CharSequence.class).invoke(null, text);
    }
}
