package org.daybank.core.inverter;

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
                "waveform",
                sine,
                sine
                        ? "Every load runs on its waveform, %s."
                        : "It makes a %s, whose harmonics heat motors and transformers and disturb timers and electronic supplies; these loads need a sine: %s.",
                inverter.waveform(),
                need.sineLoads()));
        Voltage service = need.service().voltage();
        double off = Math.abs(inverter.outputVoltage().dividedBy(service) - 1);
        checks.add(Check.that(
                "outputVoltage",
                off <= policy.voltageTolerance().fraction(),
                "The service has %s from line to neutral; this inverter makes %s.",
                service,
                inverter.outputVoltage()));
        checks.add(Check.that(
                "frequency",
                inverter.frequencies().contains(need.service().frequency()),
                "The service has %s; this inverter makes %s.",
                need.service().frequency(),
                inverter.frequencies()));
        checks.add(phases(need.service().phases(), inverter, stack));
        for (InverterFunction function : need.functions()) {
            checks.add(Check.that(
                    "function",
                    inverter.functions().contains(function),
                    "Asked for: %s; this inverter has: %s.",
                    function,
                    inverter.functions().isEmpty() ? "nothing besides AC" : inverter.functions()));
        }
    }

    private static Check phases(Phases asked, Inverter inverter, Stack stack) {
        String sentence;
        if (!stack.able()) {
            sentence = "The service is %s phase; one unit gives %s phase, and several stacked do not give the service.";
        } else if (inverter.phases() == asked) {
            sentence = "The service is %s phase; one unit gives %s phase.";
        } else {
            sentence =
                    "The service is %s phase; one unit gives %s phase, and stacked on its lines up to %s give the service.";
        }
        return Check.that("phases", stack.able(), sentence, asked, inverter.phases(), inverter.mostUnits());
    }
}
