package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;

/** Circuits asked over HTTP, well and badly. */
class WiringServiceTest {
    private static final String PATH = "/v1/wiring";

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void sizesACircuitByHand() {
        JsonNode answer = RunningService.json(service.post(PATH + "?working=true", """
                {"circuits": [{"name": "pump", "kind": "acOutput", "operatingVoltage": "230 V", "operatingCurrent": "10 A",
                  "length": "20 m"}]}"""));
        JsonNode circuit = answer.at("/result/circuits/0");
        // 10 A: breaker 10 A; 1.5 mm² carries 17.5 A at its terminals, 23 A by its insulation.
        assertThat(circuit.at("/conductors/size/size").asText()).isEqualTo("1.5 mm²");
        assertThat(circuit.at("/device/rating/value").asDouble()).isEqualTo(10);
        assertThat(circuit.at("/device/kind").asText()).isEqualTo("breaker");
        // T = 30 + 60 · (10 / 23)² = 41.342 °C; R = 12.1 mΩ/m · (1 + 0.00393 · 21.342) · 20 m = 262.297 mΩ; 2 · 10 A ·
        // that
        assertThat(circuit.at("/conductors/drop/value").asDouble()).isCloseTo(5.24595, within(5e-5));
        assertThat(answer.at("/result/circuits/0/nextSizeUp/size/size").asText())
                .isEqualTo("2.5 mm²");
        assertThat(answer.at("/result").has("stringVoltages")).isFalse();
        assertThat(answer.at("/hazards/0/code").asText()).isEqualTo("preliminarySizes");
        assertThat(answer.at("/working/steps")).isNotEmpty();
        assertThat(answer.path("assumptions"))
                .anySatisfy(assumption ->
                        assertThat(assumption.path("path").asText()).isEqualTo("/policy/loadDrop"));
    }

    @Test
    void tellsEverythingThatIsWrongWithItsPlace() {
        JsonNode problem = Refusal.document(service.post(PATH, """
                {"circuits": [{"name": "string", "kind": "string", "operatingVoltage": "90 V", "operatingCurrent": "10 A",
                  "length": "4 m"}, {"name": "x", "kind": "acOutput", "operatingVoltage": "230", "operatingCurrent": "10 A",
                  "length": "4 m"}],
                 "policy": {"ruleSet": "nfpa", "insulationTemperature": "80 Cel"}}"""), 400);
        assertThat(problem.path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder(
                        "/circuits/0/designCurrent",
                        "/circuits/0/highestVoltage",
                        "/circuits/0/strings",
                        "/circuits/1/operatingVoltage",
                        "/policy/insulationTemperature");
    }

    @Test
    void tellsWhatTheTablesDoNotHoldWithItsPlace() {
        JsonNode problem = Refusal.document(service.post(PATH, """
                {"circuits": [{"name": "hot", "kind": "acOutput", "operatingVoltage": "230 V", "operatingCurrent": "10 A",
                  "length": "4 m", "ambient": "84 Cel"}]}"""), 400);
        assertThat(problem.path("errors").findValuesAsText("pointer")).containsExactly("/circuits/0/ambient");
        Refusal.document(service.post(PATH, "{\"circuits\": []}"), 400);
    }
}
