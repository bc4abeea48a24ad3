/**
 * Where the system stands, and the weather there: the facts that every reckoning of sunshine and of heat and cold begins with.
 *
 * <p>{@link org.daybank.core.site.Site} is what a brief says of the place; its {@link org.daybank.core.site.MonthlyClimate}
 * holds twelve means from January. Data come in from the customer's brief; they go to the {@code sun}, which turns
 * them into sunshine on a tilted plane, and to everything that must stand the coldest morning or the hottest afternoon.
 */
@NullMarked
package org.daybank.core.site;

import org.jspecify.annotations.NullMarked;
