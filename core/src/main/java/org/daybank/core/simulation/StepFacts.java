package org.daybank.core.simulation;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.daybank.core.array.ChargePath;
import org.daybank.core.bank.BankLayout;
import org.daybank.core.bank.BatteryFamily;
import org.daybank.core.bank.Chemistry;
import org.daybank.core.load.StandingDraw;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Ratio;

/**
 * What does not change from hour to hour, as bare numbers of W and Wh for the loop.
 *
 * @param capacity what the bank holds, at the current that the loads draw
 * @param otherDepth depth at which loads that are not essential are cut off
 * @param essentialDepth depth at which the essential loads are cut off
 * @param rise what the bank must rise over a cut-off before loads come back
 * @param chargeEfficiency what is stored of what goes in
 * @param dischargeEfficiency what comes out of what is taken from the store
 * @param dischargeLimit most that comes out in an hour
 * @param taperShare share of what it lacks that a bank takes in an hour at the absorption voltage
 * @param leakShare share of what it holds that is lost in an hour at rest
 * @param engineWatts what an engine gives through its charger
 */
@RecordBuilder
record StepFacts(
        double capacity,
        double otherDepth,
        double essentialDepth,
        double rise,
        double chargeEfficiency,
        double dischargeEfficiency,
        double dischargeLimit,
        double taperShare,
        double leakShare,
        double engineWatts)
        implements StepFactsBuilder.With {
    /** Share of the capacity that counts as nothing. */
    static final double ROUNDING = 1e-12;

    private static final double HOURS_OF_A_MONTH = 8766.0 / 12;

    static StepFacts of(SimulatedSystem system, SimulationPolicy policy) {
        BankLayout bank = system.bank();
        Chemistry chemistry = bank.battery().chemistry();
        BatteryFamily family = chemistry.family();
        double volts = bank.trueNominal().volts();
        Current running = system.loads()
                .budget(system.resolved().inverter(), StandingDraw.NONE)
                .heaviestMonth()
                .runningPower()
                .dividedBy(bank.trueNominal());
        double capacity = bank.capacityAt(running).ampereHours() * volts;
        double depth = system.depthOfDischarge().fraction();
        double roundTrip =
                roundTrip(chemistry, system.controller().kind().path()).fraction();
        double out = Math.pow(roundTrip, policy.dischargeLossShare().fraction());
        double charge = bank.maximumChargeCurrent().amperes() * volts;
        double untilFull =
                capacity * policy.absorptionFrom().of(family).complement().fraction();
        EngineRule engine = system.engine();
        return StepFactsBuilder.builder()
                .capacity(capacity)
                .otherDepth(depth)
                .essentialDepth(Math.max(
                        depth, policy.essentialDepthOfDischarge().of(family).fraction()))
                .rise(policy.reconnectRise().fraction() * capacity)
                .chargeEfficiency(roundTrip / out)
                .dischargeEfficiency(out)
                .dischargeLimit(bank.maximumDischargeCurrent().amperes() * volts)
                .taperShare(1 - Math.exp(-charge * roundTrip / out / untilFull))
                .leakShare(chemistry.traits().selfDischargePerMonth().fraction() / HOURS_OF_A_MONTH)
                .engineWatts(
                        engine == null
                                ? 0
                                : engine.power()
                                        .times(engine.chargerEfficiency())
                                        .watts())
                .build();
    }

    /** Energy where a controller tracks; charge where it holds the array to the bank's own voltage. */
    private static Ratio roundTrip(Chemistry chemistry, ChargePath path) {
        return switch (path) {
            case TRACKING -> chemistry.traits().energyEfficiency();
            case DIRECT -> chemistry.traits().coulombicEfficiency();
        };
    }
}
