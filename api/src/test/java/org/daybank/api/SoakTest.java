package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Mixed traffic on a service in a process of its own: in the first half it is ended and started again under load, in the second
 * it runs on while its memory and threads are watched.
 */
@EnabledIfSystemProperty(named = "daybank.soak.minutes", matches = "\\d+", disabledReason = "takes minutes")
class SoakTest {
    private static final Duration BETWEEN_RESTARTS = Duration.ofSeconds(30);
    private static final Duration BETWEEN_SAMPLES = Duration.ofSeconds(5);
    private static final int CLIENTS = 8;

    private final HttpClient client =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
    private final int port = freePort();
    private final Map<Ask, String> expected = new LinkedHashMap<>();
    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final AtomicLong answered = new AtomicLong();
    private final AtomicLong refused = new AtomicLong();
    private final AtomicLong unanswered = new AtomicLong();

    private volatile boolean restarting;
    private volatile boolean done;
    private Process process;

    /** A request that has the same answer whenever it is asked. */
    private record Ask(String path, String body) {}

    /** What the system says of the process at one moment. */
    private record Sample(long residentKilobytes, long threads) {}

    @AfterEach
    void end() {
        done = true;
        if (process != null) {
            process.destroyForcibly();
        }
    }

    @Test
    void nothingAnsweredIsLostAndNothingGrows() throws Exception {
        long half = TimeUnit.MINUTES.toNanos(Integer.getInteger("daybank.soak.minutes")) / 2;
        start();
        learn();
        List<Thread> clients = new ArrayList<>();
        for (int i = 0; i < CLIENTS; i++) {
            Random random = new Random(i);
            Thread thread = new Thread(() -> keepAsking(random), "client-" + i);
            thread.start();
            clients.add(thread);
        }
        int restarts = 0;
        for (long begun = System.nanoTime(); System.nanoTime() - begun < half; restarts++) {
            Thread.sleep(BETWEEN_RESTARTS.toMillis());
            restart();
        }
        List<Sample> samples = new ArrayList<>();
        for (long begun = System.nanoTime(); System.nanoTime() - begun < half; ) {
            Thread.sleep(BETWEEN_SAMPLES.toMillis());
            samples.add(sample());
        }
        done = true;
        for (Thread thread : clients) {
            thread.join();
        }
        int third = samples.size() / 3;
        List<Sample> middle = samples.subList(third, 2 * third);
        List<Sample> last = samples.subList(2 * third, samples.size());
        System.out.printf(
                "answered %d, refused for load %d, unanswered while restarting %d, restarts %d; resident %d MB then %d MB, threads %d then %d%n",
                answered.get(),
                refused.get(),
                unanswered.get(),
                restarts,
                most(middle, true) / 1024,
                most(last, true) / 1024,
                most(middle, false),
                most(last, false));
        assertThat(wrong).isEmpty();
        assertThat(answered.get()).isGreaterThan(1000);
        assertThat(most(last, true)).as("resident kB at most").isLessThan(most(middle, true) * 11 / 10);
        assertThat(most(last, false)).as("threads at most").isLessThanOrEqualTo(most(middle, false) + 8);
    }

    private static long most(List<Sample> samples, boolean memory) {
        return samples.stream()
                .mapToLong(memory ? Sample::residentKilobytes : Sample::threads)
                .max()
                .orElseThrow();
    }

    /** Every example and flat form of the contract, with its answer. */
    private void learn() throws Exception {
        for (JsonNode example :
                RunningService.json(answer(new Ask("/v1/examples", ""))).path("examples")) {
            String body = answer(new Ask("/v1/examples/" + example.path("name").asText(), ""));
            expected.put(new Ask(example.path("postTo").asText(), body), "");
        }
        for (String path : List.of("/v1/catalog", "/v1/typical-loads", "/openapi.json", "/", "/health")) {
            expected.put(new Ask(path, ""), "");
        }
        expected.put(
                new Ask("/v1/charge-settings.csv?chemistry=agm&nominalVoltage=24V&coldest=0Cel&hottest=30Cel", ""), "");
        expected.put(new Ask("/v1/bank-capacity", "{\"dailyEnergy\": 5}"), "");
        for (Ask ask : List.copyOf(expected.keySet())) {
            expected.put(ask, answer(ask));
        }
    }

    private void keepAsking(Random random) {
        List<Ask> asks = List.copyOf(expected.keySet());
        while (!done) {
            Ask ask = asks.get(random.nextInt(asks.size()));
            boolean covered = restarting;
            HttpResponse<InputStream> response;
            try {
                response = client.send(request(ask), HttpResponse.BodyHandlers.ofInputStream());
            } catch (IOException none) {
                if (covered || restarting || none instanceof ConnectException) {
                    unanswered.incrementAndGet();
                    sleepABit();
                } else {
                    wrong.add("no answer to %s: %s".formatted(ask.path(), none));
                }
                continue;
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                return;
            }
            try (InputStream in = response.body()) {
                String body = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                if (response.statusCode() == 503
                        && response.headers().firstValue("Retry-After").isPresent()) {
                    refused.incrementAndGet();
                } else if (body.equals(expected.get(ask))) {
                    answered.incrementAndGet();
                } else {
                    wrong.add("%s answered %d %.300s".formatted(ask.path(), response.statusCode(), body));
                }
            } catch (IOException broken) {
                wrong.add("the answer to %s broke off: %s".formatted(ask.path(), broken));
            }
        }
    }

    private static void sleepABit() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private HttpRequest request(Ask ask) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + ask.path()))
                .timeout(Duration.ofSeconds(60));
        return ask.body().isEmpty()
                ? request.GET().build()
                : request.header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(ask.body()))
                        .build();
    }

    private String answer(Ask ask) throws IOException, InterruptedException {
        return client.send(request(ask), HttpResponse.BodyHandlers.ofString()).body();
    }

    private void start() throws IOException, InterruptedException {
        process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-Xmx256m",
                        Main.class.getName(),
                        "--port",
                        String.valueOf(port))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        for (int i = 0; i < 300; i++) {
            try {
                if (answer(new Ask("/health", "")).equals("ok")) {
                    return;
                }
            } catch (IOException notYet) {
                Thread.sleep(100);
            }
        }
        throw new IllegalStateException("The service did not start");
    }

    private void restart() throws IOException, InterruptedException {
        restarting = true;
        process.destroy();
        assertThat(process.waitFor(30, TimeUnit.SECONDS))
                .as("ended within its time")
                .isTrue();
        start();
        restarting = false;
    }

    private Sample sample() throws IOException {
        long resident = 0;
        long threads = 0;
        for (String line : Files.readAllLines(Path.of("/proc", String.valueOf(process.pid()), "status"))) {
            if (line.startsWith("VmRSS:")) {
                resident = Long.parseLong(line.replaceAll("\\D", ""));
            } else if (line.startsWith("Threads:")) {
                threads = Long.parseLong(line.replaceAll("\\D", ""));
            }
        }
        return new Sample(resident, threads);
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException none) {
            throw new IllegalStateException(none);
        }
    }
}
