package org.daybank.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import example.client.ApiClient;
import example.client.api.CalculatorsApi;
import example.client.model.BankCapacityRequest;
import example.client.model.SystemDesignRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.Test;

/** Clients generated from the contract get what plain HTTP gets. They are made by the profile {@code clients}. */
class GeneratedClientsTest {
    private static final Path CLIENTS = Path.of("target", "clients");
    private static final Path PYTHON = CLIENTS.resolve("python");
    private static final Path TYPESCRIPT = CLIENTS.resolve("typescript");

    @AutoClose
    private static final RunningService service = new RunningService();

    @Test
    void javaClientGetsTheSame() throws Exception {
        ApiClient client = new ApiClient();
        client.updateBaseUri(address());
        ObjectMapper mapper = client.getObjectMapper();
        CalculatorsApi calculators = new CalculatorsApi(client);

        JsonNode bank = plain("/v1/bank-capacity", "bank-capacity");
        BankCapacityRequest need = mapper.readValue(bank.path("given").toString(), BankCapacityRequest.class);
        same(RunningService.json(mapper.writeValueAsString(calculators.bankCapacity(need, null))), bank);

        JsonNode system = plain("/v1/system-design", "system-design");
        SystemDesignRequest brief = mapper.readValue(system.path("given").toString(), SystemDesignRequest.class);
        same(RunningService.json(mapper.writeValueAsString(calculators.systemDesign(brief, null))), system);
    }

    @Test
    void typeScriptClientGetsTheSame() throws Exception {
        Program.assumeInstalled("npx");
        bring("typescript", "call.ts");
        Program.run(TYPESCRIPT, "", "npx", "--yes", "-p", "typescript@5.9.3", "tsc", "--strict", "--target", "es2022", "--lib", "es2022,dom",
                "--module", "commonjs", "--outDir", "compiled", "call.ts");

        answersAlike(TYPESCRIPT, "node", "compiled/call.js");
    }

    @Test
    void pythonClientGetsTheSame() throws Exception {
        Program.assumeInstalled("python3");
        bring("python", "call.py");
        Program.run(PYTHON, "", Program.PYTHON, "-m", "venv", "environment");
        Program.run(PYTHON, "", "environment/bin/python", "-m", "pip", "install", "-q", "-r", "requirements.txt");

        answersAlike(PYTHON, "environment/bin/python", "call.py");
    }

    /** Puts the program that calls a client beside it. */
    private static void bring(String language, String program) throws IOException {
        Files.copy(
                Path.of("src", "clients", language, program),
                CLIENTS.resolve(language).resolve(program),
                StandardCopyOption.REPLACE_EXISTING);
    }

    /** Has two requests answered by way of a client. */
    private static void answersAlike(Path folder, String runner, String program) throws IOException, InterruptedException {
        JsonNode bank = plain("/v1/bank-capacity", "bank-capacity");
        JsonNode system = plain("/v1/system-design", "system-design");
        String requests = "[" + bank.path("given") + "," + system.path("given") + "]";
        JsonNode answers = RunningService.json(Program.run(folder, requests, runner, program, address()));
        same(answers.get(0), bank);
        same(answers.get(1), system);
    }

    private static String address() {
        return service.request("").build().uri().toString();
    }

    /** The answer to an example as the service understood it, quantities as objects and every default filled in. */
    private static JsonNode plain(String path, String example) {
        String body = service.get("/v1/examples/" + example).body();
        JsonNode given = RunningService.json(service.post(path, body)).path("given");
        return RunningService.json(service.post(path, given.toString()));
    }

    private static void same(JsonNode found, JsonNode expected) {
        List<String> differences = new ArrayList<>();
        compare("", found, expected, differences);
        assertThat(differences).isEmpty();
    }

    /** Tells where two trees differ, whichever kind of number a number was read as. */
    private static void compare(String where, JsonNode found, JsonNode expected, List<String> differences) {
        if (expected.isContainerNode() && found.getNodeType() == expected.getNodeType()) {
            expected.properties().forEach(member ->
                    compare(where + "/" + member.getKey(), found.path(member.getKey()), member.getValue(), differences));
            for (int i = 0; expected.isArray() && i < expected.size(); i++) {
                compare(where + "/" + i, found.path(i), expected.get(i), differences);
            }
            if (found.size() != expected.size()) {
                differences.add("%s has %d members, not %d".formatted(where, found.size(), expected.size()));
            }
        } else if (found.isNumber() && expected.isNumber()
                ? found.doubleValue() != expected.doubleValue()
                : !found.equals(expected)) {
            differences.add("%s is %s, not %s".formatted(where, found, expected));
        }
    }
}
