package example.relay;

import java.util.Collections;
import java.util.List;
import org.daybank.core.catalog.Catalog;
import org.daybank.core.design.DesignBrief;
import org.daybank.core.design.DesignBriefBuilder;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.SystemDesigner;
import org.daybank.core.load.Load;
import org.daybank.core.load.LoadBuilder;
import org.daybank.core.load.Supply;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Power;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** The example of the README as a program of its own. */
public final class Relay {
    private Relay() {}

    /** Prints the parts list and the hazards of a radio relay. */
    public static void main(String[] arguments) {
        Site site = SiteBuilder.builder()
                .latitude(Latitude.degrees(44.2))
                .recordLow(Temperature.celsius(-18))
                .months(MonthlyClimateBuilder.builder()
                        .clearness(List.of(Ratio.percent(42)))
                        .meanAir(Collections.nCopies(12, Temperature.celsius(8)))
                        .build())
                .build();
        Load radio = LoadBuilder.builder()
                .name("relay radio")
                .supply(Supply.DC)
                .power(Power.watts(14))
                .hoursPerDay(24.0)
                .build();
        DesignBrief brief =
                DesignBriefBuilder.builder().site(site).loads(List.of(radio)).build();
        DesignOutcome design = SystemDesigner.design(brief, Catalog.sample());
        design.billOfMaterials().ifPresent(bill -> bill.lines().forEach(System.out::println));
        design.hazards().forEach(hazard -> System.out.println(hazard.text()));

        System.out.println("in a module with a name: " + DesignOutcome.class.getModule().isNamed());
    }
}
