package org.daybank.api.request;

import org.daybank.api.wire.Inline;
import org.daybank.core.site.Place;

/**
 * Where and when the hours of a CSV text were taken.
 *
 * @param place where and by which clock
 * @param year of the calendar that the hours follow
 */
public record ClimatePlace(@Inline Place place, int year) {}
