package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Assumption;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.jspecify.annotations.Nullable;

/**
 * Builds a record from a JSON tree by its components, and finds everything that is wrong on the way.
 *
 * <p>A part that cannot be read is told and left out, and so is one that is missing; its siblings are still checked by the
 * constructor of the record, and what that says of the part left out is dropped. What may be absent (or null) comes from
 * {@link Assumed}, or is left to the constructor.
 */
public final class Binder {
    private static final ObjectNode NOTHING_GIVEN = JsonNodeFactory.instance.objectNode();

    private final Problems problems = new Problems();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Scalar scalars;

    private Binder(boolean flat) {
        this.scalars = new Scalar(problems, flat);
    }

    /**
     * Builds a record from JSON.
     *
     * @throws InvalidInput with everything that is wrong, each problem under its JSON pointer
     */
    public static <R extends Record> Bound<R> bind(Class<R> type, JsonNode tree) {
        return new Binder(false).root(type, tree);
    }

    /**
     * Builds a record from a tree whose leaves are all text, as {@link FlatForm} makes it: numbers are read from text.
     *
     * @throws InvalidInput with everything that is wrong, each problem under its JSON pointer
     */
    public static <R extends Record> Bound<R> bindText(Class<R> type, JsonNode tree) {
        return new Binder(true).root(type, tree);
    }

    /**
     * Reads one value from JSON.
     *
     * @param type as declared
     * @param pointer where the value stands in the request
     * @throws InvalidInput with everything that is wrong, each problem under its JSON pointer
     */
    public static Object value(Type type, JsonNode given, String pointer) {
        Binder binder = new Binder(false);
        Object value = binder.read(type, given, pointer);
        if (value == null || !binder.problems.isEmpty()) {
            throw binder.problems.asException();
        }
        return value;
    }

    private <R extends Record> Bound<R> root(Class<R> type, JsonNode tree) {
        Object value = read(type, tree, "");
        if (value == null || !problems.isEmpty()) {
            throw problems.asException();
        }
        return new Bound<>(type.cast(value), (ObjectNode) Said.of(value, tree), assumptions);
    }

    /** Reads what was given; null when it could not be read, which is then told already. */
    private @Nullable Object read(Type type, JsonNode given, String pointer) {
        Class<?> raw = Shape.Part.raw(type);
        if (Form.of(raw) == Form.TREE) {
            return given;
        }
        if (raw == Optional.class) {
            Object content = read(Shape.Part.argument(type), given, pointer);
            return content == null ? null : Optional.of(content);
        }
        if (raw == List.class) {
            return list(Shape.Part.argument(type), given, pointer);
        }
        JsonNode node = given.isArray() && given.size() == 1 ? given.get(0) : given;
        if (node.isArray()) {
            problems.add(
                    pointer,
                    ProblemCode.UNREADABLE,
                    "%s: one value is expected but there are %s".formatted(label(pointer), node.size()));
            return null;
        }
        if (Form.of(raw) != Form.OBJECT) {
            return scalars.read(raw, node, pointer);
        }
        if (node instanceof ObjectNode members) {
            Shape shape = Shape.of(raw);
            refuseUnknown(shape.names(), members, pointer, problems);
            return build(shape, members, pointer);
        }
        return scalars.readShort(raw, node, pointer);
    }

    private @Nullable Object list(Type element, JsonNode given, String pointer) {
        JsonNode series = given;
        if (given instanceof ObjectNode members && Form.of(Shape.Part.raw(element)) == Form.QUANTITY) {
            series = scalars.series(members, pointer);
        } else if (given.isTextual() || given.isNumber()) {
            // whether one value may stand for many is for the record to say
            series = JsonNodeFactory.instance.arrayNode().add(given);
        }
        if (series == null || !series.isArray()) {
            if (series != null) {
                problems.add(
                        pointer,
                        ProblemCode.UNREADABLE,
                        "%s: a list in brackets is expected".formatted(label(pointer)));
            }
            return null;
        }
        List<Object> values = new ArrayList<>(series.size());
        for (int i = 0; i < series.size(); i++) {
            String at = pointer + "/" + i;
            if (series.get(i).isNull()) {
                problems.add(at, ProblemCode.MISSING, "%s is required.".formatted(label(at)));
                continue;
            }
            Object value = read(element, series.get(i), at);
            if (value != null) {
                values.add(value);
            }
        }
        return values.size() == series.size() ? List.copyOf(values) : null;
    }

    static void refuseUnknown(List<String> known, ObjectNode members, String pointer, Problems problems) {
        for (Iterator<String> names = members.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                problems.add(
                        pointer + "/" + escape(name),
                        ProblemCode.UNKNOWN_NAME,
                        problems.isFull() ? "" : Names.complaint(name, known));
            }
        }
    }

    /** Builds a record from members; null when it or a part of it could not be built. */
    private @Nullable Record build(Shape shape, ObjectNode members, String pointer) {
        List<Shape.Part> parts = shape.parts();
        @Nullable Object[] values = new @Nullable Object[parts.size()];
        Set<String> failed = new HashSet<>();
        for (int i = 0; i < values.length; i++) {
            Shape.Part part = parts.get(i);
            JsonNode given = given(members, part);
            if (part.inline()) {
                values[i] = build(Shape.of(part.raw()), members, pointer);
            } else if (given != null) {
                values[i] = read(part.type(), given, pointer + "/" + part.name());
            } else if (part.policy() && part.assumed().isEmpty() && !part.nullable()) {
                values[i] = build(Shape.of(part.raw()), NOTHING_GIVEN, pointer + "/" + part.name());
            } else if (part.mayBeAbsent()) {
                values[i] = part.whenAbsent();
                continue;
            } else {
                String at = pointer + "/" + part.name();
                problems.add(at, ProblemCode.MISSING, label(at) + " is required.");
            }
            if (values[i] == null) {
                failed.add(part.name());
                values[i] = part.placeholder();
            }
        }
        Record built = construct(shape, values, pointer, failed);
        return built != null && failed.isEmpty() ? assume(shape, built, members, pointer) : null;
    }

    private @Nullable Record construct(Shape shape, @Nullable Object[] values, String pointer, Set<String> failed) {
        try {
            return shape.construct(values);
        } catch (InvalidInput refused) {
            // what is said of the whole cannot be judged while a part of it is not there
            refused.problems().stream()
                    .filter(problem -> !failed.contains(firstName(problem)))
                    .filter(problem -> failed.isEmpty() || !problem.path().isEmpty())
                    .forEach(problem -> problems.add(placed(onTheWire(shape, problem), pointer)));
        } catch (NullPointerException absent) {
            // a constructor may stumble over a part that could not be read, which is reported already
            if (failed.isEmpty()) {
                throw absent;
            }
        }
        return null;
    }

    private Record assume(Shape shape, Record built, ObjectNode members, String pointer) {
        for (Shape.Part part : shape.parts()) {
            Optional<Assumed> assumed = part.assumed();
            boolean absent = given(members, part) == null;
            if (assumed.isPresent() && (absent || shape.policy())) {
                Object value = part.component().resolved(built);
                if (value != null) {
                    assumptions.add(new Assumption(
                            pointer + "/" + part.name(),
                            value,
                            absent,
                            assumed.get().source()));
                }
            }
        }
        return built;
    }

    private static @Nullable JsonNode given(ObjectNode members, Shape.Part part) {
        JsonNode given = members.get(part.name());
        return given == null || given.isNull() ? null : given;
    }

    private static String firstName(Problem problem) {
        String[] names = problem.path().split("/", 3);
        return names.length > 1 ? names[1] : "";
    }

    /** The parts of an inlined component stand where the component would. */
    private static Problem onTheWire(Shape shape, Problem problem) {
        String first = firstName(problem);
        boolean inlined = shape.parts().stream()
                .anyMatch(part -> part.inline() && part.name().equals(first));
        return inlined
                ? new Problem(problem.path().substring(first.length() + 1), problem.code(), problem.message())
                : problem;
    }

    /** The problem of a record that stands at a pointer; its message names the field by its whole place. */
    private static Problem placed(Problem problem, String pointer) {
        if (pointer.isEmpty()) {
            return problem;
        }
        Problem found = problem.under(pointer);
        String field = problem.path().isEmpty() ? "" : problem.path().substring(1);
        String rest = !field.isEmpty() && problem.message().startsWith(field + " ")
                ? problem.message().substring(field.length())
                : ": " + problem.message();
        return new Problem(found.path(), found.code(), label(found.path()) + rest);
    }

    /** The place of a pointer as a sentence names it. */
    static String label(String pointer) {
        return pointer.isEmpty()
                ? "the request"
                : pointer.substring(1).replace('/', '.').replace("~1", "/").replace("~0", "~");
    }

    private static String escape(String name) {
        return Names.shown(name).replace("~", "~0").replace("/", "~1");
    }
}
