package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daybank.api.wire.Json;
import org.daybank.api.wire.RecordWriter;
import org.daybank.core.catalog.Catalog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dealer's own products: as tables in a request's stead, as a file or a folder at start. */
class CatalogueServiceTest {
    private static final String BATTERIES = """
            model,chemistry,nominalVoltage,capacity,resistance,mass,price
            AB-12,agm,12 V,20 h: 100 Ah,4 mOhm,30 kg,180.00 EUR
            """;
    private static final Schemas SCHEMAS = new Schemas();

    @TempDir
    private Path folder;

    private static HttpResponse<String> table(RunningService service, String kind, String csv) {
        return service.send(service.request("/v1/catalog/" + kind, "Content-Type", "text/csv")
                .POST(BodyPublishers.ofString(csv)));
    }

    @Test
    void aTableBecomesProducts() {
        try (RunningService service = new RunningService()) {
            JsonNode answer = RunningService.json(table(service, "batteries", BATTERIES));
            assertThat(SCHEMAS.faults("/v1/catalog/{kind}", "post", 200, "application/json", answer))
                    .isEmpty();
            assertThat(answer.at("/batteries/0/model").asText()).isEqualTo("AB-12");
            // what the table leaves out stays left out
            assertThat(answer.path("batteries").get(0).has("mostInSeries")).isFalse();
        }
    }

    @Test
    void everythingThatIsWrongInATableIsToldByLine() {
        try (RunningService service = new RunningService()) {
            JsonNode problem = Refusal.document(
                    table(service, "batteries", BATTERIES.replace("agm", "agm2").replace("30 kg", "heavy")), 400);
            assertThat(problem.path("errors")).hasSize(2);
            assertThat(problem.at("/errors/0/detail").asText()).contains("line 2");
            Refusal.document(table(service, "batteries", " "), 400);
            Refusal.document(table(service, "lamps", BATTERIES), 404);
        }
    }

    @Test
    void aFolderOfTablesStandsInForTheSample() throws IOException {
        for (String empty : new String[] {"modules", "controllers", "inverters"}) {
            Files.writeString(folder.resolve(empty + ".csv"), "model\n");
        }
        Files.writeString(folder.resolve("batteries.csv"), BATTERIES);
        Files.writeString(folder.resolve("stock.csv"), "model,inStock,leadTime\nAB-12,3,5 d\n");
        try (RunningService service = new RunningService(CatalogFile.read(folder))) {
            JsonNode offered = RunningService.json(service.get("/v1/catalog/batteries"));
            assertThat(offered.at("/batteries/0/model").asText()).isEqualTo("AB-12");
            JsonNode answer = RunningService.json(
                    service.get("/v1/bank-capacity?dailyEnergy=0.5kWh&nominalVoltage=12V&chemistry=agm&lowest=20Cel"));
            assertThat(answer.at("/result/layouts/ranked"))
                    .hasSizeGreaterThan(0)
                    .allMatch(fit -> fit.path("product").asText().equals("AB-12"));
        }
    }

    @Test
    void whatTheServiceAnswersCanBeItsFile() throws IOException {
        Path file = folder.resolve("shelf.json");
        Files.write(file, Json.write(RecordWriter.write(Catalog.sample())));
        assertThat(CatalogFile.read(file)).isEqualTo(Catalog.sample());
    }

    @Test
    void everythingThatIsWrongInAFileIsToldAtOnce() throws IOException {
        ObjectNode shelf = JsonNodeFactory.instance.objectNode();
        shelf.putArray("modules");
        shelf.putArray("controllers").addObject().put("kind", "pmw");
        shelf.putArray("inverter");
        Path file = folder.resolve("shelf.json");
        Files.write(file, Json.write(shelf));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CatalogFile.read(file))
                .withMessageContaining("/batteries")
                .withMessageContaining("/inverter")
                .withMessageContaining("pmw");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CatalogFile.read(folder.resolve("nowhere.json")))
                .withMessageContaining("nowhere.json")
                .withMessageContaining("modules.csv");
    }
}
