/** A worked example: the rows of one sweep, made by many machines. Not a part of the library. */
@NullMarked
package org.daybank.spark;

import org.jspecify.annotations.NullMarked;
