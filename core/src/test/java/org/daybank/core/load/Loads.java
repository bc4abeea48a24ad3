package org.daybank.core.load;

import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;

/** Loads and policies that the tests of this room start from. */
final class Loads {
    /** Nothing is lost on the way, so that energy at the bank is energy at the loads. */
    static final LoadPolicy LOSSLESS = LoadPolicy.standard()
            .withDcWiringEfficiency(Ratio.ONE)
            .withInverterEfficiency(Ratio.ONE)
            .withInverterIdle(Ratio.ZERO);

    private Loads() {}

    /** Everything but the hours. */
    static LoadBuilder named(String name, Supply supply, double watts) {
        return LoadBuilder.builder().name(name).supply(supply).power(Power.watts(watts));
    }

    static LoadBuilder ac(double watts) {
        return named("ac load", Supply.AC, watts);
    }

    static LoadBuilder dc(double watts) {
        return named("dc load", Supply.DC, watts);
    }
}
