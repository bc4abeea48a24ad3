package org.daybank.core.inverter;

import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Sentence;

/**
 * What the units on one line must carry between them, the policy's margin added and what an AC source carries taken off.
 *
 * @param peak of the loads on the fullest line
 * @param fromSource what the AC source carries of it
 * @param power real power asked of the units
 * @param apparent apparent power asked of the units
 * @param surge asked of the units while something starts
 * @param loads how sentences name what the loads ask
 * @param start how sentences name what a start asks
 */
record LineDemand(
        PeakLoad peak,
        ApparentPower fromSource,
        Power power,
        ApparentPower apparent,
        ApparentPower surge,
        Sentence loads,
        Sentence start) {

    static LineDemand of(InverterNeed need, Inverter inverter, Stack stack, InverterPolicy policy) {
        PeakLoad peak = FullestLine.of(need.peak(), need.largestLoad(), stack.lines());
        ApparentPower source = fromSource(need, inverter);
        double margin = policy.margin().onePlus();
        return new LineDemand(
                peak,
                source,
                Power.watts(Math.max(0, peak.running().times(margin).watts() - source.voltAmperes())),
                less(peak.runningApparent().times(margin), source),
                less(peak.surgeApparent(), source),
                subject("The loads", stack.lines(), need.largestLoad() != null, source),
                subject("The start", stack.lines(), need.largestLoad() != null, source));
    }

    /** Only an inverter that can add its power to the source's shares the peaks with it. */
    private static ApparentPower fromSource(InverterNeed need, Inverter inverter) {
        AcSource source = need.acSource();
        return source != null
                        && source.coversPeaks()
                        && source.current() != null
                        && inverter.functions().contains(InverterFunction.ASSIST)
                ? ApparentPower.voltAmperes(
                        source.current().times(need.service().voltage()).watts())
                : ApparentPower.ZERO;
    }

    private static ApparentPower less(ApparentPower asked, ApparentPower source) {
        return ApparentPower.voltAmperes(Math.max(0, asked.voltAmperes() - source.voltAmperes()));
    }

    private static Sentence subject(String what, int lines, boolean largestKnown, ApparentPower source) {
        String which = lines == 1
                ? what
                : what + " on the fullest of " + lines + " lines, with "
                        + (largestKnown ? "the largest load" : "everything that starts")
                        + " on it and the rest balanced,";
        return source.voltAmperes() > 0
                ? Sentence.of(which + " beyond %s from the AC source", source)
                : Sentence.of(which);
    }
}
