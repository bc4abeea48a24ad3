package org.daybank.api;

import io.javalin.Javalin;
import java.util.List;
import org.daybank.core.catalog.Catalog;

/** Starts the service from the command line. */
public final class Main {
    private Main() {}

    /**
     * Listens until the process is ended.
     *
     * @param arguments see {@link Settings#USAGE}
     */
    public static void main(String[] arguments) {
        if (List.of(arguments).contains("--help")) {
            System.out.println(Settings.USAGE);
            return;
        }
        Settings settings;
        Catalog onOffer;
        try {
            settings = Settings.read(List.of(arguments), System.getenv());
            onOffer = settings.catalog() == null ? Catalog.sample() : CatalogFile.read(settings.catalog());
        } catch (IllegalArgumentException refused) {
            System.err.println(refused.getMessage());
            System.exit(2);
            return;
        }
        Javalin service = Service.start(settings, onOffer);
        System.out.printf("Daybank answers on http://%s:%d%n", settings.host(), service.port());
        settings.told().forEach(line -> System.out.println("  " + line));
    }
}
