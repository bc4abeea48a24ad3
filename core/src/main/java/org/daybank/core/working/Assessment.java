package org.daybank.core.working;

import java.util.Comparator;
import java.util.List;

/** A product held against a need, with what each rule found: it fits when every rule is kept. */
public interface Assessment {
    /** Model of the product. */
    String product();

    /** Every rule with its margin. */
    List<Check> checks();

    /** Whether every rule is kept. */
    default boolean fits() {
        return checks().stream().allMatch(Check::passed);
    }

    /** Why it does not fit. */
    default Rejection rejection() {
        return Rejection.of(product(), checks());
    }

    /** Those that fit, in an order; of equals, in the order of their models. */
    static <J extends Assessment> List<J> ranked(List<J> judged, Comparator<? super J> order) {
        Comparator<J> whole = order::compare;
        return judged.stream()
                .filter(Assessment::fits)
                .sorted(whole.thenComparing(Assessment::product))
                .toList();
    }

    /** The others, with every rule they break, in the order they come in. */
    static List<Rejection> rejected(List<? extends Assessment> judged) {
        return judged.stream()
                .filter(one -> !one.fits())
                .map(Assessment::rejection)
                .toList();
    }
}
