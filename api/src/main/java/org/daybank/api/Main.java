package org.daybank.api;

import io.javalin.Javalin;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
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
        Supplier<Catalog> onOffer;
        try {
            settings = Settings.read(List.of(arguments), System.getenv());
            onOffer = settings.catalog() == null ? Catalog::sample : own(settings.catalog());
        } catch (IllegalArgumentException refused) {
            System.err.println(refused.getMessage());
            System.exit(2);
            return;
        }
        Javalin service = Service.start(settings, onOffer);
        System.out.println("Daybank answers on http://%s:%s".formatted(settings.host(), service.port()));
        settings.told().forEach(line -> System.out.println("  " + line));
        // the bundled sample is read only now: what does not need it is answered sooner
        Catalog products = onOffer.get();
        System.out.println("  on offer: %s modules, %s batteries, %s controllers, %s inverters"
                .formatted(
                        products.modules().size(),
                        products.batteries().size(),
                        products.controllers().size(),
                        products.inverters().size()));
    }

    /** A catalogue of the user's, read before anything is answered: it may not be right. */
    private static Supplier<Catalog> own(Path path) {
        Catalog own = CatalogFile.read(path);
        return () -> own;
    }
}
