package org.daybank.core.design;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.bank.BankPolicy;
import org.daybank.core.bank.ChargePolicy;
import org.daybank.core.bank.LifePolicy;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.generator.GeneratorPolicy;
import org.daybank.core.inverter.GridPolicy;
import org.daybank.core.inverter.InverterPolicy;
import org.daybank.core.load.LoadPolicy;
import org.daybank.core.schema.Defaults;
import org.daybank.core.schema.Validation;
import org.daybank.core.simulation.SimulationPolicy;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.sun.SyntheticPolicy;
import org.daybank.core.wiring.WiringPolicy;

/**
 * Every assumption behind a design, by calculator.
 *
 * @param load about loads
 * @param bank about the bank
 * @param charge about charging
 * @param life about how long a bank lasts
 * @param sun about sunshine
 * @param array about the array
 * @param charger about charge controllers
 * @param inverter about inverters
 * @param grid about inverters that feed an array into the grid
 * @param wiring about cables and their protection
 * @param synthetic about weather made up from monthly means
 * @param simulation about the hours
 * @param generator about an engine generator for the dark months
 * @param system about the system as a whole
 */
@RecordBuilder
public record DesignPolicy(
        LoadPolicy load,
        BankPolicy bank,
        ChargePolicy charge,
        LifePolicy life,
        SunPolicy sun,
        ArrayPolicy array,
        ChargerPolicy charger,
        InverterPolicy inverter,
        GridPolicy grid,
        WiringPolicy wiring,
        SyntheticPolicy synthetic,
        SimulationPolicy simulation,
        GeneratorPolicy generator,
        SystemPolicy system)
        implements DesignPolicyBuilder.With {
    private static final DesignPolicy STANDARD = Defaults.of(DesignPolicy.class);

    /**
     * Refuses an absent part.
     *
     * @throws org.daybank.core.schema.InvalidInput when any is absent
     */
    public DesignPolicy {
        Validation.of(
                        DesignPolicy.class,
                        load,
                        bank,
                        charge,
                        life,
                        sun,
                        array,
                        charger,
                        inverter,
                        grid,
                        wiring,
                        synthetic,
                        simulation,
                        generator,
                        system)
                .done();
    }

    /** The cited defaults. */
    public static DesignPolicy standard() {
        return STANDARD;
    }
}
