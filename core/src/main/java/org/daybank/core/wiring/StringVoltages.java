package org.daybank.core.wiring;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.daybank.core.quantity.CrossSection;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Mass;
import org.daybank.core.quantity.Money;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;

/**
 * The same array at higher string voltages: what its run to the controller takes in metal, by length, and which controllers
 * stand the voltage. Current falls with the modules in series, and the area that the drop asks falls with its square.
 *
 * @param rows from one module in series to as many as the modules stand and that divide the array into whole strings
 */
public record StringVoltages(List<Row> rows) {
    /** Keeps a copy. */
    public StringVoltages {
        rows = List.copyOf(rows);
    }

    /**
     * One number of modules in series.
     *
     * @param series modules in each string
     * @param strings in parallel
     * @param operatingVoltage of a string
     * @param operatingCurrent of all strings
     * @param highestVoltage on the coldest morning
     * @param controllers that stand it, in the order given
     * @param runs one for each length
     */
    public record Row(
            int series,
            int strings,
            Voltage operatingVoltage,
            Current operatingCurrent,
            Voltage highestVoltage,
            List<String> controllers,
            List<Run> runs) {
        /** Keeps copies. */
        public Row {
            controllers = List.copyOf(controllers);
            runs = List.copyOf(runs);
        }
    }

    /**
     * One length of the run.
     *
     * @param length one way
     * @param fits whether a conductor keeps every rule
     * @param size of each conductor
     * @param parallel conductors side by side for each pole
     * @param crossSection of those together
     * @param governing rule that asks the most
     * @param dropShare of the operating voltage
     * @param metalMass of both poles
     * @param metalCost of that mass
     * @param yearlyLoss absent when the yearly energy is not known
     */
    public record Run(
            Length length,
            boolean fits,
            ConductorSize size,
            int parallel,
            CrossSection crossSection,
            SizingRule governing,
            Ratio dropShare,
            Mass metalMass,
            Money metalCost,
            Optional<Energy> yearlyLoss) {}

    /** Sizes the run of an array for every length and number in series. */
    public static StringVoltages of(ArrayRuns array, WiringPolicy policy) {
        return new StringVoltages(IntStream.rangeClosed(1, array.modules())
                .filter(series -> array.modules() % series == 0)
                .filter(series ->
                        array.moduleColdestVoltage().times(series).compareTo(array.moduleSystemVoltage()) <= 0)
                .mapToObj(series -> row(array, series, policy))
                .toList());
    }

    private static Row row(ArrayRuns array, int series, WiringPolicy policy) {
        int strings = array.modules() / series;
        Voltage highest = array.moduleColdestVoltage().times(series);
        return new Row(
                series,
                strings,
                array.moduleVoltage().times(series),
                array.moduleCurrent().times(strings),
                highest,
                array.controllers().stream()
                        .filter(controller -> highest.compareTo(controller.maximumVoltage()) <= 0)
                        .map(ControllerLimit::model)
                        .toList(),
                array.lengths().stream()
                        .map(length -> run(array, series, length, policy))
                        .toList());
    }

    private static Run run(ArrayRuns array, int series, Length length, WiringPolicy policy) {
        int strings = array.modules() / series;
        CircuitSizing sized = CircuitSizing.of(
                CircuitBuilder.builder()
                        .name("array to controller")
                        .kind(CircuitKind.ARRAY_TO_CONTROLLER)
                        .operatingVoltage(array.moduleVoltage().times(series))
                        .operatingCurrent(array.moduleCurrent().times(strings))
                        .designCurrent(array.moduleShortCircuitCurrent().times(strings))
                        .highestVoltage(array.moduleColdestVoltage().times(series))
                        .length(length)
                        .yearlyEnergy(array.yearlyEnergy())
                        .build(),
                policy);
        ConductorRun conductors = sized.conductors();
        return new Run(
                length,
                sized.fits(),
                conductors.size(),
                conductors.parallel(),
                conductors.crossSection(),
                sized.governing(),
                conductors.dropShare(),
                conductors.metalMass(),
                conductors.metalCost(),
                conductors.yearlyLoss());
    }
}
