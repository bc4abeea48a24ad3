package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Step;
import org.junit.jupiter.api.Test;

class WiringPlanTest {
    private static final WiringPolicy IEC = WiringPolicy.standard();

    private static List<String> hazards(WiringPolicy policy, Circuit... circuits) {
        return WiringPlan.of(List.of(circuits), policy).hazards().stream()
                .map(hazard -> hazard.code().code())
                .toList();
    }

    @Test
    void addsUpItsCircuits() {
        Circuit array = Circuits.array(38).withYearlyEnergy(Energy.kilowattHours(2000));
        Circuit pump = Circuits.supply(CircuitKind.AC_OUTPUT, 230, 18, 10);
        WiringPlan plan = WiringPlan.of(List.of(Circuits.string(2), array, pump), IEC);
        // string 2.5 mm² over 4 m: terminals 17.375 A ≤ 17.5 A of 1.5 mm², but 2 · 13.14 A · 4 m · 12.1 mΩ/m = 1.27 V
        // warm
        // 1.48 V, within 1.87 V: 1.5 mm². Array 25 mm² over 38 m; pump 2.5 mm² over 10 m.
        // 2 · 8890 / 10⁶ · (4 · 1.5 + 38 · 25 + 10 · 2.5) = 17.44218 kg
        assertThat(plan.metalMass().kilograms()).isCloseTo(17.44218, within(1e-9));
        assertThat(plan.yearlyLoss())
                .isEqualTo(plan.circuits().get(1).conductors().yearlyLoss());
        assertThat(plan.arrayDropShare().orElseThrow().fraction())
                .isCloseTo(
                        plan.circuits().get(0).conductors().dropShare().fraction()
                                + plan.circuits()
                                        .get(1)
                                        .conductors()
                                        .dropShare()
                                        .fraction(),
                        within(1e-15));
        assertThat(plan.fits()).isTrue();
        assertThat(WiringPlan.of(List.of(pump), IEC).arrayDropShare()).isEmpty();
        assertThat(plan.working().steps())
                .extracting(Step::name)
                .contains("string: drop", "array to controller: drop", "supply: drop");
    }

    @Test
    void ofStringsSideBySideTheWorstDropCounts() {
        // twice as far, at the same current and so as warm on the same 1.5 mm²: twice the drop
        Circuit near = Circuits.string(2).withLength(Length.metres(2));
        Circuit far = Circuits.string(2);
        for (List<Circuit> strings : List.of(List.of(near, far), List.of(far, near))) {
            WiringPlan plan = WiringPlan.of(strings, IEC);
            double one = WiringPlan.of(List.of(near), IEC)
                    .arrayDropShare()
                    .orElseThrow()
                    .fraction();
            assertThat(plan.arrayDropShare().orElseThrow().fraction()).isCloseTo(2 * one, within(1e-12));
        }
    }

    @Test
    void everyCircuitThatTheTablesCannotServeIsToldInItsPlace() {
        Circuit hot = Circuits.array(5).withAmbient(Temperature.celsius(85));
        assertThatThrownBy(() -> WiringPlan.of(List.of(hot, Circuits.array(5), hot), IEC))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/circuits/0/ambient", "/circuits/2/ambient"));
        assertThatThrownBy(() -> WiringPlan.of(
                        List.of(Circuits.array(5), Circuits.array(6)), IEC.withAmbient(Temperature.celsius(85))))
                .isInstanceOfSatisfying(
                        InvalidInput.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::path)
                                .containsExactly("/policy/ambient"));
    }

    @Test
    void cautionsAppearExactlyWithTheirCauses() {
        Circuit lamps = Circuits.supply(CircuitKind.AC_OUTPUT, 230, 2, 5);
        Circuit loads = Circuits.supply(CircuitKind.DC_LOADS, 24, 5, 3).withHighestVoltage(Voltage.volts(30));
        assertThat(hazards(IEC, lamps)).containsExactly("preliminarySizes");
        assertThat(hazards(IEC, loads)).containsExactly("faultCurrentUnknown", "preliminarySizes");
        assertThat(hazards(IEC, loads.withFaultCurrent(Current.kiloamperes(3))))
                .containsExactly("bankShortCircuit", "preliminarySizes");
        // 60 V of direct current may be touched
        Circuit sixty = loads.withFaultCurrent(Current.kiloamperes(3)).withHighestVoltage(Voltage.volts(60));
        assertThat(hazards(IEC, sixty)).doesNotContain("directVoltage");
        assertThat(hazards(IEC, sixty.withHighestVoltage(Voltage.volts(61)))).contains("directVoltage");
        assertThat(hazards(IEC, Circuits.array(10))).containsExactly("directVoltage", "preliminarySizes");
        assertThat(hazards(IEC, Circuits.array(38)))
                .containsExactly("directVoltage", "surgeProtection", "preliminarySizes");
        assertThat(hazards(IEC, Circuits.string(3)))
                .containsExactly("directVoltage", "stringFuses", "preliminarySizes");
        assertThat(hazards(IEC.withMetal(Metal.ALUMINIUM), lamps))
                .containsExactly("aluminiumTerminals", "preliminarySizes");
        assertThat(hazards(IEC, Circuits.supply(CircuitKind.AC_OUTPUT, 230, 20, 9000)))
                .containsExactly("circuitDoesNotFit", "preliminarySizes");
    }

    @Test
    void noHazardRepeatsThatLocalCodesDecide() {
        // it is said once for each document
        assertThat(WiringPlan.of(List.of(Circuits.array(38), Circuits.string(4)), IEC)
                        .hazards())
                .isNotEmpty()
                .allSatisfy(hazard -> assertThat(hazard.action()).doesNotContain(Hazard.LOCAL_CODE));
    }
}
