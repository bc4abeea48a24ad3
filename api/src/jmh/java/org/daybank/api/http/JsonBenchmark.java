package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.daybank.api.request.BankCapacityRequest;
import org.daybank.api.request.SystemDesignRequest;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.Json;
import org.daybank.core.catalog.Catalog;
import org.daybank.api.request.DesignAnswer;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** JSON in and out: bytes to a tree, the tree to a request, an answer to bytes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class JsonBenchmark {
    private static final Calculation<SystemDesignRequest, DesignAnswer> DESIGN = Calculation.calculation(
                    "/v1/system-design", SystemDesignRequest.class, DesignAnswer.class, SystemDesignRequest::answer)
            .hazards(answer -> answer.outcome().hazards());
    private static final Calculation<BankCapacityRequest, BankCapacityRequest.Answer> BANK = Calculation.calculation(
            "/v1/bank-capacity",
            BankCapacityRequest.class,
            BankCapacityRequest.Answer.class,
            BankCapacityRequest::answer);

    private final byte[] brief = example("system-design");
    private final byte[] bank = example("bank-capacity");

    private JsonNode briefTree;
    private JsonNode bankTree;
    private Bound<SystemDesignRequest> briefAsked;
    private Bound<BankCapacityRequest> bankAsked;
    private DesignAnswer design;
    private BankCapacityRequest.Answer capacity;

    /** Answers once. */
    @Setup
    public void answer() {
        briefTree = Json.read(brief);
        bankTree = Json.read(bank);
        briefAsked = Binder.bind(SystemDesignRequest.class, briefTree);
        bankAsked = Binder.bind(BankCapacityRequest.class, bankTree);
        design = DESIGN.answer(briefAsked.value(), Catalog.sample());
        capacity = BANK.answer(bankAsked.value(), Catalog.sample());
    }

    /** Bytes of a brief to a tree. */
    @Benchmark
    public JsonNode parseBrief() {
        return Json.read(brief);
    }

    /** The tree of a brief to a request, everything checked. */
    @Benchmark
    public Bound<SystemDesignRequest> bindBrief() {
        return Binder.bind(SystemDesignRequest.class, briefTree);
    }

    /** The answer of a whole design to bytes. */
    @Benchmark
    public byte[] designOut() {
        return Envelope.write(DESIGN, briefAsked, design, false);
    }

    /** A bank capacity from bytes to request, without the calculation. */
    @Benchmark
    public Bound<BankCapacityRequest> bankIn() {
        return Binder.bind(BankCapacityRequest.class, Json.read(bank));
    }

    /** The calculation of a bank capacity alone. */
    @Benchmark
    public BankCapacityRequest.Answer bankCapacity() {
        return BANK.answer(bankAsked.value(), Catalog.sample());
    }

    /** The answer of a bank capacity to bytes. */
    @Benchmark
    public byte[] bankOut() {
        return Envelope.write(BANK, bankAsked, capacity, false);
    }

    private static byte[] example(String name) {
        String path = "/openapi/examples/%s.request.json".formatted(name);
        try (InputStream in = JsonBenchmark.class.getResourceAsStream(path)) {
            return Objects.requireNonNull(in, path).readAllBytes();
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
