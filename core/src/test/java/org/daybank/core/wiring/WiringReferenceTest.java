package org.daybank.core.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.daybank.core.Reference;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.working.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables against references: published ones beside the project, and one printed in a code. */
class WiringReferenceTest {
    private static final WiringPolicy IEC = WiringPolicy.standard();
    private static final WiringPolicy NFPA = IEC.withRuleSet(RuleSet.NFPA);

    private static Map<String, Table.Row> rows(String file, String key) {
        return Reference.table(file).rows().stream().collect(Collectors.toMap(row -> row.text(key), row -> row));
    }

    /** Every resistance of ours that the reference has; at least so many. */
    private static void resistances(WiringPolicy policy, String column) {
        Map<String, Table.Row> reference = rows("wiring/iec60228-resistance.csv", "mm2");
        List<Conductor> ours = ConductorTable.of(policy, 2);
        assertThat(ours).hasSize(16);
        for (Conductor conductor : ours) {
            String size = conductor.size().size().replace(" mm²", "");
            assertThat(conductor.each100Metres().ohms() * 10)
                    .as(size)
                    .isCloseTo(reference.get(size).value(Double.class, column), within(1e-9));
        }
    }

    @Test
    void metricResistancesAreThoseOfIec60228() {
        resistances(IEC, "class2_plain_ohm_per_km_20C");
        resistances(IEC.withStranding(Stranding.FLEXIBLE), "class5_plain_ohm_per_km_20C");
    }

    @Test
    void gaugesAreThoseOfAstmB258() {
        Map<String, Table.Row> reference = rows("wiring/astm-b258-gauges.csv", "awg");
        int compared = 0;
        for (Conductor conductor : ConductorTable.of(NFPA, 2)) {
            Table.Row row = reference.get(conductor.size().size().replace(" AWG", ""));
            if (row != null) {
                compared++;
                // four decimals are printed
                assertThat(conductor.size().crossSection().squareMillimetres())
                        .as(conductor.size().size())
                        .isCloseTo(row.value(Double.class, "area_mm2"), within(5e-5));
                // solid wire; ours is stranded, 1.02 times as much (ASTM B8)
                assertThat(conductor.each100Metres().ohms() * 10 / 1.02)
                        .as(conductor.size().size())
                        .isCloseTo(row.value(Double.class, "R_solid_copper_ohm_per_km_20C(rho=17.241)"), within(5e-5));
            }
        }
        assertThat(compared).isEqualTo(13);
    }

    @Test
    void copperAmpacitiesAreThoseOfNfpa70() {
        Map<String, Table.Row> reference = rows("wiring/nfpa70-310-16-copper.csv", "size");
        for (int celsius : List.of(60, 75, 90)) {
            WiringPolicy policy = NFPA.withInsulationTemperature(Temperature.celsius(celsius));
            Map<String, Double> ours = ConductorTable.of(policy, 2).stream()
                    .collect(Collectors.toMap(
                            conductor -> conductor.size().size().split(" ", -1)[0],
                            conductor -> conductor.ofInsulation().amperes()));
            Map<String, Double> theirs = reference.values().stream()
                    .collect(Collectors.toMap(row -> row.text("size"), row -> row.value(Double.class, celsius + "C")));
            assertThat(ours).isEqualTo(theirs);
        }
    }

    /** NFPA 70 chapter 9 table 8, stranded uncoated copper at 75 °C, in Ω per 1000 ft, printed to three digits. */
    @ParameterizedTest
    @CsvSource({
        "14, 3.14",
        "12, 1.98",
        "10, 1.24",
        "8, 0.778",
        "6, 0.491",
        "4, 0.308",
        "2, 0.194",
        "1/0, 0.122",
        "2/0, 0.0967",
        "4/0, 0.0608",
        "250, 0.0515",
        "350, 0.0367",
        "500, 0.0258"
    })
    void strandedGaugesAgreeWithThePrintedTable(String size, double ohmsEachThousandFeet) {
        Conductor conductor = bySize().get(size);
        double warm = Metal.COPPER
                .at(Temperature.celsius(75), conductor.each100Metres())
                .ohms();
        // three digits are printed (up to 0.4 %), reckoned from strands whose diameters are rounded to whole mils
        assertThat(warm * 3.048).isCloseTo(ohmsEachThousandFeet, within(0.006 * ohmsEachThousandFeet));
    }

    private static Map<String, Conductor> bySize() {
        return ConductorTable.of(NFPA, 2).stream()
                .collect(Collectors.toMap(conductor -> conductor.size().size().split(" ", -1)[0], Function.identity()));
    }

    /** IEC 60364-5-52 tables B.52.2 to B.52.5, rows that facts and handbooks print, in A. */
    @ParameterizedTest
    @CsvSource({
        "conduit, 70, 2, 1.5, 17.5", "conduit, 70, 2, 16, 76", "conduit, 70, 2, 95, 232",
        "clippedDirect, 70, 2, 1.5, 19.5", "clippedDirect, 70, 2, 16, 85", "clippedDirect, 70, 2, 95, 258",
        "conduit, 90, 2, 6, 54", "clippedDirect, 90, 3, 35, 147", "conduit, 70, 3, 50, 134"
    })
    void metricAmpacitiesAreReadFromTheRightColumn(
            String method, double insulation, int loaded, double squareMillimetres, double amperes) {
        WiringPolicy policy = IEC.withInsulationTemperature(Temperature.celsius(insulation))
                .withMethod("conduit".equals(method) ? InstallationMethod.CONDUIT : InstallationMethod.CLIPPED_DIRECT);
        assertThat(ConductorTable.of(policy, loaded))
                .filteredOn(conductor -> conductor.size().crossSection().squareMillimetres() == squareMillimetres)
                .singleElement()
                .satisfies(conductor ->
                        assertThat(conductor.ofInsulation().amperes()).isEqualTo(amperes));
    }

    /** In every column a thicker conductor carries more and resists less: a slip of the pen would show. */
    @Test
    void everyColumnRises() {
        for (WiringPolicy policy : EveryPolicy.ALL) {
            List<Conductor> conductors = ConductorTable.of(policy, 2);
            for (int i = 1; i < conductors.size(); i++) {
                Conductor thinner = conductors.get(i - 1);
                Conductor thicker = conductors.get(i);
                assertThat(thicker.size().crossSection())
                        .isGreaterThan(thinner.size().crossSection());
                assertThat(thicker.ofInsulation()).isGreaterThan(thinner.ofInsulation());
                assertThat(thicker.atTerminals()).isGreaterThan(thinner.atTerminals());
                assertThat(thicker.each100Metres()).isLessThan(thinner.each100Metres());
            }
        }
    }
}
