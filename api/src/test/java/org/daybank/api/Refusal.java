package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;

/** A refused request: its answer must be a problem document by the contract, and give nothing away. */
final class Refusal {
    private static final Schemas SCHEMAS = new Schemas();

    private Refusal() {}

    /** The problem document of a refused request, held against the contract. */
    static JsonNode document(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("application/problem+json"));
        assertThat(response.headers().firstValue("X-Request-Id")).isPresent();
        assertThat(response.body()).doesNotContain("Exception", "org.daybank", "com.fasterxml", ".java");
        JsonNode problem = RunningService.json(response);
        assertThat(SCHEMAS.faults("#/components/schemas/Problem", problem)).isEmpty();
        assertThat(problem.path("status").asInt()).isEqualTo(status);
        String described = problem.path("type").asText().replace("/openapi.yaml#", "");
        assertThat(SCHEMAS.contract().at(described).path("description").asText())
                .as(described)
                .isNotEmpty();
        return problem;
    }
}
