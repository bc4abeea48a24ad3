package org.daybank.core.wiring;

import java.util.Optional;

/**
 * The smallest size that each rule alone would take, at the chosen number in parallel; absent where none keeps it.
 *
 * @param terminals by the uncorrected ampacity
 * @param conditions by the corrected ampacity
 * @param device by what the overcurrent device protects; absent also without a device
 * @param drop by the drop limit
 */
public record SizesByRule(
        Optional<ConductorSize> terminals,
        Optional<ConductorSize> conditions,
        Optional<ConductorSize> device,
        Optional<ConductorSize> drop) {}
