package org.daybank.core.array;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * A string of modules in series, not all alike or not all in the same light. Their order does not matter.
 *
 * @param modules in groups that are alike
 */
public record StringInSun(List<ModuleInSun> modules) {
    private static final int MOST_GROUPS = 50;

    /**
     * Validation the groups.
     *
     * @throws org.daybank.core.schema.InvalidInput when there are none or too many, or a name occurs twice
     */
    public StringInSun {
        Validation checks = new Validation().notEmpty("modules", modules);
        Set<String> names = new HashSet<>();
        if (modules != null) {
            checks.that(
                    modules.size() <= MOST_GROUPS,
                    "modules",
                    ProblemCode.OUT_OF_RANGE,
                    "modules must be at most %d groups but were %s.".formatted(MOST_GROUPS, modules.size()));
            for (int i = 0; i < modules.size(); i++) {
                ModuleInSun group = modules.get(i);
                checks.that(
                        group == null || names.add(group.name()),
                        "modules/" + i + "/name",
                        ProblemCode.CONFLICT,
                        () -> "name %s occurs twice".formatted(group.name()));
            }
        }
        checks.done();
        modules = List.copyOf(modules);
    }
}
