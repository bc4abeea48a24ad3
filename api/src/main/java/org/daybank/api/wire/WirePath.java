package org.daybank.api.wire;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daybank.core.sweep.FieldPath;
import org.jspecify.annotations.Nullable;

/**
 * A place in a record as the wire names it, {@code loads[3].power}: members joined by points, elements of arrays by index in
 * brackets. Members of inlined components stand at the level of the record that holds them.
 *
 * @param members names of members and indices, in order
 * @param components the same place by components of the record, inlined ones included
 * @param type declared type of what stands there
 */
public record WirePath(List<Member> members, String components, Type type) {
    /**
     * One step.
     *
     * @param name of a member, or the index of an element
     * @param required whether what holds it cannot be built without it
     */
    public record Member(String name, boolean required) {}

    /** Keeps a copy. */
    public WirePath {
        members = List.copyOf(members);
    }

    /**
     * Follows a path through a record type.
     *
     * @throws IllegalArgumentException when it leads nowhere; the message names what is near
     */
    public static WirePath of(Class<? extends Record> root, String text) {
        Walk walk = new Walk(root);
        FieldPath.parse(text).steps().forEach(walk::step);
        return new WirePath(walk.members, walk.components.toString(), walk.type);
    }

    /** Goes from member to member. */
    private static final class Walk {
        private final List<Member> members = new ArrayList<>();
        private final StringBuilder components = new StringBuilder();
        private Type type;

        Walk(Type root) {
            this.type = root;
        }

        void step(FieldPath.Step step) {
            if (Shape.Part.raw(type) == Optional.class) {
                type = Shape.Part.argument(type);
            }
            if (step.isIndex()) {
                index(step.index());
            } else {
                name(step.name());
            }
        }

        private void index(int index) {
            if (Shape.Part.raw(type) != List.class) {
                throw new IllegalArgumentException("[%s] stands after what is not a list".formatted(index));
            }
            components.append('[').append(index).append(']');
            type = Shape.Part.argument(type);
            members.add(new Member(String.valueOf(index), true));
        }

        private void name(String name) {
            Class<?> raw = Shape.Part.raw(type);
            if (!raw.isRecord() || Form.of(raw) != Form.OBJECT) {
                throw new IllegalArgumentException("'%s' leads on from what has no members".formatted(name));
            }
            Shape shape = Shape.of(raw);
            Shape.Part part = member(shape, name);
            if (part == null) {
                throw new IllegalArgumentException(Names.complaint(name, shape.names()));
            }
            type = part.type();
            members.add(new Member(name, !part.mayBeAbsent()));
        }

        private Shape.@Nullable Part member(Shape shape, String name) {
            for (Shape.Part part : shape.parts()) {
                boolean inside = part.inline() && Shape.of(part.raw()).names().contains(name);
                if (inside || (!part.inline() && part.name().equals(name))) {
                    components.append(components.length() == 0 ? "" : ".").append(part.name());
                    return inside ? member(Shape.of(part.raw()), name) : part;
                }
            }
            return null;
        }
    }
}
