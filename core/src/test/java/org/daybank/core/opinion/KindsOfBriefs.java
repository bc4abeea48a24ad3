package org.daybank.core.opinion;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.daybank.core.array.YieldModel;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.GridWish;
import org.daybank.core.design.SystemKind;
import org.daybank.core.inverter.GridPolicy;
import org.daybank.core.inverter.Phases;
import org.daybank.core.inverter.Service;
import org.daybank.core.load.Load;
import org.daybank.core.load.TimeWindow;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Frequency;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;

/** Random briefs of every kind of system, the same for the same seed: a stand-alone one, and what its kind adds. */
final class KindsOfBriefs {
    private final SplittableRandom dice;
    private final DesignBrief base;

    private KindsOfBriefs(long seed) {
        dice = new SplittableRandom(seed);
        base = new RandomBriefs(dice.nextLong(), YieldModel.PROPORTIONAL).next();
    }

    static DesignBrief of(SystemKind kind, long seed) {
        KindsOfBriefs briefs = new KindsOfBriefs(seed);
        return switch (kind) {
            case STAND_ALONE -> briefs.base.withService(briefs.service());
            case MOBILE -> briefs.mobile();
            case GRID_BACKUP -> briefs.backup();
            case GRID_INTERACTIVE -> briefs.interactive();
        };
    }

    private DesignBrief mobile() {
        ShorePower shore = odds(0.7) ? new ShorePower(Power.watts(between(500, 8000)), windows(), null) : null;
        Alternator alternator = odds(0.7) ? new Alternator(Current.amperes(between(5, 60)), windows()) : null;
        return base.withKind(SystemKind.MOBILE)
                .withService(service())
                .withShore(shore)
                .withAlternator(alternator);
    }

    private List<TimeWindow> windows() {
        int from = dice.nextInt(96) * 15;
        return odds(0.5) ? null : List.of(new TimeWindow(from, (from + 15 + dice.nextInt(240)) % 1440));
    }

    private DesignBrief backup() {
        List<Load> loads = new ArrayList<>();
        for (Load load : base.loads()) {
            loads.add(load.withEssential(loads.isEmpty() || odds(0.5)));
        }
        return base.withLoads(loads).withKind(SystemKind.GRID_BACKUP).withService(service());
    }

    private DesignBrief interactive() {
        GridWish wish = new GridWish(
                odds(0.2) ? 1 + dice.nextInt(60) : null,
                odds(0.2) ? Power.kilowatts(between(0.4, 30)) : null,
                odds(0.3) ? null : Ratio.of(between(0.3, 1.5)),
                null);
        GridPolicy policy = GridPolicy.standard()
                .withDcAcRatio(Ratio.of(between(1, 1.3)))
                .withLeastDcAcRatio(Ratio.of(between(0.7, 1)))
                .withMostDcAcRatio(Ratio.of(between(1.3, 1.5)))
                .withOpenCircuitReserve(Ratio.of(between(0, 0.05)))
                .withClippingLimit(Ratio.of(between(0.005, 0.05)))
                .withPhaseImbalance(ApparentPower.voltAmperes(between(300, 5000)))
                .withBranchDevice(Current.amperes(between(10, 25)));
        return base.withKind(SystemKind.GRID_INTERACTIVE)
                .withService(service())
                .withGrid(wish)
                .withPolicy(base.policy().withGrid(policy));
    }

    private Service service() {
        return switch (dice.nextInt(6)) {
            case 0 -> new Service(Voltage.volts(120), Frequency.hertz(60), Phases.SPLIT);
            case 1 -> new Service(Voltage.volts(120), Frequency.hertz(60), Phases.SINGLE);
            case 2, 3 -> new Service(Voltage.volts(230), Frequency.hertz(50), Phases.THREE);
            default -> base.service();
        };
    }

    private double between(double low, double high) {
        return dice.nextDouble(low, high);
    }

    private boolean odds(double share) {
        return dice.nextDouble() < share;
    }
}
