package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.daybank.core.catalog.Catalog;
import org.eclipse.jetty.ee10.servlet.SessionHandler;
import org.eclipse.jetty.session.DefaultSessionCache;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No small request takes much, keeps anything, or stops the service. */
class SmallRequestsServiceTest {
    private static final int MANY = 2000;

    @AutoClose
    private static final RunningService service = new RunningService();

    private static Javalin started(Error thrown) {
        return Service.start(Settings.read(List.of("--port", "0"), Map.of()), () -> {
            throw thrown;
        });
    }

    /** The container used to open a session, and keep it, for each request to change to WebSocket. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Upgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n",
                "Upgrade: websocket\r\n",
                "Sec-WebSocket-Version: 13\r\n",
                "Upgrade: h2c\r\nHTTP2-Settings: AAMAAABkAAQCAAAAAAIAAAAA\r\n"
            })
    void aRequestToChangeTheProtocolIsAnsweredAsAnyOtherAndKeepsNothing(String headers) throws IOException {
        Javalin own = Service.start(Settings.read(List.of("--port", "0"), Map.of()), Catalog::sample);
        try {
            String one = "GET /health HTTP/1.1\r\nHost: here\r\nConnection: Upgrade\r\n" + headers + "\r\n";
            String last = "GET /health HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n";
            int answered = 0;
            for (int batch = 0; batch < MANY / 50; batch++) {
                try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), own.port())) {
                    socket.getOutputStream().write((one.repeat(49) + last).getBytes(StandardCharsets.US_ASCII));
                    String answers = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                    assertThat(answers).doesNotContain("Set-Cookie", "HTTP/1.1 4", "HTTP/1.1 101");
                    answered += answers.split("HTTP/1.1 200 OK", -1).length - 1;
                }
            }
            assertThat(answered).isEqualTo(MANY);
            assertThat(own.jettyServer().server().getDescendants(SessionHandler.class))
                    .allSatisfy(sessions -> assertThat(
                                    ((DefaultSessionCache) sessions.getSessionCache()).getSessionsCurrent())
                            .as("sessions kept")
                            .isZero());
        } finally {
            own.stop();
        }
    }

    /** Each of 2,000 short lines lacks several cells: an answer that lists them all has megabytes. */
    @Test
    void aTableOfBadLinesIsAnsweredByItsFirstHundredProblems() {
        JsonNode problem = table("model\n" + "x\n".repeat(2000));
        assertThat(problem.path("errors")).hasSize(101);
        assertThat(problem.at("/errors/100/code").asText()).isEqualTo("more");
        assertThat(problem.at("/errors/100/detail").asText()).matches("\\d{4,6} more problems are not listed.");
    }

    @Test
    void aTableOfTooManyLinesIsRefusedAsAWhole() {
        JsonNode problem = table("model\n" + "x\n".repeat(33_000));
        assertThat(problem.path("errors")).hasSize(1);
        assertThat(problem.path("detail").asText()).isEqualTo("line 20002: a table must have at most 20000 rows");
    }

    @Test
    void aLineOfEqualColumnsIsAnsweredByItsFirstHundredProblems() {
        JsonNode problem = table("a" + ",a".repeat(3999) + "\nx");
        // 3,999 repetitions and a line that is too short
        assertThat(problem.at("/errors/100/detail").asText()).isEqualTo("3900 more problems are not listed.");
    }

    @Test
    void aLineOfUnknownColumnsIsAnsweredByItsFirstHundredProblems() {
        StringBuilder header = new StringBuilder("c0");
        for (int i = 1; i < 4000; i++) {
            header.append(",c").append(i);
        }
        JsonNode problem = table(header.toString());
        assertThat(problem.at("/errors/100/detail").asText()).isEqualTo("3900 more problems are not listed.");
    }

    @Test
    void aLongNameOfAColumnIsShortened() {
        assertThat(table("n".repeat(60_000) + "\nx").path("errors")).isNotEmpty();
    }

    private static JsonNode table(String csv) {
        HttpRequest.Builder request = service.request("/v1/catalog/inverters", "Content-Type", "text/csv")
                .POST(HttpRequest.BodyPublishers.ofString(csv));
        HttpResponse<String> answer = service.send(request);
        assertThat(answer.body()).hasSizeLessThan(100_000);
        return Refusal.document(answer, 400);
    }

    @Test
    void aSweepOfManyUnknownOutputsIsAnsweredByItsFirstHundredProblems() {
        // as many as a sweep may have
        String outputs = "\"x\"" + ",\"x\"".repeat(255);
        JsonNode problem = Refusal.document(
                service.post(
                        "/v1/sweep",
                        "{\"calculator\": \"bank-capacity\", \"axes\": [{\"path\": \"policy.autonomy\", \"values\": [\"1 d\"]}],"
                                + "\"outputs\": [" + outputs + "]}"),
                400);
        assertThat(problem.at("/errors/100/detail").asText()).isEqualTo("156 more problems are not listed.");
    }

    /** The catalogue stands for any code that exhausts the stack or the memory. */
    @Test
    void anErrorOfTheMachineIsAProblemDocumentAndTheServiceGoesOn() throws Exception {
        Javalin broken = started(new StackOverflowError("org.example.Secret"));
        try {
            Refusal.document(sent(broken, "GET", "/v1/catalog", ""), 500);
            String brief = RunningService.json(sent(broken, "GET", "/v1/examples/system-design", ""))
                    .toString();
            Refusal.document(sent(broken, "POST", "/v1/system-design", brief), 500);
            assertThat(sent(broken, "GET", "/health", "").statusCode()).isEqualTo(200);
        } finally {
            broken.stop();
        }
    }

    @Test
    void whatTakesMoreMemoryThanThereIsMayBeSentAgain() throws Exception {
        Javalin broken = started(new OutOfMemoryError("Java heap space"));
        try {
            HttpResponse<String> answer = sent(broken, "GET", "/v1/catalog", "");
            Refusal.document(answer, 503);
            assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
            assertThat(sent(broken, "GET", "/metrics", "").body()).contains("status=\"503\"");
        } finally {
            broken.stop();
        }
    }

    private static HttpResponse<String> sent(Javalin service, String method, String path, String body)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path))
                .header("Content-Type", "application/json");
        return HttpClient.newHttpClient()
                .send(
                        request.method(method, HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }
}
