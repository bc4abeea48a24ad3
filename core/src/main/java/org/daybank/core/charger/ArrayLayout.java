package org.daybank.core.charger;

import java.util.ArrayList;
import java.util.List;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.schema.NotRepeated;

/**
 * Modules in series and parallel, shared by whole strings among controllers.
 *
 * @param product model of the module
 * @param module its data sheet
 * @param series modules in each string
 * @param stringsOnEach strings on each controller, most first
 * @param strings in all
 * @param modules in all
 * @param power of all modules at standard test conditions
 * @param shortCircuitCurrent of the strings on the fullest controller, light on the back included
 * @param stringFuses whether each string needs its own fuse: when the other strings could feed more into a faulty one than
 *     its modules stand, {@code (N_p − 1) · 1.25 · I_sc > series fuse rating} (IEC 62548-1)
 * @param price of all modules
 */
public record ArrayLayout(
        String product,
        @NotRepeated PvModule module,
        int series,
        List<Integer> stringsOnEach,
        int strings,
        int modules,
        Power power,
        Current shortCircuitCurrent,
        boolean stringFuses,
        Money price) {
    private static final double BRIGHT_SUN = 1.25;

    /** Keeps a copy. */
    public ArrayLayout {
        stringsOnEach = List.copyOf(stringsOnEach);
    }

    /** Strings shared among controllers as evenly as whole strings can be. */
    public static ArrayLayout shared(PvModule module, int series, int strings, int controllers) {
        List<Integer> onEach = new ArrayList<>();
        for (int i = 0; i < controllers; i++) {
            onEach.add(strings / controllers + (i < strings % controllers ? 1 : 0));
        }
        Current one = module.shortCircuitCurrent().times(module.bifacialGain().onePlus());
        int most = onEach.get(0);
        int modules = series * strings;
        return new ArrayLayout(
                module.model(),
                module,
                series,
                onEach,
                strings,
                modules,
                module.power().times(modules),
                one.times(most),
                one.times(BRIGHT_SUN * (most - 1)).compareTo(module.seriesFuse()) > 0,
                module.price().times(modules));
    }
}
