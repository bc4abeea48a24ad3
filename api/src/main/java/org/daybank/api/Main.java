package org.daybank.api;

import io.javalin.Javalin;
import java.util.List;

/** Starts the service from the command line. */
public final class Main {
    private Main() {}

    /**
     * Listens until the process is ended.
     *
     * @param arguments see {@link Settings#USAGE}
     */
    public static void main(String[] arguments) {
        Settings settings;
        try {
            settings = Settings.read(List.of(arguments), System.getenv());
        } catch (IllegalArgumentException refused) {
            System.err.println(refused.getMessage());
            System.exit(2);
            return;
        }
        Javalin service = Service.start(settings);
        System.out.printf("Daybank answers on http://%s:%d%n", settings.host(), service.port());
    }
}
