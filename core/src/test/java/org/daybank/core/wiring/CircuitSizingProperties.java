package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Energy;
import org.daybank.core.quantity.Length;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;

/** What holds of every circuit by every policy. The tolerance of 1e-12 allows for the rounding of a dozen products. */
class CircuitSizingProperties {
    private static final double ROUNDING = 1e-12;

    @Provide
    static Arbitrary<WiringPolicy> policies() {
        return Combinators.combine(
                        Arbitraries.of(EveryPolicy.ALL),
                        Arbitraries.integers().between(-20, 55),
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.integers().between(1, 4))
                .as((policy, celsius, grouped, parallel) -> policy.withAmbient(Temperature.celsius(celsius))
                        .withGroupedCircuits(grouped)
                        .withMostParallel(parallel));
    }

    @Provide
    static Arbitrary<Circuit> circuits() {
        return Combinators.combine(
                        Arbitraries.of(CircuitKind.values()),
                        Arbitraries.doubles().between(10, 700),
                        Arbitraries.doubles().between(0.5, 300),
                        Arbitraries.doubles().between(1, 1.4),
                        Arbitraries.doubles().between(0.5, 150),
                        Arbitraries.integers().between(1, 6))
                .as((kind, volts, amperes, over, metres, strings) -> CircuitBuilder.builder()
                        .name("circuit")
                        .kind(kind)
                        .operatingVoltage(Voltage.volts(volts))
                        .operatingCurrent(Current.amperes(amperes))
                        .designCurrent(Current.amperes(amperes * over))
                        .highestVoltage(Voltage.volts(volts * 1.3))
                        .length(Length.metres(metres))
                        .yearlyEnergy(Energy.kilowattHours(500))
                        .strings(
                                kind == CircuitKind.STRING
                                        ? new ParallelStrings(strings, Current.amperes(25), Current.ZERO)
                                        : null)
                        .build());
    }

    /** No fewer side by side, and no thinner ones where there are as many. */
    private static void assertNotThinner(ConductorRun asked, ConductorRun than) {
        assertThat(asked.parallel()).isGreaterThanOrEqualTo(than.parallel());
        if (asked.parallel() == than.parallel()) {
            assertThat(asked.size().crossSection())
                    .isGreaterThanOrEqualTo(than.size().crossSection());
        }
    }

    @Property
    void aLongerRunNeverTakesThinnerConductors(
            @ForAll("circuits") Circuit circuit,
            @ForAll("policies") WiringPolicy policy,
            @ForAll @DoubleRange(min = 1, max = 10) double longer) {
        CircuitSizing near = CircuitSizing.of(circuit, policy);
        CircuitSizing far = CircuitSizing.of(
                circuit.withLength(Length.metres(circuit.length().metres() * longer)), policy);
        assertNotThinner(far.conductors(), near.conductors());
        // several side by side let through at least as much as the one they stand for
        assertThat(far.conductors().resistance().ohms() / longer)
                .isLessThanOrEqualTo(near.conductors().resistance().ohms() * (1 + ROUNDING));
        assertThat(near.fits() || !far.fits()).isTrue();
    }

    @Property
    void hotterAirNeverTakesThinnerConductors(
            @ForAll("circuits") Circuit circuit,
            @ForAll("policies") WiringPolicy policy,
            @ForAll @DoubleRange(min = 0, max = 55) double celsius) {
        Assume.that(celsius >= policy.ambient().celsius());
        assertNotThinner(
                CircuitSizing.of(circuit.withAmbient(Temperature.celsius(celsius)), policy)
                        .conductors(),
                CircuitSizing.of(circuit, policy).conductors());
    }

    @Property
    void theDeviceCarriesTheLoadAndNeverExceedsTheAmpacityOfWhatFits(
            @ForAll("circuits") Circuit circuit, @ForAll("policies") WiringPolicy policy) {
        CircuitSizing sized = CircuitSizing.of(circuit, policy);
        sized.device().ifPresent(device -> {
            assertThat(device.rating())
                    .isGreaterThanOrEqualTo(circuit.resolved().designCurrent());
            assertThat(device.leastVoltage()).isEqualTo(circuit.resolved().highestVoltage());
            if (sized.fits()) {
                assertThat(device.rating())
                        .isLessThanOrEqualTo(sized.conductors().ampacity());
            }
        });
    }

    @Property
    void whatFitsKeepsEveryRuleAndWhatDoesNotBreaksOne(
            @ForAll("circuits") Circuit circuit, @ForAll("policies") WiringPolicy policy) {
        CircuitSizing sized = CircuitSizing.of(circuit, policy);
        if (sized.fits()) {
            ConductorRun run = sized.conductors();
            assertThat(sized.checks()).allMatch(Check::passed);
            assertThat(run.dropShare()).isLessThanOrEqualTo(sized.need().dropLimit());
            assertThat(run.temperature()).isLessThanOrEqualTo(policy.insulationTemperature());
            assertThat(run.size().crossSection()).isLessThanOrEqualTo(policy.largestCrossSection());
            assertThat(run.parallel()).isLessThanOrEqualTo(policy.mostParallel());
        } else {
            assertThat(sized.checks()).anyMatch(check -> !check.passed());
        }
    }

    @Property
    void theNextSizeUpDropsLessLosesLessAndCostsMore(
            @ForAll("circuits") Circuit circuit, @ForAll("policies") WiringPolicy policy) {
        CircuitSizing sized = CircuitSizing.of(circuit, policy);
        sized.nextSizeUp().ifPresent(larger -> {
            assertThat(larger.dropShare()).isLessThan(sized.conductors().dropShare());
            assertThat(larger.yearlySaving().orElseThrow()).isGreaterThan(Energy.ZERO);
            assertThat(larger.extraCost().minorUnits()).isNotNegative();
        });
    }

    /** Power lost over power sent is the share of the drop, with two conductors; so is energy at the operating current. */
    @Property
    void theShareLostIsTheShareDropped(@ForAll("circuits") Circuit circuit, @ForAll("policies") WiringPolicy policy) {
        ConductorRun run = CircuitSizing.of(circuit, policy).conductors();
        double sent =
                circuit.operatingVoltage().times(circuit.operatingCurrent()).watts();
        assertThat(run.loss().watts() / sent)
                .isCloseTo(
                        run.dropShare().fraction(),
                        within(ROUNDING * run.dropShare().fraction()));
        assertThat(run.yearlyLoss().orElseThrow().kilowattHours() / 500)
                .isCloseTo(
                        run.dropShare().fraction(),
                        within(ROUNDING * run.dropShare().fraction()));
    }
}
