package org.daybank.core.bank;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Voltage;

/** Invented batteries that the tests of this room start from. */
final class Batteries {
    static final Battery VENTED_6V = BatteryBuilder.builder()
            .model("vented 6 V")
            .chemistry(Chemistry.VENTED_LEAD_ACID)
            .nominalVoltage(Voltage.volts(6))
            .capacity(DischargeCurve.parse("5 h: 185 Ah; 20 h: 225 Ah; 100 h: 250 Ah"))
            .resistance(Resistance.milliohms(2.1))
            .maximumChargeCurrent(Current.amperes(30))
            .maximumDischargeCurrent(Current.amperes(75))
            .peakDischargeCurrent(Current.amperes(900))
            .mass(Mass.kilograms(28))
            .price(Money.of("189", "EUR"))
            .build();

    static final Battery AGM_12V = BatteryBuilder.builder()
            .model("AGM 12 V")
            .chemistry(Chemistry.AGM)
            .nominalVoltage(Voltage.volts(12))
            .capacity(DischargeCurve.parse("5 h: 168 Ah; 20 h: 200 Ah"))
            .resistance(Resistance.milliohms(2.6))
            .mass(Mass.kilograms(60))
            .price(Money.of("367", "EUR"))
            .build();

    static final Battery LITHIUM_12V = BatteryBuilder.builder()
            .model("lithium 12 V")
            .chemistry(Chemistry.LITHIUM_IRON_PHOSPHATE)
            .nominalVoltage(Voltage.volts(12))
            .capacity(DischargeCurve.parse("20 h: 100 Ah"))
            .resistance(Resistance.milliohms(12))
            .maximumChargeCurrent(Current.amperes(50))
            .maximumDischargeCurrent(Current.amperes(100))
            .peakDischargeCurrent(Current.amperes(200))
            .mostInParallel(8)
            .mass(Mass.kilograms(11))
            .price(Money.of("319", "EUR"))
            .build();

    static final Battery HEATED_12V =
            LITHIUM_12V.withModel("heated 12 V").withHeater(Power.watts(40)).withPrice(Money.of("359", "EUR"));

    static final List<Battery> ALL = List.of(
            LITHIUM_12V,
            VENTED_6V,
            HEATED_12V,
            AGM_12V,
            AGM_12V.withModel("gel 12 V").withChemistry(Chemistry.GEL).withPrice(Money.of("459", "EUR")));

    private Batteries() {}
}
