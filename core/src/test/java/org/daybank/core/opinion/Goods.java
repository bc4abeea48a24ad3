package org.daybank.core.opinion;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;

/** Data sheets in bare numbers. Prices are in hundredths. Coefficients are relative, for each kelvin. */
final class Goods {
    record Module(
            String model,
            double power,
            double voc,
            double isc,
            double vmp,
            double imp,
            double beta,
            double alpha,
            double gamma,
            double noct,
            int cells,
            double systemVoltage,
            double seriesFuse,
            double nominalGroup,
            double bifacialGain,
            long price) {}

    record Battery(
            String model,
            Cells cells,
            double volts,
            NavigableMap<Double, Double> ampHoursByHours,
            double ohms,
            double chargeAmps,
            double dischargeAmps,
            double peakAmps,
            int mostInSeries,
            int mostInParallel,
            NavigableMap<Double, Double> capacityByTemperature,
            double coldestCharge,
            double heater,
            long price) {}

    record Controller(
            String model,
            String kind,
            List<Double> busVolts,
            double maximumVolts,
            double minimumVolts,
            double headroom,
            double inputAmps,
            double inputWatts,
            double outputAmps,
            double efficiency,
            double selfWatts,
            List<String> chemistries,
            double fullOutputUpTo,
            double derating,
            int mostInParallel,
            double loadAmps,
            List<String> functions,
            long price) {}

    record Inverter(
            String model,
            double busVolts,
            double lowestVolts,
            double highestVolts,
            boolean sine,
            double watts,
            double voltAmps,
            NavigableMap<Double, Double> surgeBySeconds,
            double outputVolts,
            List<Double> hertz,
            double idle,
            double peakEfficiency,
            double fullEfficiency,
            double fullPowerUpTo,
            double derating,
            int lines,
            List<Integer> stackedLines,
            int mostInParallel,
            int mostUnits,
            double transferAmps,
            List<String> functions,
            long price) {}

    /** Feeds the grid; the last four are those of a string inverter or of a microinverter, zero for the other. */
    record GridInverter(
            String model,
            double watts,
            int lines,
            double outputVolts,
            List<Double> hertz,
            double maximumVolts,
            double trackingLowest,
            double trackingHighest,
            double inputAmps,
            double shortCircuitAmps,
            double efficiency,
            double fullPowerUpTo,
            double derating,
            long price,
            int trackers,
            double mostArrayWatts,
            int modulesOnEach,
            double mostModuleWatts,
            int mostOnBranch) {}

    /** Typical figures of a chemistry, as the table of chemistries lists them; volts for one cell at 25 °C. */
    record Cells(
            String chemistry,
            boolean lithium,
            boolean vented,
            double nominal,
            int per12Volts,
            double absorption,
            double disconnect,
            double compensated,
            double chargeEfficiency,
            double energyEfficiency,
            double peukert) {

        double trueNominal(double busVolts) {
            return nominal * per12Volts * busVolts / 12;
        }
    }

    static final Map<String, Cells> CELLS = Map.of(
            "ventedLeadAcid", new Cells("ventedLeadAcid", false, true, 2, 6, 2.45, 1.9, 1, 0.9, 0.8, 1.25),
            "agm", new Cells("agm", false, false, 2, 6, 2.4, 1.9, 1, 0.95, 0.85, 1.1),
            "gel", new Cells("gel", false, false, 2, 6, 2.35, 1.9, 1, 0.95, 0.85, 1.15),
            "lithiumIronPhosphate",
                    new Cells("lithiumIronPhosphate", true, false, 3.2, 4, 3.5, 2.9, 0, 0.99, 0.94, 1.03));

    private Goods() {}
}
