package org.daybank.core.sweep;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.schema.RecordSchema;
import org.jspecify.annotations.Nullable;

/**
 * How cases are made of the base: a tree of the records on the way to what varies, made once. Making a case calls the
 * canonical constructors on that way, so that every check is made; defaults that follow from what varies are left out in the
 * base and resolved by the calculation. Everything beside the way is the base's own.
 */
final class CasePlan {
    private final Node root;
    private final int nodes;

    private CasePlan(Node root, int nodes) {
        this.root = root;
        this.nodes = nodes;
    }

    /** A place that varies: what is left of its path, and the number of its axis. */
    private record Target(List<FieldPath.Step> rest, int axis) {}

    /**
     * Makes the tree.
     *
     * @param paths one for each axis
     * @throws PathRefused when a path leads to nothing, or into what another replaces
     */
    static CasePlan of(Record base, List<FieldPath> paths) {
        List<Target> targets = new ArrayList<>();
        for (int axis = 0; axis < paths.size(); axis++) {
            targets.add(new Target(paths.get(axis).steps(), axis));
        }
        Growth growth = new Growth();
        Node root = growth.node(base.getClass(), base, targets, "");
        return new CasePlan(root, growth.nodes);
    }

    /** Makes cases one after the other, and makes no part anew that has not changed; for one thread. */
    Maker maker() {
        return new Maker();
    }

    /** A path that cannot be varied. */
    static final class PathRefused extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        private final int axis;

        PathRefused(int axis, String message) {
            super(message);
            this.axis = axis;
        }

        int axis() {
            return axis;
        }
    }

    /** Makes cases for one thread. */
    final class Maker {
        private final @Nullable Object[] built = new @Nullable Object[nodes];
        private boolean whole;

        /**
         * The case with these values.
         *
         * @param values one for each axis
         * @param changed bit by bit, which of them are not those of the call before
         */
        Object make(Object[] values, long changed) {
            long since = whole ? changed : -1;
            // a constructor that refuses leaves parts behind that belong to no case
            whole = false;
            Object made = root.get(values, since, built);
            whole = true;
            return made;
        }
    }

    /** A part of a case. */
    private abstract static class Node {
        private final int id;
        private final long axes;

        Node(int id, long axes) {
            this.id = id;
            this.axes = axes;
        }

        Object get(Object[] values, long changed, @Nullable Object[] built) {
            Object last = built[id];
            if (last != null && (axes & changed) == 0) {
                return last;
            }
            Object made = make(values, changed, built);
            built[id] = made;
            return made;
        }

        abstract Object make(Object[] values, long changed, @Nullable Object[] built);
    }

    /** Makes the tree from the root down. */
    private static final class Growth {
        private int nodes;

        Node node(Type declared, @Nullable Object base, List<Target> targets, String at) {
            Target first = targets.get(0);
            for (Target target : targets) {
                if (target.rest().isEmpty() && targets.size() > 1) {
                    throw new PathRefused(
                            targets.get(1).axis(), "%s is varied by two axes, in whole or in part".formatted(at));
                }
            }
            if (first.rest().isEmpty()) {
                return leaf(first.axis());
            }
            if (Place.raw(declared) == Optional.class) {
                Object held = base instanceof Optional<?> optional ? optional.orElse(null) : null;
                return optional(node(Place.unwrapped(declared), held, targets, at));
            }
            if (base == null) {
                throw new PathRefused(
                        first.axis(), "there is no %s in the base, of which a part could be varied".formatted(at));
            }
            return base instanceof List<?> list ? list(list, targets, at) : record(base, targets, at);
        }

        private Node leaf(int axis) {
            return new Node(nodes++, 1L << axis) {
                @Override
                Object make(Object[] values, long changed, @Nullable Object[] built) {
                    return values[axis];
                }
            };
        }

        private Node optional(Node content) {
            return new Node(nodes++, content.axes) {
                @Override
                Object make(Object[] values, long changed, @Nullable Object[] built) {
                    return Optional.of(content.get(values, changed, built));
                }
            };
        }

        private Node list(List<?> base, List<Target> targets, String at) {
            Map<FieldPath.Step, List<Target>> groups = grouped(targets);
            @Nullable Node[] elements = new @Nullable Node[base.size()];
            groups.forEach((step, group) -> {
                if (!step.isIndex() || step.index() >= base.size()) {
                    throw new PathRefused(
                            group.get(0).axis(),
                            "%s has %s elements, from [0] to [%s]".formatted(at, base.size(), base.size() - 1));
                }
                Object element = base.get(step.index());
                elements[step.index()] = node(element.getClass(), element, group, "%s[%s]".formatted(at, step.index()));
            });
            return new Node(nodes++, axes(targets)) {
                @Override
                Object make(Object[] values, long changed, @Nullable Object[] built) {
                    List<Object> list = new ArrayList<>(base);
                    for (int i = 0; i < elements.length; i++) {
                        Node element = elements[i];
                        if (element != null) {
                            list.set(i, element.get(values, changed, built));
                        }
                    }
                    return List.copyOf(list);
                }
            };
        }

        private Node record(Object base, List<Target> targets, String at) {
            RecordSchema type = RecordSchema.of(base.getClass());
            @Nullable Object[] fixed = type.values(base);
            @Nullable Node[] parts = new @Nullable Node[fixed.length];
            grouped(targets).forEach((step, group) -> {
                int index = type.indexOf(step.name());
                RecordSchema.Component component = type.components().get(index);
                String place = at.isEmpty() ? step.name() : at + "." + step.name();
                parts[index] = node(component.type(), component.resolved(base), group, place);
            });
            return new Node(nodes++, axes(targets)) {
                @Override
                Object make(Object[] values, long changed, @Nullable Object[] built) {
                    @Nullable Object[] arguments = fixed.clone();
                    for (int i = 0; i < arguments.length; i++) {
                        Node part = parts[i];
                        if (part != null) {
                            arguments[i] = part.get(values, changed, built);
                        }
                    }
                    return type.create(arguments);
                }
            };
        }

        private static Map<FieldPath.Step, List<Target>> grouped(List<Target> targets) {
            Map<FieldPath.Step, List<Target>> groups = new LinkedHashMap<>();
            for (Target target : targets) {
                groups.computeIfAbsent(target.rest().get(0), step -> new ArrayList<>())
                        .add(new Target(target.rest().subList(1, target.rest().size()), target.axis()));
            }
            return groups;
        }

        private static long axes(List<Target> targets) {
            long bits = 0;
            for (Target target : targets) {
                bits |= 1L << target.axis();
            }
            return bits;
        }
    }
}
