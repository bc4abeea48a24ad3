package org.daybank.api;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the service listens and what it offers.
 *
 * @param host address to listen on; the machine itself unless set
 * @param port TCP port; 0 for any free one
 * @param catalog a JSON file or a folder of tables with the products on offer; the bundled sample when absent
 */
public record Settings(String host, int port, @Nullable Path catalog) {
    /** What the command line takes. */
    static final String USAGE =
            "Options: --host ADDRESS (or DAYBANK_HOST), --port NUMBER (or DAYBANK_PORT), --catalog FILE-OR-FOLDER (or DAYBANK_CATALOG)";

    private static final int HIGHEST_PORT = 65535;

    /**
     * Reads settings; the command line wins over the environment.
     *
     * @throws IllegalArgumentException when an option is not known or a value is not right; the message says what would be
     */
    public static Settings read(List<String> arguments, Map<String, String> environment) {
        String host = environment.getOrDefault("DAYBANK_HOST", "127.0.0.1");
        String port = environment.getOrDefault("DAYBANK_PORT", "8080");
        String catalog = environment.get("DAYBANK_CATALOG");
        for (int i = 0; i < arguments.size(); i += 2) {
            if (i + 1 == arguments.size()) {
                throw new IllegalArgumentException(
                        "'%s' stands without a value. %s".formatted(arguments.get(i), USAGE));
            }
            switch (arguments.get(i)) {
                case "--host" -> host = arguments.get(i + 1);
                case "--port" -> port = arguments.get(i + 1);
                case "--catalog" -> catalog = arguments.get(i + 1);
                default ->
                    throw new IllegalArgumentException("'%s' is not an option. %s".formatted(arguments.get(i), USAGE));
            }
        }
        return new Settings(host, port(port), catalog == null ? null : path(catalog));
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException refused) {
            throw new IllegalArgumentException(
                    "The catalogue must be a file or a folder but is '%s'".formatted(text), refused);
        }
    }

    private static int port(String text) {
        if (!text.matches("\\d{1,5}") || Integer.parseInt(text) > HIGHEST_PORT) {
            throw new IllegalArgumentException(
                    "The port must be a number from 0 to %d but is '%s'".formatted(HIGHEST_PORT, text));
        }
        return Integer.parseInt(text);
    }
}
