package org.daybank.core;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daybank.core.working.Table;

/** Reference tables that lie outside the project; tests that need one are skipped where it is absent. */
public final class Reference {
    private Reference() {}

    /** The text of a reference file. */
    public static String text(String name) {
        Path file = Path.of(System.getProperty("daybank.reference", "no-reference"), name);
        assumeTrue(Files.isReadable(file), () -> "reference file " + name + " is not here");
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A reference table. */
    public static Table table(String name) {
        return Table.parse(text(name));
    }
}
