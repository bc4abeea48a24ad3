package org.daybank.core.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * All dimensions in a row, so that what holds of one is tested of each.
 *
 * @param units all units, the base unit first
 * @param parse reads text
 * @param ofBase makes a value of a number of base units
 * @param least smallest number of base units that the domain knows
 */
record Dimension(
        List<? extends Unit> units,
        Function<CharSequence, Quantity> parse,
        DoubleFunction<Quantity> ofBase,
        double least) {
    private static final double ANY = -Double.MAX_VALUE;

    static final List<Dimension> ALL = List.of(
            of(PowerUnit.values(), Power::parse, Power::new, ANY),
            of(ApparentPowerUnit.values(), ApparentPower::parse, ApparentPower::new, 0),
            of(EnergyUnit.values(), Energy::parse, Energy::new, ANY),
            of(ChargeUnit.values(), Charge::parse, Charge::new, ANY),
            of(VoltageUnit.values(), Voltage::parse, Voltage::new, ANY),
            of(CurrentUnit.values(), Current::parse, Current::new, ANY),
            of(ResistanceUnit.values(), Resistance::parse, Resistance::new, 0),
            of(TemperatureUnit.values(), Temperature::parse, Temperature::new, -273.15),
            of(TemperatureDifferenceUnit.values(), TemperatureDifference::parse, TemperatureDifference::new, ANY),
            of(TemperatureCoefficientUnit.values(), TemperatureCoefficient::parse, TemperatureCoefficient::new, ANY),
            of(VoltageCoefficientUnit.values(), VoltageCoefficient::parse, VoltageCoefficient::new, ANY),
            of(ThermalConductanceUnit.values(), ThermalConductance::parse, ThermalConductance::new, 0),
            of(IrradianceUnit.values(), Irradiance::parse, Irradiance::new, 0),
            of(IrradiationUnit.values(), Irradiation::parse, Irradiation::new, 0),
            of(LengthUnit.values(), Length::parse, Length::new, ANY),
            of(CrossSectionUnit.values(), CrossSection::parse, CrossSection::new, 0),
            of(MassUnit.values(), Mass::parse, Mass::new, 0),
            of(SpeedUnit.values(), Speed::parse, Speed::new, 0),
            of(FrequencyUnit.values(), Frequency::parse, Frequency::new, 0),
            of(VolumeUnit.values(), Volume::parse, Volume::new, 0),
            of(VolumeFlowUnit.values(), VolumeFlow::parse, VolumeFlow::new, 0),
            of(TimeSpanUnit.values(), TimeSpan::parse, TimeSpan::new, 0),
            of(AngleUnit.values(), Angle::parse, Angle::new, ANY));

    private static Dimension of(
            Unit[] units, Function<CharSequence, Quantity> parse, DoubleFunction<Quantity> ofBase, double least) {
        return new Dimension(List.of(units), parse, ofBase, least);
    }

    Unit baseUnit() {
        return units.get(0);
    }

    /** Every way of writing a unit that is read. */
    static List<String> spellings(Unit unit) {
        List<String> all = new ArrayList<>(List.of(unit.code(), unit.symbol()));
        all.addAll(unit.definition().otherSpellings());
        return all.stream().distinct().toList();
    }

    @Override
    public String toString() {
        return baseUnit().getClass().getSimpleName();
    }
}
