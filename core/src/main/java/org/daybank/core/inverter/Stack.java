package org.daybank.core.inverter;

/**
 * How units of one kind make a service: on how many lines, what part of a unit each line gets, and how many stand on each.
 *
 * @param able whether they can make the service at all
 * @param lines over which the loads are spread; one where the service cannot be made, so that the other rules still say
 *     something
 * @param unitsForEach units that one more on every line takes
 * @param mostOnLine units that may feed one line together
 */
record Stack(boolean able, int lines, int unitsForEach, int mostOnLine) {

    /** The way in which units of an inverter make a service. */
    static Stack of(Inverter inverter, Phases service) {
        if (inverter.phases() == service) {
            // one unit feeds all lines of its own service
            return new Stack(true, service.lines(), 1, Math.min(inverter.mostInParallel(), inverter.mostUnits()));
        }
        boolean able = inverter.phases() == Phases.SINGLE
                && inverter.stackedServices().contains(service)
                && inverter.mostUnits() >= service.lines();
        int lines = able ? service.lines() : 1;
        return new Stack(able, lines, lines, Math.min(inverter.mostInParallel(), inverter.mostUnits() / lines));
    }

    /** What one unit can give to one line, as a share of what it gives in all. */
    double shareOnLine() {
        return (double) unitsForEach / lines;
    }

    /** Units on a line, as many as are asked for within what may be joined. */
    int unitsOnLine(int asked) {
        return Math.max(1, Math.min(asked, mostOnLine));
    }

    /** Units in all. */
    int units(int onLine) {
        return onLine * unitsForEach;
    }

    /** What the arrangement is called. */
    Stacking stacking(int onLine) {
        if (unitsForEach == 3) {
            return Stacking.THREE_PHASE;
        }
        if (unitsForEach == 2) {
            return Stacking.SERIES;
        }
        return onLine == 1 ? Stacking.ONE_UNIT : Stacking.PARALLEL;
    }
}
