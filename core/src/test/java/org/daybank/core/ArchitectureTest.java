package org.daybank.core;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.daybank.core.quantity.Power;
import org.junit.jupiter.api.Test;

/** Holds the order of the rooms: data flows one way, and nothing reaches outside the library. */
@AnalyzeClasses(packages = "org.daybank.core", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String ROOT = "org.daybank.core.";

    /** Each room may use the rooms before it, and no others. */
    private static final List<String> ROOMS = List.of(
            "quantity",
            "schema",
            "working",
            "site",
            "sun",
            "load",
            "bank",
            "array",
            "charger",
            "inverter",
            "wiring",
            "simulation",
            "generator",
            "grid",
            "catalog",
            "design",
            "sweep");

    @ArchTest
    static final ArchRule ROOMS_ARE_FREE_OF_CYCLES =
            slices().matching(ROOT + "(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule CORE_USES_NOTHING_BUT_THE_JDK = ArchRuleDefinition.classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "org.daybank.core..",
                    "java.lang..",
                    "java.util..",
                    "java.math..",
                    "java.time..",
                    "java.io..",
                    "java.nio.charset..",
                    "java.text..",
                    "javax.annotation.processing..",
                    "org.jspecify.annotations..",
                    "io.soabase.recordbuilder.core..")
            .because("core has no runtime dependency and does no input or output but reading text");

    @ArchTest
    static void arrowsGoDownTheTableOnly(com.tngtech.archunit.core.domain.JavaClasses classes) {
        for (int i = 0; i < ROOMS.size(); i++) {
            Set<String> allowed = Set.copyOf(ROOMS.subList(0, i + 1));
            String room = ROOMS.get(i);
            ArchRuleDefinition.noClasses()
                    .that()
                    .resideInAPackage(ROOT + room + "..")
                    .should()
                    .dependOnClassesThat(new DescribedPredicate<JavaClass>("live in a room after " + room) {
                        @Override
                        public boolean test(JavaClass used) {
                            return used.getPackageName().startsWith(ROOT) && !allowed.contains(roomOf(used));
                        }
                    })
                    .allowEmptyShould(true)
                    .check(classes);
        }
    }

    @Test
    void exportsExactlyTheRoomsThatExist() throws Exception {
        URI classes =
                Power.class.getProtectionDomain().getCodeSource().getLocation().toURI();
        try (InputStream compiled = Files.newInputStream(Path.of(classes).resolve("module-info.class"))) {
            ModuleDescriptor module = ModuleDescriptor.read(compiled);
            Set<String> exported = module.exports().stream()
                    .map(ModuleDescriptor.Exports::source)
                    .map(name -> name.substring(ROOT.length()))
                    .collect(Collectors.toSet());
            assertThat(ROOMS).containsAll(exported);
            assertThat(exported).contains("quantity", "working", "bank");
            assertThat(module.requires())
                    .filteredOn(required -> !required.modifiers().contains(ModuleDescriptor.Requires.Modifier.STATIC))
                    .extracting(ModuleDescriptor.Requires::name)
                    .containsExactly("java.base");
        }
    }

    private static String roomOf(JavaClass used) {
        String rest = used.getPackageName().substring(ROOT.length());
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }
}
