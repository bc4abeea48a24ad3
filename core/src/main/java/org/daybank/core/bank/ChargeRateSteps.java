package org.daybank.core.bank;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;

/**
 * The most that cells may be charged with from a temperature on, in steps as a data sheet lists them. Whether they may be
 * charged at all in the cold, the coldest charging temperature of the battery says.
 *
 * @param steps coldest first
 */
public record ChargeRateSteps(
        @Bounds(minimumItems = 1, maximumItems = 100) List<Step> steps) {

    /**
     * One step.
     *
     * @param from coldest temperature of the cells at which it holds
     * @param rate charging current in multiples of the rated capacity for each hour, from 0 to 10
     */
    public record Step(
            @Bounds(minimum = "-100 Cel", maximum = "100 Cel")
            Temperature from,

            @Bounds(minimum = "0", maximum = "10") Ratio rate) {
        /** Validates the components. */
        public Step {
            Validation.of(Step.class, from, rate).done();
        }
    }

    /**
     * Keeps a copy, coldest first.
     *
     * @throws org.daybank.core.schema.InvalidInput when there is no step, a rate is out of range, or two steps begin at one
     *     temperature
     */
    public ChargeRateSteps {
        Validation.of(ChargeRateSteps.class, steps).done();
        new Validation()
                .that(
                        steps.stream().map(Step::from).distinct().count() == steps.size(),
                        "steps",
                        ProblemCode.INCONSISTENT,
                        "steps must each begin at a temperature of their own.")
                .done();
        steps = steps.stream().sorted(Comparator.comparing(Step::from)).toList();
    }

    /** Reads steps written as {@code "0 Cel: 0.1; 5 Cel: 0.3; 15 Cel: 0.5"}. */
    public static ChargeRateSteps parse(CharSequence text) {
        return new ChargeRateSteps(Arrays.stream(text.toString().split(";", -1))
                .map(step -> step.split(":", 2))
                .map(pair -> new Step(Temperature.parse(pair[0]), Ratio.parse(pair.length < 2 ? "" : pair[1])))
                .toList());
    }

    /** The coldest temperature of the cells for which a rate is stated. */
    public Temperature begin() {
        return steps.get(0).from();
    }

    /** The rate at a temperature: that of the warmest step begun, below all of them that of the coldest. */
    public Ratio at(Temperature cells) {
        Ratio rate = steps.get(0).rate();
        for (Step step : steps) {
            rate = step.from().compareTo(cells) <= 0 ? step.rate() : rate;
        }
        return rate;
    }

    @Override
    public String toString() {
        return String.join(
                "; ",
                steps.stream().map(step -> step.from() + ": " + step.rate()).toList());
    }
}
