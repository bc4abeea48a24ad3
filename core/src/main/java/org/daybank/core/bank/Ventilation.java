package org.daybank.core.bank;

import java.util.Optional;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.VolumeFlow;

/**
 * The air that a lead-acid bank needs so that its hydrogen stays below 4 %.
 *
 * @param flow {@code Q = 0.05 · n · I_gas · C_rt · 10⁻³} in m³/h, with n cells in series and the gassing current at boost
 *     voltage: 20 mA/Ah vented, 8 mA/Ah valve-regulated; IEC 62485-2, clause 7
 * @param openings area of the inlet, and the same again of the outlet: {@code 28 · Q} cm²; IEC 62485-2, clause 7
 */
public record Ventilation(VolumeFlow flow, CrossSection openings) {

    /** The air that a bank needs; none for lithium. */
    public static Optional<Ventilation> of(BankLayout layout) {
        double gassingMilliamperes = switch (layout.battery().chemistry()) {
            case VENTED_LEAD_ACID -> 20;
            case AGM, GEL -> 8;
            case LITHIUM_IRON_PHOSPHATE -> 0;
        };
        if (gassingMilliamperes == 0) {
            return Optional.empty();
        }
        int cells = layout.battery().cells() * layout.series();
        double cubicMetresPerHour =
                0.05 * cells * gassingMilliamperes * layout.ratedCapacity().ampereHours() * 1e-3;
        return Optional.of(new Ventilation(
                VolumeFlow.cubicMetresPerHour(cubicMetresPerHour),
                CrossSection.squareCentimetres(28 * cubicMetresPerHour)));
    }
}
