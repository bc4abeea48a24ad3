package org.daybank.api.request;

import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.charger.ArrayOffer;
import org.daybank.core.charger.ChargeController;
import org.daybank.core.charger.ChargerNeed;
import org.daybank.core.charger.ChargerPolicy;
import org.daybank.core.charger.ChargerSelection;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.jspecify.annotations.Nullable;

/**
 * Which charge controllers fit an array and a bank?
 *
 * @param site where
 * @param plane how the array lies
 * @param module what the array is made of
 * @param modules how many at least; whole strings may ask for more
 * @param need what is asked of the controller
 * @param controllers controllers on offer; those of the service when absent
 * @param policy what is assumed of controllers
 * @param array what is assumed of the array
 * @param sun what is assumed of the sun
 */
public record ChargerSelectionRequest(
        Site site,
        Plane plane,
        PvModule module,
        @Bounds(minimum = "1", maximum = "10000") int modules,
        @Inline ChargerNeed need,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<ChargeController> controllers,

        ChargerPolicy policy,
        ArrayPolicy array,
        SunPolicy sun) {
    /** Refuses what is missing or out of range. */
    public ChargerSelectionRequest {
        Validation.of(
                        ChargerSelectionRequest.class,
                        site,
                        plane,
                        module,
                        modules,
                        need,
                        controllers,
                        policy,
                        array,
                        sun)
                .done();
        controllers = controllers == null ? null : List.copyOf(controllers);
    }

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public ChargerSelection answer(Catalog onOffer) {
        ArrayOffer offer =
                ArrayOffer.of(module, modules, need, site, IrradianceDistribution.of(site, plane, sun), array);
        return ChargerSelection.of(need, offer, controllers == null ? onOffer.controllers() : controllers, policy);
    }
}
