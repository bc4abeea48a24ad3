package org.daybank.core.simulation.kernel;

/**
 * The loops over the designs of a block, each a few operations of the model of an hour.
 *
 * <p>Each is as small as it is because the compiler of JDK 17 turns only such loops into vector instructions: its own static
 * method, arrays as parameters indexed by the counter alone, no comparison and no call but {@code abs}, {@code min} and
 * {@code ceil}. A loop of more than about ten operations stays scalar and takes six times as long. What is above zero is
 * {@code (x + |x|) / 2}, which is exact and costs less than {@code max}.
 */
final class HourLoops {
    private HourLoops() {}

    /** The array carries what runs; what is lacking, and what is left over. */
    static void carry(
            int count,
            double[] modules,
            double moduleWatts,
            double efficiency,
            double asked,
            double[] lacking,
            double[] left) {
        for (int i = 0; i < count; i++) {
            double over = modules[i] * moduleWatts * efficiency - asked;
            double more = (over + Math.abs(over)) * 0.5;
            left[i] = more;
            lacking[i] = more - over;
        }
    }

    /** No more of something than banks give or take. */
    static void limit(int count, double[] watts, double[] banks, double perBank, double[] limited) {
        for (int i = 0; i < count; i++) {
            limited[i] = Math.min(watts[i], banks[i] * perBank);
        }
    }

    /** What banks lose at rest. */
    static void leak(int count, double share, double[] level) {
        for (int i = 0; i < count; i++) {
            level[i] -= level[i] * share;
        }
    }

    /** What loads get of a bank, once it has leaked, down to its floor. */
    static void draw(
            int count,
            double[] asked,
            double[] banks,
            double leakShare,
            double capacity,
            double floorShare,
            double[] level,
            double[] out) {
        for (int i = 0; i < count; i++) {
            double held = level[i] - level[i] * leakShare;
            double most = Math.min(asked[i], held - banks[i] * capacity * floorShare);
            level[i] = held;
            out[i] = (most + Math.abs(most)) * 0.5;
        }
    }

    /** What a bank takes of what is offered; the less, the fuller it is. */
    static void accept(
            int count,
            double[] offered,
            double[] banks,
            double capacity,
            double taperShare,
            double inPerStored,
            double[] level,
            double[] in) {
        for (int i = 0; i < count; i++) {
            double lacks = banks[i] * capacity - level[i];
            in[i] = Math.min(offered[i], taperShare * ((lacks + Math.abs(lacks)) * 0.5) * inPerStored);
        }
    }

    /** What goes out of the bank and in, how deep that takes it, and what nobody has use for. */
    static void move(
            int count,
            double[] left,
            double[] in,
            double[] out,
            double efficiency,
            double[] level,
            double[] lowest,
            double[] spilled) {
        for (int i = 0; i < count; i++) {
            spilled[i] += left[i] - in[i];
            double held = level[i] - (out[i] - in[i] * efficiency);
            level[i] = held;
            lowest[i] = Math.min(lowest[i], held);
        }
    }

    /** What came out for the loads, and what they lack; an hour counts when that is more than rounding. */
    static void serve(
            int count,
            double[] asked,
            double[] out,
            double perAtBank,
            double rounding,
            double perAsked,
            double[] throughput,
            double[] unserved,
            double[] lossHours) {
        for (int i = 0; i < count; i++) {
            throughput[i] += out[i];
            double lacks = asked[i] - out[i];
            unserved[i] += lacks * perAtBank;
            lossHours[i] += Math.ceil((lacks - rounding) * perAsked);
        }
    }

    /** How deep banks went. */
    static void noteLowest(int count, double[] level, double[] lowest) {
        for (int i = 0; i < count; i++) {
            lowest[i] = Math.min(lowest[i], level[i]);
        }
    }

    /** In the dark: what loads get of a bank, leaking included. */
    static void drawInTheDark(
            int count,
            double asked,
            double[] banks,
            double leakShare,
            double capacity,
            double floorShare,
            double[] level,
            double[] out,
            double[] throughput) {
        for (int i = 0; i < count; i++) {
            double held = level[i] - level[i] * leakShare;
            double most = Math.min(asked, held - banks[i] * capacity * floorShare);
            double given = (most + Math.abs(most)) * 0.5;
            out[i] = given;
            level[i] = held - given;
            throughput[i] += given;
        }
    }

    /** In the dark: what they lack, where all ask the same. */
    static void lackInTheDark(
            int count,
            double asked,
            double[] out,
            double perAtBank,
            double rounding,
            double perAsked,
            double[] unserved,
            double[] lossHours) {
        for (int i = 0; i < count; i++) {
            double lacks = asked - out[i];
            unserved[i] += lacks * perAtBank;
            lossHours[i] += Math.ceil((lacks - rounding) * perAsked);
        }
    }

    /** Shares what is lacking between loads and the system's own parts. */
    static void share(int count, double[] lacking, double askedByLoads, double[] byLoads, double[] byOwn) {
        for (int i = 0; i < count; i++) {
            double loads = Math.min(lacking[i], askedByLoads);
            byLoads[i] = loads;
            byOwn[i] = lacking[i] - loads;
        }
    }

    /** The system's own parts are served first, down to an empty bank. */
    static void drawOwn(int count, double[] banks, double dischargeWatts, double[] level, double[] own) {
        for (int i = 0; i < count; i++) {
            own[i] = Math.min(own[i], Math.min(banks[i] * dischargeWatts, level[i]));
        }
    }

    /** What is left for loads above the floor, once the own parts have theirs. */
    static void room(
            int count,
            double[] banks,
            double dischargeWatts,
            double capacity,
            double floorShare,
            double[] level,
            double[] own,
            double[] room) {
        for (int i = 0; i < count; i++) {
            double bank = banks[i];
            room[i] = Math.min(bank * dischargeWatts, level[i] - bank * capacity * floorShare) - own[i];
        }
    }

    /** What loads get of that room. */
    static void drawRoom(int count, double[] asked, double[] room, double[] out) {
        for (int i = 0; i < count; i++) {
            double most = Math.min(asked[i], room[i]);
            out[i] = (most + Math.abs(most)) * 0.5;
        }
    }

    /** What the loads lack; an hour counts when that is more than rounding. */
    static void lack(
            int count,
            double[] asked,
            double[] out,
            double perAtBank,
            double rounding,
            double perAsked,
            double[] unserved,
            double[] lossHours) {
        for (int i = 0; i < count; i++) {
            double lacks = asked[i] - out[i];
            unserved[i] += lacks * perAtBank;
            lossHours[i] += Math.ceil((lacks - rounding) * perAsked);
        }
    }

    /** Adds some to others. */
    static void add(int count, double[] some, double[] sum) {
        for (int i = 0; i < count; i++) {
            sum[i] += some[i];
        }
    }
}
