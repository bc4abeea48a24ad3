package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program of this machine, as users of the service run one. */
final class Program {
    /** The Python to run, one that has pandas, requests or uno where they are needed. */
    static final String PYTHON = System.getProperty("daybank.python", "python3");

    private static final long MINUTES = 5;

    private Program() {}

    /** Skips the test where a program is not installed. */
    static void assumeInstalled(String command) {
        boolean there = List.of(System.getenv("PATH").split(File.pathSeparator, -1)).stream()
                .anyMatch(folder -> Files.isExecutable(Path.of(folder).resolve(command)));
        assumeTrue(there, "There is no " + command + " on the path");
    }

    /** What a program prints, which must end well. */
    static String run(Path folder, String input, String... command) throws IOException, InterruptedException {
        Path in = Files.createTempFile("daybank", "in");
        Path out = Files.createTempFile("daybank", "out");
        try {
            Files.writeString(in, input);
            Process started = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectInput(in.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(out.toFile())
                    .start();
            boolean ended = started.waitFor(MINUTES, TimeUnit.MINUTES);
            started.destroyForcibly();
            String printed = Files.readString(out, StandardCharsets.UTF_8);
            assertThat(ended)
                    .as("%s came to an end: %s", List.of(command), printed)
                    .isTrue();
            assertThat(started.exitValue())
                    .as("%s: %s", List.of(command), printed)
                    .isZero();
            return printed;
        } finally {
            Files.delete(in);
            Files.delete(out);
        }
    }
}
