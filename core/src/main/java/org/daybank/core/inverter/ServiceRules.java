package org.daybank.core.inverter;

import static org.daybank.core.working.Message.value;

import java.util.List;
import org.daybank.core.load.Waveform;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;

/** What the loads' service and the customer's wishes ask of an inverter besides power. */
final class ServiceRules {
    private ServiceRules() {}

    static void judge(InverterNeed need, Inverter inverter, Stack stack, InverterPolicy policy, List<Check> checks) {
        boolean sine = need.sineLoads().isEmpty() || inverter.waveform().satisfies(Waveform.SINE);
        checks.add(Check.that(
                InverterRule.WAVEFORM,
                sine,
                value("waveform", inverter.waveform()),
                value("sineLoads", need.sineLoads())));
        Voltage service = need.service().voltage();
        double off = Math.abs(inverter.outputVoltage().dividedBy(service) - 1);
        checks.add(Check.that(
                InverterRule.OUTPUT_VOLTAGE,
                off <= policy.voltageTolerance().fraction(),
                value("service", service),
                value("outputVoltage", inverter.outputVoltage())));
        checks.add(Check.that(
                InverterRule.FREQUENCY,
                inverter.frequencies().contains(need.service().frequency()),
                value("frequency", need.service().frequency()),
                value("frequencies", inverter.frequencies())));
        checks.add(phases(need.service().phases(), inverter, stack));
        for (InverterFunction function : need.functions()) {
            checks.add(Check.that(
                    InverterRule.FUNCTION,
                    inverter.functions().contains(function),
                    value("function", function),
                    value("functions", inverter.functions().isEmpty() ? "nothing besides AC" : inverter.functions())));
        }
    }

    private static Check phases(Phases asked, Inverter inverter, Stack stack) {
        Check check = Check.that(
                InverterRule.PHASES,
                stack.able(),
                value("phases", asked),
                value("unitPhases", inverter.phases()),
                value("maximumUnits", inverter.mostUnits()));
        return stack.able() && inverter.phases() != asked ? check.variant("stacked") : check;
    }
}
