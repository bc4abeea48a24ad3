package org.daybank.api.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.daybank.api.request.SweepAxis;
import org.daybank.api.request.SweepDistribution;
import org.daybank.api.request.SweepRequest;
import org.daybank.api.wire.Binder;
import org.daybank.api.wire.Bound;
import org.daybank.api.wire.WirePath;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.quantity.TemperatureDifference;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.daybank.core.sweep.Axis;
import org.daybank.core.sweep.Distribution;
import org.daybank.core.sweep.Sweep;
import org.jspecify.annotations.Nullable;

/** Makes a sweep of the library of a request for one, and finds everything that is wrong with it. */
final class SweepReader<Q extends Record, R extends Record> {
    private final Calculation<Q, R> calculation;
    private final Catalog onOffer;
    private final SweepRequest request;
    private final Problems problems = new Problems();

    private SweepReader(Calculation<Q, R> calculation, Catalog onOffer, SweepRequest request) {
        this.calculation = calculation;
        this.onOffer = onOffer;
        this.request = request;
    }

    /**
     * The sweep that is asked for.
     *
     * @param calculations those that can be swept
     * @param onOffer the products that count where the base names none
     * @throws InvalidInput with everything that is wrong, each problem under its pointer
     */
    static Sweep draft(List<Calculation<?, ?>> calculations, Catalog onOffer, SweepRequest request) {
        for (Calculation<?, ?> calculation : calculations) {
            if (name(calculation).equals(request.calculator())) {
                return new SweepReader<>(calculation, onOffer, request).sweep();
            }
        }
        throw new InvalidInput(List.of(new Problem(
                "/calculator",
                ProblemCode.UNKNOWN_NAME,
                "'%s' is not a calculator; there are %s"
                        .formatted(
                                Problem.shortened(request.calculator()),
                                String.join(
                                        ", ",
                                        calculations.stream()
                                                .map(SweepReader::name)
                                                .toList())))));
    }

    /** The name by which a sweep calls a calculator. */
    static String name(Calculation<?, ?> calculation) {
        return calculation.path().substring(calculation.path().lastIndexOf('/') + 1);
    }

    private Sweep sweep() {
        List<WirePath> places = new ArrayList<>();
        List<Axis> axes = new ArrayList<>();
        for (int i = 0; i < request.axes().size(); i++) {
            SweepAxis asked = request.axes().get(i);
            String at = "/axes/" + i;
            attempt(at + "/path", () -> {
                WirePath place = WirePath.of(calculation.request(), asked.path());
                places.add(place);
                String chosen = asked.distribution() == null ? at : at + "/distribution";
                attempt(chosen, () -> axes.add(axis(asked, place.type(), at)));
            });
        }
        List<String> outputs = request.outputs() == null ? Envelope.figures(calculation) : request.outputs();
        List<WirePath> results = new ArrayList<>();
        for (int i = 0; i < outputs.size(); i++) {
            String path = outputs.get(i);
            attempt("/outputs/" + i, () -> results.add(WirePath.of(calculation.result(), path)));
        }
        problems.throwIfAny();
        Bound<Q> base = base(places);
        Sweep sweep = Sweep.of(base.value(), (Q asked) -> calculation.answer(asked, onOffer))
                .sampled(request.sampling());
        for (int i = 0; i < axes.size(); i++) {
            sweep = sweep.vary(request.axes().get(i).path(), places.get(i).components(), axes.get(i));
        }
        for (int i = 0; i < outputs.size(); i++) {
            sweep = sweep.output(outputs.get(i), results.get(i).components());
        }
        return sweep;
    }

    /** The base, with a value where it leaves out what an axis varies and no default stands in for it. */
    private Bound<Q> base(List<WirePath> places) {
        JsonNode given = request.base() == null ? JsonNodeFactory.instance.objectNode() : request.base();
        JsonNode tree = given.deepCopy();
        for (int i = 0; i < places.size(); i++) {
            put(tree, places.get(i).members(), typical(request.axes().get(i)));
        }
        try {
            return Binder.bind(calculation.request(), tree);
        } catch (InvalidInput refused) {
            throw problems.addAll(refused, problem -> problem.under("/base")).asException();
        }
    }

    /** Puts a value where one is required and absent, and where what holds it is there or required too. */
    private static void put(JsonNode tree, List<WirePath.Member> members, JsonNode value) {
        JsonNode holder = tree;
        for (WirePath.Member member : members.subList(0, members.size() - 1)) {
            if (member.required() && holder instanceof ObjectNode object && !object.has(member.name())) {
                object.putObject(member.name());
            }
            // an array where an object belongs has no such member, and is refused when the base is bound
            holder = holder instanceof ArrayNode list
                            && Character.isDigit(member.name().charAt(0))
                    ? list.path(Integer.parseInt(member.name()))
                    : holder.path(member.name());
        }
        WirePath.Member last = members.get(members.size() - 1);
        if (last.required() && holder instanceof ObjectNode object && !object.has(last.name())) {
            object.set(last.name(), value);
        }
    }

    private static JsonNode typical(SweepAxis axis) {
        SweepDistribution drawn = axis.distribution();
        if (axis.values() != null) {
            return axis.values().get(0);
        }
        if (drawn == null) {
            return Objects.requireNonNull(axis.from());
        }
        return Objects.requireNonNull(
                switch (drawn.kind()) {
                    case UNIFORM -> drawn.from();
                    case TRIANGULAR -> drawn.likeliest();
                    case NORMAL -> drawn.mean();
                    case LOG_NORMAL -> drawn.median();
                });
    }

    private static Axis axis(SweepAxis asked, Type type, String at) {
        List<JsonNode> values = asked.values();
        if (values != null) {
            return Axis.of(IntStream.range(0, values.size())
                    .mapToObj(i -> Binder.value(type, values.get(i), "%s/values/%s".formatted(at, i)))
                    .toArray());
        }
        SweepDistribution drawn = asked.distribution();
        if (drawn != null) {
            return Axis.drawn(distribution(drawn, type, at + "/distribution"));
        }
        Object from = value(type, asked.from(), at + "/from");
        Object to = value(type, asked.to(), at + "/to");
        return asked.spacing() == SweepAxis.Spacing.LINEAR
                ? Axis.range(from, to, asked.count())
                : Axis.logRange(from, to, asked.count());
    }

    private static Distribution distribution(SweepDistribution drawn, Type type, String at) {
        return switch (drawn.kind()) {
            case UNIFORM ->
                Distribution.uniform(value(type, drawn.from(), at + "/from"), value(type, drawn.to(), at + "/to"));
            case TRIANGULAR ->
                Distribution.triangular(
                        value(type, drawn.from(), at + "/from"),
                        value(type, drawn.likeliest(), at + "/likeliest"),
                        value(type, drawn.to(), at + "/to"));
            case NORMAL ->
                Distribution.normal(
                        value(type, drawn.mean(), at + "/mean"),
                        value(
                                type == Temperature.class ? TemperatureDifference.class : type,
                                drawn.deviation(),
                                at + "/deviation"));
            case LOG_NORMAL ->
                Distribution.logNormal(
                        value(type, drawn.median(), at + "/median"), Objects.requireNonNull(drawn.factor()));
        };
    }

    private static Object value(Type type, @Nullable JsonNode given, String pointer) {
        return Binder.value(type, Objects.requireNonNull(given), pointer);
    }

    /** Runs a step; what is wrong is kept, under its own pointer or the one given. */
    private void attempt(String at, Runnable step) {
        try {
            step.run();
        } catch (InvalidInput refused) {
            problems.addAll(refused, problem -> problem.path().startsWith("/axes/") ? problem : problem.under(at));
        } catch (IllegalArgumentException refused) {
            problems.add(at, ProblemCode.UNKNOWN_NAME, String.valueOf(refused.getMessage()));
        }
    }
}
