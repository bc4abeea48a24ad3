package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the service listens, whom it answers, and how much it takes on. */
class SettingsTest {
    private static Settings read(String... arguments) {
        return Settings.read(List.of(arguments), Map.of());
    }

    @Test
    void everythingIsCloseAtHandUnlessTold() {
        Settings settings = read();
        assertThat(settings.host()).isEqualTo("127.0.0.1");
        assertThat(settings.port()).isEqualTo(8080);
        assertThat(settings.catalog()).isNull();
        assertThat(settings.apiKey()).isNull();
        assertThat(settings.corsOrigins()).isEmpty();
        assertThat(settings.heavyAtOnce()).isGreaterThanOrEqualTo(4);
        assertThat(settings.timeLimit()).isEqualTo(Duration.ofMinutes(1));
        assertThat(settings.openMetrics()).isFalse();
    }

    @Test
    void theCommandLineWinsOverTheEnvironment() {
        Map<String, String> environment = Map.of(
                "DAYBANK_HOST",
                "0.0.0.0",
                "DAYBANK_PORT",
                "9000",
                "DAYBANK_CATALOG",
                "other",
                "DAYBANK_TIME_LIMIT",
                "5");
        Settings told = Settings.read(List.of("--port", "0", "--catalog", "shelf"), environment);
        assertThat(told.host()).isEqualTo("0.0.0.0");
        assertThat(told.port()).isZero();
        assertThat(told.catalog()).isEqualTo(Path.of("shelf"));
        assertThat(told.timeLimit()).isEqualTo(Duration.ofSeconds(5));
        assertThat(Settings.read(List.of(), environment).catalog()).isEqualTo(Path.of("other"));
    }

    @Test
    void originsStandApartByCommas() {
        assertThat(read("--cors-origins", "https://plans.example, http://localhost:3000")
                        .corsOrigins())
                .containsExactly("https://plans.example", "http://localhost:3000");
        assertThat(read("--cors-origins", "*").corsOrigins()).containsExactly("*");
    }

    @Test
    void theKeyComesFromTheEnvironmentOrAFileAndIsNeverShown(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("key"), "from-a-file-0123456789\n");
        Settings fromFile = read("--api-key-file", file.toString());
        assertThat(fromFile.apiKey()).isEqualTo("from-a-file-0123456789");
        Settings fromEnvironment = Settings.read(List.of(), Map.of("DAYBANK_API_KEY", "from-the-environment-01"));
        assertThat(fromEnvironment.apiKey()).isEqualTo("from-the-environment-01");
        assertThat(fromFile.toString()).doesNotContain("from-a-file");
        assertThat(String.join("\n", fromEnvironment.told()))
                .contains("API key: asked for")
                .doesNotContain("from-the");
    }

    @Test
    void tellsEverythingThatIsWrongAtOnce() {
        assertThatThrownBy(() -> Settings.read(
                        List.of(
                                "--prot",
                                "1",
                                "--port",
                                "70000",
                                "--cors-origins",
                                "plans.example/",
                                "--heavy-at-once",
                                "0",
                                "--open-metrics",
                                "yes",
                                "--host"),
                        Map.of("DAYBANK_API_KEY", "short", "DAYBANK_TIME_LIMIT", "1 h")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'--prot' is not an option")
                .hasMessageContaining("'--host' stands without a value")
                .hasMessageContaining("--port (DAYBANK_PORT) must be a whole number from 0 to 65535, but was '70000'")
                .hasMessageContaining("--cors-origins (DAYBANK_CORS_ORIGINS) must be origins as https://plans.example")
                .hasMessageContaining("--heavy-at-once (DAYBANK_HEAVY_AT_ONCE) must be a whole number from 1 to 1000")
                .hasMessageContaining("--open-metrics (DAYBANK_OPEN_METRICS) must be true or false, but was 'yes'")
                .hasMessageContaining("--time-limit (DAYBANK_TIME_LIMIT) must be a whole number from 1 to 3600")
                .hasMessageContaining("The API key must be at least 16 printable characters")
                .hasMessageContaining("Options, each also in the environment");
    }

    @Test
    void aKeyFileThatIsNotThereOrEmptyIsNoKey(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> read("--api-key-file", folder.resolve("none").toString()))
                .hasMessageContaining("a file that can be read");
        Path empty = Files.createFile(folder.resolve("empty"));
        assertThatThrownBy(() -> read("--api-key-file", empty.toString())).hasMessageContaining("at least 16");
    }
}
