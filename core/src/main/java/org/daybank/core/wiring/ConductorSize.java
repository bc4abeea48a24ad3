package org.daybank.core.wiring;

import org.daybank.core.quantity.CrossSection;

/**
 * A size that conductors are made in.
 *
 * @param size its name: {@code 16 mm²}, {@code 6 AWG}, {@code 250 kcmil}
 * @param crossSection area of the metal
 */
public record ConductorSize(String size, CrossSection crossSection) {
    private static final int FIRST_IN_CIRCULAR_MILS = 250;
    private static final double SQUARE_MILLIMETRES_EACH_THOUSAND_CIRCULAR_MILS =
            0.25 * Math.PI * 0.0254 * 0.0254 * 1000;

    /** A metric size of IEC 60228. */
    static ConductorSize metric(CrossSection area) {
        return new ConductorSize(area.toString(), area);
    }

    /**
     * An American size: gauges by the geometric series of ASTM B258, {@code d = 0.127 mm · 92^((36 − n) / 39)}; from 250 upwards
     * thousands of circular mils.
     *
     * @param name {@code 14}, {@code 4/0}, {@code 250}
     */
    static ConductorSize american(String name) {
        int slash = name.indexOf('/');
        int number = Integer.parseInt(slash < 0 ? name : name.substring(0, slash));
        if (number >= FIRST_IN_CIRCULAR_MILS) {
            return new ConductorSize(
                    name + " kcmil",
                    CrossSection.squareMillimetres(number * SQUARE_MILLIMETRES_EACH_THOUSAND_CIRCULAR_MILS));
        }
        int gauge = slash < 0 ? number : 1 - number;
        double millimetres = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
        return new ConductorSize(
                name + " AWG", CrossSection.squareMillimetres(0.25 * Math.PI * millimetres * millimetres));
    }
}
