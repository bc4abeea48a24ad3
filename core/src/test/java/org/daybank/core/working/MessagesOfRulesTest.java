package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every rule and every hazard has its sentences and its source, and no sentence is left over. */
class MessagesOfRulesTest {
    private static final List<Rule> RULES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("org.daybank.core").stream()
                    .filter(type -> type.isAssignableTo(Rule.class) && type.isEnum())
                    .map(JavaClass::reflect)
                    .flatMap(type -> Arrays.stream(type.getEnumConstants()))
                    .map(Rule.class::cast)
                    .toList();

    @Test
    void thereAreRulesOfEveryFamily() {
        assertThat(RULES.stream().map(Rule::family))
                .contains("bank", "controller", "inverter", "gridInverter", "wiring", "generator", "grid", "design");
    }

    @Test
    void everyRuleHasASentenceForWhenItFailsAndASource() {
        Set<String> keys = MessageTemplates.ENGLISH.keys();
        assertThat(RULES).allSatisfy(rule -> {
            assertThat(keys).contains("check.%s.%s.failed".formatted(rule.family(), rule.code()));
            assertThat(rule.source()).isNotBlank();
        });
    }

    @Test
    void everyHazardHasItsSentencesAndASource() {
        Set<String> keys = MessageTemplates.ENGLISH.keys();
        assertThat(HazardCode.values()).allSatisfy(code -> {
            assertThat(keys).anyMatch(key -> key.startsWith("hazard.%s.text".formatted(code.code())));
            assertThat(keys).anyMatch(key -> key.startsWith("hazard.%s.action".formatted(code.code())));
            assertThat(code.source()).isNotBlank();
        });
    }

    @Test
    void noSentenceBelongsToARuleOrHazardThatDoesNotExist() {
        Set<String> known = RULES.stream()
                .map(rule -> "check.%s.%s".formatted(rule.family(), rule.code()))
                .collect(Collectors.toCollection(TreeSet::new));
        Arrays.stream(HazardCode.values()).map(code -> "hazard." + code.code()).forEach(known::add);
        assertThat(MessageTemplates.ENGLISH.keys())
                .filteredOn(key -> !key.startsWith("phrase.") && !key.equals("check.nearest"))
                .allSatisfy(key -> assertThat(known).anyMatch(prefix -> key.startsWith(prefix + ".")));
    }
}
