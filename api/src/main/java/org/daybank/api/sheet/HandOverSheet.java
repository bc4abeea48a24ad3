package org.daybank.api.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.daybank.core.design.DesignOutcome;
import org.daybank.core.design.SystemKind;
import org.daybank.core.schema.Assumption;
import org.daybank.core.working.Hazard;

/** A design as one page without scripts that asks for nothing else: to read, to print and to hand over. */
public final class HandOverSheet {
    private HandOverSheet() {}

    /**
     * The page.
     *
     * @param design a design, or the reasons why there is none
     * @param assumptions what it stands on
     */
    public static String of(DesignOutcome design, List<Assumption> assumptions) {
        Map<String, Html> sections = sections(design, assumptions);
        String name = design.brief().name();
        Html page = new Html()
                .open("html", "lang", "en")
                .open("head")
                .empty("meta", "charset", "utf-8")
                .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .element("title", "Hand-over sheet: " + name)
                .add(SheetStyle.element())
                .close()
                .open("body")
                .open("header")
                .element("p", "Hand-over sheet", "class", "kind")
                .element("h1", name)
                .element("p", kind(design.brief().kind()), "class", "kind")
                .element("p", "Preliminary. " + Hazard.LOCAL_CODE, "class", "strong")
                .add(signatures())
                .close()
                .open("nav", "aria-label", "Sections")
                .open("ol");
        sections.keySet()
                .forEach(title -> page.open("li")
                        .element("a", title, "href", "#" + id(title))
                        .close());
        page.close().close().open("main");
        sections.forEach((title, content) -> page.open("section", "id", id(title))
                .element("h2", title)
                .add(content)
                .close());
        return "<!DOCTYPE html>\n" + page.close().close().close();
    }

    /** Room to write on paper who answers for it. */
    private static Html signatures() {
        Html lines = new Html().open("dl", "class", "signatures");
        for (String who : List.of("Planned by", "Checked by", "Handed over to", "Date")) {
            lines.open("div").element("dt", who).element("dd", "").close();
        }
        return lines.close();
    }

    private static Map<String, Html> sections(DesignOutcome design, List<Assumption> assumptions) {
        Map<String, Html> sections = new LinkedHashMap<>();
        sections.put("Summary", Summary.of(design));
        sections.put("What is required.", Missing.of(design));
        sections.put("Parts", PartsList.of(design));
        sections.put("One-line diagram", OneLine.of(design));
        sections.put("How parts are joined", Layouts.of(design));
        sections.put("What was asked", Asked.of(design));
        sections.put("The year", Months.of(design));
        sections.put("Engine generator", Engine.of(design));
        sections.put("Wiring schedule", WiringSchedule.of(design));
        sections.put("Settings", Settings.of(design));
        sections.put("Validation across parts", Missing.checks(design.checks()));
        sections.put("Hazards", Notes.hazards(design.hazards()));
        sections.put("Working", Notes.working(design.working()));
        sections.put("Why others were not chosen", Rejected.of(design));
        sections.put("Assumptions", Notes.assumptions(assumptions));
        sections.values().removeIf(Html::isEmpty);
        return sections;
    }

    private static String id(String title) {
        return title.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private static String kind(SystemKind kind) {
        return switch (kind) {
            case STAND_ALONE -> "Stand-alone system: sun and bank alone";
            case MOBILE -> "Mobile system: sun and bank on the move";
            case GRID_INTERACTIVE -> "Grid-interactive system without a bank";
            case GRID_BACKUP -> "Grid-interactive system with a bank for the essential loads";
        };
    }
}
