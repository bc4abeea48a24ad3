package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The life of a bank, and a start's sag, over HTTP. */
class BatteryLifeServiceTest {
    private static RunningService service;
    private static ObjectNode example;

    @BeforeAll
    static void start() {
        service = new RunningService();
        example = (ObjectNode) RunningService.json(service.get("/v1/examples/battery-life"));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static JsonNode life(ObjectNode asked) {
        return RunningService.json(service.post("/v1/battery-life?working=true", asked.toString()));
    }

    @Test
    void daysOfOneDepthByHand() {
        ObjectNode asked = example.deepCopy();
        asked.putArray("cycles").addObject().put("depth", "50 %").put("perYear", 440);
        JsonNode answer = life(asked);

        // 440 of 2200 cycles a year: 5 a of 8760 h; 12 cells of 930 Ah: 22.32 kWh · 0.5 · 440 = 4910.4 kWh a year;
        // 12 · 392 EUR / (5 · 4910.4 kWh) = 0.1916 EUR
        assertThat(answer.at("/result/governing").asText()).isEqualTo("cycles");
        assertThat(answer.at("/result/wearPerYear").asDouble()).isCloseTo(0.2, within(1e-12));
        assertThat(answer.at("/result/replacements").asInt()).isEqualTo(3);
        assertThat(answer.at("/result/costPerKilowattHour/amount").asText()).isEqualTo("0.19");
        assertThat(answer.at("/working/steps")).isNotEmpty();
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        ObjectNode asked = example.deepCopy();
        asked.put("parallel", 0).put("nominalVoltage", "25 V");
        ((ObjectNode) asked.get("battery")).remove("cycleLife");
        ((ObjectNode) asked.get("battery")).remove("calendarLife");
        JsonNode problem = Refusal.document(service.post("/v1/battery-life", asked.toString()), 400);

        assertThat(problem.path("errors").findValuesAsText("pointer"))
                .containsExactlyInAnyOrder("/parallel", "/nominalVoltage", "/battery/cycleLife");
    }

    @Test
    void aStartMayPullTheBusUnderTheCutOff() {
        String demand = """
                {"dailyEnergy": "2.4 kWh", "nominalVoltage": "24 V", "chemistry": "lithiumIronPhosphate", "lowest": "10 Cel",
                 "surgeCurrent": "200 A", "cutOffVoltage": "21 V", "cableResistance": "%s"}""";
        JsonNode thick = RunningService.json(service.post("/v1/bank-capacity", demand.formatted("0.1 mOhm")));
        JsonNode thin = RunningService.json(service.post("/v1/bank-capacity", demand.formatted("50 mOhm")));

        assertThat(thick.at("/result/layouts/ranked")).isNotEmpty();
        // 200 A · 25.6 V / 21 V = 244 A through 50 mΩ alone are 12 V
        assertThat(thin.at("/result/layouts/ranked")).isEmpty();
        assertThat(thin.at("/result/layouts/rejected").findValuesAsText("rule")).contains("surgeSag");
        Refusal.document(service.post("/v1/bank-capacity", demand.formatted("2 Ohm")), 400);
    }
}
