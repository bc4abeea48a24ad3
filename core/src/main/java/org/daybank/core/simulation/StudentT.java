package org.daybank.core.simulation;

import java.util.List;
import org.daybank.core.working.Table;

/** How many standard errors reach to either side of a mean with 95 % confidence, from the published table. */
final class StudentT {
    private StudentT() {}

    /** Between the degrees of freedom that the table lists, the fewer ones count: the interval is rather too wide. */
    static double at95Percent(int degreesOfFreedom) {
        double t = Double.NaN;
        for (Table.Row row : Published.ROWS) {
            if (row.value(Integer.class, "degreesOfFreedom") <= degreesOfFreedom) {
                t = row.value(Double.class, "t");
            }
        }
        return t;
    }

    /** Reads the table once, when first asked. */
    private static final class Published {
        private static final List<Table.Row> ROWS =
                Table.resource(StudentT.class, "student-t.csv").rows();
    }
}
