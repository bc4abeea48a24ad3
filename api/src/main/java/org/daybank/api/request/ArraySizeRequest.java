package org.daybank.api.request;

import java.util.Comparator;
import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.array.ArrayNeed;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ArraySize;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.ModuleYield;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.quantity.Money;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.MonthlySun;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.PlaneOfArray;
import org.daybank.core.sun.SunPolicy;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * How many modules cover the need of every month, through a controller that tracks their best point?
 *
 * @param site where
 * @param plane how the array lies
 * @param need what is asked of the array
 * @param modules modules on offer; those of the service when absent
 * @param policy what is assumed of the array
 * @param sun what is assumed of the sun
 */
public record ArraySizeRequest(
        Site site,
        Plane plane,
        @Inline ArrayNeed need,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<PvModule> modules,

        ArrayPolicy policy,
        SunPolicy sun) {
    /** Refuses what is missing or out of range. */
    public ArraySizeRequest {
        Validation.of(ArraySizeRequest.class, site, plane, need, modules, policy, sun)
                .done();
        modules = modules == null ? null : List.copyOf(modules);
    }

    /**
     * One array for each module.
     *
     * @param sun sunshine on the plane
     * @param arrays cheapest first
     */
    public record Answer(MonthlySun sun, List<Sized> arrays) {
        /** Steps of the cheapest array. */
        public Working working() {
            return arrays.isEmpty() ? sun.working() : arrays.get(0).size().working();
        }
    }

    /**
     * The array of one module.
     *
     * @param size modules and yields
     * @param extremes coldest and hottest voltages of a module
     * @param price of all modules
     */
    public record Sized(@Inline ArraySize size, ModuleExtremes extremes, Money price) {}

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public Answer answer(Catalog onOffer) {
        MonthlySun onPlane = PlaneOfArray.monthly(site, plane, sun);
        IrradianceDistribution sunshine = IrradianceDistribution.of(site, plane, sun);
        List<PvModule> offered = modules == null ? onOffer.modules() : modules;
        return new Answer(
                onPlane,
                offered.stream()
                        .map(module -> ArraySize.of(need, ModuleYield.tracking(module, site, sunshine, policy), policy))
                        .filter(ArraySize::possible)
                        .map(size -> new Sized(
                                size,
                                ModuleExtremes.of(size.moduleYield().module(), site, policy),
                                size.moduleYield().module().price().times(size.modules())))
                        .sorted(Comparator.comparing(Sized::price)
                                .thenComparing(sized -> sized.size().product()))
                        .toList());
    }
}
