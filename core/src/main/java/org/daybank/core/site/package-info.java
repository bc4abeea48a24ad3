/**
 * Where the system stands, and the weather there: the facts that every reckoning of sunshine and of heat and cold begins with.
 *
 * <p>{@link org.daybank.core.site.Site} is what a brief says of the place; its {@link org.daybank.core.site.MonthlyClimate}
 * holds twelve means from January, its {@link org.daybank.core.site.Horizon} what shades it. A
 * {@link org.daybank.core.site.WeatherYear} knows every hour of a {@link org.daybank.core.site.Place};
 * {@link org.daybank.core.site.EpwReader} and {@link org.daybank.core.site.WeatherCsvReader} read one from text, refuse what
 * cannot be true and fill in nothing, and {@link org.daybank.core.site.WeatherYear#site} makes a site of it.
 *
 * <p>Data come in from the customer's brief or from weather files; they go to the {@code sun}, which turns them into
 * sunshine on a tilted plane, and to everything that must stand the coldest morning or the hottest afternoon.
 */
@NullMarked
package org.daybank.core.site;

import org.jspecify.annotations.NullMarked;
