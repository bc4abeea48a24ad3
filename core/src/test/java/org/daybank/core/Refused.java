package org.daybank.core;

import java.util.List;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;

/** What is wrong with something that cannot be made. */
public final class Refused {
    private Refused() {}

    /** Everything that is told when it is tried; nothing when it can be made. */
    public static List<Problem> problems(Runnable making) {
        try {
            making.run();
        } catch (InvalidInput refused) {
            return refused.problems();
        }
        return List.of();
    }

    /** The places of what is told. */
    public static List<String> places(Runnable making) {
        return problems(making).stream().map(Problem::path).toList();
    }
}
