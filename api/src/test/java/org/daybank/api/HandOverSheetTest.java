package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page that is handed over says what the JSON of the same design says. */
class HandOverSheetTest {
    private static final String PATH = "/v1/system-design";
    private static final List<String> ALWAYS =
            List.of("Summary", "Parts", "One-line diagram", "The year", "Wiring schedule", "Hazards", "Assumptions");

    @AutoClose
    private static final RunningService service = new RunningService();

    private static String brief(String name) {
        return service.get("/v1/examples/" + name).body();
    }

    private static String sheet(String brief) {
        HttpResponse<String> page = service.post(PATH + ".html", brief);
        assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
        assertThat(page.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type.replace(" ", "")).isEqualTo("text/html;charset=utf-8"));
        return page.body();
    }

    /** A sheet without markup, as one line. */
    private static String text(String sheet) {
        return sheet.replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"system-design", "tern-bus", "tern-shelter", "maple-street-clinic", "quarry-lane-workshop"})
    void holdsWhatTheDesignHolds(String example) {
        String brief = brief(example);
        String sheet = sheet(brief);
        String text = text(sheet);
        JsonNode answer = RunningService.json(service.post(PATH + "?working=true", brief));
        JsonNode result = answer.path("result");

        // a sheet is sent by mail and printed in the field
        assertThat(sheet.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(300_000);
        assertThat(headings(sheet)).containsAll(ALWAYS);
        for (JsonNode line : result.at("/billOfMaterials/lines")) {
            assertThat(text)
                    .contains(line.path("product").asText())
                    .contains(line.at("/price/amount").asText());
        }
        assertThat(text).contains(result.at("/billOfMaterials/total/amount").asText() + " EUR");
        for (JsonNode circuit : result.at("/wiring/circuits")) {
            assertThat(text)
                    .contains(circuit.path("name").asText())
                    .contains(circuit.at("/conductors/size/size").asText());
        }
        for (JsonNode hazard : answer.path("hazards")) {
            assertThat(text).contains(hazard.path("text").asText());
        }
        for (JsonNode step : answer.at("/working/steps")) {
            assertThat(text).contains(step.path("result").asText());
        }
        for (JsonNode rejected : result.findValues("rejected")) {
            rejected.forEach(product -> product.path("failedChecks")
                    .forEach(rule -> assertThat(text)
                            .contains(product.path("product").asText())
                            .contains(rule.path("message").asText())));
        }
        for (JsonNode assumption : answer.path("assumptions")) {
            assertThat(text)
                    .contains(assumption.path("path").asText().substring(1).replace("/", " › "));
        }
    }

    private static List<String> headings(String sheet) {
        Matcher heading = Pattern.compile("<h2>(.*?)</h2>").matcher(sheet);
        return heading.results().map(found -> found.group(1)).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"system-design", "tern-bus", "maple-street-clinic", "quarry-lane-workshop"})
    void loadsNothingAndRunsNothing(String example) {
        HttpResponse<String> page = service.post(PATH + ".html", brief(example));
        assertThat(page.body())
                .doesNotContain("<script", "<link", "<img", "<iframe", "@import", "url(http", "src=", "http:", "https:")
                .doesNotContainPattern(" on[a-z]+=")
                .doesNotContainPattern(" style=")
                // a figure that found no place in its sentence
                .doesNotContainPattern("%[sd]\\b");
        assertThat(page.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy).startsWith("default-src 'none'; style-src 'sha256-"));
    }

    @Test
    void everyDrawingIsToldInWords() {
        for (String example : List.of("system-design", "quarry-lane-workshop")) {
            Matcher drawing = Pattern.compile("(?s)<svg.*?</svg>").matcher(sheet(brief(example)));
            assertThat(drawing.results())
                    .isNotEmpty()
                    .allSatisfy(found -> assertThat(found.group())
                            .contains("role=\"img\"", "aria-labelledby")
                            .containsPattern("<title id=\"[\\w-]+\">.{5,}</title>")
                            .containsPattern("<desc id=\"[\\w-]+\">.{15,}</desc>"));
        }
    }

    @Test
    void whatABriefSaysStaysText() {
        String evil = "<script>alert(1)</script>\" onload=\"alert(2)&amp;";
        ObjectNode brief = (ObjectNode) RunningService.json(brief("system-design"));
        brief.put("name", evil);
        ((ObjectNode) brief.path("loads").path(0)).put("name", evil);
        String sheet = sheet(brief.toString());
        assertThat(sheet)
                .doesNotContain("<script", "\" onload")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot; onload=&quot;alert(2)&amp;amp;");
        assertThat(text(sheet)).contains(evil);
    }

    @Test
    void anIncompleteDesignSaysWhatIsMissing() {
        String brief = brief("system-design").replace("730 W", "60 kW");
        String sheet = sheet(brief);
        JsonNode result = RunningService.json(service.post(PATH, brief)).path("result");
        assertThat(headings(sheet))
                .contains("Summary", "What is required.", "What was asked", "The year", "Assumptions")
                .doesNotContain("Parts", "One-line diagram", "Settings");
        String text = text(sheet);
        assertThat(result.at("/missing")).hasSize(3);
        for (JsonNode reason : result.path("missing").findValues("message")) {
            assertThat(text).contains(reason.asText());
        }
    }

    @Test
    void nothingOnOfferIsToldAsWell() {
        ObjectNode brief = (ObjectNode) RunningService.json(brief("quarry-lane-workshop"));
        ObjectNode catalog = (ObjectNode) RunningService.json(service.get("/v1/catalog"));
        catalog.properties().forEach(kind -> catalog.putArray(kind.getKey()));
        brief.set("catalog", catalog);
        assertThat(headings(sheet(brief.toString())))
                .contains("What is required.")
                .doesNotContain("Parts");
    }

    @Test
    void equalisesVentedCellsAlone() {
        String brief = brief("system-design");
        assertThat(text(sheet(brief))).contains("Equalisation off");
        ObjectNode vented = (ObjectNode) RunningService.json(brief);
        vented.putObject("wishes").putArray("chemistries").add("ventedLeadAcid");
        String settings = text(sheet(vented.toString()));
        JsonNode design = RunningService.json(service.post(PATH, vented.toString()));
        double volts = design.at("/result/chargeSettings/equalisation/value").asDouble();
        Matcher shown = Pattern.compile("Equalisation ([0-9.]+) V").matcher(settings);
        assertThat(shown.find()).isTrue();
        assertThat(settings).contains("at 25 °C, every 30 d", "Equalisation time 2 h");
        // shown to four digits
        assertThat(Double.parseDouble(shown.group(1))).isCloseTo(volts, within(0.01));
    }

    @Test
    void loadsThatAreNotBackedUpAreNotInTheBudget() {
        // the essential loads last, so that their place in the brief is not their place in the budget
        ObjectNode brief = (ObjectNode) RunningService.json(brief("maple-street-clinic"));
        List<JsonNode> loads = new ArrayList<>();
        brief.path("loads").forEach(loads::add);
        loads.sort(Comparator.comparing(load -> load.path("essential").asBoolean()));
        brief.putArray("loads").addAll(loads);
        String text = text(sheet(brief.toString()));
        // 5 workstations are not essential; the rack is: 95 W all day
        assertThat(text).containsPattern("workstation electronics AC 5 × 110 W not backed up no");
        assertThat(text).contains("network rack electronics AC 1 × 95 W 2.28 kWh yes");
    }

    @Test
    void refusesWhatTheOtherFormRefuses() {
        String refused = brief("system-design").replace("730 W", "730");
        JsonNode page = Refusal.document(service.post(PATH + ".html", refused), 400);
        assertThat(page.path("errors"))
                .isEqualTo(Refusal.document(service.post(PATH, refused), 400).path("errors"));
        Refusal.document(service.post(PATH + ".html?working=true", brief("system-design")), 400);
        Refusal.document(service.get(PATH + ".html"), 405);
    }
}
