package org.daybank.core.array;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * A string of modules in series, not all alike or not all in the same light. Their order does not matter.
 *
 * @param modules in groups that are alike
 */
public record StringInSun(
        @Bounds(minimumItems = 1, maximumItems = 50) List<ModuleInSun> modules) {
    /**
     * Validates the groups and keeps a copy.
     *
     * @throws org.daybank.core.schema.InvalidInput when there are none or too many, or a name occurs twice
     */
    public StringInSun {
        Validation.of(StringInSun.class, modules).done();
        modules = List.copyOf(modules);
        Validation unique = new Validation();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < modules.size(); i++) {
            String name = modules.get(i).name();
            unique.that(
                    names.add(name),
                    "modules/" + i + "/name",
                    ProblemCode.CONFLICT,
                    () -> "name %s occurs twice.".formatted(name));
        }
        unique.done();
    }
}
