package org.daybank.api.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A Chromium without a window, spoken to by its DevTools protocol. */
final class Chromium implements AutoCloseable {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final String LISTENING = "DevTools listening on ";

    private final Process process;
    private final Path profile;
    private final WebSocket socket;
    private final AtomicInteger calls = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final List<Consumer<JsonNode>> listeners = new CopyOnWriteArrayList<>();

    private Chromium(Process process, Path profile, URI address) {
        this.process = process;
        this.profile = profile;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, new Messages(this::received))
                .join();
    }

    /** The program, named by the system property {@code daybank.chromium} or the environment, or found on the path. */
    static Optional<Path> program() {
        Stream<String> named = Stream.of(System.getProperty("daybank.chromium", ""), environment("CHROMIUM"))
                .filter(name -> !name.isEmpty());
        Stream<String> found = Stream.of(environment("PATH").split(java.io.File.pathSeparator, -1))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome", "chrome")
                        .map(name -> Path.of(folder, name).toString()));
        return Stream.concat(named, found)
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static String environment(String name) {
        String value = System.getenv(name);
        return value == null ? "" : value;
    }

    static Chromium start(Path program) {
        try {
            Path profile = Files.createTempDirectory("chromium");
            Process process = new ProcessBuilder(
                            program.toString(),
                            "--headless=new",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--no-first-run",
                            // the sheet's frame in the process of its page: one session sees both
                            "--disable-features=IsolateSandboxedIframes",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--remote-debugging-port=0",
                            "--user-data-dir=" + profile)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return new Chromium(process, profile, address(process));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What it says of itself, read on so that it never waits for a reader. */
    private static URI address(Process process) {
        CompletableFuture<URI> address = new CompletableFuture<>();
        Thread reader = new Thread(() -> {
            try (BufferedReader lines = process.errorReader(StandardCharsets.UTF_8)) {
                lines.lines()
                        .filter(line -> line.startsWith(LISTENING))
                        .forEach(line -> address.complete(URI.create(line.substring(LISTENING.length()))));
                address.completeExceptionally(new IllegalStateException("Chromium ended before it listened"));
            } catch (IOException | UncheckedIOException ended) {
                address.completeExceptionally(ended);
            }
        });
        reader.setDaemon(true);
        reader.start();
        return await(address);
    }

    /** An empty page of a width and height. */
    BrowserPage open(int width, int height) {
        String target = call("", "Target.createTarget", Map.of("url", "about:blank"))
                .path("targetId")
                .asText();
        String session = call("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .path("sessionId")
                .asText();
        return new BrowserPage(this, session, width, height);
    }

    void listen(Consumer<JsonNode> listener) {
        listeners.add(listener);
    }

    /** Calls a method and waits for what it answers. */
    JsonNode call(String session, String method, Map<String, ?> parameters) {
        return await(send(session, method, parameters));
    }

    /** Calls a method. */
    CompletableFuture<JsonNode> send(String session, String method, Map<String, ?> parameters) {
        int id = calls.incrementAndGet();
        ObjectNode message = MAPPER.createObjectNode().put("id", id).put("method", method);
        message.set("params", MAPPER.valueToTree(parameters));
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        synchronized (socket) {
            socket.sendText(message.toString(), true).join();
        }
        return answer;
    }

    private void received(String text) {
        JsonNode message;
        try {
            message = MAPPER.readTree(text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        if (!message.has("id")) {
            listeners.forEach(listener -> listener.accept(message));
            return;
        }
        CompletableFuture<JsonNode> answer = waiting.remove(message.path("id").asInt());
        if (message.has("error")) {
            answer.completeExceptionally(
                    new IllegalStateException(message.path("error").toString()));
        } else {
            answer.complete(message.path("result"));
        }
    }

    private static <T> T await(CompletableFuture<T> future) {
        try {
            return future.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        } catch (ExecutionException | TimeoutException failed) {
            throw new IllegalStateException(failed);
        }
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        profile.toFile().deleteOnExit();
    }

    /** Puts the pieces of each message together. */
    private static final class Messages implements WebSocket.Listener {
        private final Consumer<String> whole;
        private final StringBuilder pieces = new StringBuilder();

        Messages(Consumer<String> whole) {
            this.whole = whole;
        }

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            pieces.append(data);
            if (last) {
                String text = pieces.toString();
                pieces.setLength(0);
                whole.accept(text);
            }
            socket.request(1);
            return CompletableFuture.completedFuture(null);
        }
    }
}
