package org.daybank.core.charger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.charger.ChargerSheets.DIRECT;
import static org.daybank.core.charger.ChargerSheets.MODULE;
import static org.daybank.core.charger.ChargerSheets.NEED;
import static org.daybank.core.charger.ChargerSheets.TRACKING;
import static org.daybank.core.charger.ChargerSheets.TWELVE;

import java.util.HashSet;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import org.daybank.core.array.PvModule;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Voltage;
import org.daybank.core.working.Check;
import org.daybank.core.working.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exactly n modules: every layout of whole strings is found, and no other number of modules is ever connected in their place. */
class ExactModulesTest {
    private static final ChargerPolicy POLICY = ChargerPolicy.standard();
    private static final int LARGEST = 60;

    private static ArrayOffer exactly(PvModule module, int modules) {
        ArrayOffer any = ChargerSheets.offer(module, modules, modules);
        return new ArrayOffer(
                any.extremes(),
                any.exactTracking(),
                any.modulesDirect(),
                any.whenNew(),
                any.sunshine(),
                any.yearlyTracking(),
                any.yearlyDirect(),
                true);
    }

    /**
     * The numbers of modules that layouts hold, by laying them all out: the module has 56 V on the coldest morning, 32.1 V in
     * the hottest sun, 10.4 A of short-circuit current and 400 W; charging takes 28 V and the headroom.
     */
    private static NavigableSet<Integer> layouts(
            double inputVolts, double headroom, double inputAmperes, double inputWatts, int controllers) {
        NavigableSet<Integer> found = new TreeSet<>();
        for (int series = 1; series <= 20; series++) {
            if (56 * series > 0.98 * inputVolts || 32.1 * series < 28 + headroom) {
                continue;
            }
            Set<Integer> strings = Set.of(0);
            for (int controller = 1; controller <= controllers; controller++) {
                Set<Integer> withOneMore = new HashSet<>();
                for (int before : strings) {
                    for (int own = 1; own <= 100; own++) {
                        if (1.25 * 10.4 * own <= inputAmperes && 400.0 * series * own <= inputWatts) {
                            withOneMore.add(before + own);
                        }
                    }
                }
                strings = withOneMore;
                for (int all : strings) {
                    found.add(series * all);
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @CsvSource({
        // one string of one to four; two strings; many; strings of two and more only; of five alone; none at all
        "250, 4, 15, 100000, 1",
        "250, 4, 30, 100000, 2",
        "250, 4, 60, 3000, 3",
        "150, 40, 30, 100000, 2",
        "150, 4, 30, 100000, 2",
        "300, 100, 30, 100000, 4",
        "600, 90, 30, 4100, 2",
        "120, 4, 60, 1700, 4",
        "60, 4, 14, 100000, 1",
        "55, 4, 30, 100000, 2",
        "150, 4, 12, 100000, 2",
        "150, 4, 60, 350, 2"
    })
    void theLayoutsAreThoseThatBruteForceFinds(
            double inputVolts, double headroom, double inputAmperes, double inputWatts, int controllers) {
        NavigableSet<Integer> layouts = layouts(inputVolts, headroom, inputAmperes, inputWatts, controllers);
        ChargeController controller = TRACKING.withMaximumInputVoltage(Voltage.volts(inputVolts))
                .withHeadroom(Voltage.volts(headroom))
                .withMaximumInputCurrent(Current.amperes(inputAmperes))
                .withMaximumInputPower(Power.watts(inputWatts))
                .withOutputCurrent(Current.kiloamperes(5))
                .withMostInParallel(controllers);

        for (int modules = 1; modules <= LARGEST; modules++) {
            ChargerFit fit = ChargerFit.of(NEED, exactly(MODULE, modules), controller, POLICY);
            Check count = fit.checks().stream()
                    .filter(check -> check.rule() == ControllerRule.MODULE_COUNT)
                    .findFirst()
                    .orElseThrow();

            assertThat(count.passed()).as("%s modules", modules).isEqualTo(layouts.contains(modules));
            if (count.passed()) {
                assertThat(fit.checks()).as("%s modules", modules).allMatch(Check::passed);
                assertThat(fit.array().modules()).isEqualTo(modules);
                assertThat(fit.array().strings() * fit.array().series()).isEqualTo(modules);
                assertThat(fit.array().stringsOnEach()).hasSize(fit.count());
                assertThat(fit.count()).isBetween(1, controllers);
            } else {
                Integer below = layouts.lower(modules);
                Integer above = layouts.higher(modules);
                assertThat(named(count, "below")).isEqualTo(below == null ? 0 : below);
                assertThat(named(count, "above")).isEqualTo(above == null ? Integer.MAX_VALUE : above);
                if (below != null) {
                    assertThat(count.message().toString()).contains(" " + below);
                }
                if (above != null) {
                    assertThat(count.message().toString()).contains(" " + above + ".");
                }
                assertThat(count.message().toString()).contains(" " + modules + " modules");
            }
        }
    }

    private static Object named(Check check, String name) {
        return check.message().values().stream()
                .filter(value -> value.name().equals(name))
                .map(Message.Value::value)
                .findFirst()
                .orElseThrow();
    }

    /** On the direct path the string is given by the voltage group: two of 12 V on a 24 V bank. */
    @Test
    void aDirectControllerCarriesWholeStringsOfItsGroup() {
        ArrayOffer four = withVoltages(exactly(TWELVE, 4));
        ArrayOffer three = withVoltages(exactly(TWELVE, 3));

        assertThat(ChargerFit.of(NEED, four, DIRECT, POLICY).checks()).allMatch(Check::passed);
        assertThat(ChargerFit.of(NEED, four, DIRECT, POLICY).array().modules()).isEqualTo(4);
        // strings of two, 13 A each: three of them within 40 A on each of two controllers
        Check count = ChargerFit.of(NEED, three, DIRECT, POLICY).checks().stream()
                .filter(check -> check.rule() == ControllerRule.MODULE_COUNT)
                .findFirst()
                .orElseThrow();
        assertThat(count.passed()).isFalse();
        assertThat(count.message().toString())
                .isEqualTo("No layout of whole strings on 1 to 2 controllers carries exactly 3 modules;"
                        + " the nearest numbers that one carries are 2 and 4.");
    }

    /** 24 V and 15 V of a module for 12 V banks. */
    private static ArrayOffer withVoltages(ArrayOffer offer) {
        ArrayOffer sheet = ChargerSheets.offer(offer.module(), 24, 15, 1, 1);
        return new ArrayOffer(
                sheet.extremes(),
                offer.exactTracking(),
                offer.modulesDirect(),
                offer.whenNew(),
                offer.sunshine(),
                offer.yearlyTracking(),
                offer.yearlyDirect(),
                true);
    }

    /** Without tracking a longer string only throws away more: where no group says how many, the shortest that charges counts. */
    @Test
    void aDirectControllerIsGivenTheShortestStringThatCharges() {
        // 29 V are asked for, one module has 32.1 V; two in series would be within the input limit
        ChargerFit fit = ChargerFit.of(NEED, ChargerSheets.offer(MODULE, 2, 2), DIRECT, POLICY);

        assertThat(fit.array().series()).isEqualTo(1);
        assertThat(fit.array().strings()).isEqualTo(2);
    }
}
