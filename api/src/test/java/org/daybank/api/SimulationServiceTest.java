package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A chosen system run through its years over HTTP. */
class SimulationServiceTest {
    private static final String PATH = "/v1/simulation";
    private static final Schemas SCHEMAS = new Schemas();
    private static RunningService service;
    private static String example;

    @BeforeAll
    static void start() {
        service = new RunningService();
        example = service.get("/v1/examples/simulation").body();
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static JsonNode simulation(String body) {
        HttpResponse<String> response = service.post(PATH, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode answer = RunningService.json(response);
        assertThat(SCHEMAS.faults(PATH, "post", 200, "application/json", answer))
                .isEmpty();
        return answer.get("result");
    }

    private static String with(String right, String wrong) {
        assertThat(example).contains(right);
        return example.replaceFirst(Pattern.quote(right), wrong);
    }

    @Test
    void thePartsOfADesignSentBackGiveItsAvailability() {
        HttpResponse<String> response = service.post(
                "/v1/system-design", service.get("/v1/examples/system-design").body());
        JsonNode design = RunningService.json(response);
        ObjectNode request = (ObjectNode) design.get("given");
        request.set("parts", design.at("/result/standAlone/system/parts"));

        JsonNode result = simulation(request.toString());

        assertThat(result.get("reliability")).isEqualTo(design.at("/result/standAlone/evidence/availability"));
        assertThat(result.get("byYear")).hasSize(5);
    }

    @Test
    void twoPlanesOfTheArrayAreRefused() {
        String body = example.replace(
                "\"tilt\": \"60 deg\", \"azimuth\": \"180 deg\", \"controller\"",
                "\"tilt\": \"45 deg\", \"azimuth\": \"180 deg\", \"controller\"");
        assertThat(body).isNotEqualTo(example);
        JsonNode problem = Refusal.document(service.post(PATH, body), 400).at("/errors/0");
        assertThat(problem.path("pointer").asText()).isEqualTo("/parts/tilt");
        assertThat(problem.path("detail").asText()).contains("array.tilt", "60 °", "45 °");
    }

    @Test
    void anEngineHelps() {
        JsonNode alone = simulation(example).get("reliability");
        JsonNode helped = simulation(
                        with(
                                "\"parts\"",
                                "\"engine\": {\"power\": \"3 kW\", \"startBelow\": 0.7, \"stopAbove\": 0.9}, \"wells\": {\"availableShare\": 0.9, \"perHour\": 2}, \"parts\""))
                .get("reliability");

        assertThat(helped.get("availability").asDouble())
                .isGreaterThan(alone.get("availability").asDouble());
        assertThat(helped.get("engineTime").get("value").asDouble()).isPositive();
        assertThat(alone.get("fuel").get("value").asDouble()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PL-410           | PL-411         | /parts/module          | PL-411 is no module of the catalogue; there are PL-50",
                "WR-S5000-48      | WR             | /parts/inverter        | WR is no inverter of the catalogue",
                "'\"48 V\"'       | '\"36 V\"'     | /parts/nominalVoltage  | must be 12 V, 24 V or 48 V, but was 36 V.",
                "'\"series\": 3'  | '\"series\": 0' | /parts/series         | parts.series must be from 1 to 1000, but was 0.",
                "'\"parts\"'      | '\"engine\": {\"power\": \"3 kW\", \"startBelow\": 0.9}, \"parts\"' | /engine/stopAbove | stopAbove must be above startBelow 0.9, but was 0.8.",
                "'\"parts\"'      | '\"engine\": {}, \"parts\"' | /engine/power | engine.power is required.",
                "'\"parts\"'      | '\"shore\": {\"power\": \"1 kW\"}, \"parts\"' | /shore | shore power belongs to a mobile system: kind must be mobile",
                "'\"parts\"'      | '\"wells\": {\"availableShare\": 2, \"perHour\": 1}, \"parts\"' | /wells/availableShare | must be from 0.001 to 0.999, but was 2.",
                "'{\"bank\": '    | '{\"simulation\": {\"initialCharge\": 0.1}, \"bank\": ' | /policy/simulation/initialCharge | must be at least what a depth of discharge of 0.8 leaves, but was 0.1.",
                "'{\"bank\": '    | '{\"system\": {\"simulatedYears\": 101}, \"bank\": ' | /policy/system/simulatedYears | must be from 0 to 100, but was 101.",
            })
    void whatIsWrongIsNamed(String right, String wrong, String pointer, String detail) {
        JsonNode problem = Refusal.document(service.post(PATH, with(right, wrong)), 400);

        assertThat(problem.get("errors")).anySatisfy(error -> {
            assertThat(error.get("pointer").asText()).isEqualTo(pointer);
            assertThat(error.get("detail").asText()).contains(detail);
        });
    }
}
