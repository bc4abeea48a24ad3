package org.daybank.core.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.daybank.core.schema.InvalidInput;
import org.daybank.core.schema.Problem;
import org.daybank.core.schema.ProblemCode;
import org.daybank.core.schema.Problems;
import org.junit.jupiter.api.Test;

class ProblemsTest {
    private static final Problem ONE = new Problem("/power", ProblemCode.MISSING, "power is required.");

    private static Problems of(int count) {
        Problems problems = new Problems();
        Collections.nCopies(count, ONE).forEach(problems::add);
        return problems;
    }

    @Test
    void nothingIsThrownForNothing() {
        new Problems().throwIfAny();
        assertThat(new Problems().isEmpty()).isTrue();
    }

    @Test
    void aHundredAreListedAndTheOthersCounted() {
        assertThat(of(100).asException().problems()).hasSize(100).containsOnly(ONE);
        assertThat(of(100).isFull()).isTrue();
        assertThat(of(99).isFull()).isFalse();
        assertThat(of(101).asException().problems())
                .hasSize(101)
                .last()
                .isEqualTo(new Problem("", ProblemCode.MORE, "1 more problem is not listed."));
        assertThatThrownBy(() -> of(350).throwIfAny()).hasMessageEndingWith("250 more problems are not listed.");
    }

    @Test
    void theProblemsOfAPartKeepTheirCount() {
        InvalidInput part = of(130).asException();
        InvalidInput whole =
                of(30).addAll(part, problem -> problem.under("/loads/3")).asException();
        // 30 and 130 make 160, of which 100 are listed
        assertThat(whole.problems()).hasSize(101);
        assertThat(whole.problems().get(30).path()).isEqualTo("/loads/3/power");
        assertThat(whole.problems().get(100).message()).isEqualTo("60 more problems are not listed.");
    }

    @Test
    void aLongListIsBoundedByTheExceptionItself() {
        InvalidInput refused = new InvalidInput(Collections.nCopies(5000, ONE));
        assertThat(refused.problems()).hasSize(101);
        assertThat(refused.problems().get(100).message()).isEqualTo("4900 more problems are not listed.");
        assertThat(new InvalidInput(List.of(ONE)).problems()).containsExactly(ONE);
    }
}
