package org.daybank.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.daybank.core.design.Designs.isDesign;
import static org.daybank.core.design.Designs.system;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
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
import org.junit.jupiter.api.Test;

/** The Java in the README compiles, as it stands there, and gives a complete design. */
class ReadmeTest {

    @Test
    void exampleOfTheReadmeGivesACompleteDesign() {
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

        assertThat(isDesign(design)).isTrue();
        assertThat(system(design).inverter()).isEmpty();
        assertThat(design.hazards()).isNotEmpty();
        // 14 W around the clock, over the 0.97 of DC wiring, without what the controller draws: 346.4 Wh
        assertThat(design.budget().heaviestMonth().dailyEnergy().wattHours()).isBetween(346.0, 346.4 + 24 * 3);
    }

    @Test
    void readmeShowsTheSameCode() throws Exception {
        String readme = squeezed(Files.readString(Path.of("..", "README.md")));
        String test = Files.readAllLines(Path.of("src/test/java/org/daybank/core/ReadmeTest.java")).stream()
                .dropWhile(line -> !line.contains("Site site ="))
                .takeWhile(line -> !line.isBlank())
                .collect(Collectors.joining());

        assertThat(readme).contains(squeezed(test));
    }

    @Test
    void programOfAStrangerIsTheExampleOfTheReadme() throws Exception {
        String example = Files.readString(Path.of("..", "README.md"))
                .lines()
                .dropWhile(line -> !line.contains("Site site ="))
                .takeWhile(line -> !line.startsWith("```"))
                .collect(Collectors.joining());
        String program = Files.readString(Path.of("src/it/class-path/src/main/java/example/relay/Relay.java"));

        assertThat(squeezed(program)).contains(squeezed(example));
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s", "");
    }
}
