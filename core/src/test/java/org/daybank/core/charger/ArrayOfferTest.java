package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.core.charger.ChargerSheets.MODULE;
import static org.daybank.core.charger.ChargerSheets.SITE;
import static org.daybank.core.charger.ChargerSheets.SUNSHINE;
import static org.daybank.core.charger.ChargerSheets.TRACKING;
import static org.daybank.core.charger.ChargerSheets.TWELVE;
import static org.daybank.core.charger.ChargerSheets.twelveVolts;

import java.time.Month;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.PvModule;
import org.daybank.core.array.YieldModel;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.sun.SunClass;
import org.junit.jupiter.api.Test;

class ArrayOfferTest {
    private static final ArrayPolicy PROPORTIONAL = ArrayPolicy.standard().withYieldModel(YieldModel.PROPORTIONAL);

    private static ArrayOffer offer(PvModule module) {
        return ArrayOffer.of(module, 3, twelveVolts(), SITE, SUNSHINE, PROPORTIONAL);
    }

    @Test
    void whatAModuleBringsInAYear() {
        // in proportion to the sun, were its cells never warm: 160 W · Σ G·t / 1000 W/m², less dirt .95, mismatch .98,
        // wiring .98 and age .95; what heat takes is in proportion to the coefficient, so twice -0.2 %/K less once -0.4
        // %/K is none
        double sunHours = 0;
        for (Month month : Month.values()) {
            for (SunClass sun : SUNSHINE.in(month)) {
                sunHours += sun.irradiance().wattsPerSquareMetre()
                        / 1000
                        * sun.perDay().hours()
                        * month.length(false);
            }
        }
        double expected = 160 * sunHours * 0.95 * 0.98 * 0.98 * 0.95;

        double cool = 2 * yearly(-0.2) - yearly(-0.4);
        assertThat(cool).isCloseTo(expected, within(1e-9 * expected));
    }

    private static double yearly(double percentPerKelvin) {
        return offer(TWELVE.withPowerCoefficient(TemperatureCoefficient.percentPerKelvin(percentPerKelvin)))
                .yearlyTracking()
                .wattHours();
    }

    @Test
    void atTheBanksVoltageAModuleBringsLess() {
        ArrayOffer offer = offer(TWELVE);

        assertThat(offer.yearlyDirect()).isNotNull().isLessThan(offer.yearlyTracking());
        assertThat(offer(MODULE).yearlyDirect()).isNull();
    }

    @Test
    void countsTheModulesOfAController() {
        assertThat(offer(TWELVE).modulesFor(TRACKING)).isEqualTo(3);
        assertThat(offer(TWELVE).exactTracking().fraction()).isEqualTo(3);
    }
}
