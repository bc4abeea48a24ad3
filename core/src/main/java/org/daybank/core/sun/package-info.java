/**
 * Sunshine: what falls on a plane of any tilt and azimuth, from what falls on the horizontal.
 *
 * <p>The monthly path takes a {@link org.daybank.core.site.Site} and a {@link org.daybank.core.sun.Plane}:
 * {@link org.daybank.core.sun.PlaneOfArray} finds, for the mean day of each month, the extraterrestrial irradiation
 * ({@link org.daybank.core.sun.SolarDay}), the clearness and the diffuse share, spreads them over the day and turns them
 * onto the plane, slice by slice from sunrise to sunset. The result is a {@link org.daybank.core.sun.MonthlySun}.
 * {@link org.daybank.core.sun.BestTilt} searches for the tilt that serves a need or the year best;
 * {@link org.daybank.core.sun.DarkHours} tells what is dark. {@link org.daybank.core.sun.SunPolicy} holds what a planner may
 * argue with.
 *
 * <p>Azimuth is counted clockwise from north; times of day are solar times, noon being when the sun is highest. Data come
 * from {@code site} and go to {@code load} (what is dark), {@code array} (yield) and {@code simulation}.
 */
@NullMarked
package org.daybank.core.sun;

import org.jspecify.annotations.NullMarked;
