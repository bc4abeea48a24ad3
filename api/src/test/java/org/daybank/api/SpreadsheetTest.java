package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** LibreOffice fills the example sheet from the service, down to the figures that the service answers. */
@EnabledIfSystemProperty(
        named = "daybank.sheet",
        matches = "true",
        disabledReason = "asked for by -Ddaybank.sheet=true")
class SpreadsheetTest {
    private static final Path SHEET = Path.of("..", "openapi", "examples", "bank-sheet.fods");
    /** LibreOffice writes fifteen digits of a number. */
    private static final Percentage WRITTEN = withPercentage(1e-12);

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void sheetShowsWhatTheServiceAnswers(@TempDir Path folder) throws Exception {
        Program.assumeInstalled("soffice");
        Program.run(
                Path.of("."),
                "",
                Program.PYTHON,
                "src/sheet/recalculate.py",
                SHEET.toString(),
                address(),
                folder.toString());
        List<String> rows = Files.readAllLines(folder.resolve("sheet.csv"));

        JsonNode result = RunningService.json(service.get("/v1/bank-capacity" + cell(rows, "query")))
                .path("result");
        double required = result.at("/requiredCapacity/value").doubleValue();
        assertThat(number(rows, "required capacity")).isCloseTo(required, WRITTEN);
        assertThat(number(rows, "the same in kAh")).isCloseTo(required / 1000, WRITTEN);
        assertThat(number(rows, "charge of the autonomy"))
                .isCloseTo(result.at("/autonomyCharge/value").doubleValue(), WRITTEN);
        assertThat(number(rows, "voltage of the cells"))
                .isCloseTo(result.at("/trueNominal/value").doubleValue(), WRITTEN);
        assertThat(cell(rows, "what decides"))
                .isEqualTo(result.path("governing").asText());
        assertThat(cell(rows, "with a mistake")).startsWith("ERROR: in: ").contains("kA.h");
    }

    private static String address() {
        return service.request("").build().uri().toString();
    }

    private static double number(List<String> rows, String label) {
        return Double.parseDouble(cell(rows, label));
    }

    /** The second cell of the row that begins with a label; in quotes where the text has a comma in it. */
    private static String cell(List<String> rows, String label) {
        String rest = rows.stream()
                .filter(row -> row.startsWith(label + ","))
                .map(row -> row.substring(label.length() + 1))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + label + " in " + rows));
        return rest.startsWith("\"") ? rest.substring(1, rest.indexOf('"', 1)) : rest.substring(0, rest.indexOf(','));
    }
}
