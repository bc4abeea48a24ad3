package org.daybank.core.bank;

import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.quantity.ThermalConductance;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;

/**
 * Where a bank stands and how warm it stays.
 *
 * @param location in outdoor air or in a heated room
 * @param indoorLowest coldest the heated room gets
 * @param heatLoss of the box around a heated bank
 * @param heaterSetPoint temperature to which a heater keeps the cells
 */
public record BankHousing(
        @Assumed(value = "outdoors", source = "the safe guess: an unheated shed")
        BankLocation location,

        @Bounds(minimum = "-10 Cel", maximum = "35 Cel") @Assumed(value = "15 Cel", source = "a moderately heated room")
        Temperature indoorLowest,

        @Bounds(minimum = "0.05 W/K", maximum = "50 W/K")
        @Assumed(value = "1.2 W/K", source = "box of 2 m² with 50 mm of foam")
        ThermalConductance heatLoss,

        @Bounds(minimum = "0 Cel", maximum = "25 Cel")
        @Assumed(value = "5 Cel", source = "above the limit of charging, with a reserve")
        Temperature heaterSetPoint) {
    private static final BankHousing STANDARD = Defaults.of(BankHousing.class);

    /**
     * Resolves what was left out.
     *
     * @throws org.daybank.core.schema.InvalidInput when a value is out of range
     */
    public BankHousing {
        location = Defaults.otherwise(location, BankHousing.class, "location");
        indoorLowest = Defaults.otherwise(indoorLowest, BankHousing.class, "indoorLowest");
        heatLoss = Defaults.otherwise(heatLoss, BankHousing.class, "heatLoss");
        heaterSetPoint = Defaults.otherwise(heaterSetPoint, BankHousing.class, "heaterSetPoint");
        Validation.of(BankHousing.class, location, indoorLowest, heatLoss, heaterSetPoint)
                .done();
    }

    /** An unheated shed, outdoor air. */
    public static BankHousing standard() {
        return STANDARD;
    }

    /**
     * Coldest mean temperature around the bank over the days of autonomy.
     *
     * @param coldestMonth mean air of the coldest month
     * @param recordLow coldest air
     * @param coldSpell how far from the coldest month's mean towards the record low a spell as long as the autonomy goes
     */
    public Temperature lowest(Temperature coldestMonth, Temperature recordLow, Ratio coldSpell) {
        TemperatureDifference fall = coldestMonth.minus(recordLow).times(coldSpell);
        return location == BankLocation.INDOORS ? indoorLowest : coldestMonth.minus(fall);
    }

    /** What surrounds the bank while the air outside has a temperature: a room gets no colder than its lowest. */
    public Temperature around(Temperature outside) {
        return location == BankLocation.INDOORS && outside.compareTo(indoorLowest) < 0 ? indoorLowest : outside;
    }
}
