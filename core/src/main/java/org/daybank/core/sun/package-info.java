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
 * <p>The hourly path makes the sky of a {@link org.daybank.core.site.WeatherYear} ready once
 * ({@link org.daybank.core.sun.HourlySky}: where the sun stands, direct and diffuse light) and turns it onto any number of
 * planes; an {@link org.daybank.core.sun.Exposure} says how a plane lies in its surroundings, an
 * {@link org.daybank.core.sun.HourlySun} what falls on it. {@link org.daybank.core.sun.SunPath} follows the sun
 * through a year; {@link org.daybank.core.sun.SolarPosition} and {@link org.daybank.core.sun.SunTimes} answer for single
 * instants and days.
 * {@link org.daybank.core.sun.SyntheticWeather} makes up weather years from the twelve means of a site.
 *
 * <p>Azimuth is counted clockwise from north; times of day are solar times in the
 * monthly path, noon being when the sun is highest, and clock times in the hourly one. Data come
 * from {@code site} and go to {@code load} (what is dark), {@code array} (yield) and {@code simulation}.
 */
@NullMarked
package org.daybank.core.sun;

import org.jspecify.annotations.NullMarked;
