package org.daybank.api.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.Javalin;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daybank.api.Service;
import org.daybank.api.Settings;
import org.daybank.core.catalog.Catalog;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages in a real browser, on the real service, used with mouse and keyboard. */
class PagesTest {
    private static final String DESIGNED = "document.getElementById('status').textContent.startsWith('Designed')";

    private static Javalin service;
    private static Chromium browser;
    private static String origin;

    @BeforeAll
    static void start() {
        Optional<Path> program = Chromium.program();
        Assumptions.assumeTrue(
                program.isPresent(),
                "no Chromium: name one by the system property daybank.chromium or the environment variable CHROMIUM");
        service = Service.start(Settings.read(List.of("--port", "0"), Map.of()), Catalog::sample);
        origin = "http://127.0.0.1:" + service.port();
        browser = Chromium.start(program.orElseThrow());
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
        if (service != null) {
            service.stop();
        }
    }

    private static BrowserPage front(int width) {
        BrowserPage page = browser.open(width, 900);
        page.go(origin + "/");
        page.until(DESIGNED);
        return page;
    }

    private static String example(String name) {
        try (InputStream in =
                PagesTest.class.getResourceAsStream("/openapi/examples/%s.request.json".formatted(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Keeps what was seen where the system property {@code daybank.pictures} names a folder, for a person to look at. */
    private static void keep(String name, byte[] seen) {
        String folder = System.getProperty("daybank.pictures", "");
        if (!folder.isEmpty()) {
            try {
                Files.write(Path.of(folder, name), seen);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    private static void isQuiet(BrowserPage page) {
        assertThat(page.complaints()).isEmpty();
        assertThat(page.hosts()).containsExactly(origin);
    }

    private static void keepsToItsWidth(BrowserPage page) {
        JsonNode widths = page.value("[document.documentElement.scrollWidth, document.documentElement.clientWidth]");
        assertThat(widths.path(0).asInt()).isLessThanOrEqualTo(widths.path(1).asInt());
    }

    @Test
    void theFrontPageDesignsWhatItIsGiven() {
        BrowserPage page = front(1280);
        assertThat(page.value("document.querySelectorAll('#scenarios button').length")
                        .asInt())
                .isEqualTo(5);
        String sheet =
                page.value("document.querySelector('#sheet iframe').srcdoc").asText();
        assertThat(sheet).contains("<h1>Larkspur Ridge</h1>");
        // what is seen in the frame, styled
        JsonNode seen = page.valueInFrame("""
            (() => { const one = document.querySelector('h1');
            return [one.textContent, getComputedStyle(one).fontWeight, one.getBoundingClientRect().height]; })()
            """);
        assertThat(seen.path(0).asText()).isEqualTo("Larkspur Ridge");
        assertThat(seen.path(1).asText()).isEqualTo("400");
        assertThat(seen.path(2).asDouble()).isPositive();
        keep("front.png", page.picture());

        page.click("#scenarios button:nth-child(3)");
        page.until("document.querySelector('#sheet iframe').srcdoc.includes('<h1>Tern Bus')");
        page.until(DESIGNED);

        page.value("document.getElementById('brief').value = document.getElementById('brief').value.replace('Tern Bus',"
                + " '<b>Kiosk</b>')");
        page.click("#design");
        page.until("document.querySelector('#sheet iframe').srcdoc.includes('&lt;b&gt;Kiosk')");
        page.until(DESIGNED);
        page.click("#forms button[data-form=json]");
        page.until("!document.getElementById('json').hidden");
        assertThat(page.value("JSON.parse(document.getElementById('json').textContent).given.name")
                        .asText())
                .isEqualTo("<b>Kiosk</b>");
        page.click("#forms button[data-form=curl]");
        page.until("!document.getElementById('curl').hidden");
        assertThat(page.text("#curl")).contains("curl -s", origin + "/v1/system-design", "<b>Kiosk</b>");
        page.click("#forms button[data-form=java]");
        page.until("!document.getElementById('java').hidden");
        assertThat(page.text("#java")).contains("HttpRequest.newBuilder", "<b>Kiosk</b>");
        isQuiet(page);
    }

    @Test
    void theFrontPageSaysWhatIsWrong() {
        BrowserPage page = front(1280);
        page.value("document.getElementById('brief').value = document.getElementById('brief').value.replace('118 W',"
                + " '118')");
        page.click("#design");
        page.until("document.querySelector('#problems li')");
        assertThat(page.text("#problems")).contains("/loads/0/power", "the unit is missing");
        assertThat(page.hosts()).containsExactly(origin);
    }

    @Test
    void theFrontPageIsUsedByKeyboardAlone() {
        BrowserPage page = front(1280);
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < 40 && !reached.contains("json"); i++) {
            page.press("Tab");
            JsonNode focus = page.value("""
                (() => { const one = document.activeElement; const style = getComputedStyle(one);
                return [one.id || one.dataset.form || one.textContent, style.outlineStyle, style.outlineWidth]; })()
                """);
            String name = focus.path(0).asText();
            assertThat(focus.path(1).asText()).as("outline of %s", name).isEqualTo("solid");
            assertThat(focus.path(2).asText()).as("outline of %s", name).isEqualTo("3px");
            reached.add(name);
            if (name.equals("design")) {
                page.value("document.getElementById('status').textContent = ''");
                page.press("Enter");
                page.until(DESIGNED);
            }
        }
        assertThat(reached).contains("brief", "design", "sheet", "json");
        page.press("Enter");
        page.until("!document.getElementById('json').hidden");
        isQuiet(page);
    }

    @Test
    void theReferenceIsDrawnFromTheContract() {
        BrowserPage page = browser.open(1280, 900);
        page.go(origin + "/docs");
        page.until("document.querySelectorAll('.opblock').length > 20");
        assertThat(page.text("#reference")).contains("/v1/system-design", "/v1/bank-capacity");
        page.click("#operations-reference-health .opblock-summary-control");
        page.until("document.querySelector('#operations-reference-health .try-out__btn')");
        page.click("#operations-reference-health .try-out__btn");
        page.until("document.querySelector('#operations-reference-health .execute')");
        page.click("#operations-reference-health .execute");
        page.until("document.querySelector('#operations-reference-health .live-responses-table')");
        assertThat(page.text("#operations-reference-health .live-responses-table"))
                .contains("200");
        keep("docs.png", page.picture());
        isQuiet(page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"system-design", "tern-bus", "maple-street-clinic", "quarry-lane-workshop"})
    void aSheetIsReadOnASmallScreen(String example) {
        BrowserPage page = browser.open(360, 740);
        page.post(origin + "/v1/system-design.html", example(example));
        assertThat(page.text("h2")).isEqualTo("Summary");
        // the style got past the policy
        assertThat(page.value("getComputedStyle(document.querySelector('h1')).fontWeight")
                        .asText())
                .isEqualTo("400");
        keepsToItsWidth(page);
        keep("small-%s.png".formatted(example), page.picture());
        isQuiet(page);
    }

    @Test
    void theFrontPageIsReadOnASmallScreen() {
        BrowserPage page = front(360);
        for (String form : List.of("json", "curl", "java")) {
            page.click("#forms button[data-form=%s]".formatted(form));
            page.until("!document.getElementById('%s').hidden".formatted(form));
            keepsToItsWidth(page);
        }
        keep("small-front.png", page.picture());
        isQuiet(page);
    }

    @Test
    void aLoadThatLooksLikeAScriptIsRead() {
        BrowserPage page = browser.open(900, 900);
        page.post(
                origin + "/v1/system-design.html",
                example("system-design").replace("sample freezer", "<script>document.title='gone'</script>"));
        assertThat(page.value("document.title").asText()).isEqualTo("Hand-over sheet: Larkspur Ridge");
        assertThat(page.text("main")).contains("<script>document.title='gone'</script>");
        assertThat(page.value("document.scripts.length").asInt()).isZero();
        isQuiet(page);
    }

    /** A4 is 210 mm × 297 mm, Letter 8.5 in × 11 in; in points of 1/72 in. */
    @ParameterizedTest
    @CsvSource({"a4, 8.27, 11.69, 595, 842", "letter, 8.5, 11, 612, 792"})
    void aSheetIsPrinted(String paper, double width, double height, int points, int pointsHigh) {
        BrowserPage page = browser.open(900, 900);
        page.post(origin + "/v1/system-design.html", example("system-design"));
        byte[] pdf = page.print(width, height);
        String text = new String(pdf, StandardCharsets.ISO_8859_1);

        Matcher box = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)]").matcher(text);
        assertThat(box.find()).isTrue();
        // the paper is told in hundredths of an inch, so within a point
        assertThat(Double.parseDouble(box.group(1))).isCloseTo(points, within(1.0));
        assertThat(Double.parseDouble(box.group(2))).isCloseTo(pointsHigh, within(1.0));
        // a browser scales down what is wider than the paper: nothing is, between margins of 15 mm at 96 pixels an inch
        BrowserPage laidOut = browser.open((int) (width * 96 - 2 * 15 / 25.4 * 96), 900);
        laidOut.asPaper();
        laidOut.post(origin + "/v1/system-design.html", example("system-design"));
        keepsToItsWidth(laidOut);
        keep("sheet-%s.pdf".formatted(paper), pdf);
    }
}
