package org.daybank.api;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Json;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.catalog.CatalogTables;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.working.Table;

/**
 * A catalogue that lies beside the service: one JSON file as {@code GET /v1/catalog} answers it, or a folder with a CSV table
 * for each kind of product.
 */
final class CatalogFile {
    private CatalogFile() {}

    /**
     * Reads a catalogue as a whole.
     *
     * @throws IllegalArgumentException when it cannot be read, with a line for everything that is wrong
     */
    static Catalog read(Path path) {
        try {
            return Files.isDirectory(path)
                    ? CatalogTables.read(name -> table(path.resolve(name + ".csv")))
                    : Binder.bind(Catalog.class, Json.read(Files.readAllBytes(path)))
                            .value();
        } catch (InvalidInput refused) {
            StringBuilder lines = new StringBuilder("The catalogue %s cannot be used:".formatted(path));
            refused.problems()
                    .forEach(problem -> lines.append(
                            "%n  %s: %s (%s)".formatted(problem.path(), problem.message(), problem.code())));
            throw new IllegalArgumentException(lines.toString(), refused);
        } catch (IOException missing) {
            throw new IllegalArgumentException(
                    "The catalogue %s cannot be read; give a JSON file, or a folder with %s"
                            .formatted(path, String.join(".csv, ", CatalogTables.names()) + ".csv"),
                    missing);
        }
    }

    private static Optional<Table> table(Path file) {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Table.parse(Files.readString(file)));
        } catch (IOException broken) {
            throw new IllegalArgumentException("The table %s cannot be read as UTF-8 text".formatted(file), broken);
        }
    }
}
