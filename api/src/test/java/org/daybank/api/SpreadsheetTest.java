package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    private static final Pattern ROW = Pattern.compile("\"([^\"]*)\",(?:\"((?:[^\"]|\"\")*)\"|([^,]*)),.*");

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void sheetShowsWhatTheServiceAnswers(@TempDir Path folder) throws Exception {
        Program.assumeInstalled("soffice");
        Program.run(
                Path.of("."),
                "",
                "/usr/bin/python3",
                "src/sheet/recalculate.py",
                SHEET.toString(),
                address(),
                folder.toString());
        List<String> rows = Files.readAllLines(folder.resolve("sheet.csv"));

        JsonNode result = RunningService.json(service.get("/v1/bank-capacity" + cell(rows, "query")))
                .at("/result/capacity");
        double required = result.at("/requiredCapacity/value").doubleValue();
        assertThat(number(rows, "required capacity")).isEqualTo(required);
        assertThat(number(rows, "the same in kAh")).isEqualTo(required / 1000);
        assertThat(number(rows, "charge of the autonomy"))
                .isEqualTo(result.at("/autonomyCharge/value").doubleValue());
        assertThat(number(rows, "voltage of the cells"))
                .isEqualTo(result.at("/trueNominal/value").doubleValue());
        assertThat(cell(rows, "what decides"))
                .isEqualTo(result.path("governing").asText());
        assertThat(cell(rows, "with a mistake")).startsWith("#ERR ").contains("in", "kW.h");
    }

    private static String address() {
        return service.request("").build().uri().toString();
    }

    private static double number(List<String> rows, String label) {
        return Double.parseDouble(cell(rows, label));
    }

    private static String cell(List<String> rows, String label) {
        for (String row : rows) {
            Matcher cells = ROW.matcher(row);
            if (cells.matches() && cells.group(1).equals(label)) {
                return cells.group(2) == null ? cells.group(3) : cells.group(2).replace("\"\"", "\"");
            }
        }
        throw new AssertionError("no row " + label + " in " + rows);
    }
}
