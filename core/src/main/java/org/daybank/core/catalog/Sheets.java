package org.daybank.core.catalog;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.daybank.core.schema.Scalars;
import org.daybank.core.working.Table;
import org.jspecify.annotations.Nullable;

/**
 * Reads data sheets from a table: columns are named like the components of the product's record, cells carry their unit
 * ({@code 410 W}), lists are separated by semicolons, an empty cell leaves a component out.
 */
public final class Sheets {
    private Sheets() {}

    /**
     * One product for each row.
     *
     * @throws InvalidInput with everything that is wrong in any row or with the columns
     */
    public static <R extends Record> List<R> read(Class<R> product, Table table) {
        Problems problems = new Problems();
        List<String> known = Arrays.stream(product.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
        for (String column : table.columns()) {
            if (!known.contains(column)) {
                String shown = Problem.shortened(column);
                problems.add(
                        "/" + shown,
                        ProblemCode.UNKNOWN_NAME,
                        "%s is not a column of this table; known are %s".formatted(shown, known));
            }
        }
        List<R> products = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            try {
                R read = product(product, row);
                if (problems.isEmpty()) {
                    products.add(read);
                }
            } catch (InvalidInput invalid) {
                problems.addAll(
                        invalid,
                        problem -> new Problem(
                                problem.path(),
                                problem.code(),
                                problem.message().startsWith("line ")
                                        ? problem.message()
                                        : "line %s: %s".formatted(row.line(), problem.message())));
            }
        }
        problems.throwIfAny();
        return List.copyOf(products);
    }

    private static <R extends Record> R product(Class<R> type, Table.Row row) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        List<Problem> unreadable = new ArrayList<>();
        for (int i = 0; i < components.length; i++) {
            try {
                values[i] = cell(components[i], row);
            } catch (InvalidInput invalid) {
                unreadable.addAll(invalid.problems());
            }
        }
        if (!unreadable.isEmpty()) {
            throw new InvalidInput(unreadable);
        }
        try {
            return type.getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new))
                    .newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof InvalidInput invalid) {
                throw invalid;
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(hidden);
        }
    }

    private static @Nullable Object cell(RecordComponent component, Table.Row row) {
        if (component.getType() != List.class) {
            Object value =
                    row.optionalValue(component.getType(), component.getName()).orElse(null);
            return value == null && component.getType() == int.class ? Integer.valueOf(0) : value;
        }
        Class<?> element = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return row.optionalText(component.getName())
                .map(text -> Arrays.stream(text.split(";", -1))
                        .map(part -> element(element, part.strip(), component, row))
                        .toList())
                .orElse(null);
    }

    private static Object element(Class<?> type, String text, RecordComponent component, Table.Row row) {
        try {
            return Scalars.parse(type, text);
        } catch (IllegalArgumentException refused) {
            throw new InvalidInput(List.of(new Problem(
                    "/" + component.getName(),
                    ProblemCode.UNREADABLE,
                    "line %s, %s: %s".formatted(row.line(), component.getName(), refused.getMessage()))));
        }
    }
}
