package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;

/** Generators and bills asked over HTTP, well and badly. */
class GeneratorAndGridServiceTest {
    @AutoClose
    private static final RunningService service = new RunningService();

    private static ObjectNode example(String name) {
        return (ObjectNode) RunningService.json(service.get("/v1/examples/" + name));
    }

    @Test
    void sizesAGeneratorByHand() {
        JsonNode answer = RunningService.json(service.post("/v1/generator", """
                {"chargingVoltage": "50 V", "maximumChargeCurrent": "80 A", "chargerEfficiency": 0.8, "chargerPowerFactor": 0.8,
                 "elevation": "600 m", "hottestAir": "36 Cel", "concurrentLoads": "750 W"}"""));

        // 80 A · 50 V / 0.8 + 750 W = 5.75 kW at 80 %: 7187.5 W; / (0.93 · 0.98) = 7886 W
        assertThat(answer.at("/result/rating/value").asDouble()).isEqualTo(8000);
        assertThat(answer.at("/result/sitePower/value").asDouble()).isCloseTo(8000 * 0.9114, within(1e-9));
        assertThat(answer.at("/result").has("engineOrModules")).isFalse();
        assertThat(answer.at("/hazards").findValuesAsText("code")).contains("generatorExhaust");
    }

    /** What sizes the engine says when a simulation starts it. */
    @Test
    void theRuleOfAGeneratorIsTheEngineOfASimulation() {
        JsonNode rule = RunningService.json(
                        service.post("/v1/generator", example("generator").toString()))
                .at("/result/rule");
        ObjectNode simulation = example("simulation");
        simulation.set("engine", rule);

        JsonNode answer = RunningService.json(service.post("/v1/simulation", simulation.toString()));

        assertThat(answer.at("/given/engine")).isEqualTo(rule);
    }

    @Test
    void tellsWhatIsWrongWithATariffAndItsPlace() {
        ObjectNode asked = example("grid-bill");
        asked.set("tariff", RunningService.json("""
                {"importPrice": {"price": "0.25 EUR"}, "exportPrice": {"price": "0.07 USD"}, "exportLimit": "-1 kW"}"""));

        JsonNode problem = Refusal.document(service.post("/v1/grid-bill", asked.toString()), 400);

        assertThat(problem.path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder("/tariff/exportPrice", "/tariff/exportLimit");
    }

    @Test
    void theLeastThatIsAskedOfABillIsAnsweredWithoutTheRest() {
        ObjectNode asked = example("grid-bill");
        asked.remove("price");
        asked.remove("busbar");

        JsonNode result = RunningService.json(service.post("/v1/grid-bill", asked.toString()))
                .path("result");

        assertThat(result.fieldNames()).toIterable().containsExactly("flows", "bill");
        assertThat(result.path("bill").has("payBack")).isFalse();
        assertThat(result.at("/bill/months")).hasSize(36);
    }
}
