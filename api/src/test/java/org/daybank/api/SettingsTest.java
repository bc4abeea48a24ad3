package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Where the service listens. */
class SettingsTest {
    @Test
    void listensOnTheMachineItselfUnlessTold() {
        assertThat(Settings.read(List.of(), Map.of())).isEqualTo(new Settings("127.0.0.1", 8080, null));
    }

    @Test
    void theCommandLineWinsOverTheEnvironment() {
        Map<String, String> environment = Map.of("DAYBANK_HOST", "0.0.0.0", "DAYBANK_PORT", "9000");
        assertThat(Settings.read(List.of(), environment)).isEqualTo(new Settings("0.0.0.0", 9000, null));
        assertThat(Settings.read(List.of("--port", "0"), environment)).isEqualTo(new Settings("0.0.0.0", 0, null));
    }

    @Test
    void theCatalogueIsAFileOrAFolder() {
        assertThat(Settings.read(List.of("--catalog", "shelf"), Map.of("DAYBANK_CATALOG", "other"))
                        .catalog())
                .isEqualTo(Path.of("shelf"));
        assertThat(Settings.read(List.of(), Map.of("DAYBANK_CATALOG", "other")).catalog())
                .isEqualTo(Path.of("other"));
    }

    @Test
    void saysWhatItTakes() {
        assertThatThrownBy(() -> Settings.read(List.of("--prot", "1"), Map.of()))
                .hasMessageContaining("'--prot' is not an option")
                .hasMessageContaining("--port");
        assertThatThrownBy(() -> Settings.read(List.of("--port"), Map.of())).hasMessageContaining("without a value");
        assertThatThrownBy(() -> Settings.read(List.of("--port", "70000"), Map.of()))
                .hasMessageContaining("from 0 to 65535 but is '70000'");
        assertThatThrownBy(() -> Settings.read(List.of(), Map.of("DAYBANK_PORT", "http")))
                .hasMessageContaining("'http'");
    }
}
