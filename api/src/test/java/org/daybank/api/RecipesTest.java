package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** What the README tells to type does what it says, in the programs that are there. */
@EnabledIfSystemProperty(
        named = "daybank.recipes",
        matches = "true",
        disabledReason = "asked for by -Ddaybank.recipes=true")
class RecipesTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern BLOCK = Pattern.compile("^```(\\w*)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern TYPED = Pattern.compile("^(?:jshell>|\\s+\\.\\.\\.>) ?");

    /** The capacity of the example that every recipe asks, by hand: see ServiceTest and the README. */
    private static final String CAPACITY = "407.07";

    @AutoClose
    private static final RunningService service = new RunningService();

    @TestFactory
    Stream<DynamicTest> everyRecipeRuns() throws Exception {
        return blocks().filter(block -> block.text().contains("http://127.0.0.1:8080/"))
                .filter(block -> !block.text().contains("@year.epw")) // a file that users bring along
                .map(block -> DynamicTest.dynamicTest(block.language() + ": " + block.text(), () -> run(block)));
    }

    @Test
    void jshellAnswersWhatTheReadmeShows() throws Exception {
        Program.assumeInstalled("jshell");
        String shown = blocks().map(Block::text)
                .filter(text -> text.startsWith("jshell>"))
                .findFirst()
                .orElseThrow();
        String typed = shown.lines()
                .filter(line -> TYPED.matcher(line).find())
                .map(line -> TYPED.matcher(line).replaceFirst("") + "\n")
                .collect(Collectors.joining());
        String printed = Program.run(ROOT, typed, "jshell", "--class-path", "core/target/classes");
        List<String> answers =
                shown.lines().filter(line -> line.contains("==>")).toList();
        assertThat(answers).hasSizeGreaterThan(3);
        assertThat(answers).allSatisfy(answer -> assertThat(printed).contains(answer));
        assertThat(squeezed(printed))
                .contains(
                        squeezed(shown.substring(shown.indexOf("|  Exception"), shown.indexOf("jshell> var demand"))));
    }

    private static void run(Block block) throws Exception {
        String text = block.text()
                .replace(
                        "http://127.0.0.1:8080",
                        service.request("").build().uri().toString());
        String[] command = switch (block.language()) {
            case "sh" -> new String[] {"sh", "-e"};
            case "python" -> new String[] {Program.PYTHON, "-"};
            case "r" -> new String[] {"Rscript", "-"};
            default -> throw new AssertionError("no program for " + block.language());
        };
        Program.assumeInstalled(command[0]);
        String printed = Program.run(ROOT, text, command);
        assertThat(printed).doesNotContain("application/problem+json", "/openapi.yaml#/components/responses/");
        assertThat(printed.strip()).isNotEmpty();
        if (text.contains("dailyEnergy=2.4kWh")) {
            assertThat(printed).contains(CAPACITY);
        }
    }

    private static Stream<Block> blocks() throws Exception {
        return BLOCK.matcher(Files.readString(ROOT.resolve("README.md")))
                .results()
                .map(found -> new Block(found.group(1), found.group(2)));
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s|]", "");
    }

    private record Block(String language, String text) {}
}
