package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.gridInverters;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.none;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.GridInverter;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.quantity.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A grid design held against all pairs of a module and an inverter, each designed from a catalogue of these two alone. */
class GridPairsTest {
    private static final Catalog SAMPLE = Catalog.sample();

    private record Pair(PvModule module, GridInverter inverter) {
        boolean inStrings() {
            return inverter instanceof StringInverter;
        }

        Catalog shelf() {
            return new Catalog(
                    List.of(module),
                    List.of(),
                    List.of(),
                    List.of(),
                    inverter instanceof StringInverter strings ? List.of(strings) : List.of(),
                    inverter instanceof Microinverter micro ? List.of(micro) : List.of(),
                    List.of());
        }
    }

    static Stream<DesignBrief> briefs() {
        DesignBrief workshop = withoutYears(QuarryLane.BRIEF);
        return Stream.of(
                workshop,
                workshop.withGrid(new GridWish(7, null, null, null)),
                withoutYears(LarkspurRidge.BRIEF.withKind(SystemKind.GRID_INTERACTIVE)));
    }

    private static DesignBrief withoutYears(DesignBrief brief) {
        return brief.withPolicy(
                brief.policy().withSystem(brief.policy().system().withSimulatedYears(0)));
    }

    @ParameterizedTest
    @MethodSource("briefs")
    void nothingIsCheaperThanWhatIsChosen(DesignBrief brief) {
        Map<Pair, Money> prices = new HashMap<>();
        for (PvModule module : SAMPLE.modules()) {
            Stream.<GridInverter>concat(SAMPLE.stringInverters().stream(), SAMPLE.microinverters().stream())
                    .map(inverter -> new Pair(module, inverter))
                    .forEach(pair -> {
                        DesignOutcome alone = SystemDesigner.design(brief, pair.shelf());
                        if (isDesign(alone)) {
                            prices.put(
                                    pair, alone.billOfMaterials().orElseThrow().total());
                        }
                    });
        }
        DesignOutcome design = SystemDesigner.design(brief, SAMPLE);

        Money cheapest = prices.values().stream().min(Comparator.naturalOrder()).orElseThrow();
        assertThat(design.billOfMaterials().orElseThrow().total()).isEqualTo(cheapest);
        GridDesign feed = grid(design);
        String model = feed.system().moduleExtremes().module().model();
        boolean strings = feed.system().stringInverters().isPresent();
        Optional<Money> other = prices.entrySet().stream()
                .filter(pair -> pair.getKey().module().model().equals(model))
                .filter(pair -> pair.getKey().inStrings() != strings)
                .map(Map.Entry::getValue)
                .min(Comparator.naturalOrder());
        assertThat(feed.alternatives().otherInverterKind()).isEqualTo(other);
        assertThat(feed.energy().coverage().isEmpty()
                        || brief.grid().modules() != null
                        || feed.energy().coverage().get().compareTo(brief.grid().coverage()) >= 0)
                .isTrue();
    }

    @Test
    void withoutModulesOrInvertersItSaysSo() {
        DesignBrief brief = withoutYears(QuarryLane.BRIEF);
        Catalog noModules = new Catalog(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                SAMPLE.stringInverters(),
                SAMPLE.microinverters(),
                List.of());
        Catalog noInverters = new Catalog(SAMPLE.modules(), List.of(), List.of(), List.of());
        for (Catalog shelf : List.of(noModules, noInverters)) {
            DesignOutcome design = SystemDesigner.design(brief, shelf);
            assertThat(isDesign(design)).isFalse();
            assertThat(none(design).failedChecks())
                    .extracting(check -> check.message().toString())
                    .containsExactly(
                            shelf.modules().isEmpty()
                                    ? "The catalogue has no modules."
                                    : "The catalogue has no string inverters or microinverters.");
            assertThat(gridInverters(design)).isEmpty();
            assertThat(design.billOfMaterials()).isEmpty();
        }
    }
}
