package org.daybank.spark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.stream.LongStream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.daybank.core.sweep.CompiledSweep;
import org.daybank.core.sweep.RowFormat;
import org.daybank.core.sweep.Sweep;

/**
 * A sweep on a cluster of Apache Spark. A row depends on its number and the seed alone, so that each task makes one range of
 * rows with no word to any other; the recipe is sent, never a row's case.
 */
final class ClusterSweep {
    private ClusterSweep() {}

    /** Makes the sweep, on whichever machine it is asked to: a function of the program and of what it carries along. */
    interface Recipe extends Serializable {
        Sweep sweep();
    }

    /**
     * The rows as lines of CSV without a header, in order.
     *
     * @param rowsPerTask rows of one range, and so of one partition: some seconds' work
     */
    static JavaRDD<String> lines(JavaSparkContext spark, Recipe recipe, long rowsPerTask) {
        long rows = recipe.sweep().compile().count();
        long tasks = (rows + rowsPerTask - 1) / rowsPerTask;
        List<Long> beginnings = LongStream.range(0, tasks)
                .map(task -> task * rowsPerTask)
                .boxed()
                .toList();
        return spark.parallelize(beginnings, Math.toIntExact(tasks))
                .flatMap(from -> range(recipe.sweep().compile(), from, Math.min(rows, from + rowsPerTask)));
    }

    private static Iterator<String> range(CompiledSweep sweep, long from, long to) throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        // the cluster keeps every core busy with a task of its own
        sweep.write(RowFormat.CSV, text, from, to, 1);
        return text.toString(StandardCharsets.UTF_8).lines().skip(1).iterator();
    }
}
