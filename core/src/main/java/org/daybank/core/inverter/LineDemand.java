package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import org.daybank.core.load.PeakLoad;
import org.daybank.core.quantity.ApparentPower;
import org.daybank.core.quantity.Power;
import org.daybank.core.working.Message;

/**
 * What the units on one line must carry between them, the policy's margin added and what an AC source carries taken off.
 *
 * @param peak of the loads on the fullest line
 * @param power real power asked of the units
 * @param apparent apparent power asked of the units
 * @param surge asked of the units while something starts
 * @param loads how sentences name what the loads ask
 * @param start how sentences name what a start asks
 */
record LineDemand(
        PeakLoad peak, Power power, ApparentPower apparent, ApparentPower surge, Message loads, Message start) {

    static LineDemand of(InverterNeed need, Inverter inverter, Stack stack, InverterPolicy policy) {
        PeakLoad peak = FullestLine.of(need.peak(), need.largestLoad(), stack.lines());
        Power source = fromSource(need, inverter);
        if (source.watts() == 0) {
            return new LineDemand(
                    peak,
                    peak.running().times(policy.margin().onePlus()),
                    peak.runningApparent().times(policy.margin().onePlus()),
                    peak.surgeApparent(),
                    subject("loads", stack.lines(), need.largestLoad() != null, source),
                    subject("start", stack.lines(), need.largestLoad() != null, source));
        }
        ComplexPower real = new ComplexPower(source.watts(), 0);
        ComplexPower running = ComplexPower.of(peak.running(), peak.runningApparent())
                .times(policy.margin().onePlus())
                .less(real);
        ComplexPower start = ComplexPower.of(peak.surge(), peak.surgeApparent()).less(real);
        return new LineDemand(
                peak,
                running.power(),
                running.apparent(),
                start.apparent(),
                subject("loads", stack.lines(), need.largestLoad() != null, source),
                subject("start", stack.lines(), need.largestLoad() != null, source));
    }

    /**
     * What the source carries of each line's peak, only with an inverter that can add its power to the source's: real power alone,
     * so that the inverter has all of the reactive.
     */
    private static Power fromSource(InverterNeed need, Inverter inverter) {
        AcSource source = need.acSource();
        return source != null
                        && source.coversPeaks()
                        && source.current() != null
                        && inverter.functions().contains(InverterFunction.ASSIST)
                ? source.current().times(need.service().voltage())
                : Power.ZERO;
    }

    private static Message subject(String what, int lines, boolean largestKnown, Power source) {
        String key = "phrase.inverter." + what;
        if (lines > 1) {
            key += largestKnown ? ".largestOnOneLine" : ".startsOnOneLine";
        }
        if (source.watts() > 0) {
            key += ".beyondSource";
        }
        return Message.of(key, value("lines", lines), value("source", source));
    }
}
