package org.daybank.core.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daybank.core.quantity.TimeSpan;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Table;
import org.junit.jupiter.api.Test;

class CatalogTablesTest {
    private static final String BATTERIES = """
            model,chemistry,nominalVoltage,capacity,resistance,mass,price
            AB-12,agm,12 V,20 h: 100 Ah,4 mOhm,30 kg,180.00 EUR
            """;
    private static final Map<String, String> SHELF = Map.of(
            "modules", "model\n",
            "batteries", BATTERIES,
            "controllers", "model\n",
            "inverters", "model\n",
            "stock", "model,inStock,leadTime\nAB-12,3,5 d\n");

    private static Catalog read(Map<String, String> csv) {
        return CatalogTables.read(name -> Optional.ofNullable(csv.get(name)).map(Table::parse));
    }

    private static InvalidInput refused(Map<String, String> csv) {
        return catchThrowableOfType(InvalidInput.class, () -> read(csv));
    }

    private static Map<String, String> with(String name, String csv) {
        Map<String, String> shelf = new HashMap<>(SHELF);
        shelf.put(name, csv);
        return shelf;
    }

    @Test
    void tablesAreNamedLikeTheListsOfACatalogue() {
        assertThat(CatalogTables.names())
                .containsExactly(
                        "modules",
                        "batteries",
                        "controllers",
                        "inverters",
                        "stringInverters",
                        "microinverters",
                        "stock");
    }

    @Test
    void aTableThatMayBeLeftOutIsAnEmptyList() {
        Catalog catalog = read(SHELF);
        assertThat(catalog.batteries())
                .singleElement()
                .satisfies(battery -> assertThat(battery.model()).isEqualTo("AB-12"));
        assertThat(catalog.microinverters()).isEmpty();
        assertThat(catalog.stock()).containsExactly(new StockLine("AB-12", 3, TimeSpan.days(5)));
    }

    @Test
    void aTableThatMustBeThereIsAskedFor() {
        Map<String, String> shelf = new HashMap<>(SHELF);
        shelf.remove("inverters");
        assertThat(refused(shelf).problems())
                .extracting(Problem::path, Problem::code)
                .containsExactly(tuple("/inverters", ProblemCode.MISSING));
    }

    @Test
    void everyTableTellsWhatIsWrongInItAtOnce() {
        Map<String, String> shelf = with("batteries", BATTERIES.replace("agm", "treacle"));
        shelf.put("modules", "model,colour\nM,red\n");
        shelf.put("stock", "model,inStock,leadTime\nAB-12,three,5 d\nAB-12,-1,5 d\n");
        InvalidInput refused = refused(shelf);
        assertThat(refused.problems())
                .extracting(Problem::path)
                .contains("/modules/colour", "/batteries/chemistry", "/stock/inStock");
        assertThat(refused.problems())
                .extracting(Problem::message)
                .anyMatch(message -> message.startsWith("batteries, line 2") && message.contains("treacle"))
                .anyMatch(message -> message.startsWith("stock, line 2") && message.contains("three"))
                .anyMatch(message -> message.startsWith("stock, line 3") && message.contains("-1"));
    }

    @Test
    void aStockLineNamesNoTwoProducts() {
        // a shop's whole stock may be listed beside a part of its products
        assertThat(read(with("stock", "model,inStock\nAB-13,3\n")).stock())
                .extracting(StockLine::model)
                .containsExactly("AB-13");
        assertThat(refused(with("stock", "model,inStock\nAB-12,3\nAB-12,4\n")).problems())
                .extracting(Problem::path, Problem::code)
                .containsExactly(tuple("/stock/1/model", ProblemCode.CONFLICT));
    }

    @Test
    void aTableThatIsNotOneIsRefusedByName() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CatalogTables.rows("panels", Table.parse("model\n")))
                .withMessageContaining("panels")
                .withMessageContaining("modules");
    }

    @Test
    void theBundledSampleKnowsItsStock() {
        Catalog sample = Catalog.sample();
        assertThat(sample.stock())
                .extracting(StockLine::model)
                .containsAll(sample.batteries().stream()
                        .map(battery -> battery.model())
                        .toList());
        assertThat(List.copyOf(sample.stock())).allMatch(line -> line.leadTime() != null);
    }
}
