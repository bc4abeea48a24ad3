package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.daybank.core.catalog.Catalog;

/** A real service on a free port, and a client that asks it and holds every answer against the contract. */
final class RunningService implements AutoCloseable {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Schemas SCHEMAS = new Schemas();

    private final Javalin service;
    private final HttpClient client = HttpClient.newHttpClient();

    RunningService() {
        this(Catalog.sample());
    }

    /** With options of the command line. */
    RunningService(String... options) {
        this(Catalog.sample(), options);
    }

    RunningService(Catalog onOffer, String... options) {
        List<String> arguments = new ArrayList<>(List.of("--port", "0"));
        arguments.addAll(List.of(options));
        this.service = Service.start(Settings.read(arguments, Map.of()), () -> onOffer);
    }

    int port() {
        return service.port();
    }

    HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    HttpResponse<String> post(String path, String body) {
        return send(request(path, "Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    HttpResponse<String> method(String method, String path, String... headers) {
        return send(request(path, headers).method(method, HttpRequest.BodyPublishers.noBody()));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> answer =
                    client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
            assertThat(SCHEMAS.faults(answer)).as("the answer by the contract").isEmpty();
            return answer;
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path));
        return headers.length == 0 ? request : request.headers(headers);
    }

    /** What comes back to bytes sent as they are. */
    String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), service.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static JsonNode json(HttpResponse<String> response) {
        return json(response.body());
    }

    /** A text as it stands in JSON, without the quotes. */
    static String quoted(String text) {
        String quoted = MAPPER.getNodeFactory().textNode(text).toString();
        return quoted.substring(1, quoted.length() - 1);
    }

    static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (IOException broken) {
            throw new IllegalArgumentException(text, broken);
        }
    }

    @Override
    public void close() {
        service.stop();
    }
}
