package org.daybank.api.request;

import java.util.List;
import java.util.Optional;
import org.daybank.api.wire.Inline;
import org.daybank.core.generator.EngineOrModules;
import org.daybank.core.generator.GeneratorNeed;
import org.daybank.core.generator.GeneratorPolicy;
import org.daybank.core.generator.GeneratorSize;
import org.daybank.core.generator.MoreModules;
import org.daybank.core.schema.Validation;
import org.daybank.core.working.Hazard;
import org.daybank.core.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Which engine generator charges a bank through the dark months, and are more modules cheaper?
 *
 * @param need what it must charge and carry
 * @param moreModules modules that would be added instead; absent when that is not asked
 * @param policy what is assumed
 */
public record GeneratorRequest(
        @Inline GeneratorNeed need, @Nullable MoreModules moreModules, GeneratorPolicy policy) {
    /** Refuses what is missing or out of range. */
    public GeneratorRequest {
        Validation.of(GeneratorRequest.class, need, moreModules, policy).done();
    }

    /**
     * What was found.
     *
     * @param size the generator
     * @param engineOrModules which is cheaper; absent when that was not asked
     */
    public record Answer(@Inline GeneratorSize size, Optional<EngineOrModules> engineOrModules) {
        /** What to warn of. */
        public List<Hazard> hazards() {
            return size.hazards();
        }

        /** The steps of both. */
        public Working working() {
            Working.Builder steps = Working.builder().all(size.working());
            engineOrModules.ifPresent(compared -> steps.all(compared.working()));
            return steps.build();
        }
    }

    /** Asks the library. */
    public Answer answer() {
        GeneratorSize size = GeneratorSize.of(need, policy);
        return new Answer(size, Optional.ofNullable(moreModules).map(more -> EngineOrModules.of(size, more)));
    }
}
