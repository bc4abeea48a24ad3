package org.daybank.core.sun;

import java.util.Collections;
import java.util.List;
import org.daybank.core.quantity.Irradiation;
import org.daybank.core.quantity.Latitude;
import org.daybank.core.quantity.Ratio;
import org.daybank.core.quantity.Temperature;
import org.daybank.core.site.MonthlyClimateBuilder;
import org.daybank.core.site.Site;
import org.daybank.core.site.SiteBuilder;

/** Sites for the tests of this package. */
final class Sites {
    private Sites() {}

    static Site withClearness(double latitude, double clearness) {
        return withClimate(latitude, MonthlyClimateBuilder.builder().clearness(List.of(Ratio.of(clearness))));
    }

    static Site withIrradiation(double latitude, List<Irradiation> dailyIrradiation) {
        return withClimate(latitude, MonthlyClimateBuilder.builder().dailyIrradiation(dailyIrradiation));
    }

    private static Site withClimate(double latitude, MonthlyClimateBuilder climate) {
        return SiteBuilder.builder()
                .latitude(Latitude.degrees(latitude))
                .recordLow(Temperature.celsius(-20))
                .months(climate.meanAir(Collections.nCopies(12, Temperature.celsius(10)))
                        .build())
                .build();
    }
}
