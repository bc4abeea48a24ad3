package org.daybank.core.array;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daybank.core.working.Validation;

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
     * @throws org.daybank.core.working.InvalidInput when there are none or too many, or a name occurs twice
     */
    public StringInSun {
        Validation checks = new Validation().notEmpty("modules", modules);
        Set<String> names = new HashSet<>();
        if (modules != null) {
            checks.that(
                    modules.size() <= MOST_GROUPS,
                    "modules",
                    "outOfRange",
                    "modules must be at most %s groups but are %s".formatted(MOST_GROUPS, modules.size()));
            for (int i = 0; i < modules.size(); i++) {
                ModuleInSun group = modules.get(i);
                checks.that(
                        group == null || names.add(group.name()),
                        "modules/" + i + "/name",
                        "conflict",
                        () -> "name %s occurs twice".formatted(group.name()));
            }
        }
        checks.done();
        modules = List.copyOf(modules);
    }
}
