package org.daybank.api;

import static org.daybank.api.http.Calculation.calculation;
import static org.daybank.api.http.Route.get;

import java.util.List;
import java.util.stream.Stream;
import org.daybank.api.http.Answers;
import org.daybank.api.http.Calculation;
import org.daybank.api.http.Contract;
import org.daybank.api.http.Route;
import org.daybank.api.request.BankCapacityRequest;
import org.daybank.core.bank.BankCapacity;

/** Every route there is. */
final class Routes {
    /** The calls of the library. */
    static final List<Calculation<?, ?>> CALCULATIONS = List.of(calculation(
                    "/v1/bank-capacity",
                    BankCapacityRequest.class,
                    BankCapacity.class,
                    asked -> BankCapacity.needed(asked.demand(), asked.policy()))
            .working(BankCapacity::working)
            .alsoFlat());

    private Routes() {}

    /** Calculations and what stands beside them. */
    static List<Route> all(Contract contract) {
        Stream<Route> beside = Stream.of(
                get("/health", context -> Answers.text(context, "ok")),
                get("/openapi.yaml", contract::yaml),
                get("/openapi.json", contract::json),
                get("/v1/examples", contract::examples),
                get("/v1/examples/{name}", contract::example));
        return Stream.concat(beside, CALCULATIONS.stream().flatMap(calculation -> calculation.routes().stream()))
                .toList();
    }
}
