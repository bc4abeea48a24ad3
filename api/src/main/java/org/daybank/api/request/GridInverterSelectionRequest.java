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
        int modules,
        @Inline GridService grid,
        @Nullable List<StringInverter> stringInverters,
        @Nullable List<Microinverter> microinverters,
        GridPolicy policy,
        ArrayPolicy array,
        SunPolicy sun) {
    /** Refuses what is missing. */
    public GridInverterSelectionRequest {
        new Validation()
                .required("site", site)
                .required("plane", plane)
                .required("module", module)
                .within("modules", modules, 1, GridArray.MOST_MODULES)
                .done();
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
