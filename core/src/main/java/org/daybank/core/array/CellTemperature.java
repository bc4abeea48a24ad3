package org.daybank.core.array;

import org.daybank.core.quantity.Irradiance;
import org.daybank.core.quantity.Speed;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.sun.SunClass;

/** How warm the cells get under the sun. */
public final class CellTemperature {
    /** Irradiance and air at which the nominal operating cell temperature is measured, IEC 61215. */
    private static final double NOMINAL_WATTS_PER_SQUARE_METRE = 800;

    private static final Temperature NOMINAL_AIR = Temperature.celsius(20);

    /** Heat that leaves the module in still air, in W/(m²·K), Faiman 2008. */
    private static final double STILL_AIR_LOSS = 25.0;

    /** What each m/s of wind adds to it, in W·s/(m³·K), Faiman 2008. */
    private static final double WIND_LOSS = 6.84;

    private CellTemperature() {}

    /**
     * From the nominal operating cell temperature of the data sheet: {@code T_c = T_a + (NOCT − 20 °C) / 800 W/m² · G} (Ross
     * 1976). It knows no wind: that of the test, 1 m/s, is in the figure.
     *
     * @param air temperature of the air
     * @param irradiance on the plane of the module
     * @param nominal the module's nominal operating cell temperature
     */
    public static Temperature ross(Temperature air, Irradiance irradiance, Temperature nominal) {
        double share = irradiance.wattsPerSquareMetre() / NOMINAL_WATTS_PER_SQUARE_METRE;
        return air.plus(nominal.minus(NOMINAL_AIR).times(share));
    }

    /**
     * From the wind: {@code T_m = T_a + G / (25.0 + 6.84 · v)} (Faiman 2008, Progress in Photovoltaics 16:307–315), for framed
     * glass modules on an open rack. It is the temperature of the module; under full sun the cells are two or three kelvins
     * warmer than its back.
     *
     * @param air temperature of the air
     * @param irradiance on the plane of the module
     * @param wind speed at the height of the module
     */
    public static Temperature faiman(Temperature air, Irradiance irradiance, Speed wind) {
        return air.plus(TemperatureDifference.kelvins(
                irradiance.wattsPerSquareMetre() / (STILL_AIR_LOSS + WIND_LOSS * wind.metresPerSecond())));
    }

    /** Cells of a module in a class of sunshine, by Ross. */
    static Temperature of(PvModule module, SunClass sun) {
        return ross(sun.air(), sun.irradiance(), module.nominalOperatingCellTemperature());
    }

    /** By how much the cells of a module are warmer than the air for each W/m² on its plane, by Ross. */
    static double kelvinsPerWattPerSquareMetre(PvModule module) {
        return module.nominalOperatingCellTemperature().minus(NOMINAL_AIR).kelvins() / NOMINAL_WATTS_PER_SQUARE_METRE;
    }
}
