package org.daybank.core.catalog;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.daybank.core.array.PvModule;
import org.daybank.core.bank.Battery;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.inverter.Inverter;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.Assumed;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Table;

/**
 * The products on offer.
 *
 * @param modules photovoltaic modules
 * @param batteries batteries
 * @param controllers charge controllers
 * @param inverters inverters that stand on a bank
 * @param stringInverters inverters that feed strings of modules into the grid; left out, none
 * @param microinverters inverters that feed single modules into the grid; left out, none
 * @param stock how many are at hand and how soon more come, by model; a product without a line may take any time, a line
 *     without a product counts for nothing
 */
public record Catalog(
        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) List<PvModule> modules,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) List<Battery> batteries,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) List<ChargeController> controllers,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) List<Inverter> inverters,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Assumed(source = "none offered: nothing feeds the grid")
        List<StringInverter> stringInverters,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Assumed(source = "none offered: nothing feeds the grid")
        List<Microinverter> microinverters,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Assumed(source = "nothing known of what is in stock")
        List<StockLine> stock) {
    /** Largest number of products of one kind. */
    public static final int MAXIMUM_PRODUCTS = 10_000;

    /**
     * Validates the products as a whole.
     *
     * @throws org.daybank.core.schema.InvalidInput when a list is missing, a model code occurs twice within a list, a line of
     *     the stock names products of several kinds, or prices are in several currencies
     */
    public Catalog {
        stringInverters = stringInverters == null ? List.of() : stringInverters;
        microinverters = microinverters == null ? List.of() : microinverters;
        stock = stock == null ? List.of() : stock;
        Validation.of(Catalog.class, modules, batteries, controllers, inverters, stringInverters, microinverters, stock)
                .done();
        modules = List.copyOf(modules);
        batteries = List.copyOf(batteries);
        controllers = List.copyOf(controllers);
        inverters = List.copyOf(inverters);
        stringInverters = List.copyOf(stringInverters);
        microinverters = List.copyOf(microinverters);
        stock = List.copyOf(stock);
        Validation checks = new Validation();
        List<Offered> offered = new ArrayList<>();
        offer(offered, checks, "modules", modules, PvModule::model, PvModule::price);
        offer(offered, checks, "batteries", batteries, Battery::model, Battery::price);
        offer(offered, checks, "controllers", controllers, ChargeController::model, ChargeController::price);
        offer(offered, checks, "inverters", inverters, Inverter::model, Inverter::price);
        offer(offered, checks, "stringInverters", stringInverters, StringInverter::model, StringInverter::price);
        offer(offered, checks, "microinverters", microinverters, Microinverter::model, Microinverter::price);
        unique(checks, "stock", stock, StockLine::model);
        namesNoTwoProducts(checks, stock, offered);
        List<String> currencies = offered.stream()
                .map(product -> product.price().currency().getCurrencyCode())
                .distinct()
                .toList();
        checks.that(
                        currencies.size() <= 1,
                        "",
                        ProblemCode.INCONSISTENT,
                        "all prices must be in one currency, but were in " + currencies + ".")
                .done();
    }

    /** Products for systems with a bank, and none that feed the grid. */
    public Catalog(
            List<PvModule> modules,
            List<Battery> batteries,
            List<ChargeController> controllers,
            List<Inverter> inverters) {
        this(modules, batteries, controllers, inverters, List.of(), List.of(), List.of());
    }

    /** What all products have. */
    private record Offered(String model, Money price) {}

    private static <T> void offer(
            List<Offered> offered,
            Validation checks,
            String field,
            List<T> products,
            Function<T, String> model,
            Function<T, Money> price) {
        unique(checks, field, products, model);
        products.forEach(product -> offered.add(new Offered(model.apply(product), price.apply(product))));
    }

    private static void namesNoTwoProducts(Validation checks, List<StockLine> stock, List<Offered> offered) {
        Map<String, Long> times =
                offered.stream().collect(Collectors.groupingBy(Offered::model, Collectors.counting()));
        for (int i = 0; i < stock.size(); i++) {
            String model = stock.get(i).model();
            long found = times.getOrDefault(model, 0L);
            checks.that(
                    found <= 1,
                    "stock/" + i + "/model",
                    ProblemCode.CONFLICT,
                    "the stock names %s, which products of several kinds are called".formatted(model));
        }
    }

    private static <T> void unique(Validation checks, String field, List<T> products, Function<T, String> model) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < products.size(); i++) {
            String code = model.apply(products.get(i));
            checks.that(
                    seen.add(code),
                    field + "/" + i + "/model",
                    ProblemCode.CONFLICT,
                    "model %s occurs twice among the %s".formatted(code, field));
        }
    }

    /** The bundled sample: invented products with plausible data sheets. */
    public static Catalog sample() {
        return Sample.CATALOG;
    }

    /** Reads the sample once, when first asked. */
    private static final class Sample {
        private static final Catalog CATALOG =
                CatalogTables.read(kind -> Optional.of(Table.resource(Catalog.class, kind + ".csv")));
    }
}
