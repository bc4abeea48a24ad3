package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.daybank.api.RunningService.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;

/** Weather files in, the site block of a brief out, and the hours taken in a brief. */
class ClimateTest {
    private static final String PLACE = "latitude=-41.5&longitude=172.8&utcOffset=%2B12:00&elevation=300m&year=2025";

    @AutoClose
    private static final RunningService service = new RunningService();

    /** A year of one hour: 100 W/m² day and night, 10 °C. */
    private static String steadyYear(int hours) {
        return IntStream.range(0, hours)
                .mapToObj(hour -> "100,10")
                .collect(Collectors.joining("\n", "global_W/m2,air_Cel\n", "\n"));
    }

    private static HttpResponse<String> post(String query, String text) {
        return service.send(service.request("/v1/climate?" + query, "Content-Type", "text/csv")
                .POST(BodyPublishers.ofString(text)));
    }

    @Test
    void steadyYearHasSteadyMonths() {
        JsonNode answer = json(post(PLACE, steadyYear(8760)));

        assertThat(answer.path("hours").asInt()).isEqualTo(8760);
        assertThat(answer.has("weather")).isFalse();
        JsonNode months = answer.path("site").path("months");
        assertThat(months.path("dailyIrradiation")).hasSize(12);
        for (JsonNode day : months.path("dailyIrradiation")) {
            // 100 W/m² · 24 h = 2.4 kWh/m²
            assertThat(day.path("value").asDouble()).isCloseTo(2.4, within(1e-9));
        }
        for (JsonNode air : months.path("meanAir")) {
            assertThat(air.path("value").asDouble()).isCloseTo(10, within(1e-9));
        }
        assertThat(answer.path("site").path("recordLow").path("value").asDouble())
                .isEqualTo(10);
    }

    @Test
    void hoursStandInABriefAndGiveTheSameAnswerWhenPostedBack() {
        ObjectNode brief = JsonNodeFactory.instance.objectNode();
        brief.set(
                "weather", json(post("weather=true&" + PLACE, steadyYear(8760))).path("weather"));
        brief.putArray("loads")
                .addObject()
                .put("name", "relay radio")
                .put("supply", "dc")
                .put("power", "14 W")
                .put("hoursPerDay", 24);

        HttpResponse<String> response = service.post("/v1/system-design", brief.toString());
        JsonNode answer = json(response);
        JsonNode again =
                json(service.post("/v1/system-design", answer.path("given").toString()));

        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(answer.at("/result/kind").asText()).isEqualTo("standAlone");
        assertThat(answer.at("/given/weather/place/latitude").asDouble()).isEqualTo(-41.5);
        assertThat(answer.at("/result/standAlone/energy/mpptGain/months")).hasSize(12);
        assertThat(again.path("result")).isEqualTo(answer.path("result"));
    }

    @Test
    void everythingWrongIsToldByLine() {
        String text = steadyYear(8759).replaceFirst("100,10", "-5,10").replaceFirst("100,10", "100,9999");

        HttpResponse<String> response = post(PLACE, text);

        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json; charset=utf-8");
        assertThat(response.body()).contains("8759", "line 2", "-5", "line 3", "9999");
    }

    @Test
    void missingPlaceIsNamed() {
        HttpResponse<String> response = post("latitude=-41.5", steadyYear(8760));

        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.body()).contains("longitude is required.", "utcOffset is required.", "year is required.");
    }

    @Test
    void weatherOfAnotherHemisphereIsRefused() {
        ObjectNode brief = JsonNodeFactory.instance.objectNode();
        JsonNode climate = json(post("weather=true&" + PLACE, steadyYear(8760)));
        brief.set("weather", climate.path("weather"));
        ObjectNode site = climate.path("site").deepCopy();
        brief.set("site", site.put("latitude", 41.5));
        brief.putArray("loads")
                .addObject()
                .put("name", "radio")
                .put("power", "14 W")
                .put("hoursPerDay", 24);

        HttpResponse<String> response = service.post("/v1/system-design", brief.toString());

        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.body()).contains("/weather/place/latitude", "-41.5", "41.5");
    }
}
