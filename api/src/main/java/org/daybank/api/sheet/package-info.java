/**
 * A design as one page to print and hand over.
 *
 * <p>{@link org.daybank.api.sheet.HandOverSheet} puts the sections in order, one class for each. {@code Html} writes markup in
 * which every text from a brief stays text; drawings and plots are SVG and are told in words and tables as well. Nothing is
 * computed here but where on the page something goes.
 */
@NullMarked
package org.daybank.api.sheet;

import org.jspecify.annotations.NullMarked;
