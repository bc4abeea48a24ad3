package org.daybank.api.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Scalars;

/**
 * A request as query parameters: every component, however deep, by its bare name. {@code autonomy=3d} stands for
 * {@code {"policy": {"autonomy": "3d"}}}. A fact wins over a policy value of the same name. Lists of records, as data sheets,
 * and what a request may leave out as a whole, as the hours of a year, have no place in it; but one list may be named whose
 * only element the parameters describe.
 */
public final class FlatForm<R extends Record> {
    private final Class<R> type;
    private final String element;
    private final Map<String, String> pointers = new LinkedHashMap<>();

    /** What every request holds, so that what is missing is told by the names within. */
    private final List<String> holders = new ArrayList<>();

    /**
     * The flat form of a request.
     *
     * @throws IllegalArgumentException when two components have the same bare name
     */
    public FlatForm(Class<R> type) {
        this(type, "");
    }

    /**
     * The flat form of a request for one element of a list.
     *
     * @param element name of the list; empty for none
     * @throws IllegalArgumentException when two components have the same bare name
     */
    public FlatForm(Class<R> type, String element) {
        this.type = type;
        this.element = element;
        gather(Shape.of(type), "");
    }

    /** The names of the parameters. */
    public List<String> names() {
        return List.copyOf(pointers.keySet());
    }

    /**
     * Builds the request.
     *
     * @param parameters texts by name; an empty text is refused, so that no default takes its place unseen
     * @throws InvalidInput with everything that is wrong; paths are names of parameters
     */
    public Bound<R> bind(Map<String, List<String>> parameters) {
        List<Problem> wrong = new ArrayList<>();
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        if (!element.isEmpty()) {
            tree.putArray(element).addObject();
        }
        holders.forEach(pointer -> within(tree, pointer));
        parameters.forEach((name, texts) -> {
            String pointer = pointers.get(name);
            if (pointer == null) {
                wrong.add(new Problem(Names.shown(name), ProblemCode.UNKNOWN_NAME, Names.complaint(name, names())));
            } else if (texts.stream().anyMatch(String::isBlank)) {
                wrong.add(new Problem(name, ProblemCode.MISSING, name + " must not be empty"));
            } else {
                put(tree, pointer, texts);
            }
        });
        try {
            Bound<R> bound = Binder.bindText(type, tree);
            if (wrong.isEmpty()) {
                return bound;
            }
        } catch (InvalidInput refused) {
            Set<String> reported = wrong.stream().map(Problem::path).collect(Collectors.toSet());
            refused.problems().stream()
                    .map(this::named)
                    .filter(problem -> !reported.contains(problem.path()))
                    .forEach(wrong::add);
        }
        throw new InvalidInput(wrong);
    }

    private void gather(Shape shape, String pointer) {
        for (Shape.Part part : shape.parts()) {
            String at = part.inline() ? pointer : pointer + "/" + part.name();
            if (!element.isEmpty() && at.equals("/" + element)) {
                gather(Shape.of(part.element()), at + "/0");
            } else if (part.inline() || holdsNames(part)) {
                if (!part.inline() && !part.mayBeAbsent()) {
                    holders.add(at);
                }
                if (!part.nullable() || !pointer.isEmpty()) {
                    gather(Shape.of(part.raw()), at);
                }
            } else if (part.form() != Form.LIST || Form.of(part.element()) != Form.OBJECT) {
                if (pointers.putIfAbsent(part.name(), at) != null && !shape.policy()) {
                    throw new IllegalArgumentException("%s has two components called %s".formatted(type, part.name()));
                }
            }
        }
    }

    private static boolean holdsNames(Shape.Part part) {
        return part.form() == Form.OBJECT && !Scalars.readable(part.raw());
    }

    private static void put(ObjectNode tree, String pointer, List<String> texts) {
        int last = pointer.lastIndexOf('/');
        ArrayNode values = within(tree, pointer.substring(0, last)).putArray(pointer.substring(last + 1));
        texts.forEach(values::add);
    }

    /** The object at a pointer, made where it is not there yet. */
    private static ObjectNode within(ObjectNode tree, String pointer) {
        JsonNode holder = tree;
        for (String name : pointer.isEmpty()
                ? List.<String>of()
                : List.of(pointer.substring(1).split("/", -1))) {
            JsonNode inside = holder.isArray() ? holder.path(Integer.parseInt(name)) : holder.path(name);
            holder = inside.isMissingNode() ? ((ObjectNode) holder).putObject(name) : inside;
        }
        return (ObjectNode) holder;
    }

    /** The problem under the name of the parameter that its pointer stands for. */
    private Problem named(Problem problem) {
        return pointers.entrySet().stream()
                .filter(entry -> (problem.path() + "/").startsWith(entry.getValue() + "/"))
                .findFirst()
                .map(entry -> {
                    String label = Binder.label(entry.getValue());
                    return new Problem(
                            entry.getKey(),
                            problem.code(),
                            problem.message().startsWith(label)
                                    ? entry.getKey() + problem.message().substring(label.length())
                                    : problem.message());
                })
                .orElse(problem);
    }
}
