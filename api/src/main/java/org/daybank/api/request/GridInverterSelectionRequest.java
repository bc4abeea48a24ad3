package org.daybank.api.request;

import java.util.List;
import org.daybank.api.wire.Inline;
import org.daybank.core.array.ArrayPolicy;
import org.daybank.core.array.ModuleExtremes;
import org.daybank.core.array.PvModule;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.inverter.GridArray;
import org.daybank.core.inverter.GridInverterSelection;
import org.daybank.core.inverter.GridPolicy;
import org.daybank.core.inverter.GridService;
import org.daybank.core.inverter.Microinverter;
import org.daybank.core.inverter.StringInverter;
import org.daybank.core.schema.Bounds;
import org.daybank.core.schema.Validation;
import org.daybank.core.site.Site;
import org.daybank.core.sun.IrradianceDistribution;
import org.daybank.core.sun.Plane;
import org.daybank.core.sun.SunPolicy;
import org.jspecify.annotations.Nullable;

/**
 * Which string inverters and which microinverters feed an array into a grid?
 *
 * @param site where
 * @param plane how the array lies
 * @param module what the array is made of
 * @param modules how many, all of them to be connected
 * @param grid the service and where the inverters hang
 * @param stringInverters string inverters on offer; those of the service when absent
 * @param microinverters microinverters on offer; those of the service when absent
 * @param policy what is assumed of the inverters
 * @param array what is assumed of the array
 * @param sun what is assumed of the sun
 */
public record GridInverterSelectionRequest(
        Site site,
        Plane plane,
        PvModule module,
        @Bounds(minimum = "1", maximum = "10000") int modules,
        @Inline GridService grid,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<StringInverter> stringInverters,

        @Bounds(maximumItems = Catalog.MAXIMUM_PRODUCTS) @Nullable
        List<Microinverter> microinverters,

        GridPolicy policy,
        ArrayPolicy array,
        SunPolicy sun) {
    /** Refuses what is missing or out of range. */
    public GridInverterSelectionRequest {
        Validation.of(
                        GridInverterSelectionRequest.class,
                        site,
                        plane,
                        module,
                        modules,
                        grid,
                        stringInverters,
                        microinverters,
                        policy,
                        array,
                        sun)
                .done();
        stringInverters = stringInverters == null ? null : List.copyOf(stringInverters);
        microinverters = microinverters == null ? null : List.copyOf(microinverters);
    }

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public GridInverterSelection answer(Catalog onOffer) {
        GridArray offered = new GridArray(
                ModuleExtremes.of(module, site, array),
                modules,
                array.whenNew(),
                IrradianceDistribution.of(site, plane, sun));
        return GridInverterSelection.of(
                grid,
                offered,
                stringInverters == null ? onOffer.stringInverters() : stringInverters,
                microinverters == null ? onOffer.microinverters() : microinverters,
                policy);
    }
}
