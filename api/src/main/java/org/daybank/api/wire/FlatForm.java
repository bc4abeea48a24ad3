package org.daybank.api.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daybank.core.working.InvalidInput;
import org.daybank.core.working.Problem;
import org.daybank.core.working.Scalars;

/**
 * A request as query parameters: every component, however deep, by its bare name. {@code autonomy=3d} stands for
 * {@code {"policy": {"autonomy": "3d"}}}. Lists of records, as data sheets, have no place in it.
 */
public final class FlatForm<R extends Record> {
    private final Class<R> type;
    private final Map<String, String> pointers = new LinkedHashMap<>();

    /**
     * The flat form of a request.
     *
     * @throws IllegalArgumentException when two components have the same bare name
     */
    public FlatForm(Class<R> type) {
        this.type = type;
        gather(Shape.of(type), "");
    }

    /** The names of the parameters. */
    public List<String> names() {
        return List.copyOf(pointers.keySet());
    }

    /**
     * Builds the request.
     *
     * @param parameters texts by name; an empty text is as if the parameter were absent
     * @throws InvalidInput with everything that is wrong; paths are names of parameters
     */
    public Bound<R> bind(Map<String, List<String>> parameters) {
        List<Problem> unknown = new ArrayList<>();
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        parameters.forEach((name, texts) -> {
            String pointer = pointers.get(name);
            if (pointer == null) {
                unknown.add(new Problem(Names.shown(name), "unknownName", Names.complaint(name, names())));
            } else {
                put(tree, pointer, texts);
            }
        });
        try {
            Bound<R> bound = Binder.bindText(type, tree);
            if (unknown.isEmpty()) {
                return bound;
            }
        } catch (InvalidInput refused) {
            refused.problems().forEach(problem -> unknown.add(named(problem)));
        }
        throw new InvalidInput(unknown);
    }

    private void gather(Shape shape, String pointer) {
        for (Shape.Part part : shape.parts()) {
            String at = part.inline() ? pointer : pointer + "/" + part.name();
            if (part.inline() || (Form.of(part.raw()) == Form.OBJECT && !Scalars.readable(part.raw()))) {
                gather(Shape.of(part.raw()), at);
            } else if (!holdsRecords(part) && pointers.put(part.name(), at) != null) {
                throw new IllegalArgumentException("%s has two components called %s".formatted(type, part.name()));
            }
        }
    }

    private static boolean holdsRecords(Shape.Part part) {
        return part.raw() == List.class && Form.of(Shape.Part.raw(Shape.Part.argument(part.type()))) == Form.OBJECT;
    }

    private static void put(ObjectNode tree, String pointer, List<String> texts) {
        List<String> given = texts.stream().filter(text -> !text.isBlank()).toList();
        if (given.isEmpty()) {
            return;
        }
        String[] names = pointer.substring(1).split("/", -1);
        ObjectNode holder = tree;
        for (int i = 0; i < names.length - 1; i++) {
            holder = holder.withObjectProperty(names[i]);
        }
        ArrayNode values = holder.putArray(names[names.length - 1]);
        given.forEach(values::add);
    }

    /** The problem under the name of the parameter that its pointer stands for. */
    private Problem named(Problem problem) {
        return pointers.entrySet().stream()
                .filter(entry -> (problem.path() + "/").startsWith(entry.getValue() + "/"))
                .findFirst()
                .map(entry -> new Problem(entry.getKey(), problem.code(), problem.message()))
                .orElse(problem);
    }
}
