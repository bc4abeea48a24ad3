package org.daybank.api;

import static org.daybank.api.http.Calculation.calculation;
import static org.daybank.api.http.Route.plain;
import static org.daybank.api.http.Route.post;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.daybank.api.http.Answers;
import org.daybank.api.http.Calculation;
import org.daybank.api.http.Climate;
import org.daybank.api.http.Contract;
import org.daybank.api.http.HeavyWork;
import org.daybank.api.http.Metrics;
import org.daybank.api.http.Offers;
import org.daybank.api.http.Pages;
import org.daybank.api.http.ProductTable;
import org.daybank.api.http.Readiness;
import org.daybank.api.http.Route;
import org.daybank.api.http.Sweeps;
import org.daybank.api.request.ArraySizeRequest;
import org.daybank.api.request.BankCapacityRequest;
import org.daybank.api.request.BatteryLifeRequest;
import org.daybank.api.request.ChargeSettingsRequest;
import org.daybank.api.request.ChargerSelectionRequest;
import org.daybank.api.request.DesignAnswer;
import org.daybank.api.request.EnergyBudgetRequest;
import org.daybank.api.request.GeneratorRequest;
import org.daybank.api.request.GridBillRequest;
import org.daybank.api.request.GridInverterSelectionRequest;
import org.daybank.api.request.InverterSelectionRequest;
import org.daybank.api.request.ShadeComparisonRequest;
import org.daybank.api.request.SimulationRequest;
import org.daybank.api.request.SunRequest;
import org.daybank.api.request.SystemDesignRequest;
import org.daybank.api.request.UncertaintyRequest;
import org.daybank.api.request.WiringRequest;
import org.daybank.api.sheet.HandOverSheet;
import org.daybank.core.array.ShadeComparison;
import org.daybank.core.bank.BatteryLife;
import org.daybank.core.bank.ChargeSettings;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.InverterSelection;
import org.daybank.core.load.EnergyBudget;
import org.daybank.core.load.MonthBudget;
import org.daybank.core.simulation.Simulation;
import org.daybank.core.sun.SunMonth;
import org.daybank.core.sweep.Uncertainty;
import org.daybank.core.wiring.CircuitSizing;

/** Every route there is. */
final class Routes {
    /** The steps of the job, in its order; each can be swept. */
    private static final List<Calculation<?, ?>> STEPS = List.of(
            calculation("/v1/energy-budget", EnergyBudgetRequest.class, EnergyBudget.class, EnergyBudgetRequest::answer)
                    .working(EnergyBudget::working)
                    .alsoFlat("loads", MonthBudget.class, EnergyBudget::months),
            calculation(
                            "/v1/bank-capacity",
                            BankCapacityRequest.class,
                            BankCapacityRequest.Answer.class,
                            BankCapacityRequest::answer)
                    .working(answer -> answer.capacity().working())
                    .alsoFlat(),
            calculation("/v1/battery-life", BatteryLifeRequest.class, BatteryLife.class, BatteryLifeRequest::answer)
                    .working(BatteryLife::working),
            calculation("/v1/sun", SunRequest.class, SunRequest.Answer.class, SunRequest::answer)
                    .working(answer -> answer.sun().working())
                    .alsoFlat("", SunMonth.class, answer -> answer.sun().months()),
            calculation(
                            "/v1/array-size",
                            ArraySizeRequest.class,
                            ArraySizeRequest.Answer.class,
                            ArraySizeRequest::answer)
                    .working(ArraySizeRequest.Answer::working)
                    .alsoFlat("", ArraySizeRequest.Sized.class, ArraySizeRequest.Answer::arrays),
            calculation(
                            "/v1/charger-selection",
                            ChargerSelectionRequest.class,
                            ChargerSelection.class,
                            ChargerSelectionRequest::answer)
                    .hazards(ChargerSelection::hazards),
            calculation(
                    "/v1/inverter-selection",
                    InverterSelectionRequest.class,
                    InverterSelection.class,
                    InverterSelectionRequest::answer),
            calculation(
                            "/v1/grid-inverter-selection",
                            GridInverterSelectionRequest.class,
                            GridInverterSelection.class,
                            GridInverterSelectionRequest::answer)
                    .hazards(GridInverterSelection::hazards)
                    .working(GridInverterSelection::working),
            calculation(
                            "/v1/shade-comparison",
                            ShadeComparisonRequest.class,
                            ShadeComparison.class,
                            ShadeComparisonRequest::answer)
                    .working(ShadeComparison::working),
            calculation(
                            "/v1/charge-settings",
                            ChargeSettingsRequest.class,
                            ChargeSettings.class,
                            ChargeSettingsRequest::answer)
                    .working(ChargeSettings::working)
                    .alsoFlat(),
            calculation("/v1/wiring", WiringRequest.class, WiringRequest.Answer.class, WiringRequest::answer)
                    .hazards(answer -> answer.plan().hazards())
                    .working(answer -> answer.plan().working())
                    .alsoFlat(
                            "circuits",
                            CircuitSizing.class,
                            answer -> answer.plan().circuits()),
            calculation(
                            "/v1/generator",
                            GeneratorRequest.class,
                            GeneratorRequest.Answer.class,
                            GeneratorRequest::answer)
                    .hazards(GeneratorRequest.Answer::hazards)
                    .working(GeneratorRequest.Answer::working),
            calculation("/v1/grid-bill", GridBillRequest.class, GridBillRequest.Answer.class, GridBillRequest::answer)
                    .hazards(GridBillRequest.Answer::hazards)
                    .working(GridBillRequest.Answer::working),
            calculation("/v1/system-design", SystemDesignRequest.class, DesignAnswer.class, SystemDesignRequest::answer)
                    .hazards(answer -> answer.outcome().hazards())
                    .working(answer -> answer.outcome().working())
                    .heavyWork()
                    .alsoPage((answer, assumptions) -> HandOverSheet.of(answer.outcome(), assumptions)),
            calculation("/v1/simulation", SimulationRequest.class, Simulation.class, SimulationRequest::answer)
                    .heavyWork());

    private static final Sweeps SWEEPS = new Sweeps(STEPS);

    /** The calls of the library that one envelope answers. */
    static final List<Calculation<?, ?>> CALCULATIONS = Stream.concat(
                    STEPS.stream(),
                    Stream.of(calculation(
                                    "/v1/uncertainty", UncertaintyRequest.class, Uncertainty.class, SWEEPS::uncertainty)
                            .heavyWork()))
            .toList();

    private Routes() {}

    /**
     * Calculations and what stands beside them.
     *
     * @param onOffer the products that count where a request names none
     */
    static List<Route> all(
            Contract contract, Supplier<Catalog> onOffer, HeavyWork heavyWork, Metrics metrics, Readiness readiness) {
        Offers offers = new Offers(onOffer);
        Stream<Route> beside = Stream.of(
                plain("/", Pages::front),
                plain("/docs", Pages::docs),
                plain("/assets/{file}", Pages::asset),
                plain("/health", context -> Answers.text(context, "ok")),
                plain("/health/live", context -> Answers.text(context, "ok")),
                plain("/health/ready", readiness::answer),
                plain("/metrics", metrics::answer),
                plain("/openapi.yaml", contract::yaml),
                plain("/openapi.json", contract::json),
                plain("/v1/examples", contract::examples),
                plain("/v1/examples/{name}", contract::example),
                plain("/v1/catalog", offers::catalog),
                plain("/v1/catalog/{kind}", offers::kind),
                post("/v1/catalog/{kind}", ProductTable::answer),
                plain("/v1/typical-loads", Offers::typicalLoads),
                post("/v1/climate", Climate::answer));
        return Stream.of(
                        beside,
                        CALCULATIONS.stream().flatMap(calculation -> calculation.routes(onOffer, heavyWork).stream()),
                        SWEEPS.routes(onOffer, heavyWork).stream())
                .flatMap(routes -> routes)
                .toList();
    }
}
