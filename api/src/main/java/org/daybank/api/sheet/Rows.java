package org.daybank.api.sheet;

import java.util.List;

/** Parts in series and parallel drawn as rows of boxes: modules in strings, batteries in a bank. */
final class Rows {
    private static final int MOST_DRAWN = 12;
    private static final int WIDTH = 34;
    private static final int HEIGHT = 20;
    private static final int GAP = 9;
    private static final int MARGIN = 40;

    private Rows() {}

    /**
     * Draws parts; beyond a dozen either way only the first are drawn, and the caption tells all.
     *
     * @param id of the drawing on the page
     * @param caption what it shows
     * @param rows parts in series in each row
     */
    static Html figure(String id, String caption, List<Integer> rows) {
        List<Integer> shown = rows.subList(0, Math.min(rows.size(), MOST_DRAWN));
        int longest = shown.stream().mapToInt(Integer::intValue).max().orElse(1);
        int columns = Math.min(longest, MOST_DRAWN);
        boolean cut = shown.size() < rows.size();
        int right = MARGIN + columns * (WIDTH + GAP) + (longest > columns ? WIDTH : 0);
        int height = 8 + shown.size() * (HEIGHT + GAP) + (cut ? 18 : 0);
        Svg svg = new Svg(id, right + MARGIN, height, caption, told(rows));
        for (int row = 0; row < shown.size(); row++) {
            row(svg, 6 + row * (HEIGHT + GAP), shown.get(row), right);
        }
        int last = middle(shown.size() - 1);
        svg.line(20, middle(0), 20, last).line(right + 12, middle(0), right + 12, last);
        svg.text(8, middle(0) + 5, "middle", "+").text(right + 24, middle(0) + 5, "middle", "−");
        if (cut) {
            svg.text(MARGIN, height - 6, "start", "and %s more rows".formatted(rows.size() - shown.size()));
        }
        return new Html()
                .open("figure")
                .add(svg.done())
                .element("figcaption", caption)
                .close();
    }

    private static int middle(int row) {
        return 6 + row * (HEIGHT + GAP) + HEIGHT / 2;
    }

    private static void row(Svg svg, int top, int parts, int right) {
        int middle = top + HEIGHT / 2;
        svg.line(20, middle, right + 12, middle);
        int drawn = Math.min(parts, MOST_DRAWN);
        for (int column = 0; column < drawn; column++) {
            boolean last = parts > drawn && column == drawn - 1;
            int x = MARGIN - 8 + column * (WIDTH + GAP) + (last ? WIDTH : 0);
            if (last) {
                svg.text(x - (WIDTH + GAP) / 2.0, middle - 3, "middle", "…");
            }
            svg.rectangle(x, top, WIDTH, HEIGHT, "#fff");
            svg.text(x + WIDTH / 2.0, middle + 4, "middle", String.valueOf(last ? parts : column + 1));
        }
    }

    private static String told(List<Integer> rows) {
        long alike = rows.stream().distinct().count();
        return alike == 1
                ? "%s in parallel, each of %s in series".formatted(Words.counted(rows.size(), "row"), rows.get(0))
                : "Rows in parallel of so many in series: " + Words.value(rows);
    }
}
