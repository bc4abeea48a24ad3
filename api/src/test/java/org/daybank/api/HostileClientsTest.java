package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Clients that mean harm, or are broken, are answered or dropped within limits, and the service goes on. */
class HostileClientsTest {
    private static final String PATH = "/v1/bank-capacity";
    private static final String POST = "POST " + PATH + " HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n";

    /** How many connections are opened at once: more than there are threads. {@code crowd.py} opens ten thousand. */
    private static final int CONNECTIONS = 400;

    @AutoClose
    private static final RunningService service = new RunningService();

    @AfterEach
    void goesOn() {
        assertThat(service.get("/health").body()).isEqualTo("ok");
    }

    private static Socket connect() throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), service.port());
        socket.setSoTimeout(60_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
    }

    @Test
    void idleConnectionsKeepNobodyOut() throws IOException {
        List<Socket> idle = new ArrayList<>();
        try {
            for (int i = 0; i < CONNECTIONS; i++) {
                idle.add(connect());
            }
            goesOn();
        } finally {
            for (Socket socket : idle) {
                socket.close();
            }
        }
    }

    @Test
    void halfSentBodiesTakeNoThread() throws IOException {
        List<Socket> half = new ArrayList<>();
        try {
            // more than there are threads to answer with
            for (int i = 0; i < CONNECTIONS; i++) {
                Socket socket = connect();
                send(socket, POST + "Content-Length: 500\r\n\r\n{\"dailyEnergy\": ");
                half.add(socket);
            }
            goesOn();
            assertThat(service.post(PATH, "{}").statusCode()).isEqualTo(400);
        } finally {
            for (Socket socket : half) {
                socket.close();
            }
        }
    }

    @Test
    void halfSentHeadersTakeNoThread() throws IOException {
        List<Socket> half = new ArrayList<>();
        try {
            for (int i = 0; i < CONNECTIONS; i++) {
                Socket socket = connect();
                send(socket, POST + "X-Slow: ");
                half.add(socket);
            }
            goesOn();
        } finally {
            for (Socket socket : half) {
                socket.close();
            }
        }
    }

    @Test
    void aBodyOfAHundredMegabytesIsRefusedWithoutBeingKept() throws IOException {
        try (Socket socket = connect()) {
            send(socket, POST + "Content-Length: 100000000\r\nConnection: close\r\n\r\n");
            byte[] block = new byte[1 << 20];
            OutputStream out = socket.getOutputStream();
            try {
                for (int sent = 0; sent < 100; sent++) {
                    out.write(block);
                }
            } catch (SocketException droppedEarly) {
                // within the limits as well
            }
            assertThat(answerOrNothing(socket))
                    .satisfiesAnyOf(
                            answer -> assertThat(answer)
                                    .startsWith("HTTP/1.1 413")
                                    .contains("1000000 bytes"),
                            answer -> assertThat(answer).isEmpty());
        }
    }

    @Test
    void aNumberWithoutEndIsRefused() throws IOException {
        try (Socket socket = connect()) {
            send(socket, POST + "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n");
            send(socket, "10\r\n{\"dailyEnergy\": \r\n");
            String digits = "10000\r\n" + "9".repeat(0x10000) + "\r\n";
            try {
                for (int i = 0; i < 200; i++) {
                    send(socket, digits);
                }
                send(socket, "0\r\n\r\n");
            } catch (SocketException droppedEarly) {
                // within the limits as well
            }
            assertThat(answerOrNothing(socket))
                    .satisfiesAnyOf(
                            answer -> assertThat(answer).startsWith("HTTP/1.1 413"),
                            answer -> assertThat(answer).isEmpty());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../etc/passwd",
                "/assets/../../etc/passwd",
                "/assets/%2e%2e/%2e%2e/etc/passwd",
                "/assets/..%2f..%2fetc%2fpasswd",
                "/v1/examples/..%2f..%2fpom",
                "/v1/examples/%00",
                "//health//..//",
                "/v1/catalog/%252e%252e",
                "/v1/bank-capacity/..;/openapi.yaml",
                "/v1/examples/" + "a/../",
                "http://elsewhere.example/health"
            })
    void pathTricksLeadNowhere(String path) throws IOException {
        String answer = service.raw("GET " + path + " HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n");
        assertThat(answer).doesNotContain("root:", "<project");
        assertThat(answer.substring(9, 12)).as(answer).isIn("400", "404", "200");
        if (answer.startsWith("HTTP/1.1 4")) {
            assertThat(answer).contains("application/problem+json");
        } else {
            assertThat(answer).as("only the health of this very service").endsWith("ok");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 1000})
    void floodsOfHeadersAreRefused(int headers) throws IOException {
        StringBuilder request = new StringBuilder("GET /health HTTP/1.1\r\nHost: here\r\nConnection: close\r\n");
        for (int i = 0; i < headers; i++) {
            request.append("X-Flood-")
                    .append(i)
                    .append(": ")
                    .append("x".repeat(80))
                    .append("\r\n");
        }
        assertThat(service.raw(request + "\r\n")).startsWith("HTTP/1.1 431").contains("application/problem+json");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Content-Length: 10\r\nContent-Length: 20\r\n",
                "Content-Length: -1\r\n",
                "Content-Length: 99999999999999999999\r\n",
                "Content-Length: 5\r\nTransfer-Encoding: chunked\r\n",
                "Transfer-Encoding: gzip, chunked, nonsense\r\n",
                "Expect: 200-ok\r\nContent-Length: 2\r\n"
            })
    void contradictoryLengthsAreRefused(String headers) throws IOException {
        try (Socket socket = connect()) {
            send(socket, POST + headers + "Connection: close\r\n\r\n{}");
            socket.shutdownOutput();
            String answer = answerOrNothing(socket);
            assertThat(answer.isEmpty() ? "dropped" : answer.substring(9, 10))
                    .as(answer)
                    .isIn("4", "5", "dropped");
            assertThat(answer).doesNotContain("Exception", "org.eclipse");
        }
    }

    private static String answerOrNothing(Socket socket) throws IOException {
        try {
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketException dropped) {
            return "";
        }
    }
}
