package org.daybank.api.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A stream that fails on the way must not look whole. */
class RowStreamTest {
    private static final byte[] LINE = "one,two\n".getBytes(StandardCharsets.US_ASCII);

    private static Javalin server;

    @BeforeAll
    static void start() {
        server = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.routes.get("/whole", context -> RowStream.send(context, out -> out.write(LINE)));
                    config.routes.get(
                            "/broken",
                            context -> RowStream.send(context, out -> {
                                out.write(LINE);
                                out.flush();
                                throw new IllegalStateException("on purpose, for a test");
                            }));
                })
                .start("127.0.0.1", 0);
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    @Test
    void aStreamThatEndsIsWhole() throws IOException, InterruptedException {
        assertThat(get("/whole", "identity").body()).isEqualTo("one,two\n");
    }

    @Test
    void aStreamThatFailsBreaksOff() {
        assertThatThrownBy(() -> get("/broken", "identity")).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> get("/broken", "gzip")).isInstanceOf(IOException.class);
    }

    private static HttpResponse<String> get(String path, String coding) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Accept-Encoding", coding)
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }
}
