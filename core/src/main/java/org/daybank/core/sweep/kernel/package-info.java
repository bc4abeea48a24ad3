/** What sweeps are made of inside: sequences of points, the inverse of the normal distribution, digits of numbers. */
@NullMarked
package org.daybank.core.sweep.kernel;

import org.jspecify.annotations.NullMarked;
