package org.daybank.core.working;

import java.util.Comparator;
import java.util.List;

/** A product held against a need, with what each rule found: it fits when every rule is kept. */
public interface Judged {
    /** Model of the product. */
    String product();

    /** Every rule with its margin. */
    List<Finding> limits();

    /** Whether every rule is kept. */
    default boolean fits() {
        return limits().stream().allMatch(Finding::met);
    }

    /** Why it does not fit. */
    default Rejection rejection() {
        return Rejection.of(product(), limits());
    }

    /** Those that fit, in an order; of equals, in the order of their models. */
    static <J extends Judged> List<J> ranked(List<J> judged, Comparator<? super J> order) {
        Comparator<J> whole = order::compare;
        return judged.stream()
                .filter(Judged::fits)
                .sorted(whole.thenComparing(Judged::product))
                .toList();
    }

    /** The others, with every rule they break, in the order they come in. */
    static List<Rejection> rejected(List<? extends Judged> judged) {
        return judged.stream().filter(one -> !one.fits()).map(Judged::rejection).toList();
    }
}
