package org.daybank.api.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.LockSupport;

/** A page in the browser: what it asked for, what it complained of, and hands and eyes to use it with. */
final class BrowserPage {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Chromium browser;
    private final String session;
    private final List<String> requests = new CopyOnWriteArrayList<>();
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final Map<String, String> bodies = new ConcurrentHashMap<>();

    BrowserPage(Chromium browser, String session, int width, int height) {
        this.browser = browser;
        this.session = session;
        browser.listen(this::received);
        for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
            call(domain + ".enable", Map.of());
        }
        call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    private void received(JsonNode event) {
        if (!session.equals(event.path("sessionId").asText())) {
            return;
        }
        JsonNode told = event.path("params");
        switch (event.path("method").asText()) {
            case "Network.requestWillBeSent" ->
                requests.add(told.at("/request/url").asText());
            case "Runtime.exceptionThrown" ->
                complaints.add(told.path("exceptionDetails").toString());
            case "Runtime.consoleAPICalled" -> {
                if (Set.of("error", "warning", "assert")
                        .contains(told.path("type").asText())) {
                    complaints.add(told.path("args").toString());
                }
            }
            case "Log.entryAdded" -> {
                if (told.at("/entry/level").asText().equals("error")) {
                    complaints.add(told.path("entry").toString());
                }
            }
            case "Fetch.requestPaused" -> asPost(told);
            default -> {}
        }
    }

    /** Sends a paused request on as a POST with the body laid up for it. */
    private void asPost(JsonNode paused) {
        String url = paused.at("/request/url").asText();
        String body = bodies.getOrDefault(url, "");
        // to wait for the answer here would keep it from being read
        var unused = browser.send(
                session,
                "Fetch.continueRequest",
                Map.of(
                        "requestId",
                        paused.path("requestId").asText(),
                        "method",
                        "POST",
                        "postData",
                        Base64.getEncoder().encodeToString(body.getBytes(StandardCharsets.UTF_8)),
                        "headers",
                        List.of(Map.of("name", "Content-Type", "value", "application/json"))));
    }

    private JsonNode call(String method, Map<String, ?> parameters) {
        return browser.call(session, method, parameters);
    }

    void go(String url) {
        call("Page.navigate", Map.of("url", url));
        until("document.readyState === 'complete' && location.href !== 'about:blank'");
    }

    /** Goes to a page that is answered to a POST of JSON. */
    void post(String url, String body) {
        bodies.put(url, body);
        call("Fetch.enable", Map.of("patterns", List.of(Map.of("urlPattern", url))));
        go(url);
        call("Fetch.disable", Map.of());
    }

    /** What an expression is worth in the page. */
    JsonNode value(String expression) {
        return evaluated(Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
    }

    /** What an expression is worth in the frame of the page. */
    JsonNode valueInFrame(String expression) {
        String frame = call("Page.getFrameTree", Map.of())
                .at("/frameTree/childFrames/0/frame/id")
                .asText();
        int world = call("Page.createIsolatedWorld", Map.of("frameId", frame))
                .path("executionContextId")
                .asInt();
        return evaluated(Map.of("expression", expression, "returnByValue", true, "contextId", world));
    }

    private JsonNode evaluated(Map<String, ?> asked) {
        JsonNode answer = call("Runtime.evaluate", asked);
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(answer.path("exceptionDetails").toString());
        }
        return answer.at("/result/value");
    }

    String text(String selector) {
        return value("document.querySelector(%s).textContent".formatted(quoted(selector)))
                .asText();
    }

    /** Waits until an expression is true. */
    void until(String expression) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!value("Boolean(%s)".formatted(expression)).asBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("Not in %s: %s; complaints: %s".formatted(PATIENCE, expression, complaints));
            }
            LockSupport.parkNanos(Duration.ofMillis(50).toNanos());
        }
    }

    /** Clicks with the mouse in the middle of what a selector finds. */
    void click(String selector) {
        JsonNode at = value("""
            (() => { const one = document.querySelector(%s); one.scrollIntoView({block: 'center'});
            const box = one.getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2]; })()
            """.formatted(quoted(selector)));
        for (String type : List.of("mousePressed", "mouseReleased")) {
            call(
                    "Input.dispatchMouseEvent",
                    Map.of(
                            "type",
                            type,
                            "x",
                            at.path(0).asDouble(),
                            "y",
                            at.path(1).asDouble(),
                            "button",
                            "left",
                            "clickCount",
                            1));
        }
    }

    /** Presses a key: Tab or Enter. */
    void press(String key) {
        boolean enter = key.equals("Enter");
        int code = enter ? 13 : 9;
        Map<String, Object> down = Map.of(
                "type",
                enter ? "keyDown" : "rawKeyDown",
                "key",
                key,
                "code",
                key,
                "windowsVirtualKeyCode",
                code,
                "text",
                enter ? "\r" : "");
        call("Input.dispatchKeyEvent", down);
        call("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", key, "code", key, "windowsVirtualKeyCode", code));
    }

    /** Lays out as for paper from now on. */
    void asPaper() {
        call("Emulation.setEmulatedMedia", Map.of("media", "print"));
    }

    /** Prints to PDF on paper of a size in inches. */
    byte[] print(double width, double height) {
        String data = call(
                        "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height, "printBackground", true))
                .path("data")
                .asText();
        return Base64.getDecoder().decode(data);
    }

    /** A picture of the whole page. */
    byte[] picture() {
        String data = call("Page.captureScreenshot", Map.of("captureBeyondViewport", true))
                .path("data")
                .asText();
        return Base64.getDecoder().decode(data);
    }

    /** Hosts that were asked, other than data and blobs of the page's own. */
    Set<String> hosts() {
        Set<String> hosts = new HashSet<>();
        for (String url : requests) {
            if (!url.matches("(data|blob|about):.*")) {
                hosts.add(url.replaceFirst("^([a-z]+://[^/]+).*", "$1"));
            }
        }
        return hosts;
    }

    List<String> complaints() {
        return List.copyOf(complaints);
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
