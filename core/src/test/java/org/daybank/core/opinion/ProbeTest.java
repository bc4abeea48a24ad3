package org.daybank.core.opinion;
import java.util.*;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.*;
import org.junit.jupiter.api.Test;
class ProbeTest {
    @Test void probe() {
        int n = Integer.getInteger("n", 100);
        for (SystemKind kind : Arrays.stream(System.getProperty("kinds","MOBILE,GRID_BACKUP,GRID_INTERACTIVE").split(",")).map(SystemKind::valueOf).toList()) {
            int complete = 0; Map<String,Integer> faults = new TreeMap<>(); Map<String,String> first = new TreeMap<>();
            long t = System.nanoTime(), insp = 0;
            for (long seed = Long.getLong("from", 1), end = seed + n; seed < end; seed++) {
                DesignBrief brief = KindsOfBriefs.of(kind, seed);
                SystemDesign design;
                try { design = SystemDesigner.design(brief, Catalog.sample()); } catch (RuntimeException e) { faults.merge("THROWS " + e, 1, Integer::sum); continue; }
                if (!design.complete()) continue;
                complete++;
                long t0 = System.nanoTime();
                for (String f : Inspection.of(design, Catalog.sample())) { String k = f.split(":")[0]; faults.merge(k, 1, Integer::sum); first.putIfAbsent(k, seed + " " + f + " " + design.billOfMaterials().lines().stream().map(l -> l.count() + "x" + l.product()).toList() + brief.service() + brief.policy().load().coincidentStarts()); }
                insp += System.nanoTime() - t0;
            }
            System.out.println("@@ " + kind + " complete " + complete + "/" + n + " " + (System.nanoTime()-t)/1e6 + " ms, of it inspection " + insp/1e6 + " " + faults);
            first.forEach((k, v) -> System.out.println("@@   " + v));
        }
    }
}
