package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a spreadsheet asks, which knows GET alone. */
class FlatFormsServiceTest {
    private static final String BANK = "/v1/bank-capacity";
    private static final String QUERY =
            "?dailyEnergy=2.4kWh&nominalVoltage=24V&chemistry=lithiumIronPhosphate&lowest=10Cel&autonomy=3d&depthOfDischarge=80%25";
    private static final String FREEZER = "?name=freezer&kind=compressor&power=85W&hoursPerDay=24&dutyCycle=35%25";
    private static final String RUN =
            "?name=array%20run&kind=arrayToController&operatingVoltage=93.6V&operatingCurrent=26.28A&designCurrent=27.8A"
                    + "&highestVoltage=127.6V&length=38m";

    @AutoClose
    private static final RunningService service = new RunningService();

    private static String text(String path) {
        HttpResponse<String> answer = service.get(path);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer.body();
    }

    private static double number(String path) {
        return Double.parseDouble(text(path));
    }

    @Test
    void tellsTheEnergyOfOneLoad() {
        // 85 W · 24 h · 0.35 = 714 Wh at the load
        assertThat(number("/v1/energy-budget/months.0.acEnergy.txt" + FREEZER)).isCloseTo(714, within(1e-9));
        assertThat(number("/v1/energy-budget/table.0.dailyEnergy.txt" + FREEZER + "&in=kWh"))
                .isCloseTo(0.714, within(1e-12));
        assertThat(number("/v1/energy-budget/peak.running.txt" + FREEZER)).isEqualTo(85);
        assertThat(text("/v1/energy-budget/months.11.month.txt" + FREEZER)).isEqualTo("december");
    }

    @Test
    void tellsTheConductorOfOneCircuit() {
        // two ways of 38 m at 26.28 A within 2 % of 93.6 V: at 0.0178 Ω mm²/m (copper at 25 °C) some 19 mm², so 25 mm²
        assertThat(text("/v1/wiring/circuits.0.conductors.size.crossSection.txt" + RUN))
                .isEqualTo("25");
        assertThat(text("/v1/wiring/circuits.0.governing.txt" + RUN)).isEqualTo("drop");
        assertThat(text("/v1/wiring/fits.txt" + RUN)).isEqualTo("true");
    }

    @Test
    void tellsATableWithUnitsInTheNamesOfColumns() {
        List<String> lines = text(BANK + ".csv" + QUERY).lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("trueNominal_V,autonomyCharge_Ah,byDepth_Ah,");
        // 2400 Wh · 3 d / 25.6 V = 281.25 Ah; / 0.8 = 351.5625 Ah
        assertThat(lines.get(1)).startsWith("25.6,281.25,351.5625,");
        assertThat(text("/v1/energy-budget.csv" + FREEZER).lines()).hasSize(13);
    }

    @Test
    void anElementBeyondTheEndOfAListIsNothing() {
        assertThat(text(BANK + "/layouts.ranked.999.product.txt" + QUERY)).isEmpty();
        assertThat(text("/v1/charge-settings/floating.txt"
                        + "?chemistry=lithiumIronPhosphate&nominalVoltage=24V&coldest=5Cel&hottest=30Cel"))
                .isEmpty();
    }

    @Test
    void choosesTheFormByAccept() {
        assertThat(service.get(BANK + QUERY, "Accept", "text/csv").body()).isEqualTo(text(BANK + ".csv" + QUERY));
        HttpResponse<String> preferred = service.get(BANK + QUERY, "Accept", "application/json;q=0.5, text/*;q=0.7");
        assertThat(preferred.headers().firstValue("Content-Type")).hasValue("text/csv; charset=utf-8");
        assertThat(preferred.headers().firstValue("Vary")).hasValue("Accept");
        assertThat(service.get(BANK + QUERY, "Accept", "text/html, */*;q=0.1").body())
                .startsWith("{");
        assertThat(service.get(BANK + QUERY, "Accept", "application/json;q=0, */*")
                        .body())
                .startsWith("trueNominal");
        Refusal.document(service.get(BANK + QUERY, "Accept", "image/png"), 406);
        Refusal.document(service.get(BANK + QUERY, "Accept", "*/*;q=0"), 406);
    }

    @Test
    void aSheetComesWhereAcceptPrefersHtml() throws Exception {
        String brief = Files.readString(Path.of("..", "openapi", "examples", "tern-shelter.request.json"));
        HttpRequest.Builder asked = service.request(
                        "/v1/system-design", "Content-Type", "application/json", "Accept", "text/html")
                .POST(HttpRequest.BodyPublishers.ofString(brief));
        HttpResponse<String> page = service.send(asked);
        assertThat(page.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("text/html"));
        assertThat(page.body())
                .isEqualTo(service.post("/v1/system-design.html", brief).body());
        assertThat(service.post("/v1/system-design", brief).headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/json"));
    }

    @Test
    void marksTheTableOnlyWhenAsked() {
        assertThat(text(BANK + ".csv" + QUERY + "&bom=1")).isEqualTo("\uFEFF" + text(BANK + ".csv" + QUERY));
        Refusal.document(service.get(BANK + QUERY + "&bom=1"), 400);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dailyEnergy=2,4kWh              | dailyEnergy: '2,4kWh'  | the decimal sign is a point, not a comma",
                "dailyEnergy=2.4                 | dailyEnergy            | the unit is missing",
                "depthOfDischarge=80,5%25        | depthOfDischarge       | the decimal sign is a point, not a comma",
                "designMargin=0,1                | designMargin           | the decimal sign is a point, not a comma",
                "autonomy=0d                     | autonomy must be       | from 2.4 h to 60 d, but was 0 h.",
                "lowest=10Cel&lowest=12Cel       | lowest                 | one value is expected but there are 2",
                "autonomi=3d                     | 'autonomi'             | 'autonomy'",
                "in=kA.h&in=A.h                  | in:                    | one value is expected but there are 2",
                "working=1                       | 'working'              | is not known here",
            })
    void errorsStandInTheCellWhenAsked(String wrong, String name, String reason) {
        String query = "?nominalVoltage=24V&chemistry=lithiumIronPhosphate&errors=inline&" + wrong
                + (wrong.startsWith("dailyEnergy") ? "" : "&dailyEnergy=2.4kWh")
                + (wrong.startsWith("lowest") ? "" : "&lowest=10Cel");
        assertThat(text(BANK + "/requiredCapacity.txt" + query))
                .startsWith("ERROR: ")
                .contains(name, reason)
                .doesNotContain("\n");
        Refusal.document(service.get(BANK + "/requiredCapacity.txt" + query.replace("&errors=inline", "")), 400);
    }

    @Test
    void errorsOfEveryKindStandInTheCell() {
        assertThat(text(BANK + "/capacity.txt" + QUERY + "&errors=inline"))
                .startsWith("ERROR: No such figure; there are ");
        assertThat(text(BANK + ".csv?errors=inline")).startsWith("ERROR: ").contains("dailyEnergy is required.");
        assertThat(text(BANK + "?errors=inline")).startsWith("ERROR: ").contains("chemistry is required.");
        assertThat(text(BANK + "/requiredCapacity.txt" + QUERY + "&errors=inline"))
                .isEqualTo(text(BANK + "/requiredCapacity.txt" + QUERY));
        assertThat(Refusal.document(service.get(BANK + QUERY + "&errors=hidden"), 400)
                        .at("/errors/0/parameter")
                        .asText())
                .isEqualTo("errors");
    }

    @Test
    void readsNumbersAndFlagsAsSpreadsheetsWriteThem() {
        assertThat(text(BANK + "/autonomyCharge.txt" + QUERY.replace("2.4kWh", "2.4e%2B00%20kW.h")))
                .isEqualTo("281.25");
        assertThat(number(BANK + "/surgeCharge.txt".replace("surgeCharge", "bySurge") + QUERY + "&surgeCurrent=1e-05A"))
                .isGreaterThanOrEqualTo(0);
        assertThat(text("/v1/energy-budget/table.0.name.txt" + FREEZER + "&essential=TRUE&selfSwitching=True"))
                .isEqualTo("freezer");
    }

    @ParameterizedTest
    @CsvSource({"W/,", "'\"other\", ',", "'',' , \"other\"'"})
    void anUnchangedAnswerIsNotSentAgain(String before, String after) {
        String path = BANK + ".csv" + QUERY;
        String tag = service.get(path).headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> again = service.get(path, "If-None-Match", before + tag + (after == null ? "" : after));
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(again.headers().firstValue("ETag")).hasValue(tag);
        assertThat(service.get(path, "If-None-Match", "*").statusCode()).isEqualTo(304);
        assertThat(service.get(path, "If-None-Match", tag.replaceFirst("\"$", "x\""))
                        .statusCode())
                .isEqualTo(200);
        assertThat(service.get(path.replace("2.4kWh", "2.5kWh"), "If-None-Match", tag)
                        .statusCode())
                .isEqualTo(200);
    }
}
