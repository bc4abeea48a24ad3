package org.daybank.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Physics between the dimensions, against numbers worked by hand. */
class QuantityArithmeticTest {

    @Test
    void powerTimeAndEnergy() {
        // 60 W · 5 h = 300 Wh
        assertThat(Power.watts(60).times(TimeSpan.hours(5))).isEqualTo(Energy.wattHours(300));
        assertThat(Energy.wattHours(300).dividedBy(TimeSpan.hours(5))).isEqualTo(Power.watts(60));
        assertThat(Energy.wattHours(300).dividedBy(Power.watts(60))).isEqualTo(TimeSpan.hours(5));
    }

    @Test
    void chargeVoltageAndEnergy() {
        // 200 Ah · 12.8 V = 2560 Wh
        assertThat(Charge.ampereHours(200).times(Voltage.volts(12.8))).isEqualTo(Energy.wattHours(2560));
        assertThat(Energy.wattHours(2560).dividedBy(Voltage.volts(12.8))).isEqualTo(Charge.ampereHours(200));
        // 200 Ah / 20 h = 10 A; 200 Ah / 10 A = 20 h; 10 A · 20 h = 200 Ah
        assertThat(Charge.ampereHours(200).dividedBy(TimeSpan.hours(20))).isEqualTo(Current.amperes(10));
        assertThat(Charge.ampereHours(200).dividedBy(Current.amperes(10))).isEqualTo(TimeSpan.hours(20));
        assertThat(Current.amperes(10).times(TimeSpan.hours(20))).isEqualTo(Charge.ampereHours(200));
    }

    @Test
    void ohmsLawAndPower() {
        // 24 V / 0.5 Ω = 48 A; 48 A · 0.5 Ω = 24 V; 24 V / 48 A = 0.5 Ω; 24 V · 48 A = 1152 W
        assertThat(Voltage.volts(24).dividedBy(Resistance.ohms(0.5))).isEqualTo(Current.amperes(48));
        assertThat(Current.amperes(48).times(Resistance.ohms(0.5))).isEqualTo(Voltage.volts(24));
        assertThat(Voltage.volts(24).dividedBy(Current.amperes(48))).isEqualTo(Resistance.ohms(0.5));
        assertThat(Voltage.volts(24).times(Current.amperes(48))).isEqualTo(Power.watts(1152));
        assertThat(Current.amperes(48).times(Voltage.volts(24))).isEqualTo(Power.watts(1152));
        assertThat(Power.watts(1152).dividedBy(Voltage.volts(24))).isEqualTo(Current.amperes(48));
    }

    @Test
    void powerFactor() {
        // 780 W at 0.78 are 1000 VA, and back
        assertThat(Power.watts(780).atPowerFactor(Ratio.of(0.78))).isEqualTo(ApparentPower.voltAmperes(1000));
        assertThat(ApparentPower.voltAmperes(1000).atPowerFactor(Ratio.of(0.78)))
                .isEqualTo(Power.watts(780));
    }

    @Test
    void sun() {
        // 800 W/m² for 5 h = 4 kWh/m², which are 4 h of 1000 W/m²
        Irradiation day = Irradiance.wattsPerSquareMetre(800).times(TimeSpan.hours(5));
        assertThat(day).isEqualTo(Irradiation.kilowattHoursPerSquareMetre(4));
        assertThat(day.peakSunHours()).isEqualTo(TimeSpan.hours(4));
        // 4 kWh/m² · 3.6 = 14.4 MJ/m²
        assertThat(day.megajoulesPerSquareMetre()).isCloseTo(14.4, within(1e-12));
    }

    @Test
    void temperatureCoefficients() {
        // −0.3 %/K over 50 K = −15 %
        TemperatureDifference cold = Temperature.celsius(-25).minus(Temperature.celsius(25));
        assertThat(cold).isEqualTo(TemperatureDifference.kelvins(-50));
        assertThat(TemperatureCoefficient.percentPerKelvin(-0.3).times(cold).fraction())
                .isCloseTo(0.15, within(1e-15));
        // −5 mV/K · −50 K = 0.25 V
        assertThat(VoltageCoefficient.millivoltsPerKelvin(-5).times(cold).volts())
                .isCloseTo(0.25, within(1e-15));
        // 3 W/K · 20 K = 60 W
        assertThat(ThermalConductance.wattsPerKelvin(3).times(TemperatureDifference.kelvins(20)))
                .isEqualTo(Power.watts(60));
    }

    @Test
    void angles() {
        assertThat(Angle.degrees(30).sine()).isCloseTo(0.5, within(1e-15));
        assertThat(Angle.degrees(60).cosine()).isCloseTo(0.5, within(1e-15));
        assertThat(Angle.radians(Math.PI).degrees()).isEqualTo(180);
        assertThat(Angle.degrees(90).radians()).isEqualTo(Math.PI / 2);
    }

    @Test
    void withinADimension() {
        assertThat(Energy.kilowattHours(1).plus(Energy.wattHours(500))).isEqualTo(Energy.wattHours(1500));
        assertThat(Energy.kilowattHours(1).minus(Energy.wattHours(1500))).isEqualTo(Energy.wattHours(-500));
        assertThat(Length.feet(10)).isEqualTo(Length.metres(3.048));
        assertThat(Current.amperes(13).times(1.25)).isEqualTo(Current.amperes(16.25));
        assertThat(Power.watts(400).times(Ratio.percent(25))).isEqualTo(Power.watts(100));
        assertThat(Power.watts(400).dividedBy(4)).isEqualTo(Power.watts(100));
        assertThat(Power.kilowatts(1).dividedBy(Power.watts(250))).isEqualTo(4);
        assertThat(TimeSpan.days(2).plus(TimeSpan.hours(12)).days()).isEqualTo(2.5);
    }

    @Test
    void numbersOfOtherUnits() {
        assertThat(Energy.kilowattHours(2.5).in(EnergyUnit.MEGAJOULE)).isCloseTo(9, within(1e-14));
        assertThat(Length.metres(3.048).in(LengthUnit.FOOT)).isCloseTo(10, within(1e-14));
        assertThat(TimeSpan.hours(36).in(TimeSpanUnit.DAY)).isEqualTo(1.5);
    }
}
