package org.daybank.api.http;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.QuantityRangeException;
import org.daybank.core.schema.Assumption;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A call of the library that is answered over HTTP: request record in, envelope out.
 *
 * @param path where it is found
 * @param request what is asked
 * @param result what comes out
 * @param call the library, with the products that count where the request names none
 * @param hazards what to warn of in a result
 * @param working the steps behind a result
 * @param flat how it answers GET with query parameters; null when it does not
 * @param heavy whether it takes the machine for a while
 * @param page a result, with what was assumed, as HTML; null when it has no such form
 */
public record Calculation<Q extends Record, R extends Record>(
        String path,
        Class<Q> request,
        Class<R> result,
        BiFunction<Q, Catalog, R> call,
        Function<R, List<Hazard>> hazards,
        Function<R, Working> working,
        @Nullable FlatAnswer<R, ?> flat,
        boolean heavy,
        @Nullable BiFunction<R, List<Assumption>, String> page) {

    /** A calculation asked by POST, without hazards and without steps to show. */
    public static <Q extends Record, R extends Record> Calculation<Q, R> calculation(
            String path, Class<Q> request, Class<R> result, Function<Q, R> call) {
        return calculation(path, request, result, (asked, onOffer) -> call.apply(asked));
    }

    /** The same for one that picks from products. */
    public static <Q extends Record, R extends Record> Calculation<Q, R> calculation(
            String path, Class<Q> request, Class<R> result, BiFunction<Q, Catalog, R> call) {
        return new Calculation<>(
                path, request, result, call, none -> List.of(), none -> new Working(List.of()), null, false, null);
    }

    /** The same with steps to show on {@code working=true}. */
    public Calculation<Q, R> working(Function<R, Working> steps) {
        return new Calculation<>(path, request, result, call, hazards, steps, flat, heavy, page);
    }

    /** The same with hazards. */
    public Calculation<Q, R> hazards(Function<R, List<Hazard>> warnings) {
        return new Calculation<>(path, request, result, call, warnings, working, flat, heavy, page);
    }

    /** The same, answered to GET as well: the envelope, the result in one row, or one figure of it as text. */
    public Calculation<Q, R> alsoFlat() {
        return alsoFlat("", result, List::of);
    }

    /**
     * The same with rows of its own.
     *
     * @param element the list of the request whose only element the parameters describe; empty when they describe the whole
     * @param row type of what one row tells
     * @param rows of a result
     */
    public <T extends Record> Calculation<Q, R> alsoFlat(String element, Class<T> row, Function<R, List<T>> rows) {
        return new Calculation<>(
                path, request, result, call, hazards, working, new FlatAnswer<>(element, row, rows), heavy, page);
    }

    /** The same, bounded in number and time. */
    public Calculation<Q, R> heavyWork() {
        return new Calculation<>(path, request, result, call, hazards, working, flat, true, page);
    }

    /** The same, answered as a page as well. */
    public Calculation<Q, R> alsoPage(BiFunction<R, List<Assumption>, String> html) {
        return new Calculation<>(path, request, result, call, hazards, working, flat, heavy, html);
    }

    /**
     * The routes under which it is found.
     *
     * @param onOffer the products that count where a request names none
     * @param heavyWork bounds what takes the machine for a while
     */
    public List<Route> routes(Supplier<Catalog> onOffer, HeavyWork heavyWork) {
        return new CalculationRoutes<>(this, onOffer, heavyWork).routes();
    }

    /**
     * Calls the library.
     *
     * @throws InvalidInput also where numbers of the request, each in its range, lead out of the range of a quantity or of money
     */
    R answer(Q asked, Catalog onOffer) {
        try {
            return call.apply(asked, onOffer);
        } catch (InvalidInput refused) {
            throw refused;
        } catch (QuantityRangeException | ArithmeticException refused) {
            throw new InvalidInput(
                    List.of(new Problem("", ProblemCode.OUT_OF_RANGE, String.valueOf(refused.getMessage()))));
        }
    }
}
