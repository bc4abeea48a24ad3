/**
 * The search for the cheapest system that meets the requirements of a brief: {@link Requirements} of each kind of part, the
 * {@link VoltageSearch} for one system nominal voltage and chemistry, the {@link SystemSelection} over all of them, and the
 * {@link FailureAnalysis} where nothing in the catalogue makes a system. Not exported: callers use
 * {@link org.daybank.core.design.SystemDesigner}.
 */
@NullMarked
package org.daybank.core.design.search;

import org.jspecify.annotations.NullMarked;
