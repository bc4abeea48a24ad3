/**
 * The facade: the calculators of the library over HTTP.
 *
 * <p>{@link org.daybank.api.Main} starts it; {@link org.daybank.api.Routes} lists every route, a line each;
 * {@link org.daybank.api.Service} is the server around them. How a request becomes a record stands in {@code wire}, how an
 * answer is sent in {@code http}. No arithmetic on quantities happens in this module.
 */
@NullMarked
package org.daybank.api;

import org.jspecify.annotations.NullMarked;
