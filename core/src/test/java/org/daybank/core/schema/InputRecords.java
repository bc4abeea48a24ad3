package org.daybank.core.schema;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Every public record that callers fill in, with valid specimens of each: whatever the tests of the project use as sample
 * data, and every record within it.
 */
final class InputRecords {
    private static final String ROOT = "org.daybank.core";
    private static final int SPECIMENS = 8;

    /** Every public record of the library with a component that has a range or a default. */
    static final Set<Class<? extends Record>> TYPES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(ROOT).stream()
                    .map(JavaClass::reflect)
                    .filter(type -> type.isRecord() && Modifier.isPublic(type.getModifiers()))
                    .filter(type -> RecordSchema.of(type).components().stream()
                            .anyMatch(component -> component.assumed().isPresent()
                                    || component.bounds().declared().isPresent()))
                    .<Class<? extends Record>>map(type -> type.asSubclass(Record.class))
                    .sorted(Comparator.comparing(Class::getName))
                    .collect(Collectors.toCollection(LinkedHashSet::new));

    /** Valid records by type, the most complete first. */
    static final Map<String, List<Record>> SPECIMENS_BY_TYPE = specimens();

    private InputRecords() {}

    /** Returns valid records of a type. */
    static List<Record> specimens(Class<?> type) {
        return SPECIMENS_BY_TYPE.getOrDefault(type.getName(), List.of());
    }

    private static Map<String, List<Record>> specimens() {
        Deque<Object> waiting = new ArrayDeque<>(sampleData());
        Set<Object> seen = new HashSet<>();
        Map<String, List<Record>> found = new TreeMap<>();
        while (!waiting.isEmpty()) {
            Object value = waiting.poll();
            if (value instanceof Optional<?> optional) {
                optional.ifPresent(waiting::add);
            } else if (value instanceof List<?> list) {
                list.stream().filter(Objects::nonNull).limit(200).forEach(waiting::add);
            } else if (value instanceof Record record
                    && record.getClass().getName().startsWith(ROOT)
                    && seen.add(record)) {
                found.computeIfAbsent(record.getClass().getName(), type -> new ArrayList<>())
                        .add(record);
                for (RecordSchema.Component component :
                        RecordSchema.of(record.getClass()).components()) {
                    Object part = component.value(record);
                    if (part != null) {
                        waiting.add(part);
                    }
                }
            }
        }
        found.replaceAll((type, records) -> records.stream()
                .sorted(Comparator.comparingLong(InputRecords::absent))
                .limit(SPECIMENS)
                .toList());
        return found;
    }

    private static long absent(Record record) {
        return RecordSchema.of(record.getClass()).components().stream()
                .filter(component -> component.value(record) == null)
                .count();
    }

    /** What the constants of the test classes, and their methods without parameters, hold. */
    private static List<Object> sampleData() {
        List<Object> found = new ArrayList<>();
        List<JavaClass> classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS).importPackages(ROOT).stream()
                        .filter(type -> !type.isInterface() && !type.isAnonymousClass())
                        .sorted(Comparator.comparing(JavaClass::getName))
                        .toList();
        for (JavaClass type : classes) {
            Class<?> reflected = type.reflect();
            for (Field field : reflected.getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers()) && holdsRecords(field.getType())) {
                    read(field).ifPresent(found::add);
                }
            }
            for (Method method : reflected.getDeclaredMethods()) {
                if (Modifier.isStatic(method.getModifiers())
                        && method.getParameterCount() == 0
                        && method.getReturnType().isRecord()) {
                    call(method).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static boolean holdsRecords(Class<?> type) {
        return type.isRecord() || type == List.class;
    }

    private static Optional<Object> read(Field field) {
        try {
            field.setAccessible(true);
            return Optional.ofNullable(field.get(null));
        } catch (IllegalAccessException hidden) {
            throw new IllegalStateException(hidden);
        }
    }

    private static Optional<Object> call(Method method) {
        try {
            method.setAccessible(true);
            return Optional.ofNullable(method.invoke(null));
        } catch (InvocationTargetException notSampleData) {
            return Optional.empty();
        } catch (IllegalAccessException hidden) {
            throw new IllegalStateException(hidden);
        }
    }
}
