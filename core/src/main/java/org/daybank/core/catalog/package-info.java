/**
 * The products on offer, checked as a whole: each data sheet by its own constructor, model codes for being unique, prices
 * for being in one currency.
 *
 * <p>{@link org.daybank.core.catalog.Catalog#sample()} is a bundled catalogue of invented products to try things out with;
 * {@link org.daybank.core.catalog.CatalogTables} reads a dealer's own tables. What is at hand and how soon more comes stands
 * apart from the data sheets, in {@link org.daybank.core.catalog.StockLine}s. The {@code design} picks from here.
 */
@NullMarked
package org.daybank.core.catalog;

import org.jspecify.annotations.NullMarked;
