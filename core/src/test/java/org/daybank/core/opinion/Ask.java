package org.daybank.core.opinion;

import java.util.List;

/**
 * What a customer asks and a planner assumes, in bare numbers: degrees, degrees Celsius, Wh, W, VA, V, A, hours and
 * days. Months count from 0, azimuths clockwise from north.
 */
final class Ask {
    /** One load; {@code fractions} is empty when only hours a day are known. */
    record Load(
            boolean ac,
            double watts,
            int count,
            double hours,
            List<Double> fractions,
            double duty,
            double daysPerWeek,
            List<Integer> months,
            double standby,
            double powerFactor,
            double startingMultiple,
            double startPowerFactor,
            boolean selfSwitching,
            boolean needsSine) {

        /** Share of an hour of the day in which it is on. */
        double on(int hour) {
            return fractions.isEmpty() ? hours / 24 : fractions.get(hour);
        }
    }

    double latitude;
    double elevation;
    double recordLow;
    double recordHigh;
    final double[] horizontalWattHours = new double[12];
    final double[] meanAir = new double[12];
    final double[] albedo = new double[12];
    final double[] snowLoss = new double[12];
    double tilt;
    double azimuth;

    List<Load> loads = List.of();
    double serviceVolts;
    double serviceHertz;
    boolean singlePhase;
    int lines = 1;
    /** Shore power or the grid comes in beside the bank; how much in all. */
    boolean takesAc;

    double sourceWatts;
    double alternatorAmps;
    double alternatorHours;
    /** Zero when not fixed. */
    int gridModules;

    double gridWatts;
    double gridCoverage;
    List<String> inverterFunctions = List.of();
    List<String> controllerFunctions = List.of();
    List<String> chemistries = List.of();
    /** Zero when the planner may choose. */
    double wishedVolts;

    boolean indoors;
    double indoorLowest;
    double heatLoss;
    double heaterSetPoint;

    String coincidentStarts = "";
    double startSeconds;
    double dcWiringEfficiency;
    boolean inverterAlwaysOn;
    double statedEfficiency;
    double statedIdle;
    double statedMargin;
    double autonomyDays;
    double depthLeadAcid;
    double depthLithium;
    double dailyDepthLeadAcid;
    double dailyDepthLithium;
    double surgeRateLeadAcid;
    double surgeRateLithium;
    double parallelLeadAcid;
    double parallelLithium;
    double resistanceFactor;
    double bankDrop;
    double diversionFactor;
    double endOfLifeFraction;
    boolean wornBankCarriesAutonomy;
    double designMargin;
    double leadAcidCompensation;
    double coldestCompensated;
    double warmestCompensated;
    double solarConstant;
    boolean isotropic;
    double daytimeOverMeanAir;
    double arrayToLoadRatio;
    double soiling;
    double mismatch;
    double arrayWiring;
    double ageing;
    double voltageAgeing;
    double openCircuitReserve;
    double shortCircuitFactor;
    double clippingLimit;
    double inverterMargin;
    double voltageTolerance;
    double altitudeWithoutDerating;
    double altitudeDerating;
    double leastDcAc;
    double mostDcAc;
    double gridOpenCircuitReserve;
    double gridShortCircuitFactor;
    double gridClippingLimit;
    double gridVoltageTolerance;
    double phaseImbalance;
    double branchDevice;
    double continuousFactor;
    double bankCurrent;
    double coldSpell;
}
