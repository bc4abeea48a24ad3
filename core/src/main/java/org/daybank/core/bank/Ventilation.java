package org.daybank.core.bank;

import java.util.Optional;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.quantity.VolumeFlow;

/**
 * The air that a lead-acid bank needs so that its hydrogen stays below 4 %: {@code Q = 0.05 · n · I_gas · C_rt · 10⁻³} in
 * m³/h with n cells in series; IEC 62485-2, clause 7. C_rt is taken at the slowest discharge, which is never less than the
 * ten-hour capacity that the standard means.
 *
 * @param chargingFlow at the gassing current of boost charging up to 2.40 V a cell: 20 mA/Ah vented, 8 mA/Ah valve-regulated
 * @param equalisingFlow at the current of an equalising charge, C/20 or 50 mA/Ah; vented cells only
 * @param flow the larger of the two
 * @param heatLoss heat that this flow takes from a heated room for each kelvin that it is warmer than the air outside,
 *     {@code Q · 1.2 kg/m³ · 1005 J/(kg·K)}
 * @param openings area of the inlet, and the same again of the outlet: {@code 28 · Q} cm²
 */
public record Ventilation(
        VolumeFlow chargingFlow,
        Optional<VolumeFlow> equalisingFlow,
        VolumeFlow flow,
        ThermalConductance heatLoss,
        CrossSection openings) {
    /** Density times specific heat of air at 20 °C, in J/(m³·K). */
    private static final double HEAT_OF_AIR = 1.2 * 1005;

    private static final double SECONDS_OF_AN_HOUR = 3600;
    private static final double EQUALISING_MILLIAMPERES = 50;

    /** The air that a bank needs; none for lithium. */
    public static Optional<Ventilation> of(BankLayout layout) {
        return switch (layout.battery().chemistry()) {
            case VENTED_LEAD_ACID ->
                Optional.of(of(flow(layout, 20), Optional.of(flow(layout, EQUALISING_MILLIAMPERES))));
            case AGM, GEL -> Optional.of(of(flow(layout, 8), Optional.empty()));
            case LITHIUM_IRON_PHOSPHATE -> Optional.empty();
        };
    }

    private static Ventilation of(VolumeFlow charging, Optional<VolumeFlow> equalising) {
        VolumeFlow flow = equalising.orElse(charging);
        return new Ventilation(
                charging,
                equalising,
                flow,
                ThermalConductance.wattsPerKelvin(HEAT_OF_AIR * flow.cubicMetresPerHour() / SECONDS_OF_AN_HOUR),
                CrossSection.squareCentimetres(28 * flow.cubicMetresPerHour()));
    }

    private static VolumeFlow flow(BankLayout layout, double gassingMilliamperes) {
        int cells = layout.battery().cells() * layout.series();
        return VolumeFlow.cubicMetresPerHour(
                0.05 * cells * gassingMilliamperes * layout.ratedCapacity().ampereHours() * 1e-3);
    }
}
