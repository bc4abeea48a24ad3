package org.daybank.api;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where the service listens, what it offers, whom it answers and how much it takes on at once.
 *
 * @param host address to listen on; the machine itself unless set
 * @param port TCP port; 0 for any free one
 * @param catalog a JSON file or a folder of tables with the products on offer; the bundled sample when absent
 * @param apiKey what callers must show in {@code X-API-Key}; absent, everybody is answered
 * @param corsOrigins origins whose pages may call from a browser, {@code *} for all; none unless set
 * @param heavyAtOnce how many whole designs, simulations, sweeps and the like run at once
 * @param timeLimit after which such a request is given up, sweeps aside
 * @param openMetrics whether {@code /metrics} is answered to other machines too
 */
public record Settings(
        String host,
        int port,
        @Nullable Path catalog,
        @Nullable String apiKey,
        List<String> corsOrigins,
        int heavyAtOnce,
        Duration timeLimit,
        boolean openMetrics) {

    /** One setting: as an option of the command line, {@code --api-key-file}, and in the environment, {@code DAYBANK_API_KEY_FILE}. */
    private enum Name {
        HOST("ADDRESS", "127.0.0.1", "where to listen"),
        PORT("NUMBER", "8080", "TCP port, 0 for any free one"),
        CATALOG("FILE-OR-FOLDER", "", "your own products; the bundled sample when left out"),
        API_KEY_FILE("FILE", "", "holds the key that callers must show in X-API-Key; DAYBANK_API_KEY holds it itself"),
        CORS_ORIGINS("ORIGINS", "", "origins whose pages may call, apart by commas, or *"),
        HEAVY_AT_ONCE("NUMBER", "", "designs, simulations and sweeps at once; twice the processors, at least 4"),
        TIME_LIMIT("SECONDS", "60", "after which a design or simulation is given up"),
        OPEN_METRICS("true|false", "false", "whether /metrics is answered to other machines");

        private final String value;
        private final String standard;
        private final String meaning;

        Name(String value, String standard, String meaning) {
            this.value = value;
            this.standard = standard;
            this.meaning = meaning;
        }

        String option() {
            return "--" + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        String variable() {
            return "DAYBANK_" + name();
        }

        String usage() {
            return "  %-32s %s%s"
                    .formatted(option() + " " + value, meaning, standard.isEmpty() ? "" : " (" + standard + ")");
        }
    }

    /** What the command line takes. */
    static final String USAGE = Stream.of(Name.values())
            .map(Name::usage)
            .collect(Collectors.joining(
                    "\n", "Options, each also in the environment as in DAYBANK_PORT; the command line wins:\n", ""));

    private static final String KEY_VARIABLE = "DAYBANK_API_KEY";
    private static final int HIGHEST_PORT = 65535;
    private static final int SHORTEST_KEY = 16;
    private static final int MOST_AT_ONCE = 1000;
    private static final int LONGEST_SECONDS = 3600;

    /** Keeps a copy. */
    public Settings {
        corsOrigins = List.copyOf(corsOrigins);
    }

    /**
     * Reads settings; the command line wins over the environment.
     *
     * @throws IllegalArgumentException when options are not known or values not right; the message tells all of it, and what
     *     would be right
     */
    public static Settings read(List<String> arguments, Map<String, String> environment) {
        return new Reader(arguments, environment).settings();
    }

    /** The settings as one line each, without the key. */
    public List<String> told() {
        return List.of(
                "catalogue: " + (catalog == null ? "bundled sample" : catalog),
                "API key: " + (apiKey == null ? "none asked" : "asked for"),
                "pages of other origins: " + (corsOrigins.isEmpty() ? "none" : String.join(", ", corsOrigins)),
                "heavy requests: %s at once, %s s each".formatted(heavyAtOnce, timeLimit.toSeconds()),
                "metrics: " + (openMetrics ? "for everybody" : "for this machine"));
    }

    /** Gathers what is wrong. */
    private static final class Reader {
        private final Map<Name, String> texts = new EnumMap<>(Name.class);
        private final List<String> wrong = new ArrayList<>();
        private final Map<String, String> environment;

        Reader(List<String> arguments, Map<String, String> environment) {
            this.environment = environment;
            for (Name name : Name.values()) {
                texts.put(name, environment.getOrDefault(name.variable(), name.standard));
            }
            for (int i = 0; i < arguments.size(); i += 2) {
                String option = arguments.get(i);
                Name known = Stream.of(Name.values())
                        .filter(name -> name.option().equals(option))
                        .findFirst()
                        .orElse(null);
                if (known == null) {
                    wrong.add("'%s' is not an option".formatted(option));
                } else if (i + 1 == arguments.size()) {
                    wrong.add("'%s' stands without a value".formatted(option));
                } else {
                    texts.put(known, arguments.get(i + 1));
                }
            }
        }

        Settings settings() {
            Settings read = new Settings(
                    text(Name.HOST),
                    whole(Name.PORT, 0, HIGHEST_PORT),
                    path(Name.CATALOG),
                    key(),
                    Stream.of(text(Name.CORS_ORIGINS).split(",", -1))
                            .map(String::strip)
                            .filter(origin -> !origin.isEmpty())
                            .map(this::origin)
                            .toList(),
                    text(Name.HEAVY_AT_ONCE).isEmpty()
                            ? Math.max(4, 2 * Runtime.getRuntime().availableProcessors())
                            : whole(Name.HEAVY_AT_ONCE, 1, MOST_AT_ONCE),
                    Duration.ofSeconds(whole(Name.TIME_LIMIT, 1, LONGEST_SECONDS)),
                    flag(Name.OPEN_METRICS));
            if (!wrong.isEmpty()) {
                throw new IllegalArgumentException(String.join("\n", wrong) + "\n" + USAGE);
            }
            return read;
        }

        private String text(Name name) {
            return texts.getOrDefault(name, "");
        }

        private int whole(Name name, int least, int most) {
            String text = text(name);
            int number = text.matches("\\d{1,9}") ? Integer.parseInt(text) : -1;
            if (number < least || number > most) {
                refuse(name, "a whole number from %s to %s".formatted(least, most));
            }
            return number;
        }

        private boolean flag(Name name) {
            String text = text(name).toLowerCase(Locale.ROOT);
            if (!text.equals("true") && !text.equals("false")) {
                refuse(name, "true or false");
            }
            return text.equals("true");
        }

        private String origin(String text) {
            if (!text.equals("*") && !text.matches("https?://[^/\\s,*]+")) {
                refuse(Name.CORS_ORIGINS, "origins as https://plans.example, or *");
            }
            return text;
        }

        private @Nullable Path path(Name name) {
            try {
                return text(name).isEmpty() ? null : Path.of(text(name));
            } catch (InvalidPathException refused) {
                refuse(name, "a path");
                return null;
            }
        }

        private @Nullable String key() {
            Path file = path(Name.API_KEY_FILE);
            String key = environment.getOrDefault(KEY_VARIABLE, "");
            if (file != null) {
                try {
                    key = Files.readString(file);
                } catch (IOException unreadable) {
                    refuse(Name.API_KEY_FILE, "a file that can be read");
                    return null;
                }
            }
            key = key.strip();
            if (file == null && key.isEmpty()) {
                return null;
            }
            if (key.length() < SHORTEST_KEY || !key.matches("[!-~]+")) {
                wrong.add(
                        "The API key must be at least %s printable characters without blanks".formatted(SHORTEST_KEY));
            }
            return key;
        }

        private void refuse(Name name, String expected) {
            wrong.add(
                    "%s (%s) must be %s, but was '%s'".formatted(name.option(), name.variable(), expected, text(name)));
        }
    }

    /** One line for each setting, without the key. */
    @Override
    public String toString() {
        return "%s:%s, %s".formatted(host, port, String.join(", ", told()));
    }
}
