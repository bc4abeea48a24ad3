package org.daybank.core.wiring;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Resistance;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureCoefficient;
import org.daybank.core.working.Table;

/** What conductors are made of; figures in {@code metals.csv}. */
public enum Metal {
    /** Annealed copper. */
    COPPER,
    /** Drawn aluminium. */
    ALUMINIUM;

    private static final Temperature REFERENCE = Temperature.celsius(20);

    /** Resistance of a solid wire at 20 °C: {@code ρ · L / A}. */
    Resistance resistance(Length length, CrossSection area) {
        return Resistance.ohms(traits().resistivity * length.metres() / area.squareMillimetres());
    }

    /** What a resistance at 20 °C becomes at another temperature: {@code R₂₀ · (1 + α · (T − 20 °C))}. */
    Resistance at(Temperature temperature, Resistance at20) {
        return at20.times(
                1 + traits().coefficient.times(temperature.minus(REFERENCE)).fraction());
    }

    /** Mass of a conductor. */
    Mass mass(Length length, CrossSection area) {
        return Mass.kilograms(traits().density * length.metres() * area.squareMetres());
    }

    /** Change of the resistance for each kelvin, of that at 20 °C. */
    TemperatureCoefficient coefficient() {
        return traits().coefficient;
    }

    /** In kg/m³. */
    double density() {
        return traits().density;
    }

    private Traits traits() {
        return Objects.requireNonNull(Published.TRAITS.get(this));
    }

    /** Resistivity in Ω·mm²/m and density in kg/m³. */
    private record Traits(double resistivity, TemperatureCoefficient coefficient, double density) {}

    /** Reads the table once, when first asked. */
    private static final class Published {
        private static final Map<Metal, Traits> TRAITS = new EnumMap<>(Metal.class);

        static {
            for (Table.Row row : Table.resource(Metal.class, "metals.csv").rows()) {
                TRAITS.put(
                        row.value(Metal.class, "metal"),
                        new Traits(
                                row.value(Double.class, "resistivity_ohmMm2PerM"),
                                TemperatureCoefficient.perKelvin(row.value(Double.class, "coefficient_perK")),
                                row.value(Double.class, "density_kgPerM3")));
            }
        }
    }
}
