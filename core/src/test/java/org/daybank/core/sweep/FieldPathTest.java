package org.daybank.core.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldPathTest {
    @ParameterizedTest
    @CsvSource({
        "power, power",
        "loads[3].power, loads 3 power",
        "a[0][12].b_2.C, a 0 12 b_2 C",
        "numbers[999999], numbers 999999"
    })
    void stepsAreNamesAndIndices(String text, String steps) {
        assertThat(FieldPath.parse(text).steps().stream()
                        .map(step -> step.isIndex() ? String.valueOf(step.index()) : step.name())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(steps);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                "a.",
                ".a",
                "a..b",
                "1a",
                "_a",
                "a[",
                "a[]",
                "a[1",
                "a]",
                "a[1]b",
                "a[1].",
                "[0]",
                "a.[0]",
                "a b",
                "a[-1]",
                "a[1234567]",
                "a[1]]",
                "ä",
                "a-b",
                "a[x]",
                "a[0",
                "a.0",
                "a[٣]"
            })
    void whatIsNoPathIsRefusedWithAnExample(String text) {
        assertThatThrownBy(() -> FieldPath.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is not a path: write names joined by points and indices in brackets");
    }

    /** Long ones used to exhaust the stack. */
    @Test
    void aPathHasAtMostTwoHundredCharacters() {
        assertThat(FieldPath.parse("a" + ".a".repeat(99)).steps()).hasSize(100);
        assertThat(FieldPath.parse("a" + "[0]".repeat(66)).steps()).hasSize(67);
        for (String step : new String[] {".a", "[0]", "a"}) {
            assertThatThrownBy(() -> FieldPath.parse("a" + step.repeat(200_000)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must have at most 200 characters")
                    .extracting(refused -> String.valueOf(refused.getMessage()).length())
                    .isEqualTo("a path must have at most 200 characters, but '' has ".length()
                            + 41
                            + String.valueOf(1 + 200_000 * step.length()).length());
        }
    }
}
