package org.daybank.api.http;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is made when it is first asked for, and then kept: a quick start does not wait for it. */
final class Once<T> {
    private final Supplier<T> making;
    private @Nullable T made;

    Once(Supplier<T> making) {
        this.making = making;
    }

    synchronized T get() {
        if (made == null) {
            made = making.get();
        }
        return made;
    }
}
