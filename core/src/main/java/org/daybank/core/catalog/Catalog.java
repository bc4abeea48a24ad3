package org.daybank.core.catalog;

import java.util.ArrayList;
import java.util.Currency;
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
import org.daybank.core.working.Assumed;
import org.daybank.core.working.Checks;
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
        List<PvModule> modules,
        List<Battery> batteries,
        List<ChargeController> controllers,
        List<Inverter> inverters,

        @Assumed(source = "none offered: nothing feeds the grid")
        List<StringInverter> stringInverters,

        @Assumed(source = "none offered: nothing feeds the grid")
        List<Microinverter> microinverters,

        @Assumed(source = "nothing known of what is in stock")
        List<StockLine> stock) {
    /**
     * Checks the products as a whole.
     *
     * @throws org.daybank.core.working.InvalidInput when a list is missing, a model code occurs twice within a list, a line of
     *     the stock names products of several kinds, or prices are in several currencies
     */
    public Catalog {
        Checks checks = new Checks()
                .required("modules", modules)
                .required("batteries", batteries)
                .required("controllers", controllers)
                .required("inverters", inverters);
        modules = modules == null ? List.of() : List.copyOf(modules);
        batteries = batteries == null ? List.of() : List.copyOf(batteries);
        controllers = controllers == null ? List.of() : List.copyOf(controllers);
        inverters = inverters == null ? List.of() : List.copyOf(inverters);
        stringInverters = stringInverters == null ? List.of() : List.copyOf(stringInverters);
        microinverters = microinverters == null ? List.of() : List.copyOf(microinverters);
        stock = stock == null ? List.of() : List.copyOf(stock);
        unique(checks, "modules", modules, PvModule::model);
        unique(checks, "batteries", batteries, Battery::model);
        unique(checks, "controllers", controllers, ChargeController::model);
        unique(checks, "inverters", inverters, Inverter::model);
        unique(checks, "stringInverters", stringInverters, StringInverter::model);
        unique(checks, "microinverters", microinverters, Microinverter::model);
        unique(checks, "stock", stock, StockLine::model);
        List<String> models = new ArrayList<>();
        modules.forEach(module -> models.add(module.model()));
        batteries.forEach(battery -> models.add(battery.model()));
        controllers.forEach(controller -> models.add(controller.model()));
        inverters.forEach(inverter -> models.add(inverter.model()));
        stringInverters.forEach(inverter -> models.add(inverter.model()));
        microinverters.forEach(inverter -> models.add(inverter.model()));
        namesNoTwoProducts(checks, stock, models);
        List<Money> prices = new ArrayList<>();
        modules.forEach(module -> prices.add(module.price()));
        batteries.forEach(battery -> prices.add(battery.price()));
        controllers.forEach(controller -> prices.add(controller.price()));
        inverters.forEach(inverter -> prices.add(inverter.price()));
        stringInverters.forEach(inverter -> prices.add(inverter.price()));
        microinverters.forEach(inverter -> prices.add(inverter.price()));
        List<String> currencies = prices.stream()
                .map(Money::currency)
                .map(Currency::getCurrencyCode)
                .distinct()
                .toList();
        checks.that(
                        currencies.size() <= 1,
                        "",
                        "inconsistent",
                        "all prices must be in one currency but are in " + currencies)
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

    private static void namesNoTwoProducts(Checks checks, List<StockLine> stock, List<String> models) {
        Map<String, Long> times =
                models.stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        for (int i = 0; i < stock.size(); i++) {
            String model = stock.get(i).model();
            long found = times.getOrDefault(model, 0L);
            checks.that(
                    found <= 1,
                    "stock/" + i + "/model",
                    "conflict",
                    "the stock names %s, which products of several kinds are called".formatted(model));
        }
    }

    /** What is known of the delivery of a product. */
    public Optional<StockLine> stockOf(String model) {
        return stock.stream().filter(line -> line.model().equals(model)).findFirst();
    }

    private static <T> void unique(Checks checks, String field, List<T> products, Function<T, String> model) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < products.size(); i++) {
            String code = model.apply(products.get(i));
            checks.that(
                    seen.add(code),
                    field + "/" + i + "/model",
                    "conflict",
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
