package org.daybank.core.simulation;

import org.jspecify.annotations.Nullable;

/**
 * One system in one hour after another. Flows are Wh within the hour, at the terminals of the bank; what is carried from hour
 * to hour is what the bank holds, and what is switched on.
 */
final class HourlyStep {
    private final StepFacts facts;
    private final BankStore store;
    private final @Nullable EngineRule engine;

    /** What goes in for each Wh stored, and what is taken from the store for each Wh given. */
    private final double inPerStored;

    private final double takenPerGiven;

    /** Limits of the day. */
    private double otherFloor;

    private double essentialFloor;
    private double chargeLimit;

    /** Carried from hour to hour. */
    private boolean otherOn = true;

    private boolean essentialOn = true;
    boolean engineOn;

    /** What the hour brought. */
    double leaked;

    double servedOwn;
    double lackedEssential;
    double lackedOther;
    double servedEssential;
    double servedOther;
    double spilled;
    double fromShore;
    double fromEngine;
    double intoBank;
    double outOfBank;

    HourlyStep(StepFacts facts, BankStore store, @Nullable EngineRule engine) {
        this.facts = facts;
        this.store = store;
        this.engine = engine;
        this.inPerStored = 1 / facts.chargeEfficiency();
        this.takenPerGiven = 1 / facts.dischargeEfficiency();
    }

    /**
     * Sets the limits of a day.
     *
     * @param capacityShare share of the capacity that can be drawn at the temperature of the day
     * @param mostCharge most that the bank takes in an hour
     */
    void day(double capacityShare, double mostCharge) {
        otherFloor = facts.capacity() * (1 - capacityShare * facts.otherDepth());
        essentialFloor = facts.capacity() * (1 - capacityShare * facts.essentialDepth());
        chargeLimit = mostCharge;
    }

    /**
     * The model of an hour. What runs is carried by the array first, then from outside (shore power, a running engine), then
     * by the bank: the system's own parts before the essential loads, these before the others. What is left charges the bank,
     * as far as it takes it, the array's before that from outside; what is left of the array's then is spilled.
     *
     * @param array what the array brings through its controllers
     * @param own what the system's own parts draw
     * @param essential what the essential loads ask
     * @param other what the other loads ask
     * @param shore what is there from outside
     */
    void step(double array, double own, double essential, double other, double shore) {
        leaked = store.leak(facts.leakShare());
        double held = store.level();
        otherOn = staysOn(otherOn, held, otherFloor);
        essentialOn = staysOn(essentialOn, held, essentialFloor);
        engineOn = engine != null && held < facts.capacity() * switchPoint(engine);
        double askedEssential = essentialOn ? essential : 0;
        double askedOther = otherOn ? other : 0;
        double asked = own + askedEssential + askedOther;
        double outside = shore + (engineOn ? facts.engineWatts() : 0);

        double fromArray = Math.min(array, asked);
        double fromOutside = Math.min(outside, asked - fromArray);
        double lacking = asked - fromArray - fromOutside;
        double lackingOther = Math.min(lacking, askedOther);
        double lackingEssential = Math.min(lacking - lackingOther, askedEssential);
        double lackingOwn = lacking - lackingOther - lackingEssential;

        double most = Math.min(facts.dischargeLimit(), store.mostOut() * facts.dischargeEfficiency());
        double ownOut = Math.min(lackingOwn, most);
        double essentialOut = Math.min(lackingEssential, room(most, held, essentialFloor) - ownOut);
        essentialOut = Math.max(0, essentialOut);
        double otherOut = Math.min(lackingOther, room(most, held, otherFloor) - ownOut - essentialOut);
        otherOut = Math.max(0, otherOut);
        outOfBank = ownOut + essentialOut + otherOut;

        double accepted = Math.min(chargeLimit, Math.min(store.mostIn(), taper(held)) * inPerStored);
        double arrayIn = Math.min(array - fromArray, accepted);
        double outsideIn = Math.min(outside - fromOutside, accepted - arrayIn);
        intoBank = arrayIn + outsideIn;

        store.move(outOfBank * takenPerGiven - intoBank * facts.chargeEfficiency());

        servedOwn = own - lackingOwn + ownOut;
        lackedEssential = essential - askedEssential + (lackingEssential - essentialOut);
        lackedOther = other - askedOther + (lackingOther - otherOut);
        servedEssential = essential - lackedEssential;
        servedOther = other - lackedOther;
        spilled = array - fromArray - arrayIn;
        fromShore = Math.min(shore, fromOutside + outsideIn);
        fromEngine = fromOutside + outsideIn - fromShore;
    }

    /** What may be taken before a floor is reached. */
    private double room(double most, double held, double floor) {
        return Math.min(most, (held - floor) * facts.dischargeEfficiency());
    }

    /** Cut off at the floor, back once the bank has risen over it; without a rise never cut off. */
    private boolean staysOn(boolean on, double held, double floor) {
        if (facts.rise() == 0) {
            return true;
        }
        double back = floor + Math.min(facts.rise(), (facts.capacity() - floor) / 2);
        return on ? held > floor + StepFacts.ROUNDING * facts.capacity() : held >= back;
    }

    private double switchPoint(EngineRule rule) {
        return (engineOn ? rule.stopAbove() : rule.startBelow()).fraction();
    }

    /** Held at the absorption voltage, a bank takes a current in proportion to what it lacks. */
    private double taper(double held) {
        return facts.taperShare() * Math.max(0, facts.capacity() - held);
    }
}
