package org.daybank.api.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A line for each request, none lost. */
class AccessLogTest {
    @Test
    void everyRequestHasALineThatNamesItAndNothingOfItsQuery() throws Exception {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        AccessLog log = new AccessLog(new PrintStream(written, true, StandardCharsets.UTF_8));
        Javalin server = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.requestLogger.http(log::note);
                    config.routes.before(RequestId::give);
                    config.routes.get("/word", context -> context.result("word"));
                })
                .start("127.0.0.1", 0);
        HttpClient client = HttpClient.newHttpClient();
        String last = "";
        for (int i = 0; i < 200; i++) {
            HttpRequest request = HttpRequest.newBuilder(
                            URI.create("http://127.0.0.1:%d/word?secret=%d".formatted(server.port(), i)))
                    .build();
            last = client.send(request, HttpResponse.BodyHandlers.ofString())
                    .headers()
                    .firstValue(RequestId.HEADER)
                    .orElseThrow();
        }
        server.stop();
        log.close();
        List<String> lines = written.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines)
                .hasSize(200)
                .allSatisfy(line -> assertThat(line)
                        .matches(
                                "\\d{4}-\\d\\d-\\d\\dT[0-9:.]+Z access id=[0-9a-f]{16} method=GET path=/word status=200 ms=\\d+\\.\\d")
                        .doesNotContain("secret"));
        assertThat(lines.get(199)).contains("id=" + last);
    }
}
