/**
 * A second opinion: the stand-alone job stated once more from its sources, without a class of {@code core}, and held
 * against it on many random briefs.
 */
package org.daybank.core.opinion;
