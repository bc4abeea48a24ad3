package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.SystemDesign;
import org.daybank.core.design.SystemDesigner;
import org.daybank.core.schema.Validation;
import org.jspecify.annotations.Nullable;

/**
 * Which parts make a system that does what a brief asks?
 *
 * @param brief what is asked
 * @param catalog the products on offer; those of the service when absent
 */
public record SystemDesignRequest(
        @Inline DesignBrief brief, @Nullable Catalog catalog) {
    /** Refuses what is missing or out of range. */
    public SystemDesignRequest {
        Validation.of(SystemDesignRequest.class, brief, catalog).done();
    }

    /**
     * Asks the library.
     *
     * @param onOffer the products that count where the request names none
     */
    public SystemDesign answer(Catalog onOffer) {
        return SystemDesigner.design(brief, catalog == null ? onOffer : catalog);
    }
}
