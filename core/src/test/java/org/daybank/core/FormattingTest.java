package org.daybank.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No main code of library and facade formats by the locale of the machine. {@code "…".formatted(…)} uses that locale, in which
 * {@code %d} and {@code %f} may write other digits; {@code %s} of a number does not. What needs more than {@code %s} names
 * {@code Locale.ROOT}.
 */
class FormattingTest {
    private static final Pattern STRING = Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*+\"");

    /** Conversions whose output depends on the locale, with flags, width and precision. */
    private static final Pattern CONVERSION = Pattern.compile(
            "%(?:\\d+\\$)?(?:[-#+0,(]*\\d*(?:\\.\\d+)?[doxXeEfgGaAtT]|[-#+0 ,(]*\\d*(?:\\.\\d+)?[SHCB])");

    /** What stands between the name of the locale and a template. */
    private static final Pattern LOCALE_GIVEN =
            Pattern.compile("Locale\\.(?:ROOT|ENGLISH),\\s*(?:\"[^\"\n]*\"\\s*\\+\\s*)*$");

    private static final Pattern BY_DEFAULT = Pattern.compile("\\.to(?:Upper|Lower)Case\\(\\)"
            + "|\\bString\\.format\\((?!\\s*Locale\\.)"
            + "|\\.printf\\((?!\\s*Locale\\.)"
            + "|new Formatter\\(\\)|new Scanner\\(|new DecimalFormat\\(|NumberFormat\\.get\\w*\\(\\)"
            + "|new MessageFormat\\(|MessageFormat\\.format\\(|DateTimeFormatter\\.ofPattern\\(\"[^\"]*\"\\)");

    @Test
    void noMainCodeFormatsByTheLocaleOfTheMachine() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> sources = sources();
        assertThat(sources).as("sources of both modules").hasSizeGreaterThan(300);
        for (Path source : sources) {
            complaints(Files.readString(source))
                    .forEach(complaint -> found.add(source.getFileName() + ": " + complaint));
        }
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"%d rows\".formatted(3)",
                "\"%02d:%02d\".formatted(a, b)",
                "\"%.1f V\".formatted(v)",
                "\"%,d\".formatted(v)",
                "String.format(\"%s\", v)",
                "text.toUpperCase()",
                "out.printf(\"%s\", v)"
            })
    void theScanFindsWhatItForbids(String code) {
        assertThat(complaints(code)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"%s rows\".formatted(3)",
                "String.format(Locale.ROOT, \"%02d\", 3)",
                "String.format(\n  Locale.ROOT, \"%s \"\n + \"%.1f\", 3)",
                "\"2 % drop at full sun\"",
                "text.toUpperCase(Locale.ROOT)"
            })
    void theScanPassesWhatIsTheSameEverywhere(String code) {
        assertThat(complaints(code)).isEmpty();
    }

    private static List<String> complaints(String source) {
        List<String> found = new ArrayList<>();
        for (Matcher string = STRING.matcher(source); string.find(); ) {
            boolean named =
                    LOCALE_GIVEN.matcher(source.substring(0, string.start())).find();
            if (!named && CONVERSION.matcher(string.group()).find()) {
                found.add(string.group());
            }
        }
        BY_DEFAULT.matcher(source).results().forEach(match -> found.add(match.group()));
        return found;
    }

    private static List<Path> sources() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String module : List.of("core", "api")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(all::add);
            } catch (UncheckedIOException unreadable) {
                throw unreadable.getCause();
            }
        }
        return all;
    }
}
