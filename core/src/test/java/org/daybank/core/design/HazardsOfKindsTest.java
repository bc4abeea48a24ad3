package org.daybank.core.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.grid;
import static org.daybank.core.design.Designs.isDesign;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.StringInverterFit;
import org.daybank.core.quantity.Current;
import org.daybank.core.quantity.Power;
import org.daybank.core.simulation.Alternator;
import org.daybank.core.simulation.ShorePower;
import org.daybank.core.working.Hazard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can hurt because of what a system hangs on: told where it hangs on that, and nowhere else. */
class HazardsOfKindsTest {
    private static final Set<String> OF_KINDS = Set.of(
            "vehicle",
            "shoreConnection",
            "alternatorLimit",
            "backfeed",
            "backupPanel",
            "safetySupply",
            "bankArc",
            "bankShortCircuit");

    static Stream<DesignBrief> briefs() {
        DesignBrief mobile = LarkspurRidge.BRIEF.withKind(SystemKind.MOBILE);
        ShorePower shore = new ShorePower(Power.kilowatts(2), null, null);
        Alternator alternator = new Alternator(Current.amperes(30), null);
        return Stream.of(
                LarkspurRidge.BRIEF,
                mobile,
                mobile.withShore(shore),
                mobile.withAlternator(alternator),
                LarkspurRidge.BRIEF.withKind(SystemKind.GRID_INTERACTIVE),
                LarkspurRidge.BRIEF.withKind(SystemKind.GRID_BACKUP),
                QuarryLane.BRIEF);
    }

    @ParameterizedTest
    @MethodSource("briefs")
    void theKindBringsItsOwn(DesignBrief brief) {
        DesignOutcome design = SystemDesigner.design(brief, Catalog.sample());
        assertThat(isDesign(design)).as("%s", design).isTrue();
        Set<String> told = design.hazards().stream()
                .map(hazard -> hazard.code().code())
                .collect(Collectors.toCollection(TreeSet::new));

        SystemKind kind = brief.kind();
        boolean grid = kind == SystemKind.GRID_INTERACTIVE || kind == SystemKind.GRID_BACKUP;
        Set<String> expected = new TreeSet<>();
        addIf(expected, kind == SystemKind.MOBILE, "vehicle");
        addIf(expected, brief.shore() != null, "shoreConnection");
        addIf(expected, brief.alternator() != null, "alternatorLimit");
        addIf(expected, grid, "backfeed");
        addIf(expected, kind == SystemKind.GRID_BACKUP, "backupPanel", "safetySupply");
        addIf(expected, kind != SystemKind.GRID_INTERACTIVE, "bankArc", "bankShortCircuit");
        assertThat(told.stream().filter(OF_KINDS::contains)).containsExactlyInAnyOrderElementsOf(expected);

        if (design instanceof GridDesign feed) {
            // a string that is long enough to matter, and an inverter with capacitors behind it
            boolean strings = feed.system().stringInverters().isPresent();
            assertThat(told.contains("storedCharge")).isEqualTo(strings);
            assertThat(told.contains("reversePolarity")).isEqualTo(strings);
        }
    }

    /** The workshop's one string, on an inverter with capacitors: some 500 V on the coldest morning. */
    @Test
    void anArrayInStringsIsWarnedOfAsOne() {
        DesignOutcome design = SystemDesigner.design(QuarryLane.BRIEF, Catalog.sample());
        Map<String, Hazard> told = design.hazards().stream()
                .collect(Collectors.toMap(hazard -> hazard.code().code(), hazard -> hazard, (a, b) -> a));

        assertThat(told.get("directVoltage").subject()).isEqualTo("array to inverter");
        assertThat(told.get("connectorsUnderLoad").subject()).isEqualTo("array to inverter");
        StringInverterFit strings = grid(design).system().stringInverters().orElseThrow();
        assertThat(told.get("storedCharge").text().toString()).contains(strings.product());
        assertThat(told.get("reversePolarity").text().toString())
                .hasToString(
                        "A string connected with reverse polarity destroys the inverter or is fed by the other strings.");
        assertThat(told).doesNotContainKey("stringFuses");
        assertThat(told.keySet()).contains("windAndSnow", "arrayFaults", "preliminarySizes");
    }

    private static void addIf(Set<String> codes, boolean cause, String... these) {
        if (cause) {
            codes.addAll(List.of(these));
        }
    }
}
